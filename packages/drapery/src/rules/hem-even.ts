import { below } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { type Check, checks, rule, type WayOut } from '@evenhem/plugin'
import { daysAfter } from '../arithmetic/index.ts'
import { floor, holes } from '../facts/index.ts'
import { type HemPanel, type TrueUp, trueUp } from '../facts/true-up.ts'
import { check, long, magnitude } from '../given.ts'
import { type HemAt, leastOpen, waysOut } from './true-up-ways.ts'

/** The hem as it was read against the order. Nothing is said before the draperies hang; then it is not known until it is read. */
export const hemEven = rule({
  id: 'hem-even',
  on: 'treatment',
  needs: { trueUp: { maybe: trueUp }, floor: { maybe: floor }, holes: { maybe: holes } },
  gives: { checks },
  codes: ['drapery/hem-even'],
}).run(({ it, at, job, window }, { trueUp: up, ...facts }) => {
  const isHung = it.found?.hungOn !== undefined || (up?.panels.length ?? 0) > 0
  if (!up || !isHung) return {}
  return { checks: [judged({ it, at, job, window, ...facts }, up)] }
})

const unknown = (at: string, how: 'unread' | 'again', count: number): Check =>
  check('drapery/hem-even', 'unknown', at, { how, count: { count } })

function judged(hem: HemAt, up: TrueUp): Check {
  const { at } = hem
  const again = up.panels.filter(({ state }) => state === 'again')
  if (up.unread.length > 0) return unknown(at, 'unread', up.unread.length)
  if (again.length > 0) return { ...unknown(at, 'again', again.length), ways: [readTheSame(at, again)] }
  const back = up.panels.filter(({ state }) => state === 'back')
  const worst = furthest(up.panels)
  if (worst && Math.abs(worst.hook.lift) > up.tolerance.value)
    return { ...check('drapery/hem-even', 'fail', at, valuesOf(up, worst), 'dress'), ways: waysOut(hem, up) }
  const [first] = back
  if (first) return check('drapery/hem-even', 'warn', at, { panel: { code: `drapery/panel-${first.outer}` } })
  return check('drapery/hem-even', 'pass', at, even(hem, up))
}

/** What was set and is read the same again: the readings are of the hem as it hangs now. */
const readTheSame = (at: string, panels: readonly HemPanel[]): WayOut => ({
  code: 'drapery/way-hem-read-again',
  values: {},
  put: panels.map(({ panel }) => ({ at: below(at, 'found', 'decided', `hem-${panel}`), value: 'read again' })),
})

/** The hook of all that are judged where the hem is furthest off. */
function furthest(panels: readonly HemPanel[]) {
  const all = panels.filter(({ state }) => state === 'read').flatMap((panel) => panel.hooks.map((hook) => ({ panel, hook })))
  return all.reduce<(typeof all)[number] | undefined>(
    (a, b) => (a && Math.abs(a.hook.lift) >= Math.abs(b.hook.lift) ? a : b),
    undefined,
  )
}
const valuesOf = (up: TrueUp, { panel, hook }: NonNullable<ReturnType<typeof furthest>>) => ({
  panel: { code: `drapery/panel-${panel.outer}` },
  hook: { count: hook.n },
  reads: long(hook.now),
  clearance: long(up.clearance),
  off: magnitude({ value: hook.lift }),
  way: hook.lift > 0 ? 'low' : 'high',
  near: long(up.tolerance),
})

function even(hem: HemAt, up: TrueUp) {
  const clears = up.panels.flatMap(({ hooks }) => hooks.map(({ now }) => now.value))
  const open = leastOpen(hem, up.panels, ({ pin }) => ({ pin: pin.value, rise: 0 as Length }))
  return {
    least: { length: Math.min(...clears) as Length },
    most: { length: Math.max(...clears) as Length },
    clearance: long(up.clearance),
    near: long(up.tolerance),
    opens: open === undefined ? 'no' : 'yes',
    open: long({ value: open ?? 0 }),
  }
}

/** After how many days the hem of cloth that settles is read again (two weeks: common practice, no source). */
const usualDays = 14
/** Cloth that settles grows longer while it hangs: a day on which somebody comes back to read its hem. */
export const lookAgain = rule({
  id: 'look-again',
  on: 'treatment',
  needs: {},
  gives: { checks },
  codes: ['drapery/look-again'],
}).run(({ it, at, job, fabric }) => {
  const { hungOn, lookAgain: date } = it.found ?? {}
  if (hungOn === undefined || !fabric?.settling) return {}
  const place = below(at, 'found', 'lookAgain')
  if (date !== undefined) return { checks: [check('drapery/look-again', 'pass', place, { date })] }
  const days = job.workroom?.rules?.lookAgainAfter ?? usualDays
  const then = daysAfter(hungOn, days)
  const values = { date: then, days: { count: days } }
  const way = { code: 'drapery/way-look-again', values, put: [{ at: place, value: then }] }
  return { checks: [{ ...check('drapery/look-again', 'warn', place, values), ways: [way] }] }
})
