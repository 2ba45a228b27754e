import { below } from '@evenhem/job'
import type { Known, Length, LengthReckoning } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import {
  type Allowance,
  explained,
  heights,
  heightsApart,
  highestFloor,
  meantFromCasing,
  meantFromFloor,
  overFloor,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { bearingDrop, coverage, floor, hangLine, makeUp, topOfRod } from '../facts.ts'
import { check, filled, long, magnitude, member, openingOf, perhaps, windowOf } from '../given.ts'

/** The floor's points from left to right. */
export const floorRule = rule({ id: 'floor', on: 'window', needs: {}, gives: { floor } }).run(({ it, at }) => ({
  floor: {
    points: (it.floor ?? [])
      .map((point) => ({
        x: { value: point.x, from: below(at, 'floor', point.id, 'x') },
        y: { value: point.y, from: below(at, 'floor', point.id, 'y') },
      }))
      .sort((a, b) => a.x.value - b.x.value),
  },
}))

/** Hem, top of the drapery and hang line, from the highest floor under the drapery. */
export const hangLineRule = rule({
  id: 'hang-line',
  on: 'treatment',
  needs: { floor, coverage, makeUp },
  gives: { hangLine, reckonings },
}).run(({ it, at }, facts) =>
  filled({ clearance: member(at, ['clearance'], it.clearance) }, ({ clearance }) => {
    const [leftEnd, rightEnd, highest] = highestFloor(
      at,
      facts.floor.points,
      known(facts.coverage.left),
      known(facts.coverage.right),
    )
    const { working, ...rest } = heights(at, highest, clearance, facts.makeUp.panels)
    const clears = rest.panels.map(({ panel, hem }) => overFloor(`${at}#clears-${panel}`, 'drapery/clears-panel', hem, highest))
    const panels = rest.panels.map((panel, i) => ({ ...panel, clears: clears[i] as LengthReckoning }))
    return {
      hangLine: { highestFloor: highest, ...rest, panels },
      reckonings: [leftEnd, rightEnd, highest, ...working, ...clears],
    }
  }),
)

const known = (reckoning: LengthReckoning): Known<Length> => ({ value: reckoning.value, from: reckoning.name })

/** The rod's height both ways: from the panels, and as the order means it, by each height that the order gives. */
export const rodHeight = rule({
  id: 'rod-height',
  on: 'treatment',
  needs: { hangLine, topOfRod, bearingDrop, makeUp },
  gives: { checks, reckonings },
  codes: ['drapery/rod-height'],
}).run(({ it, at, window, job }, facts) => {
  const { opening, openingAt } = openingOf(window, windowOf(at))
  const fromFloor = perhaps(member(at, ['rod', 'top'], it.rod?.top))
  const above = perhaps(member(at, ['rod', 'aboveCasing'], it.rod?.aboveCasing))
  const casingTop = member(openingAt, ['casing', 'top'], opening.casing?.top)
  if (!fromFloor && !above) return { checks: [check('drapery/rod-height', 'unknown', at, { worked: long(facts.topOfRod) })] }
  if (above && casingTop.value === undefined) return { ask: [casingTop.from] }
  const { highestFloor: highest } = facts.hangLine
  const meant = [
    ...(fromFloor ? [meantFromFloor(at, highest, fromFloor)] : []),
    ...(above ? [meantFromCasing(at, casingTop as Known<Length>, above)] : []),
  ]
  const near = ruleOf(job, 'heightsAgree')
  const setter = facts.makeUp.panels.find((panel) => facts.hangLine.sets === panel.panel)
  const allowances: Readonly<Record<string, Allowance>> = {
    'drapery/pin': { value: setter?.pin.value ?? (0 as Length), put: 'on' },
    'drapery/eye-drop': { value: facts.bearingDrop.value, put: 'off' },
    'drapery/clearance': { value: it.clearance ?? (0 as Length), put: 'off' },
  }
  const each = meant.map((one) => compared(at, facts.topOfRod, one, highest, near, allowances))
  return { checks: each.map((one) => one.check), reckonings: [...meant, ...each.flatMap((one) => one.working)] }
})

/** One of the order's heights against the panels'; people are told both from the highest floor, as the order says them. */
function compared(
  at: string,
  worked: LengthReckoning,
  meant: LengthReckoning,
  highest: LengthReckoning,
  near: Known<Length>,
  allowances: Readonly<Record<string, Allowance>>,
) {
  const apart = heightsApart(`${meant.name}-apart`, worked, meant)
  const floor = overFloor(`${meant.name}-over-floor`, 'drapery/meant-over-floor', meant, highest)
  const top = overFloor(`${meant.name}-rod-over-floor`, 'drapery/rod-over-floor', worked, highest)
  const causes = explained(apart.value, allowances, (near.value / 2) as Length)
  const [cause] = causes
  const code = causes.length > 1 ? 'drapery/several-causes' : cause ? `${cause.what}.${cause.how}` : 'drapery/no-cause'
  const values = {
    worked: long(top),
    meant: long(floor),
    apart: magnitude(apart),
    near: long(near),
    way: apart.value > 0 ? 'long' : 'short',
    cause: { code },
  }
  const verdict = Math.abs(apart.value) <= near.value ? ('pass' as const) : ('fail' as const)
  return { check: check('drapery/rod-height', verdict, at, values, 'mark'), working: [apart, floor, top] }
}
