import type { Words } from '@evenhem/plugin'
import { es } from './words-es.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const en = {
  'traverse/words': one('Traverse rod with its brackets.'),
  'traverse/inset': one('inset of the bracket'),
  'traverse/half-rod': one('half the rod'),
  'traverse/rod-height': one('height of the rod'),
  'traverse/middle-of-rod': one('middle of the rod'),
  'traverse/ceiling-to-rod': one('ceiling to the top of the rod'),
  'traverse/rod-set': one('rod, set to'),
  'traverse/rod-end-to-end': one('rod, end to end'),
  'traverse/pin-most': one('deepest pin'),
  'traverse/heading-above': one('heading above the rod'),
  'traverse/carriers': one('carriers'),
  'traverse/carriers-packed': one('carriers in the rod'),
  'traverse/carriers-over': one('carriers to spare'),
  'traverse/carriers-all': one('carriers'),
  'traverse/masters-all': one('master carriers'),
  'traverse/hole-top': one('top hole'),
  'traverse/hole-middle': one('middle hole'),
  'traverse/hole-lower': one('lower hole'),
  'traverse/ceiling-front': one('front hole'),
  'traverse/ceiling-middle': one('middle hole'),
  'traverse/ceiling-back': one('back hole'),
  'traverse/to-master': one('master, hole'),
  'traverse/to-carrier': one('carrier'),
  'traverse/to-end': one('end bracket, end hole'),
  'traverse/to-back': one('end bracket, back hole'),
  'traverse/to-only': one('end bracket'),
  'traverse/to-wall': one('wall'),
  'traverse/carriers-enough': one(
    '{side, select, left {Left} right {Right} other {Together}}: {packed, plural, one {# carrier} other {# carriers}} for {needed} needed; {over} to spare{over, plural, =0 {} other {: {out, select, yes {take them out at the end of the rod} other {park them behind the last hook}}}}.',
  ),
  'traverse/carriers-enough.fail': one(
    '{side, select, left {Left} right {Right} other {Together}}: {over, plural, one {# carrier is} other {# carriers are}} missing: {packed} in the rod, {needed} needed.',
    'Get {over, plural, one {it} other {them}} before the panel is hung: a hook without a carrier tears the heading.',
  ),
  'traverse/carriers-enough.unknown': one(
    'Not known yet whether the carriers are enough.',
    'Count them in the rod on each side.',
  ),
  'traverse/draw': one('The rod is made for {draw}.'),
  'traverse/draw.fail': one(
    '{rod} is not made for {draw}.',
    'Ask the workroom for a rod of this draw, or whether it can be restrung. Do not put it up.',
  ),
  'traverse/draw.unknown': one('Not known yet whether the rod is made for this draw.'),
  'traverse/extends': one('The rod is set to {needed}, within what it can be set to.'),
  'traverse/extends.fail': one(
    'The rod has to be {needed}; it can be set to {bound} {way, select, short {at most} other {at least}}.',
    'It needs a rod of another size: call the workroom before anything is marked.',
  ),
  'traverse/extends.unknown': one('Not known yet how long the rod has to be.'),
  'traverse/pins': one(
    'The heading of the {panel} stands {above} {way, select, above {above} other {below}} the top of the rod{how, select, under {, clear of the rod} other {}}.',
  ),
  'traverse/pins.warn': one(
    'The heading of the {panel} stands {above} below the top of the rod, which shows above it.',
    'Set the pins deeper by that much, unless the rod is meant to be seen.',
  ),
  'traverse/pins.fail': one(
    '{how, select, meets {With pins {pin} deep the heading of the {panel} meets the rod above it.} other {Pins {pin} deep put the heading of the {panel} {above} {way, select, above {above} other {below}} the rod; {meant} {wanted, select, above {above} other {below}} is meant.}}',
    'Set the pins as the plan says before the panels are hung, and read the hem again: it moves by the difference.',
  ),
  'traverse/pins.unknown': one('Not known yet how the heading stands to the rod.'),
  'traverse/fold-room': one('The spaces of {space} fold back clear of the wall; up to {most} would.'),
  'traverse/fold-room.fail': one(
    'The spaces of the {panel}, {space}, meet the wall when they fold back; {most} at most would clear it.',
    'Brackets that stand further out, or narrower spaces: settle it with the workroom before it is hung.',
  ),
  'traverse/fold-room.unknown': one('Not known yet whether the folds have room behind the rod.'),
  'traverse/hook-in-carrier': one('The hooks, {wire} thick, go into the carriers of {opening}.'),
  'traverse/hook-in-carrier.fail': one(
    'The hooks are {wire} thick, the carriers open {opening}: they do not go in.',
    'Get hooks of thinner wire before the panels are hung.',
  ),
  'traverse/hook-in-carrier.unknown': one(
    'Not known yet whether the hooks go into the carriers.',
    'Try one hook in one carrier.',
  ),
  'traverse/support': one(
    '{how, select, nothing {Everything passes the support {x} from the casing’s left edge.} other {The support {x} from the casing’s left edge stands outside the travel of the {what}.}}',
  ),
  'traverse/support.fail': one(
    'The support {x} from the casing’s left edge stops the {what} inside their travel.',
    'A support that lets them pass, or another place for it: settle it with the workroom before anything is marked.',
  ),
  'traverse/support.unknown': one('Not known yet whether the carriers pass the supports.'),
  'traverse/count-carriers': one('Count the carriers: {needed}.'),
  'traverse/count-carriers.why': one(
    '{left, plural, =0 {} other {# on the left}}{left, plural, =0 {} other {{right, plural, =0 {} other {, }}}}{right, plural, =0 {} other {# on the right}}, master carriers not counted.',
  ),
  'traverse/count-carriers.done': one('Carriers are counted'),
  'traverse/mount': one('Set the rod to its length and hook it into its brackets.'),
  'traverse/mount.why': one('Let the supports grip it, then see with the level that it lies straight before the panels go on.'),
  'traverse/mount.done': one('Rod is up'),
  'traverse/mount-ceiling': one('Fix the rod to the ceiling.'),
  'traverse/mount-ceiling.why': one(
    'One person holds the far end. The rod follows the ceiling; what the hem clears is put right with pins, shims or the panel, not with the brackets.',
  ),
  'traverse/mount-ceiling.done': one('Rod is up'),
  'traverse/arms': one('Draw the rod closed without panels: the arms pass one another by {overlap}.'),
  'traverse/arms.why': one(
    '{over, select, left {The left arm lies in front.} right {The right arm lies in front.} other {One arm lies in front of the other.}} Both master carriers meet the middle at the same time; reset them if they do not.',
  ),
  'traverse/arms.done': one('Arms overlap'),
  'traverse/masters': one(
    'Begin at the master carrier: leading edge in its first hole, first pleat in its {third, select, third {third} other {last}} hole.',
  ),
  'traverse/masters.why': one('Then a carrier for every pleat without a gap, and the end bracket takes the last.'),
  'traverse/masters.done': one('Leading edges are on'),
  'traverse/fold-forward': one('Dress the folds: the spaces between pleats come forward.'),
  'traverse/fold-forward.why': one('The heading hangs in front of the rod, so there is no room behind it.'),
  'traverse/fold-forward.done': one('Folds are dressed'),
  'traverse/fold-back': one('Dress the folds: the spaces between pleats go back.'),
  'traverse/fold-back.why': one('The heading hangs under the rod, so there is room behind it and none in front.'),
  'traverse/fold-back.done': one('Folds are dressed'),
  'traverse/part-rod': one('traverse rod'),
  'traverse/part-bracket': one('end bracket'),
  'traverse/part-support': one('support'),
  'traverse/part-finial': one('finial'),
  'traverse/part-master': one('master carrier'),
  'traverse/part-carrier': one('carrier'),
  'traverse/part-hook': one('hook'),
  'traverse/part-screw': one('screw'),
  'traverse/entry-rod': one('Rod: {rod}, {height} high'),
  'traverse/entry-carriers': one('Carriers: {carriers}'),
  'traverse/entry-height': one('Top of rod: {top}'),
} satisfies Words

/** A code that these words are for. */
export type TraverseCode = keyof typeof en
export const words: Readonly<Record<string, Words>> = { en, es }
