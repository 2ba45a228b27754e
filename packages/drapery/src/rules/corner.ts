import type { Known, Length, LengthReckoning } from '@evenhem/length'
import { minus, number, plus, sum, times } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { coverage, plates, projection, rod } from '../facts/index.ts'
import { check, long, projectionAt } from '../given.ts'

/** Whether the drapery stays on one wall or turns a corner with it; unknown until the angles are. */
export const aroundCorner = rule({
  id: 'around-corner',
  on: 'treatment',
  needs: { coverage: { maybe: coverage }, projection: { maybe: projection } },
  gives: { checks },
  codes: ['drapery/around-corner'],
}).run(({ it, at, window }, facts) => {
  if (window.walls.length === 1) return {}
  const { coverage: covered, projection: out } = facts
  if (!covered || !out) return { checks: [check('drapery/around-corner', 'unknown', at, {})] }
  const { corners = [] } = covered
  const isUneven = projectionAt(it, at, 'left', out).value !== projectionAt(it, at, 'right', out).value
  const values = {
    count: { count: corners.length },
    rod: long(covered.width),
    angles: corners.map(({ degrees }) => `${degrees}°`).join(', ') || 'none',
  }
  // A rod that comes nearer to the wall along it turns somewhere else than on the line that halves the corner.
  return { checks: [check('drapery/around-corner', corners.length > 0 && isUneven ? 'unknown' : 'pass', at, values)] }
})

/** A bracket at an inside corner must stand where its rod has not turned yet: beyond that is the rod of the other wall. */
export const cornerRoom = rule({
  id: 'corner-room',
  on: 'treatment',
  needs: { coverage, rod: { maybe: rod }, plates: { maybe: plates } },
  gives: { checks, reckonings },
  codes: ['drapery/corner-room'],
}).run(({ at }, facts) => {
  const corners = (facts.coverage.corners ?? []).filter(({ back }) => back.value > 0)
  const held = facts.rod?.held ?? []
  if (corners.length === 0 || held.length === 0) return {}
  const each = corners.flatMap(({ wall, x, back }) =>
    held.map((place, i) => {
      const plate = facts.plates?.find((one) => one.x.value === place.value)
      return { place, wall, ...roomBeside(`${at}#corner-room-${wall}-${i + 1}`, place, x, back, plate?.width) }
    }),
  )
  const worst = each.reduce((a, b) => (b.room.value < a.room.value ? b : a))
  const values = { room: { length: Math.abs(worst.room.value) as Length }, count: { count: corners.length } }
  return {
    checks: [check('drapery/corner-room', worst.room.value < 0 ? 'fail' : 'pass', at, values, 'mark')],
    reckonings: each.flatMap(({ working }) => working),
  }
})

/** From where the rod turns to the nearer edge of a bracket on this side of the corner. */
function roomBeside(
  name: string,
  place: LengthReckoning,
  corner: Known<Length>,
  back: LengthReckoning,
  width: Known<Length> | undefined,
): { readonly room: LengthReckoning; readonly working: readonly LengthReckoning[] } {
  const half =
    width && times(`${name}-half`, 'drapery/half-plate', plus('drapery/plate-width', width), plus('drapery/half', number(0.5)))
  const [far, near] = place.value > corner.value ? [place, corner] : [corner, place]
  const room = sum(
    name,
    'drapery/corner-room-left',
    plus('drapery/along-the-wall', far),
    minus('drapery/along-the-wall', near),
    minus('drapery/set-back', back),
    ...(half ? [minus('drapery/half-plate', half)] : []),
  )
  return { room, working: [...(half ? [half] : []), room] }
}
