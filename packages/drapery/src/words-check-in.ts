import type { Words } from '@evenhem/plugin'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

/** Words of checking in what came. */
export const checkInWords = {
  'drapery/rod-piece': one('piece of the rod'),
  'drapery/missing': one('missing'),
  'drapery/needed': one('needed'),
  'drapery/counted': one('counted'),
  'drapery/came': one(
    'All that is needed came: {kinds, plural, one {# kind of part} other {# kinds of parts}} counted{over, plural, =0 {.} one {, {spare} more than needed of: {part}.} other {, of # kinds more than needed.}}',
  ),
  'drapery/came.unknown': one(
    '{left, plural, one {One kind of part is not counted yet: {part}.} other {# kinds of parts are not counted yet, the first: {part}.}}',
    'Count the rest before anything is marked.',
  ),
  'drapery/came.fail': one(
    'Missing: {missing} × {part}. {came} came, {needed} are needed.',
    'Count again, and look through the boxes of the other windows. What is missing must be there before anything is marked.',
  ),
  'drapery/came.called': one(
    'Missing: {missing} × {part}. {came} came, {needed} are needed. The workroom is called.',
    'Nothing is marked until it is there, or until somebody gives a reason to go on.',
  ),
  'drapery/way-spare': one('Take {count} × {part} from the other layer, which has {spare} to spare.'),
  'drapery/way-call': one('Stop and call the workroom.'),
} satisfies Words
