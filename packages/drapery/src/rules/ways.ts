import { below, type JobHead, type Panel, type Place, type Treatment } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import type { Values, WayOut } from '@evenhem/plugin'
import { compareFinishedLength, followLengths, type PinsReset, resetPins } from '../arithmetic/index.ts'
import { type Choice, deciding, differenceOf } from '../decisions.ts'
import { lengthAllowed, ruleOf } from '../defaults.ts'
import type { PinReach } from '../facts/index.ts'
import { magnitude, outerSide, panelAt } from '../given.ts'

/** A treatment whose panels are checked in. */
export interface CheckedIn {
  readonly it: Treatment
  readonly ordered: Treatment
  readonly at: Place
  readonly job: JobHead
}
/** What its hardware leaves: the pins that work on it, and the room above it. */
export interface Leaves {
  readonly pinReach?: PinReach | undefined
  readonly headRoomLeft?: Known<Length> | undefined
}

/** A panel with the one that was ordered. */
interface Twin {
  readonly is: Panel
  readonly was: Panel
}
export const twinsOf = ({ it, ordered }: CheckedIn): readonly Twin[] =>
  it.panels.flatMap((is) => ordered.panels.filter(({ id }) => id === is.id).map((was) => ({ is, was })))

function rangeOf(
  { job }: CheckedIn,
  { is, was }: Twin,
  reach: PinReach | undefined,
): { readonly least: Length; readonly most: Length } {
  const half = ruleOf(job, 'pinRange').value / 2
  const pin = was.pin ?? (0 as Length)
  const deepest = is.heading?.height === undefined ? Number.POSITIVE_INFINITY : is.heading.height - ruleOf(job, 'pinBelow').value
  return {
    least: (reach?.least?.value ?? Math.max(0, pin - half)) as Length,
    most: Math.min(reach?.most?.value ?? pin + half, deepest) as Length,
  }
}

/** While no bracket is fixed, brackets of its own on a wall may still be marked elsewhere. */
const mayMove = ({ it }: CheckedIn): boolean =>
  it.mount !== 'ceiling' &&
  it.bracketsOf === undefined &&
  !Object.values(it.found?.brackets ?? {}).some(({ fixed }) => fixed === true)

interface Bearing {
  readonly panel: string
  readonly ordered: Length
  readonly length: Length
  readonly bears: Length
  readonly least: Length
  readonly most: Length
}
/** How far above the hem the hooks of each panel bear, as ordered and as it came; undefined while a size is not known. */
function bearingsOf(subject: CheckedIn, reach: PinReach | undefined): readonly Bearing[] | undefined {
  const twins = twinsOf(subject)
  const all = twins.flatMap((twin): readonly Bearing[] => {
    const { is, was } = twin
    if (is.finishedLength === undefined || was.finishedLength === undefined || is.pin === undefined || was.pin === undefined)
      return []
    const ordered = (was.finishedLength - was.pin) as Length
    const bears = (is.finishedLength - is.pin) as Length
    return [{ panel: is.id, ordered, length: is.finishedLength, bears, ...rangeOf(subject, twin, reach) }]
  })
  return all.length > 0 && all.length === subject.it.panels.length ? all : undefined
}

/** Under a ceiling each panel hangs for itself; else all of a treatment from one line. */
function resetOf(subject: CheckedIn, all: readonly Bearing[]): PinsReset | undefined {
  if (subject.it.mount !== 'ceiling') return resetPins(all, mayMove(subject))
  const each = all.map((one) => resetPins([one], false))
  return each.includes(undefined) ? undefined : { pins: each.flatMap((one) => one?.pins ?? []), lift: 0 as Length }
}

/** What has to stand where the order names the rod's height, once the brackets are so much higher than ordered. */
function rodHeights({ it, ordered, at }: CheckedIn, lift: Length): WayOut['put'] {
  return (['top', 'aboveCasing', 'belowCeiling'] as const).flatMap((name) => {
    const was = ordered.rod?.[name]
    if (was === undefined) return []
    const value = (was + (name === 'belowCeiling' ? -lift : lift)) as Length
    return value === it.rod?.[name] ? [] : [{ at: below(at, 'rod', name), value: { length: value } }]
  })
}

