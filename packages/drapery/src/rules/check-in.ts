import { below, type JobHead, type Panel } from '@evenhem/job'
import { inch, type Length } from '@evenhem/length'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import {
  type Comparison,
  compareFinishedLength,
  compareFirstToLast,
  comparePin,
  compareReturn,
  hemsApart,
  returnLess,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { type HangLine, hangLine, heldAtWall, makeUp, projection } from '../facts.ts'
import { check, long, magnitude, outerSide, panelAt, projectionAt } from '../given.ts'

/** The hems of the two panels as they would hang: unlike lengths and unlike pins show here. Pins can take up a little, the workroom the rest. */
export const hemsAlike = rule({
  id: 'hems-alike',
  on: 'treatment',
  needs: { hangLine, makeUp },
  gives: { checks, reckonings },
  codes: ['drapery/hems-alike'],
}).run(({ at, job }, facts) => {
  const [left, right] = mostApart(facts.hangLine.panels)
  if (!left || !right) return {}
  const apart = hemsApart(at, left.clears, right.clears)
  const [near, pins] = [ruleOf(job, 'pairOff'), ruleOf(job, 'pinRange')]
  const off = Math.abs(apart.value)
  const verdict = off <= near.value ? 'pass' : off <= pins.value ? 'warn' : 'fail'
  const values = {
    left: long(left.clears),
    right: long(right.clears),
    apart: magnitude(apart),
    near: long(near),
    pins: long(pins),
  }
  return { checks: [check('drapery/hems-alike', verdict, at, values, 'mark')], reckonings: [apart] }
})

/** The two of a pair; of more panels the lowest and the highest. */
function mostApart(panels: HangLine['panels']): HangLine['panels'] {
  if (panels.length <= 2) return panels
  const sorted = [...panels].sort((a, b) => a.clears.value - b.clears.value)
  return [sorted[0], sorted.at(-1)].filter((panel) => panel !== undefined)
}

type Size = 'finishedLength' | 'firstToLast' | 'return' | 'pin'
const sizes: readonly Size[] = ['finishedLength', 'firstToLast', 'return', 'pin']
const sizeCodes: Readonly<Record<Size, string>> = {
  finishedLength: 'drapery/finished-length',
  firstToLast: 'drapery/first-to-last',
  return: 'drapery/return-width',
  pin: 'drapery/pin',
}

/** How far a finished length may be off: the workroom's or the trade's 1/4 in, over 108 in twice as much (common practice, no source). */
export const lengthAllowed = (job: JobHead, ordered: Length): Length =>
  (ruleOf(job, 'lengthOff').value * (ordered > 108 * inch ? 2 : 1)) as Length

function compared(size: Size, ordered: Length, measured: Length, job: JobHead): Comparison {
  const halfRange = (ruleOf(job, 'pinRange').value / 2) as Length
  switch (size) {
    case 'finishedLength':
      return compareFinishedLength(ordered, measured, lengthAllowed(job, ordered), { deeper: halfRange, shallower: halfRange })
    case 'firstToLast':
      return compareFirstToLast(ordered, measured, ruleOf(job, 'widthOff').value, (72 * inch) as Length)
    case 'return':
      return compareReturn(ordered, measured, ruleOf(job, 'returnUnder').value, ruleOf(job, 'returnWider').value)
    case 'pin':
      return comparePin(ordered, measured, ruleOf(job, 'pinOff').value)
  }
}

function checkOf(at: string, outer: 'left' | 'right', size: Size, ordered: Panel, found: Panel, job: JobHead): readonly Check[] {
  const [was, is] = [ordered[size], found[size]]
  if (was === undefined || is === undefined || was === is) return []
  const { within, leads, difference } = compared(size, was, is, job)
  const values = {
    panel: { code: `drapery/panel-${outer}` },
    size: { code: sizeCodes[size] },
    ordered: { length: was },
    measured: { length: is },
    off: magnitude({ value: difference }),
    way: difference > 0 ? 'over' : 'under',
  }
  const verdict = within ? 'pass' : leads === 'reset pins' ? 'warn' : 'fail'
  return [check('drapery/as-ordered', verdict, below(at, size), values, 'mark')]
}

/** What the tape said of each panel against the order, and what a difference leads to. */
export const asOrdered = rule({
  id: 'as-ordered',
  on: 'treatment',
  needs: {},
  gives: { checks },
  codes: ['drapery/as-ordered'],
}).run(({ it, ordered, at, job }) => ({
  checks: it.panels.flatMap((panel) => {
    const was = ordered.panels.find((each) => each.id === panel.id)
    return was ? sizes.flatMap((size) => checkOf(panelAt(at, panel.id), outerSide(it, panel.id), size, was, panel, job)) : []
  }),
}))

/** A return that was made is held at the wall by something that the order names. */
export const returnHeld = rule({
  id: 'return-held',
  on: 'treatment',
  needs: { makeUp, held: heldAtWall },
  gives: { checks },
  codes: ['drapery/return-held'],
}).run(({ at }, facts) => {
  const returned = facts.makeUp.panels.filter((panel) => panel.return.value > 0)
  const loose = returned.find((panel) => !facts.held.some((one) => one.side === panel.outer))
  const shown = loose ?? returned[0]
  if (!shown) return {}
  const values = { side: { code: `drapery/${shown.outer}` }, return: long(shown.return), count: { count: returned.length } }
  return { checks: [check('drapery/return-held', loose ? 'warn' : 'pass', loose ? loose.return.from : at, values)] }
})

/** Each return that is held at the wall against its own projection: too narrow and it pulls the last ring or carrier off the corner, too wide and it bulges. */
export const returnFits = rule({
  id: 'return-fits',
  on: 'treatment',
  needs: { makeUp, projection: { maybe: projection }, heldAtWall: { maybe: heldAtWall } },
  gives: { checks, reckonings },
  codes: ['drapery/return-fits'],
}).run(({ it, at, job }, facts) => {
  const out = facts.projection
  if (!out) return {}
  const [short, over] = [ruleOf(job, 'returnShort'), ruleOf(job, 'returnOver')]
  const isHeld = (side: string): boolean => (facts.heldAtWall ?? []).some((held) => held.side === side && reaches(held.by))
  const each = facts.makeUp.panels
    .filter((panel) => isHeld(panel.outer))
    .map((panel) => {
      const own = projectionAt(it, at, panel.outer, out)
      const less = returnLess(`${at}/panels/${panel.panel}#return-less`, panel.return, own)
      const verdict = less.value < -short.value ? 'fail' : less.value > over.value ? 'warn' : 'pass'
      const values = {
        side: { code: `drapery/${panel.outer}` },
        return: long(panel.return),
        projection: long(own),
        less: magnitude(less),
        short: long(short),
        over: long(over),
      }
      return { less, check: check('drapery/return-fits', verdict, panel.return.from, values, 'drill') }
    })
  return { checks: each.map((one) => one.check), reckonings: each.map((one) => one.less) }
})
/** A return that is meant to reach the wall behind it. */
const reaches = (by: string): boolean => by !== 'side wall' && by !== 'none'
