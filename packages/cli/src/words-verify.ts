/** What is said about a job's folder against what was signed in it. */
export const verifyEnglish = {
  verify: 'Say whether job, log, photos and report are as they were signed.',
  'verify.more':
    'For each signature: whether job.json, every line of the log and every photo are as they were when somebody signed, and file and line of what differs. Also looked at: chains of the log, the bytes of every photo against its name, photos that the log names, and a report beside report.seal.json. What was added after signing is told and is no fault. It proves that files belong together, not who wrote them. Exit code 1: something differs.',
  'verify-no-folder': 'Unexpected job file {file}, expected a folder with job.json, a log and photos; name its folder',
  'verify-unread': 'Unexpected {path}, expected a folder that can be read; {why}',

  'verify-signed': '{role, select, customer {Customer} other {Installer}} {name}, {when}, {at}',
  'verify-put-over': 'This signature was withdrawn, or another one put over it; no fault.',
  'verify-accepts': '{accepts, select, with {Accepted with open points} other {Accepted without open points}}',
  'verify-part.job': 'job.json',
  'verify-part.log': 'log',
  'verify-part.photos': 'photos',
  'verify-part.signature': 'signature',
  'verify-as-signed': 'as signed',
  'verify-differs': 'not as signed',
  'seal/job': 'Unexpected change of job.json since somebody signed, expected the same bytes; put the file back that was signed',
  'seal/signature':
    'Unexpected change of the signature itself, expected it as it was put; compare it with another copy of the folder',
  'seal/line-changed':
    'Unexpected other content of entry {by}:{n}, expected the line that was signed; compare it with another copy of the folder',
  'seal/line-missing':
    '{count, plural, one {Unexpected gap at entry {by}:{n}} other {Unexpected gap at # entries from {by}:{n} on}}, expected every line that was signed; evenhem merge takes them from a copy that has them',
  'seal/chain':
    'Unexpected line before entry {by}:{n}, expected the one that it was written after; compare it with another copy of the folder',
  'seal/photos':
    'Unexpected photos named in the signed lines, expected those of the signature; compare the log with another copy of the folder',
  'seal/photo':
    'Unexpected lack of photo {photo} as it was signed, expected its bytes; copy it from the tablet or from another copy of the folder',
  'seal/after': 'After that {count, plural, one {# entry} other {# entries}} of {by} came, from {at} on; no fault.',

  'verify-elsewhere': 'In the folder',
  'verify-no-seal': 'Unexpected signature without a seal that can be read, expected one; sign again on a tablet',
  'verify-photo-changed':
    'Unexpected bytes of a photo, expected those that its name is the hash of; copy it from the tablet or from another copy of the folder',
  'verify-photo-lacks':
    'Unexpected lack of photo {photo}, which this entry names; copy it from the tablet or from another copy of the folder',
  'verify-photo-cleaned': 'Only a cleaned copy of this photo was kept: nothing proves its bytes.',
  'verify-report-seal':
    'Unexpected content, expected the name of a report beside it and its SHA-256, {example}; write the report again',
  'verify-report-lacks': 'Unexpected lack of {name}, expected the report beside its seal; put it back or write it again',
  'verify-report-changed': 'Unexpected bytes of the report, expected those of its seal; put the report back or write it again',

  'verify-good': 'Everything belongs together.',
  'verify-bad': 'Not everything belongs together.',
  'verify-unsigned': 'Nothing is signed in {folder} yet.',
} as const