/** The decisions about every finished length that is beyond its tolerance. */
const decidingLengths = (subject: CheckedIn, choice: Choice): WayOut['put'] =>
  twinsOf(subject).flatMap(({ is, was }) => {
    const [measured, ordered] = [is.finishedLength, was.finishedLength]
    if (measured === undefined || ordered === undefined) return []
    const none = { deeper: 0 as Length, shallower: 0 as Length }
    return compareFinishedLength(ordered, measured, lengthAllowed(subject.job, ordered), none).within
      ? []
      : [deciding(subject.at, `${is.id}.finishedLength`, choice, differenceOf(measured, ordered))]
  })

const wayOf = (lift: Length): string => (lift > 0 ? 'up' : lift < 0 ? 'down' : 'none')

/** Pins set again, so that the hems hang as ordered; with the brackets a little higher or lower where only that brings all pins into their range. */
export function pinsWay(subject: CheckedIn, { pinReach, headRoomLeft }: Leaves): readonly WayOut[] {
  const all = bearingsOf(subject, pinReach)
  const reset = all && resetOf(subject, all)
  if (!all || !reset) return []
  const raised = Math.max(...all.map(({ ordered }) => ordered)) + reset.lift - Math.max(...all.map(({ bears }) => bears))
  const isTooHigh = reset.lift > 0 && headRoomLeft !== undefined && headRoomLeft.value < raised
  const changed = reset.pins.filter(({ panel, pin }) => subject.it.panels.find(({ id }) => id === panel)?.pin !== pin)
  if (changed.length === 0 || isTooHigh) return []
  const put = [
    ...changed.flatMap(({ panel, pin }) => settingPin(subject, panel, pin)),
    ...decidingLengths(subject, 'reset pins'),
    ...(subject.it.mount === 'ceiling' ? [] : rodHeights(subject, reset.lift)),
  ]
  return [{ code: 'drapery/way-pins', values: pinValues(subject, reset, changed), put }]
}

/** One panel's pins back to where they were ordered. */
export const pinAsOrdered = (subject: CheckedIn, panel: string, pin: Length): WayOut => ({
  code: 'drapery/way-pins',
  values: pinValues(subject, { pins: [{ panel, pin }], lift: 0 as Length }, [{ panel, pin }]),
  put: settingPin(subject, panel, pin),
})

/** A pin's setting, and that it is meant where it is not the ordered one. */
function settingPin(subject: CheckedIn, panel: string, pin: Length): WayOut['put'] {
  const was = twinsOf(subject).find(({ is }) => is.id === panel)?.was.pin
  return [
    { at: below(panelAt(subject.at, panel), 'pin'), value: { length: pin } },
    ...(was === undefined || was === pin ? [] : [deciding(subject.at, `${panel}.pin`, 'reset pins', differenceOf(pin, was))]),
  ]
}

function pinValues({ it }: CheckedIn, { pins, lift }: PinsReset, changed: PinsReset['pins']): Values {
  const [first] = changed
  const length = (pin: number | undefined) => ({ length: (pin ?? 0) as Length })
  const all = changed.map(({ pin }) => pin)
  return {
    how: changed.length === 1 ? 'one' : pins.length === 2 ? 'pair' : 'many',
    panel: { code: `drapery/panel-${outerSide(it, first?.panel ?? '')}` },
    pin: length(first?.pin),
    left: length(pins[0]?.pin),
    right: length(pins.at(-1)?.pin),
    count: { count: changed.length },
    least: length(Math.min(...all)),
    most: length(Math.max(...all)),
    move: wayOf(lift),
    by: magnitude({ value: lift }),
  }
}

/** Brackets that follow the lengths as they came, which is what the plan does; the order's own heights of the rod follow, too. */
export function moveWay(subject: CheckedIn, { pinReach, headRoomLeft }: Leaves): readonly WayOut[] {
  const all = bearingsOf(subject, pinReach)
  const lift = all && followLengths(all, ruleOf(subject.job, 'pairOff').value)
  if (!lift || !mayMove(subject) || (lift > 0 && (headRoomLeft?.value ?? 0) < 0)) return []
  const values = { move: wayOf(lift), by: magnitude({ value: lift }) }
  const put = [...decidingLengths(subject, 'move the brackets'), ...rodHeights(subject, lift)]
  return [{ code: 'drapery/way-brackets', values, put }]
}

/** A decision that leaves everything as it is: go on with it, or call the workroom. */
export const decideWay = (at: Place, choice: 'go on' | 'call the workroom', key: string, difference: string): WayOut => ({
  code: choice === 'go on' ? 'drapery/way-go-on' : 'drapery/way-call',
  values: {},
  put: [deciding(at, key, choice, difference)],
})
