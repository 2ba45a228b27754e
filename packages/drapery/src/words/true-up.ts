import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** More hooks than a panel has. */
const mostHooks = 99
/** Names of the hooks of a panel, as many as there may be: `drapery/hook-left-1` and so on. */
export const hooksNamed = (left: string, right: string): Words =>
  Object.fromEntries(
    Array.from({ length: mostHooks }, (_, i) => i + 1).flatMap((n) => [
      [`drapery/hook-${n}`, one(String(n))],
      [`drapery/hook-left-${n}`, one(`${left} ${n}`)],
      [`drapery/hook-right-${n}`, one(`${right} ${n}`)],
    ]),
  )
export const hookWords = hooksNamed('left panel, hook', 'right panel, hook')

/** Words of hems that are trued up. */
export const trueUpWords = {
  'drapery/hook-along': one('hook, along the wall'),
  'drapery/hooks-spread': one('pleats at equal spaces between the leading edge and the outer end'),
  'drapery/hem-read': one('hem as it was read'),
  'drapery/hem-now': one('hem now'),
  'drapery/hem-after': one('hem after'),
  'drapery/hem-ordered': one('hem as ordered'),
  'drapery/pin-now': one('pin now'),
  'drapery/pin-set': one('set pin to'),
  'drapery/pin-least': one('shallowest pin'),
  'drapery/pins-chosen': one(
    'the pin on the tape’s step, inside its range and near its neighbours, that leaves the hem nearest to where it was ordered; a deeper pin lifts it',
  ),
  'drapery/pins-left': one('pins of the left panel, hook by hook'),
  'drapery/pins-right': one('pins of the right panel, hook by hook'),
  'drapery/hem-steep': one('Heights are drawn 22 times as steep as widths.'),
  'drapery/hem-even': one(
    'The hem is even: {least} to {most} where {clearance} is ordered, within {near}.{opens, select, yes { Opened, the panels clear {open} at least.} other {}}',
  ),
  'drapery/hem-even.fail': one(
    'The hem of the {panel} hangs {off} too {way, select, low {low} other {high}} at hook {hook}: it reads {reads} where {clearance} is ordered.',
    'It may be {near} off. Take one of the ways below, or have the panel mended.',
  ),
  'drapery/hem-even.warn': one('The {panel} goes back to the workroom.', 'Read its hem again when it has come back and hangs.'),
  'drapery/hem-even.unknown': one(
    '{how, select, again {What was decided is not proven yet: the hem is to be read again.} other {{count, plural, one {The hem of one panel is not read yet.} other {The hems of # panels are not read yet.}}}}',
    '{how, select, again {Put the new readings over the old ones, below the same hooks.} other {Read it below two hooks of each panel at least, drawn and with its folds released.}}',
  ),
  'drapery/way-hem-pins': one(
    '{count, plural, one {Set one pin} other {Set # pins}} again: the hem comes within {off} of {clearance} all along.{inside, select, no { More than that pins can’t do.} other {}}{opens, select, yes { Opened, it clears {open} at least.} other {}} Brackets stay.',
  ),
  'drapery/way-hem-pins-half': one(
    'Half of that, {count, plural, one {one pin} other {# pins}}: the drawn hem comes within {off} of {clearance}, and opened it clears {open} at least.',
  ),
  'drapery/way-hem-brackets': one(
    '{which, select, left {{leftWay, select, up {Raise} other {Lower}} the left bracket by {left}} right {{rightWay, select, up {Raise} other {Lower}} the right bracket by {right}} other {{leftWay, select, up {Raise} other {Lower}} the left bracket by {left} and {rightWay, select, up {raise} other {lower}} the right one by {right}}}{supports, plural, =0 {} one {, the support with them} other {, the supports with them}}: the hem comes within {off} of {clearance} all along. Pins stay.{inside, select, no { A new hole allows nothing nearer.} other {}}',
  ),
  'drapery/way-hem-brackets-pins': one(
    '{which, select, left {{leftWay, select, up {Raise} other {Lower}} the left bracket by {left}} right {{rightWay, select, up {Raise} other {Lower}} the right bracket by {right}} other {{leftWay, select, up {Raise} other {Lower}} the left bracket by {left} and {rightWay, select, up {raise} other {lower}} the right one by {right}}}{supports, plural, =0 {} one {, the support with them} other {, the supports with them}}, and {count, plural, one {set one pin} other {set # pins}} again: the hem comes within {off} of {clearance} all along.{inside, select, no { That is as near as both come.} other {}}',
  ),
  'drapery/way-hem-panel-back': one(
    'The {panel} goes back to the workroom: it is {length} too {how, select, long {long} other {short}}.{inside, select, no { Mended by that, {off} still remains.} other {}}',
  ),
  'drapery/way-hem-read-again': one('It was read again, and reads the same.'),
  'drapery/look-again': one('The hem is read again on {date}.'),
  'drapery/look-again.warn': one(
    'This cloth settles; no day is set to read the hem again.',
    '{days} days after it was hung is {date}. The hem is trued up then as on the first day.',
  ),
  'drapery/way-look-again': one('Come back on {date}, {days} days after it was hung.'),
  'drapery/set-pins': one('{count, plural, one {Set one pin again.} other {Set # pins again, each as it says.}}'),
  'drapery/set-pins.why': one(
    '{how, select, meant {This is what brings the hem where it was ordered; take that way first.} other {So it was decided.}} From the top of the pin up to the top of the drapery. Then read the hem again.',
  ),
  'drapery/set-pins.done': one('Pins are set'),
  'drapery/move-bracket': one('{way, select, up {Raise} other {Lower}} the {side} bracket by {by}.'),
  'drapery/move-bracket.why': one(
    'Its top hole is then {to} above the floor. Take the panels off its end first, and fill the old holes.',
  ),
  'drapery/move-bracket.done': one('Bracket is moved'),
} satisfies Words
