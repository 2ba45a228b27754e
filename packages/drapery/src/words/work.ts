import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** Steps of the work, and their cautions and tools. */
export const workWords = {
  'drapery/unpack': one('Unpack on a clean cover and count.'),
  'drapery/unpack.why': one(
    '{count, plural, one {# panel} other {# panels}}: {bags}. What is missing is better known now than on the ladder.',
  ),
  'drapery/unpack.done': one('Everything is here'),
  'drapery/measure-panels': one('Measure each panel along its leading edge, lying flat.'),
  'drapery/measure-panels.why': one(
    'Header to hem. Allowed ± {off}. The rod is set from the panels that came, not from those that were ordered.',
  ),
  'drapery/measure-panels.done': one('Panels are measured'),
  'drapery/measure-window': one('Measure the casing, and the floor below each bracket.'),
  'drapery/measure-window.why': one('The hem follows the highest floor, each hole its own floor.'),
  'drapery/measure-window.done': one('Window is measured'),
  'drapery/mark-bracket': one('Pencil {count, plural, one {one cross} other {# crosses}} for the {side} bracket.'),
  'drapery/mark-bracket.why': one(
    'The heights are from the floor right below this bracket, so that the rod is level on any floor.',
  ),
  'drapery/mark-bracket.done': one('Crosses are on'),
  'drapery/mark-support': one('Pencil {count, plural, one {one cross} other {# crosses}} for the support.'),
  'drapery/mark-support.why': one('A support holds the rod between the brackets; its heights are from the floor right below it.'),
  'drapery/mark-support.done': one('Crosses are on'),
  'drapery/drill-wood': one('Drill the top hole of each bracket.'),
  'drapery/drill-wood.why': one(
    'Wood is behind this wall. One screw a bracket, the top one first, until the hem is proven; then the others.',
  ),
  'drapery/drill-wood.done': one('Top holes are drilled'),
  'drapery/drill-all': one('Drill all holes of each bracket.'),
  'drapery/drill-all.why': one(
    'Wood is behind this wall, but one screw a bracket would hold too little for what hangs here, or it is not known whether it would: all screws go in before anything hangs.',
  ),
  'drapery/drill-all.done': one('Holes are drilled'),
  'drapery/drill-other': one('Drill all holes of each bracket for its anchors.'),
  'drapery/drill-other.why': one(
    'No wood is known behind this wall: one screw alone must not carry the rod. Follow the anchor maker’s instructions.',
  ),
  'drapery/drill-other.done': one('Holes are drilled'),
  'drapery/clear': one('{remove, select, none {Patch what has to be patched.} other {Take down what hangs here: {remove}.}}'),
  'drapery/clear.why': one(
    '{patch, select, none {Nothing has to be patched.} other {To be patched: {patch}.}} New holes must not meet old ones.',
  ),
  'drapery/clear.done': one('It is cleared'),
  'drapery/set-up': one('Set up for work at {height} above the floor.'),
  'drapery/set-up.why': one(
    '{high, select, yes {That is above {most}: two people, or a tower.} other {Take a ladder on which you reach this height without leaning out.}}',
  ),
  'drapery/set-up.done': one('It stands'),
  'drapery/check-level': one('Lay the level from the first marks to the last.'),
  'drapery/check-level.why': one(
    'Marks from the floor, from the frame’s head and from the ceiling should agree within {near}. If they do not, choose what the eye compares the rod with before you drill.',
  ),
  'drapery/check-level.done': one('Marks are level'),
  'drapery/trial': one('Hang one panel on two hooks, and read its hem.'),
  'drapery/trial.why': one(
    'All fasteners are in, so the length is proven before the whole weight hangs. Pins can still take up a little.',
  ),
  'drapery/trial.done': one('Length is proven'),
  'drapery/hang': one(
    '{draw, select, pair {Hang the panels from the meeting point outward.} one {Hang the panel from its leading edge outward.} other {Hang the panels from their leading edges outward.}}',
  ),
  'drapery/hang.why': one('{count} hooks, each where the hook map says.'),
  'drapery/hang.done': one('{draw, select, one {Panel hangs} other {Panels hang}}'),
  'drapery/read-hem': one(
    '{draw, select, pair {Release the folds, close the pair, and read the hem at both edges and in the middle of each panel.} one {Release the folds, draw the panel, and read the hem at both edges and in the middle.} other {Release the folds, and read the hem at both edges and in the middle of each panel.}}',
  ),
  'drapery/read-hem.why': one(
    '{lies, select, yes {It should lie {clearance} on the floor.} other {{to, select, sill {It should end {clearance} above the stool.} apron {It should end {clearance} below the apron.} other {It should clear the floor by {clearance}.}}}} Read it below hooks {alike, select, yes {{left} of each panel} other {{left} of the left panel and {right} of the right one}}, counted from the leading edge.',
  ),
  'drapery/read-hem.done': one('Hem is right'),
  'drapery/all-screws': one('Drive the remaining screws.'),
  'drapery/all-screws.why': one('The length is proven; now every hole of every bracket carries.'),
  'drapery/all-screws.done': one('All screws are in'),
  'drapery/look-over-screws': one('Look over every fastener.'),
  'drapery/look-over-screws.why': one('Everything hangs now; nothing may have moved.'),
  'drapery/look-over-screws.done': one('All hold'),
  'drapery/hand-over': one(
    '{draw, select, pair {Draw the pair five times with the customer, and show what to leave alone.} one {Draw the panel five times with the customer, and show what to leave alone.} other {Show the customer that the panels stay where they hang.}}',
  ),
  'drapery/hand-over.why': one(
    '{draw, select, pair {Opens and closes freely, meets in the middle, hems even, finials tight, rubbish gone.} one {Opens and closes freely, hem even, finials tight, rubbish gone.} other {Folds and hems even, finials tight, rubbish gone.}}',
  ),
  'drapery/hand-over.done': one('Handed over'),
  'drapery/caution-ladder': one(
    'Stand the ladder on firm, level ground and keep both feet on it. Follow its maker’s instructions and local codes.',
  ),
  'drapery/caution-drill': one('Look for cables and pipes before you drill. Licensed work belongs to licensed people.'),
  'drapery/caution-dust': one(
    'Wear goggles. Old paint can hold lead, old plaster asbestos: stop and follow local codes if in doubt.',
  ),
  'drapery/caution-tower': one(
    'At this height work with two people or from a tower, set up by its maker’s instructions and local codes. Nobody climbs alone.',
  ),
  'drapery/caution-lead': one(
    'This house is old enough for paint with lead: keep dust down, wear a mask and goggles, and follow local codes for work on it.',
  ),
  'drapery/ladder-tool': one('ladder'),
  'drapery/tower': one('tower'),
  'drapery/caution-lift': one('Lift what is long or heavy with two people.'),
  'drapery/clean-cover': one('clean cover'),
  'drapery/tape': one('tape'),
  'drapery/level': one('level'),
  'drapery/pencil': one('pencil'),
  'drapery/drill-tool': one('drill'),
  'drapery/goggles': one('goggles'),
} satisfies Words
