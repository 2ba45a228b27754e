import { below } from '@evenhem/job'
import { type Known, type Length, type LengthReckoning, number } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { explained, heights, heightsApart, highestFloor, meantFromCasing, meantFromFloor } from '../arithmetic/index.ts'
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
    return { hangLine: { highestFloor: highest, ...rest }, reckonings: [leftEnd, rightEnd, highest, ...working] }
  }),
)

const known = (reckoning: LengthReckoning): Known<Length> => ({ value: reckoning.value, from: reckoning.name })

/** The rod's height both ways: from the panels, and as the order means it. */
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
  if (!fromFloor && casingTop.value === undefined) return { ask: [casingTop.from] }
  const meant = fromFloor
    ? meantFromFloor(at, facts.hangLine.highestFloor, fromFloor)
    : meantFromCasing(at, casingTop as Known<Length>, above as Known<Length>)
  const apart = heightsApart(at, facts.topOfRod, meant)
  const near = ruleOf(job, 'heightsAgree')
  const pin = facts.makeUp.panels[0]?.pin ?? (number(0) as Known<Length>)
  const cause = explained(
    apart.value,
    { 'drapery/pin': pin.value, 'drapery/eye-drop': facts.bearingDrop.value, 'drapery/clearance': it.clearance ?? (0 as Length) },
    (near.value / 2) as Length,
  )
  const verdict = Math.abs(apart.value) <= near.value ? 'pass' : 'fail'
  return {
    checks: [
      check(
        'drapery/rod-height',
        verdict,
        at,
        {
          worked: long(facts.topOfRod),
          meant: long(meant),
          apart: magnitude(apart),
          near: long(near),
          way: apart.value > 0 ? 'long' : 'short',
          cause: cause ? { code: `${cause.what}.${cause.how}` } : { code: 'drapery/no-cause' },
        },
        'mark',
      ),
    ],
    reckonings: [meant, apart],
  }
})
