import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

const estimate = 'An estimate, not an engineer’s certificate; follow local codes and the fastener’s instructions.'

/** Sentences of weights, sag, brackets and fasteners. */
export const loadWords = {
  'drapery/sag': one(
    'At its worst the rod sags {sag}, {when}; {most} is allowed there{strict, select, maker {; its maker’s largest span, {span}, is the stricter of the two} other {}}.',
  ),
  'drapery/sag.warn': one(
    'The rod would sag {sag} at {x} from the left edge of the casing, {when}; {most} is allowed there.',
    `Another support or a stiffer rod helps: settle it with the workroom. ${estimate}`,
  ),
  'drapery/sag.fail': one('The rod sags too far.', estimate),
  'drapery/sag.folds': one(
    'The rod folds up where it is spliced, or a piece of it hangs loose: nothing holds the splice.',
    'Put a support under the splice, or use a splice that cannot turn. The rod is not hung so.',
  ),
  'drapery/sag.unknown': one('Not known yet how far the rod sags.'),
  'drapery/sag.weights': one(
    'Not known yet how far the rod sags and what its brackets carry: the order does not say what the panels weigh.',
    'Weigh a panel in its bag, or have the workroom give its weight, or the weight of its cloth and of its lining.',
  ),
  'drapery/sag.rod': one(
    'Not known yet how far the rod sags and what its brackets carry: the order does not say what the rod weighs.',
    'Its material and section say it, or its weight by the metre.',
  ),
  'drapery/sag.stiffness': one(
    'Not known yet how far the rod sags: the order does not say how stiff it is.',
    'Its material and section say it, where it is solid or a closed tube; of a rod with a slot its maker’s largest span holds.',
  ),
  'drapery/sag.places': one(
    'Not worked out how far the rod sags and what its brackets carry: two supports stand at one place, or one beyond the end brackets.',
    'Have the workroom correct the places of the supports.',
  ),
  'drapery/sag.corner': one(
    'Not worked out how far a rod sags that goes around a corner, and what its brackets carry.',
    'Its maker’s instructions say where it must be held.',
  ),
  'drapery/rod-lifts': one('The rod lies down in all its brackets, however the panels are drawn.'),
  'drapery/rod-lifts.warn': one(
    'The rod would lift out of {bracket, select, left {the left bracket} right {the right bracket} other {the support at {x} from the left edge of the casing}}, with {mass}.',
    `An open saddle cannot hold it down: fix the rod there with its screw or a clip. ${estimate}`,
  ),
  'drapery/rod-lifts.unknown': one('Not known yet whether the rod lies down in all its brackets.'),
  'drapery/holds': one('{used} % of {by} is used at most, where {mass} hang on a bracket.'),
  'drapery/holds.fail': one(
    '{bracket, select, left {The left bracket} right {The right bracket} other {The support at {x} from the left edge of the casing}} carries {mass}: {used} % of {by}.',
    `Do not drill for it so. {enough, select, none {Other fasteners, more supports or other brackets} other {A wood screw {enough} would hold; so may more supports or other brackets}}: settle it with the workroom. ${estimate}`,
  ),
  'drapery/holds.short': one(
    'The screw {fastener} reaches too little into the wood behind {bracket, select, left {the left bracket} right {the right bracket} other {the support at {x} from the left edge of the casing}}, which carries {mass}.',
    `A screw counts from six diameters in the wood on{enough, select, none {} other {; a {enough} would hold}}. Take a longer one. ${estimate}`,
  ),
  'drapery/holds.thin': one(
    'The wood behind {bracket, select, left {the left bracket} right {the right bracket} other {the support at {x} from the left edge of the casing}}, which carries {mass}, is too thin for the screw {fastener} to count.',
    `A screw counts from six diameters in the wood on, and no longer one helps there: other brackets or another place, settled with the workroom. ${estimate}`,
  ),
  'drapery/holds.lacks': one(
    'Not known whether {bracket, select, left {the left bracket} right {the right bracket} other {the support at {x} from the left edge of the casing}} holds the {mass} that hang on it. Missing: {lacks}.',
    `Only what is listed counts; nothing is guessed. ${estimate}`,
  ),
  'drapery/holds.unknown': one('Not known yet whether the brackets hold what hangs on them.'),
  'drapery/supports': one(
    '{count, plural, =0 {The two brackets are enough for this rod.} one {The brackets and the one support are enough for this rod.} other {The brackets and the # supports are enough for this rod.}}',
  ),
  'drapery/supports.warn': one(
    'Supported otherwise the rod holds: {ways, plural, one {one way is} other {# ways are}} worked out.',
    'The fewest holes come first.{on, select, studs { Find each stud with an awl before anything is drilled.} other {}}',
  ),
  'drapery/supports.none': one(
    'More supports alone do not help this rod: with up to three more no way was found.',
    'A stiffer rod, other brackets or other fasteners: settle it with the workroom.',
  ),
  'drapery/supports.unknown': one('Not known yet whether the rod wants more supports.'),
  'drapery/way-screws': one('Drive {screw} wood screws into every stud instead.'),
  'drapery/way-supports': one(
    '{count, plural, one {A support at {a}} =2 {Supports at {a} and {b}} =3 {Supports at {a}, {b} and {c}} other {Supports at {a}, {b}, {c} and {d}}} from the left edge of the casing{on, select, studs {, on studs} other {}}: {known, select, yes {{sag} % of the allowed sag and {holds} % of what the brackets hold are used} other {{sag} % of the allowed sag is used; what the brackets hold is not known}}.',
  ),
  'drapery/when-drawn': one('drawn'),
  'drapery/when-stacked': one('open'),
  'drapery/when-between': one('partly drawn'),
  'drapery/by-fasteners': one('what its fasteners hold'),
  'drapery/by-maker': one('what its maker allows'),
  'drapery/lacks-holes': one('where the holes of its plate are, how high it is, and how far out the rod is'),
  'drapery/lacks-second-rod': one('what the second rod in its double brackets puts on it'),
  'drapery/lacks-no-fastener': one('with what it is fixed in this wall; look at the box of the fastener and enter its listing'),
  'drapery/lacks-wall': one('what is behind the wall there; look for a stud'),
  'drapery/lacks-board': one('how thick the board is that the screw goes through, or that the fastener is listed for'),
  'drapery/lacks-gravity': one('no published value for that wood'),
  'drapery/lacks-size': one('no published value for a screw of that size'),
  'drapery/lacks-penetration': one('the screw reaches too little into the wood'),
  'drapery/lacks-margin': one('by what its ultimate load is divided; its listing or the code says it'),
  'drapery/lacks-not-listed': one('what its maker lists for this wall, out of it and along it; look it up and enter it'),
  'drapery/assume-creep': one('Wood sags half as much again over the years (NDS 2018, 3.5.2).'),
  'drapery/assume-wood': one('Nobody says which wood the rod is: the least stiff and the heaviest are reckoned.'),
  'drapery/assume-acrylic': one('Acrylic goes on sagging under a load; only its first sag is reckoned.'),
  'drapery/assume-bearers': one('Rings or carriers are not weighed: the order does not say what they weigh.'),
  'drapery/assume-finials': one('Finials are not weighed: the order does not say what they weigh.'),
  'drapery/assume-all': one(
    'Tapes and hooks are not weighed, nor weights in hems of which nobody says what they weigh, nor anybody who pulls at the cloth. All of a panel hangs on the rod.',
  ),
  'drapery/assume-screws': one(
    'Screws are reckoned for a load that stays, in side grain, with pilot holes as their standard asks; the board between plate and wood holds nothing.',
  ),
  'drapery/assume-even': one(
    'The cloth of a panel is spread evenly over what it covers. Bunched by hand at its leading edge it can put a fifth more on a support.',
  ),
  'drapery/assume-line': one(
    'Brackets and supports stand in one line until they are read. On a stiff rod one that stands 1/16 in high carries far more: read them before anything is fixed for good.',
  ),
  'drapery/assume-not': one(
    'Not reckoned: the strength of the rod itself, of a bracket’s arm and of a screw’s own steel, boards that give under a plate, motors, cord pulleys, and how far the ends beyond the outer brackets hang.',
  ),
  'drapery/assume-ground': one(
    'Where nobody says otherwise, studs and casings are of the lightest wood, and plates of mild steel, 1/8 in thick (from memory). A stud is 1 1/2 in wide, its middle where it is said to be.',
  ),
  'drapery/estimate': one(estimate),
  'drapery/rod-whole': one('length of the rod'),
  'drapery/rod-weight': one('weight of the rod'),
  'drapery/kilograms-a-metre': one('kilograms a metre'),
  'drapery/weight-of-rod': one(
    'A length times what a metre of it weighs: the area of its section times its density (sources: mechanics, materials and woods).',
  ),
  'drapery/cloth-long': one('length of the cloth with its hem and heading'),
  'drapery/hem-weights': one('weights in the hem'),
  'drapery/bearers-weight': one('weight of rings or carriers'),
  'drapery/bearer-weight': one('weight of one ring or carrier'),
  'drapery/hook-count': one('hooks'),
  'drapery/panel-load': one('panel with what it hangs on'),
  'drapery/finial-weight': one('weight of a finial'),
  'drapery/bracket-load': one('load on the bracket'),
  'drapery/bracket-load-least': one('least load on the bracket'),
  'drapery/continuous-beam': one(
    'A rod over several brackets, by the theorem of three moments (Kassimali, Structural Analysis, Eq. D.10); the worst of drawn, open and between. Checked against published tables (AISC Steel Construction Manual, Table 3-23).',
  ),
  'drapery/sag-x': one('where it sags the most'),
  'drapery/largest-sag': one('largest sag'),
  'drapery/sag-most': one('largest sag allowed'),
  'drapery/sag-part': one('one part in'),
  'drapery/part-of-span': one(
    'The way between two brackets over that number. No published limit for rods was found; the number is a choice.',
  ),
  'drapery/stiffness': one('stiffness in N·m²'),
  'drapery/creep': one('times as far after years'),
  'drapery/bracket-holds': one('all that hangs on the bracket'),
  'drapery/screw-pull': one('pull at the most loaded screw'),
  'drapery/screw-shear': one('shear at a screw'),
  'drapery/plate-tilts': one(
    'Load times projection, taken up by the screws: as a couple of the top and the lowest one (statics), and as a plate that tilts about its lower edge (Bhandari, Design of Machine Elements, chapter 7); the larger counts.',
  ),
  'drapery/plate-height': one('height of the plate'),
  'drapery/hole-count': one('holes'),
  'drapery/used': one('part of what the screw holds that is used'),
  'drapery/used-by-one': one('the same with the top screw alone'),
  'drapery/screw-holds': one(
    'In wood pull and shear together against the published values for a load that stays (NDS 2018, Eq. 12.2-2, 12.3 and 12.4-1; across a board by AWC TR 12, from memory); elsewhere against the fastener’s own listing.',
  ),
  'drapery/of-rated': one('part of what its maker allows'),
  'drapery/rated': one('what its maker allows'),
  'drapery/load-over-rated': one('The load over the weight that its maker allows on it.'),
} satisfies Words
