/** What the commands that show and merge the log of a job say. */
export const logEnglish = {
  log: 'Show what was found on site: who recorded what, where and when.',
  'log.more':
    'One line for each entry, in the order in which they followed one another: the clock of the device, who held it, the place, the value before and the new one. Exit code 1: values stand against each other, a value is left out, or a file of the log is not as it should be.',
  merge: 'Add to a job’s log and photos what another copy of its folder has.',
  'merge.more':
    'The second folder is not changed. What both have is kept once, and merging again is safe. Exit code 1: the two logs say different things of one entry, then nothing was changed; or a photo was left out.',
  'log-empty': 'Nothing is recorded yet in {folder}.',
  'log-yes': 'ticked',
  'log-no': 'not ticked',
  'log-ordered': 'ordered {value}',
  'log-signed':
    '{role, select, customer {customer} other {installer}} {name}{accepts, select, with {, accepted with open points} without {, accepted without open points} other {}}{isLeft, select, yes {, left there: {left}} other {}}',
  'log-withdrawn': 'withdrawn',
  'log-in-conflict': 'stands against another value; put one over both',
  'log-left-out': 'left out, {at}: {why}',
  'log-odd-lines': 'Files of the log',
  'merge-added': '{device}: {count, plural, one {# entry} other {# entries}} from {from}',
  'merge-photos': '{count, plural, one {# photo} other {# photos}} from {from}',
  'merge-left-out': 'left out, {file}: {why}',
  'merge-nothing': 'Nothing new in {from}; everything it has is here.',
  'merge-no-folder': 'Unexpected job file {file}, expected a folder with job.json, which has room for a log; name its folder',
  'merge-same': 'Unexpected folder {folder} twice, expected two copies of a job; name the other one',
  'merge-other-job':
    'Unexpected job number {number} in {folder}, expected {expected} as in the first folder; nothing was changed, name a copy of the same job',
  'merge-photos-failed':
    'Unexpected answer of the disk ({error}) in {folder}, expected room for the photos; the log is merged, make room or mend the disk and merge again, which is safe',
  'merge-failed':
    'Unexpected answer of the disk ({error}) in {folder}, expected room for the log; make room or mend the disk and merge again, which is safe',
} as const
