import type { Length } from '@evenhem/length'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import { comparePair, hemsApart, returnLess } from '../arithmetic/index.ts'
import { type Choice, decided, differenceOf } from '../decisions.ts'
import { ruleOf } from '../defaults.ts'
import { type HangLine, hangLine, headRoomLeft, heldAtWall, makeUp, pinReach, projection, swapped } from '../facts/index.ts'
import { check, long, magnitude, projectionAt } from '../given.ts'
import { decideWay, pinsWay } from './ways.ts'

/** The hems of the two panels as they would hang: unlike lengths and unlike pins show here. Pins can take up a little, the workroom the rest. */
export const hemsAlike = rule({
  id: 'hems-alike',
  on: 'treatment',
  needs: {
    hangLine,
    makeUp,
    swapped: { maybe: swapped },
    pinReach: { maybe: pinReach },
    headRoomLeft: { maybe: headRoomLeft },
  },
  gives: { checks, reckonings },
  codes: ['drapery/hems-alike'],
}).run((subject, facts) => {
  const { it, at, job } = subject
  const [left, right] = mostApart(facts.hangLine.panels)
  if (!left || !right || facts.swapped) return {}
  const apart = hemsApart(at, left.clears, right.clears)
  const [near, pins] = [ruleOf(job, 'pairOff'), ruleOf(job, 'pinRange')]
  const off = Math.abs(apart.value)
  const verdict = off <= near.value ? 'pass' : off <= pins.value ? 'warn' : 'fail'
  const lengthOf = (panel: string) =>
    facts.makeUp.panels.find((one) => one.panel === panel)?.finishedLength.value ?? (0 as Length)
  const lengths = comparePair(lengthOf(left.panel), lengthOf(right.panel), near.value)
  const values = {
    left: long(left.clears),
    right: long(right.clears),
    apart: magnitude(apart),
    near: long(near),
    pins: long(pins),
    cause: lengths.within ? 'pins' : 'lengths',
    lengths: magnitude({ value: lengths.difference }),
  }
  const found = check('drapery/hems-alike', verdict, at, values, 'mark')
  if (verdict === 'pass') return { checks: [found], reckonings: [apart] }
  const difference = differenceOf(left.clears.value, right.clears.value)
  const choice = decided(it, 'hems', difference)
  const ways = [
    ...pinsWay(subject, facts),
    ...(verdict === 'warn' ? [decideWay(subject.at, 'go on', 'hems', difference)] : []),
    ...(choice ? [] : [decideWay(subject.at, 'call the workroom', 'hems', difference)]),
  ]
  return { checks: [settled({ ...found, about: `hems ${difference}`, ways }, choice)], reckonings: [apart] }
})

/** Once it was decided: hems that pins could bring together may stay as they are, and the workroom is called about those that stop. */
function settled(found: Check, choice: Choice | undefined): Check {
  if (choice === 'call the workroom') return { ...found, verdict: 'fail', says: 'drapery/hems-alike.called', stops: 'mark' }
  if (choice !== 'go on' || found.verdict !== 'warn') return found
  const { ways: _, ...rest } = found
  return { ...rest, verdict: 'pass', says: 'drapery/hems-alike.go-on' }
}

/** The two of a pair; of more panels the lowest and the highest. */
function mostApart(panels: HangLine['panels']): HangLine['panels'] {
  if (panels.length <= 2) return panels
  const sorted = [...panels].sort((a, b) => a.clears.value - b.clears.value)
  return [sorted[0], sorted.at(-1)].filter((panel) => panel !== undefined)
}

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
