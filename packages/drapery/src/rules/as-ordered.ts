import { below, type Panel } from '@evenhem/job'
import { inch, type Length } from '@evenhem/length'
import { type Check, checks, rule, type WayOut } from '@evenhem/plugin'
import { type Comparison, compareFinishedLength, compareFirstToLast, comparePin, compareReturn } from '../arithmetic/index.ts'
import { type Choice, decided, differenceOf } from '../decisions.ts'
import { lengthAllowed, ruleOf } from '../defaults.ts'
import { headRoomLeft, pinReach, swapped } from '../facts/index.ts'
import { check, magnitude, outerSide, panelAt } from '../given.ts'
import { type CheckedIn, decideWay, type Leaves, moveWay, pinAsOrdered, pinsWay, twinsOf } from './ways.ts'

type Size = 'finishedLength' | 'firstToLast' | 'return' | 'pin' | 'finishedWidth'
const sizes = ['finishedLength', 'firstToLast', 'return', 'pin'] as const
const sizeCodes: Readonly<Record<Size, string>> = {
  finishedLength: 'drapery/finished-length',
  firstToLast: 'drapery/first-to-last',
  return: 'drapery/return-width',
  pin: 'drapery/pin',
  finishedWidth: 'drapery/finished-width',
}

/** Widths may be off by the workroom's or the trade's 1/2 in up to this, beyond it by a hundredth. */
const wide = (72 * inch) as Length

function compared(size: Size, ordered: Length, measured: Length, job: CheckedIn['job']): Comparison {
  const halfRange = (ruleOf(job, 'pinRange').value / 2) as Length
  switch (size) {
    case 'finishedLength':
      return compareFinishedLength(ordered, measured, lengthAllowed(job, ordered), { deeper: halfRange, shallower: halfRange })
    case 'firstToLast':
    case 'finishedWidth':
      return compareFirstToLast(ordered, measured, ruleOf(job, 'widthOff').value, wide)
    case 'return':
      return compareReturn(ordered, measured, ruleOf(job, 'returnUnder').value, ruleOf(job, 'returnWider').value)
    case 'pin':
      return comparePin(ordered, measured, ruleOf(job, 'pinOff').value)
  }
}

/** From edge to edge, as its own sizes add up; undefined while one is not known. */
function finishedWidth({ leadingFlat, firstToLast, return: back, outerFlat }: Panel): Length | undefined {
  const outer = back === 0 ? outerFlat : back
  return leadingFlat === undefined || firstToLast === undefined || outer === undefined
    ? undefined
    : ((leadingFlat + firstToLast + outer) as Length)
}

/** A size of a panel that came otherwise than it was ordered. */
interface Difference {
  readonly panel: string
  readonly size: Size
  readonly was: Length
  readonly is: Length
}
/** Every size that differs; the whole width only where it is off and none of its parts is. */
function differencesOf(subject: CheckedIn): readonly Difference[] {
  const differing = (size: Size, panel: string, was: Length | undefined, is: Length | undefined): readonly Difference[] =>
    was === undefined || is === undefined || was === is ? [] : [{ panel, size, was, is }]
  const isOff = ({ size, was, is }: Difference): boolean => !compared(size, was, is, subject.job).within
  return twinsOf(subject).flatMap(({ is, was }) => {
    const own = sizes.flatMap((size) => differing(size, is.id, was[size], is[size]))
    const isNamed = own.some((one) => (one.size === 'firstToLast' || one.size === 'return') && isOff(one))
    const whole = differing('finishedWidth', is.id, finishedWidth(was), finishedWidth(is)).filter(isOff)
    return [...own, ...(isNamed ? [] : whole)]
  })
}

/** What the check says once something was decided about exactly this difference. To go on takes a reason where it stops. */
function settled(found: Check, choice: Choice | undefined): Check {
  if (choice === undefined || (choice === 'go on' && found.verdict === 'fail')) return found
  const says = `drapery/as-ordered.${choice.replaceAll(' ', '-')}`
  const { stops: _, ways = [], ...rest } = found
  if (choice !== 'call the workroom') return { ...rest, verdict: 'pass', says }
  return { ...rest, verdict: 'fail', says, stops: 'mark', ways: ways.filter(({ code }) => code !== 'drapery/way-call') }
}

/** What may be done about it, the best first. */
function waysOf(
  subject: CheckedIn,
  { panel, size, was, is }: Difference,
  verdict: Check['verdict'],
  leaves: Leaves,
): readonly WayOut[] {
  const difference = differenceOf(is, was)
  const key = `${panel}.${size}`
  const pins = size === 'finishedLength' || size === 'pin' ? pinsWay(subject, leaves) : []
  const brackets = size === 'finishedLength' ? moveWay(subject, leaves) : []
  // Pins alone are less work than brackets elsewhere, and that is less than both.
  const inPins = pins.some(({ values }) => values.move === 'none')
  return [
    ...(inPins ? [...pins, ...brackets] : [...brackets, ...pins]),
    ...(size === 'pin' && pins.length === 0 ? [pinAsOrdered(subject, panel, was)] : []),
    ...(verdict === 'warn' ? [decideWay(subject.at, 'go on', key, difference)] : []),
    decideWay(subject.at, 'call the workroom', key, difference),
  ]
}

function checkOf(subject: CheckedIn, one: Difference, leaves: Leaves): Check {
  const { panel, size, was, is } = one
  const { it, at, job } = subject
  const { within, leads, difference } = compared(size, was, is, job)
  const values = {
    panel: { code: `drapery/panel-${outerSide(it, panel)}` },
    size: { code: sizeCodes[size] },
    ordered: { length: was },
    measured: { length: is },
    off: magnitude({ value: difference }),
    way: difference > 0 ? 'over' : 'under',
  }
  const verdict = within ? 'pass' : leads === 'reset pins' ? 'warn' : 'fail'
  const place = size === 'finishedWidth' ? panelAt(at, panel) : below(panelAt(at, panel), size)
  const found = check('drapery/as-ordered', verdict, place, values, 'mark')
  if (within) return found
  const about = `${panel}.${size} ${differenceOf(is, was)}`
  const ways = waysOf(subject, one, verdict, leaves)
  return settled({ ...found, about, ways }, decided(it, `${panel}.${size}`, differenceOf(is, was)))
}

/** What the tape said of each panel against the order, and what a difference leads to. Panels in each other's bags are named as that, and compared when they are swapped. */
export const asOrdered = rule({
  id: 'as-ordered',
  on: 'treatment',
  needs: { swapped: { maybe: swapped }, pinReach: { maybe: pinReach }, headRoomLeft: { maybe: headRoomLeft } },
  gives: { checks },
  codes: ['drapery/as-ordered'],
}).run((subject, facts) => ({
  checks: differencesOf(subject)
    .filter(({ panel }) => !facts.swapped?.panels.includes(panel))
    .map((one) => checkOf(subject, one, facts)),
}))
