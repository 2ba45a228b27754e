import type { Words } from '@evenhem/plugin'
import { es } from './words-es.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const en = {
  'rod-and-ring/words': one('Rod with brackets and finials.'),
  'rod-and-ring/rod-cut': one('rod, cut to'),
  'rod-and-ring/hole-top': one('top hole'),
  'rod-and-ring/hole-middle': one('middle hole'),
  'rod-and-ring/hole-lower': one('lower hole'),
  'rod-and-ring/to-ring': one('ring'),
  'rod-and-ring/to-wall': one('wall'),
  'rod-and-ring/past-bracket': one('past the bracket'),
  'rod-and-ring/threading': one('rings, left to right'),
  'rod-and-ring/thread-outside-left': one('outside the left bracket'),
  'rod-and-ring/thread-between': one('between the brackets'),
  'rod-and-ring/thread-outside-right': one('outside the right bracket'),
  'rod-and-ring/rod-radius': one('half the rod'),
  'rod-and-ring/diameter': one('diameter of the rod'),
  'rod-and-ring/middle-of-rod': one('middle of the rod'),
  'rod-and-ring/from-meeting': one('support from the meeting point'),
  'rod-and-ring/gap': one('gap that the support leaves'),
  'rod-and-ring/thread-bay-1': one('in bay 1, from the left'),
  'rod-and-ring/thread-bay-2': one('in bay 2, from the left'),
  'rod-and-ring/thread-bay-3': one('in bay 3, from the left'),
  'rod-and-ring/thread-bay-4': one('in bay 4, from the left'),
  'rod-and-ring/thread-bay-5': one('in bay 5, from the left'),
  'rod-and-ring/thread-bay-6': one('in bay 6, from the left'),
  'rod-and-ring/thread-bay-7': one('in bay 7, from the left'),
  'rod-and-ring/thread-bay-8': one('in bay 8, from the left'),
  'rod-and-ring/thread-bay-9': one('in bay 9, from the left'),
  'rod-and-ring/rings': one('{ordered, plural, one {# ring} other {# rings}} for {needed} needed; {over} to spare.'),
  'rod-and-ring/rings.fail': one(
    '{over, plural, one {# ring is} other {# rings are}} missing: {ordered} packed, {needed} needed for {hooks} hooks.',
    'Get {over, plural, one {it} other {them}} before the rod goes up: rings cannot be added once brackets and finials close it.',
  ),
  'rod-and-ring/rings.unknown': one('Not known yet whether the rings are enough.', 'Count them when unpacking.'),
  'rod-and-ring/support': one(
    '{how, select, meeting {The support stands where the panels meet; it leaves a gap of {gap} between them.} travel {The support stands outside the travel of the rings.} other {The rings pass the support, or do not travel.}}',
  ),
  'rod-and-ring/support.fail': one(
    'The support {x} from the casing’s left edge stops closed rings inside the travel of a panel.',
    'Rings that are open at the top, a support at the meeting point, or none: settle it with the workroom before anything is marked.',
  ),
  'rod-and-ring/support.unknown': one('Not known yet whether the rings pass the supports.'),
  'rod-and-ring/pins': one('All pins are between {least} and {most}, where they work on rings.'),
  'rod-and-ring/pins.warn': one(
    'The pins of the {panel} are set {pin} deep; on rings they work between {least} and {most}.',
    'Set them within that range, or ask the workroom why not.',
  ),
  'rod-and-ring/pins.unknown': one('Not known yet how the pins are set.'),
  'rod-and-ring/ring-on-rod': one('The rings, {inside} inside, slide on the rod of {diameter}.'),
  'rod-and-ring/ring-on-rod.fail': one(
    'The rings are {inside} inside, the rod {diameter}: they do not go on.',
    'Call the workroom before the rod is unpacked further.',
  ),
  'rod-and-ring/ring-on-rod.unknown': one('Not known yet whether the rings go on the rod.'),
  'rod-and-ring/hook-in-eye': one('The hooks, {wire} thick, enter the eyes of {eye}.'),
  'rod-and-ring/hook-in-eye.fail': one(
    'The hooks are {wire} thick, the eyes {eye} wide: they do not enter.',
    'Get hooks of thinner wire or rings with wider eyes before the rod goes up.',
  ),
  'rod-and-ring/hook-in-eye.unknown': one(
    'Not known yet whether the hooks enter the eyes of the rings.',
    'Try one hook in one ring.',
  ),
  'rod-and-ring/count-rings': one('Count the rings: {needed} are needed.'),
  'rod-and-ring/count-rings.why': one(
    '{hooks} hooks; those that go to the wall need none. Rings cannot be added once the rod is closed.',
  ),
  'rod-and-ring/count-rings.done': one('Rings are counted'),
  'rod-and-ring/thread': one('Thread the rings: {order}.'),
  'rod-and-ring/thread.why': one(
    'From left to right: {left} outside the left bracket, {between} between the brackets{bays, plural, one {} other { in # bays}}, {right} outside the right. Brackets and finials close the rod.',
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
  'rod-and-ring/part-support': one('support'),
  'rod-and-ring/part-hook': one('hook'),
  'rod-and-ring/part-screw': one('screw'),
  'rod-and-ring/entry-rod': one('Rod: {rod}, {diameter} thick'),
  'rod-and-ring/entry-height': one('Top of rod: {top}'),
  'rod-and-ring/entry-rings': one('Rings: {rings}'),
} satisfies Words

/** A code that these words are for. */
export type RodAndRingCode = keyof typeof en
export const words: Readonly<Record<string, Words>> = { en, es }
