import type { Words } from '@evenhem/plugin'
import { es } from './words-es.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const what = '{said, select, yes {{what}} other {nobody has said yet what is wrong}}'
const owner =
  '{owner, select, workroom {the workroom} installer {the installer} trade {{trade, select, none {another trade} other {{trade}}}} customer {the customer} other {nobody yet}}{named, select, yes { ({who})} other {}}'
const by = '{by, select, none {, no day agreed} other {, by {by}}}'

const en = {
  'punch-list/open': one(
    `Point {n}: ${what}. {state, select, mended {It is mended.} looked {It is mended, and was looked at again.} other {It was accepted as it is.}}`,
  ),
  'punch-list/open.warn': one(`Point {n} is open: ${what}. Who mends it: ${owner}${by}.`),
  'punch-list/unsafe': one(`Point {n}, which was unsafe: ${what}. It is mended, and was looked at again.`),
  'punch-list/unsafe.unknown': one(
    `Point {n}, which was unsafe: ${what}. It is said to be mended, and nobody has looked at it again.`,
    'Look at it yourself, and record that: nothing is handed over before, and no reason lifts that.',
  ),
  'punch-list/unsafe.fail': one(
    `Point {n} is unsafe: ${what}. Who mends it: ${owner}${by}.`,
    'Somebody could be hurt: nothing is handed over before it is mended and was looked at again, and no reason lifts that. Keep people away from it, children first.',
  ),
  'punch-list/unsafe.accepted': one(
    `Point {n} is unsafe and was accepted as it is: ${what}. Unexpected, expected it to be mended. Who mends it: ${owner}${by}.`,
    'What can hurt somebody is not for anybody to accept: somebody else may stand under it. Have it mended, or take it down.',
  ),
  'punch-list/unsafe-in-house': one(`Point {n} of the house, which was unsafe: ${what}. It is mended, and was looked at again.`),
  'punch-list/unsafe-in-house.unknown': one(
    `Point {n} of the house, which was unsafe: ${what}. It is said to be mended, and nobody has looked at it again.`,
    'Look at it yourself, and record that: no window is handed over before, and no reason lifts that.',
  ),
  'punch-list/unsafe-in-house.fail': one(
    `Point {n} of the house is unsafe: ${what}. Who mends it: ${owner}${by}.`,
    'Somebody could be hurt: no window is handed over before it is mended and was looked at again, and no reason lifts that. Keep people away from it, children first.',
  ),
  'punch-list/unsafe-in-house.accepted': one(
    `Point {n} of the house is unsafe and was accepted as it is: ${what}. Unexpected, expected it to be mended. Who mends it: ${owner}${by}.`,
    'What can hurt somebody is not for anybody to accept: somebody else may walk by. Have it mended, or take it down.',
  ),
  'punch-list/agreed': one(
    '{count, plural, one {The open point has} other {All # open points have}} somebody to mend it and a day.',
  ),
  'punch-list/agreed.unknown': one(
    `Point {n}: ${what}. {lacks, select, owner {Nobody knows yet who mends it.} by {Nobody knows yet by when it is mended.} other {Nobody knows yet who mends it, and by when.}}`,
    'Agree on it before you leave: a point of nobody stays open.',
  ),
  'punch-list/told': one('{count, plural, one {The point says} other {All # points say}} what is wrong.'),
  'punch-list/told.unknown': one('A point does not say what is wrong.', 'Write in a few words what is wrong.'),
  'punch-list/way-mended': one('It is mended'),
  'punch-list/way-looked': one('I looked at it again: it is well'),
  'punch-list/way-accepted': one('The customer accepts it as it is'),
  'punch-list/way-workroom': one('The workroom mends it'),
  'punch-list/way-installer': one('I mend it'),
  'punch-list/way-trade': one('Another trade mends it'),
  'punch-list/way-customer': one('The customer sees to it'),
  'punch-list/call': one(`Call ${owner} about point {n}: ${what}${by}.`),
  'punch-list/call.why': one('Whoever mends it has to know what is wrong, where, and by when.'),
  'punch-list/call.done': one('They know about point {n}'),
  'punch-list/mend': one(`Mend point {n}: ${what}${by}.`),
  'punch-list/mend.why': one('It is yours to mend. Take a photo of it mended.'),
  'punch-list/mend.done': one('Point {n} is mended'),
  'punch-list/walk': one(
    'Go through {count, plural, one {the point} other {all # points}} that {count, plural, one {is} other {are}} left with the customer, at the window.',
  ),
  'punch-list/walk.why': one('Both see what is left, who mends it and by when. What is mended is looked at again.'),
  'punch-list/walk.done': one('The customer has seen what is left'),
  'punch-list/owner-workroom': one('workroom'),
  'punch-list/owner-installer': one('installer'),
  'punch-list/owner-other-trade': one('another trade'),
  'punch-list/owner-customer': one('customer'),
  'punch-list/owner-none': one('nobody yet'),
  'punch-list/cause-measured': one('measuring'),
  'punch-list/cause-made': one('how it was made'),
  'punch-list/cause-hardware': one('the hardware'),
  'punch-list/cause-wall': one('the wall'),
  'punch-list/cause-installed': one('how it was installed'),
  'punch-list/cause-damaged-in-transport': one('damaged on the way'),
  'punch-list/cause-other': one('something else'),
  'punch-list/state-open': one('open'),
  'punch-list/state-mended': one('mended'),
  'punch-list/state-looked-at': one('looked at again'),
  'punch-list/state-accepted-as-it-is': one('accepted as it is'),
  'punch-list/caution-unsafe': one(
    'Somebody could be hurt. Keep people away, children first, and take down what could fall. Follow the maker’s instructions and local codes; licensed work belongs to licensed people.',
  ),
  ...Object.fromEntries(Array.from({ length: 9 }, (_, n) => [`punch-list/pin-${n + 1}`, one(`point ${n + 1}`)])),
  'punch-list/pin-more': one('a point'),
} satisfies Words

export const words: Readonly<Record<string, Words>> = { en, es }
