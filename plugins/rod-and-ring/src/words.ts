import type { Words } from '@evenhem/plugin'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const en: Words = {
  'rod-and-ring/words': one('Rod with brackets and finials.'),
  'rod-and-ring/bracket-to-bracket': one('bracket to bracket'),
  'rod-and-ring/rod-cut': one('rod, cut to'),
  'rod-and-ring/hole-top': one('top hole'),
  'rod-and-ring/hole-middle': one('middle hole'),
  'rod-and-ring/hole-lower': one('lower hole'),
  'rod-and-ring/to-ring': one('ring'),
  'rod-and-ring/to-wall': one('wall'),
  'rod-and-ring/past-bracket': one('past the bracket'),
  'rod-and-ring/thread-outside-left': one('outside the left bracket'),
  'rod-and-ring/thread-between': one('between the brackets'),
  'rod-and-ring/thread-outside-right': one('outside the right bracket'),
  'rod-and-ring/rings': one('{ordered, plural, one {# ring} other {# rings}} for {needed} needed; {over} to spare.'),
  'rod-and-ring/rings.fail': one(
    '{over, plural, one {# ring is} other {# rings are}} missing: {ordered} packed, {needed} needed for {hooks} hooks.',
    'Get {over, plural, one {it} other {them}} before the rod goes up: rings cannot be added once brackets and finials close it.',
  ),
  'rod-and-ring/rings.unknown': one('Not known yet whether the rings are enough.', 'Count them when unpacking.'),
  'rod-and-ring/wall-space': one('The finials fit: {left} of wall is left over on the left, {right} on the right.'),
  'rod-and-ring/wall-space.fail': one(
    'The {side} finial needs {short} more wall than the {space} there is.',
    'A shorter finial, or the rod moved or cut: settle it with the workroom before anything is marked.',
  ),
  'rod-and-ring/wall-space.unknown': one(
    'Not known yet whether the finials fit the wall.',
    'Measure the free wall on both sides, at the height of the rod.',
  ),
  'rod-and-ring/thread': one('Thread the rings: {left}, {between}, {right}.'),
  'rod-and-ring/thread.why': one(
    '{left} outside the left bracket, {between} between the brackets, {right} outside the right. Brackets and finials close the rod.',
  ),
  'rod-and-ring/thread.done': one('Rings are on'),
  'rod-and-ring/mount': one('Lift the rod into its brackets and close the finials.'),
  'rod-and-ring/mount.why': one('Check with the level before the panels go on.'),
  'rod-and-ring/mount.done': one('Rod is up'),
  'rod-and-ring/fold-back': one('Dress the folds: the spaces between pleats go back.'),
  'rod-and-ring/fold-back.why': one('The heading hangs under the rod, so there is no room in front of it.'),
  'rod-and-ring/fold-back.done': one('Folds are dressed'),
  'rod-and-ring/part-rod': one('rod'),
  'rod-and-ring/part-bracket': one('bracket'),
  'rod-and-ring/part-finial': one('finial'),
  'rod-and-ring/part-ring': one('ring'),
  'rod-and-ring/part-screw': one('screw'),
  'rod-and-ring/entry-rod': one('Rod: {rod}, {diameter} thick'),
  'rod-and-ring/entry-height': one('Top of rod: {top}'),
  'rod-and-ring/entry-rings': one('Rings: {rings}'),
}
export const words: Readonly<Record<string, Words>> = { en }
