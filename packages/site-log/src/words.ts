import type { Said } from '@evenhem/job'

/** What is said about lines and files of a log, by code. */
export const logWords = {
  'log/no-json': {
    says: 'Unexpected line that is no JSON, expected one entry',
    help: 'It is left out; the rest of the file counts. Restore the line from a copy if there is one.',
  },
  'log/no-utf-8': {
    says: 'Unexpected bytes that are no UTF-8, expected one entry',
    help: 'The line is left out; the rest of the file counts.',
  },
  'log/odd-json': {
    says: 'Unexpected spaces, a name that stands twice or a number in an odd form, expected the line as it was written',
    help: 'The line is left out. Logs are not edited by hand: put another value over the one that is wrong.',
  },
  'log/no-event': { says: 'Unexpected value, expected an entry: an object', help: 'The line is left out.' },
  'log/strange-member': {
    says: 'Unexpected member “{name}” of an entry',
    help: 'The line is left out. A newer version may have written it.',
  },
  'log/member-by': {
    says: 'Unexpected “by” of an entry, expected small letters, digits and hyphens, up to 40',
    help: 'The line is left out.',
  },
  'log/member-n': { says: 'Unexpected “n” of an entry, expected a whole number from 1', help: 'The line is left out.' },
  'log/member-count': { says: 'Unexpected “count” of an entry, expected a whole number from 1', help: 'The line is left out.' },
  'log/member-clock': {
    says: 'Unexpected “clock” of an entry, expected a moment such as 2026-11-30T09:12:00Z',
    help: 'The line is left out.',
  },
  'log/member-who': {
    says: 'Unexpected “who” of an entry, expected a name of up to 200 characters',
    help: 'The line is left out.',
  },
  'log/member-before': { says: 'Unexpected “before” of an entry, expected 64 hexadecimal digits', help: 'The line is left out.' },
  'log/member-place': {
    says: 'Unexpected “place” of an entry, expected a JSON pointer such as /rooms/…',
    help: 'The line is left out.',
  },
  'log/member-value': {
    says: 'Unexpected “value” of an entry, expected a value that is not null and nests at most 16 deep',
    help: 'The line is left out.',
  },
  'log/member-over': {
    says: 'Unexpected “over” of an entry, expected a list of entries such as "tablet-3:17", each once',
    help: 'The line is left out.',
  },
  'log/before': {
    says: 'Unexpected start, expected `before` on every line but the first, and none there',
    help: 'The line is left out.',
  },
  'log/long-line': { says: 'Unexpected length of a line, expected at most {most} characters', help: 'The line is left out.' },
  'log/other-device': {
    says: 'Unexpected entry of “{by}” in the file of “{device}”, expected only its own',
    help: 'The line is left out; it belongs into {by}.jsonl.',
  },
  'log/twice': { says: 'Unexpected line again: entry {by}:{n} stands here already', help: 'It counts once.' },
  'log/clash': {
    says: 'Unexpected other content of entry {by}:{n}, expected the same everywhere',
    help: 'Somebody changed a log, or two devices have one name. Find out which copy is right; nothing was changed.',
  },
  'log/gap': {
    says: 'Unexpected entry number {n} after {after}, expected the next one',
    help: 'Lines are missing; this one counts.',
  },
  'log/chain': {
    says: 'Unexpected line before entry {n}, expected the one that it was written after',
    help: 'A line was changed or lost. This one counts; compare with a copy of the log.',
  },
  'log/count': {
    says: 'Unexpected count {count} of entry {n}, expected more than {after}',
    help: 'It counts; only its order in lists may be wrong.',
  },
  'log/torn': {
    says: 'Unexpected end in the middle of a line ({bytes} bytes), expected a whole one',
    help: 'The line was being written when the power went; it was not confirmed, and the tablet sends it again.',
  },
  'log/strange-file': {
    says: 'Unexpected file “{name}” in the log, expected the files of devices such as tablet-1.jsonl',
    help: 'It is not read.',
  },
  'log/big-file': { says: 'Unexpected size of {name}, expected at most {most} MiB', help: 'It is not read.' },
} as const satisfies Readonly<Record<string, Said>>
export type LogCode = keyof typeof logWords
