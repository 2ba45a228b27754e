import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** Words of cords, motors and reach. */
export const operationWords = {
  'drapery/cord-once': one('rod and drop'),
  'drapery/cord-twice': one('there and back'),
  'drapery/cord-drop': one('drop to the lower pulley'),
  'drapery/cord-tie': one('to tie'),
  'drapery/cord-length-new': one('new cord'),
  'drapery/cord-device': one('The tension device of the loop is fixed and proven.'),
  'drapery/cord-device.unknown': one(
    'Nobody has recorded yet that the tension device of the loop is fixed and proven.',
    'Fix it so that the loop is taut, prove that the drapery works only with it, and record that. A loop is not handed over without.',
  ),
  'drapery/cord-device.fail': one(
    'The tension device of the loop is {device, select, missing {missing} other {not proven}}.',
    'Do not hand over: a loose loop can strangle a child. Get the device, or have it drawn by hand, wand or motor.',
  ),
  'drapery/cord-length': one(
    '{what, select, free {The free cord is {value}, {limit} at most ({source}).} loop {The loose loop is {value} around, {limit} at most ({source}).} lowest {The cord ends {value} above the floor, {limit} at least ({source}).} other {No loop of {limit} or more hangs as low as {above} ({source}).}}',
  ),
  'drapery/cord-length.none': one('No length of cords is published here for {country}; a loop needs its tension device.'),
  'drapery/cord-length.country': one(
    'No limits of cords are known here for {country}.',
    'Follow local law and the instructions of the maker.',
  ),
  'drapery/cord-length.unknown': one(
    '{what, select, lowest {Not known yet how high the cord ends; {limit} above the floor at least ({source}).} free {Not known yet how long the free cord is; {limit} at most ({source}).} low {Not known yet how long a loop the cord forms; it has to be shorter than {limit}, or hang wholly above {above} ({source}).} other {Not known yet how long the loose loop is; {limit} at most ({source}).}}',
    'Measure it with the draperies hung, and record it.',
  ),
  'drapery/cord-length.fail': one(
    '{what, select, free {The free cord is {value}; {limit} at most ({source}).} lowest {The cord ends {value} above the floor; {limit} at least ({source}).} low {A loop of {value} hangs low; it has to be shorter than {limit}, or hang wholly above {above} ({source}).} other {The loose loop is {value} around; {limit} at most ({source}).}}',
    'Shorten or tie it down for good, or change how it is drawn: settle it with the workroom. It is not handed over so.',
  ),
  'drapery/within-reach': one('What people work is {handle} above the floor, within {least} to {most} ({source}).'),
  'drapery/within-reach.fail': one(
    'What people work is {handle} above the floor; in a public place {least} to {most} ({source}).',
    'A longer wand, or another place for it: settle it with whoever runs the place.',
  ),
  'drapery/within-reach.unknown': one(
    '{known, select, no {No reach range is known here for {country}.} other {Not known yet how high what people work is.}}',
    '{known, select, no {Follow local rules for public places.} other {Measure it from the floor.}}',
  ),
  'drapery/power': one(
    '{how, select, battery {The motor has its own battery.} wired {The motor is wired in by a licensed electrician.} other {The lead of {lead} reaches the outlet, {way} away along the wall.}}',
  ),
  'drapery/power.fail': one(
    '{how, select, none {The motor has no power.} nowhere {There is no outlet on these walls for the lead of the motor.} other {The lead of {lead} does not reach the outlet, {way} away along the wall.}}',
    'Have a licensed electrician bring power, or take a motor with a battery, before anything is drilled. No extension leads.',
  ),
  'drapery/power.unknown': one(
    'Not known yet what powers the motor.',
    'Say what powers it, how long its lead is, and where the outlets are.',
  ),
  'drapery/fix-device': one('Fix the tension device of the loop, and prove it.'),
  'drapery/fix-device.why': one(
    'With the fasteners that came with it, so that the loop is taut. The drapery must not work, or not fully, until it is fixed. Never cut a loop in two.',
  ),
  'drapery/fix-device.done': one('Tension device is fixed and proven'),
  'drapery/record-cord': one('{by, select, loop {Record the tension device and the loop.} other {Record the free cord.}}'),
  'drapery/record-cord.why': one(
    '{by, select, loop {How high the device is, how much loop can be pulled loose; photograph the device where it is fixed.} other {How long it hangs within reach.}} Leave labels and tags on.',
  ),
  'drapery/record-cord.done': one('Cords are recorded'),
  'drapery/motor': one(
    '{power, select, battery {Charge the motor and set its ends.} wired {Have the motor wired in, then set its ends.} other {Plug the motor in and set its ends.}}',
  ),
  'drapery/motor.why': one('By the maker’s instructions; keep the lead clear of the folds and show the customer how to stop it.'),
  'drapery/motor.done': one('Motor runs'),
  'drapery/caution-cord': one('A loose cord can strangle a child. Leave no loop and no long end within reach.'),
  'drapery/caution-electric': one('Electric work belongs to licensed people. Follow local codes and the maker’s instructions.'),
  'drapery/entry-cords': one(
    'Cords can strangle a child quickly and silently. Keep cribs, beds and what can be climbed on away from them{by, select, loop {; never loosen or take off the tension device, and have it fixed again at once if it comes away} other {; keep the cord out of reach}}. Leave the warning labels on.',
  ),
  'drapery/entry-cords-ca': one(
    'Take the drapery down at once if a cord of more than 22 cm or a loop of more than 44 cm comes within reach (SOR/2019-97).',
  ),
  'drapery/entry-safe-corded': one('Keep the panels clear of heaters. Do not hang or climb on the rod.'),
} satisfies Words
