import type { Words } from '@evenhem/plugin'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

/** Why a drapery is not steamed, after `by`. */
const reason =
  '{by, select, none {The care label of {cloth} says no steam, in any form ({source}).} crossed {On the care label of {cloth} the iron is crossed out: no ironing, and by some tables no steaming ({source}).} one {The care label of {cloth} shows one dot: an iron at 110 °C at most, without steam ({source}).} marked {Steam left a mark in the hidden place.} side {Its back is coated and its face must not be steamed: no side is left.} unknown {Nobody says what {cloth} takes: its fibres are not all known, and it has no care label here.} ordered {The order says so.} unnamed {The order does not name its fabric, so nobody knows what it takes.} other {}}'
/** How much steam, and how, after `level`, `off` and `still`. */
const manner =
  '{level, select, generous {It takes generous steam, used sparingly.} moderate {Moderate steam.} light {Lightly.} low {Low steam.} other {The least steam that does it.}}{off, select, yes { Hold the head off the cloth.} other {}}{still, select, yes { Do not pull or press while it is warm and damp.} other {}}'
const relaxer =
  '{relaxer, select, allowed {An alcohol-based relaxer is allowed; try it in the hidden place too, and air the room.} other {No relaxer: {relaxer, select, not {it is not allowed on this cloth.} other {nobody says that this cloth allows it.}}}}'

/** Steps, their cautions and tools; what the customer is told about care. */
export const stepWords = {
  'finishing/let-down': one('Undo every band and tie of the packing, and let the folds fall to the hem.'),
  'finishing/let-down.why': one('Folds that are still held hang short, and the hem would be read wrong.'),
  'finishing/let-down.done': one('Folds fall free'),
  'finishing/try-steam': one(
    'Wash your hands. Try the steam {from, select, back {from the back, } face {from the face, } other {}}inside a hem or a return.',
  ),
  'finishing/try-steam.why': one(
    `A hidden place first: wait until it is dry, then look for marks, shine and puckers. ${relaxer} By common practice, no source.`,
  ),
  'finishing/try-steam.done': one('It was tried and looked at dry'),
  'finishing/steam': one(
    '{from, select, back {Steam from the back, from the hem upward, then along the side hems where puckers come out.} face {Steam from the face, from the hem upward, then along the side hems where puckers come out; keep off the coating behind.} other {Steam from the hem upward, then along the side hems where puckers come out.}}',
  ),
  'finishing/steam.why': one(
    `Steam rises, and does half of the work above it. ${manner} The most delicate here is {fibre}, in {cloth}; it is decided by {by, select, fibre {what is usual for the fibre} other {the care label}} ({source}). Let it dry before the hem is read: damp cloth hangs longer or shorter.`,
  ),
  'finishing/steam.done': one('It is steamed and dry'),
  'finishing/no-steam': one('Do not steam. Let the creases hang out, and smooth the folds by hand.'),
  'finishing/no-steam.why': one(
    `${reason} Instead: wash your hands, stroke each fold from the heading down, tie the folds, and look again when the cloth has hung. ${relaxer}`,
  ),
  'finishing/no-steam.done': one('Smoothed by hand'),
  'finishing/break-buckram': one(
    '{at, select, front {Break the buckram in the middle of each space, and pull it forward.} under {Break the buckram in the middle of each space, so that it folds back.} other {Break the buckram in the middle of each space, the way the folds go.}}',
  ),
  'finishing/break-buckram.why': one(
    '{at, select, front {The heading reaches up to the top of the rod and stands in front of it: there is room forward.} under {The heading hangs below the top of the rod: it folds toward the wall.} other {Heading in front of the rod: forward. Heading under it: back.}} Crease it once over its whole height, with your fingers and not with a tool.',
  ),
  'finishing/break-buckram.done': one('Buckram is broken between all pleats'),
  'finishing/train': one(
    '{pile, select, yes {Stack the panels and lay each fold with the palm from the heading to the hem, in the direction of the pile.} other {Stack the panels and run each fold between clean hands from the heading to the hem.}}',
  ),
  'finishing/train.why': one(
    'Each fold follows its pleat straight down; folds that wander at the hem are begun again at the heading.',
  ),
  'finishing/train.done': one('Folds run straight to the hem'),
  'finishing/tie': one(
    '{pile, select, yes {Tie the stacked folds with wide, soft strips, at the top, in the middle and above the hem; loosely, so that the pile is not crushed.} other {Tie the stacked folds with soft strips, at the top, in the middle and above the hem; snug, not tight.}}',
  ),
  'finishing/tie.why': one(
    'For {hours} hours, so that the cloth keeps the folds. Usual are 24 to 72 (common practice, no source). Show the customer how it draws before you tie, or when the ties are off.',
  ),
  'finishing/tie.done': one('Folds are tied'),
  'finishing/untie': one(
    '{date, select, none {Set the day on which the ties come off, and who takes them off.} other {Take the ties off on {date}, or have the customer do it.}}',
  ),
  'finishing/untie.why': one(
    'After {hours} hours. If the customer does it: untie from the hem upward, cut nothing near the cloth, and do not draw before.',
  ),
  'finishing/untie.done': one('{date, select, none {Day is set} other {Ties are off}}'),
  'finishing/read-again': one(
    '{date, select, none {Set a day to come back and read the hem again.} other {Come back on {date} and read the hem again.}}',
  ),
  'finishing/read-again.why': one('This cloth settles while it hangs. The hem is trued up then as on the first day.'),
  'finishing/read-again.done': one('Day is set'),
  'finishing/stand-back': one('Stand back with the customer: are you both content with how it hangs?'),
  'finishing/stand-back.why': one(
    'Folds, hem, height and what the light shows. Record who is; what is not right is written down now, not on the phone later.',
  ),
  'finishing/stand-back.done': one('Both were asked'),
  'finishing/caution-burn': one(
    'Steam scalds: keep it from hands, face and children, also while it heats; never toward a hand behind the cloth; empty it before you carry it. Follow its maker’s instructions.',
    'A recall of about two million handheld steamers in 2024 followed 122 reports of hot water spitting out and 23 burns (US Consumer Product Safety Commission, as the press reported). What to do about it is common practice, no source.',
  ),
  'finishing/caution-hot-head': one('Never lay the hot head on the cloth or against the wall.'),
  'finishing/caution-wet-floor': one('Wipe up drips: a wet floor is slippery.'),
  'finishing/caution-cord': one(
    'Lead its cord where nobody trips, away from the ladder; grounded outlet, dry hands. Electric work belongs to licensed people.',
  ),
  'finishing/caution-pile': one('Pile crushes for good: never steam or press its face, and touch it only along the pile.'),
  'finishing/caution-spots': one('Water leaves spots here: let the steamer spit out away from the cloth, and hold it off.'),
  'finishing/steamer': one('steamer'),
  'finishing/white-cloth': one('clean white cloth'),
  'finishing/ties': one('soft strips'),
  'finishing/entry-steam': one(
    '{name}: {steam, select, yes {steam it {level, select, generous {as much as it needs} moderate {moderately} light {lightly} low {with little steam} other {with the least steam}}{from, select, back {, from the back} face {, from the face and never on the coating} other {}}{off, select, yes {, held off the cloth} other {}}; try it in a hidden place first.} other {do not steam it.}}',
  ),
  'finishing/entry-iron': one(
    '{name}, iron on the care label: {says, select, three {three dots, 200 °C at most} two {two dots, 150 °C at most} one {one dot, 110 °C at most and without steam} other {crossed out, do not iron}}.',
  ),
  'finishing/entry-cleaning': one(
    '{name}, professional cleaning: {dry, select, P {circle P, dry cleaning in perchloroethylene or hydrocarbons} F {circle F, dry cleaning in hydrocarbons} crossed {do not dry clean} other {dry cleaning is not said}}; {wet, select, W {circle W, wet cleaning} crossed {do not wet clean} other {wet cleaning is not said}}.{mildness, select, mild { Mild process.} very { Very mild process.} other {}}',
  ),
  'finishing/entry-no-label': one('{name}: no care label is known. Ask the workroom before it is washed, steamed or cleaned.'),
} satisfies Words
