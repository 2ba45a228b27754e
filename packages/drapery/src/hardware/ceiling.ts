import { below, type Place, type Treatment, type Window } from '@evenhem/job'
import { type Known, known, type Length, type LengthReckoning, plus, sum } from '@evenhem/length'
import { ceilingAt, floorAt, fromCasing, fromFloor } from '../arithmetic/index.ts'
import type { Floor, Frame, Hole } from '../facts/index.ts'
import { projectionAt, windowOf } from '../given.ts'
import { type Brackets, fromCorner } from './brackets.ts'

/** A hole of a ceiling bracket; `out`: from the line of the hooks toward the room. */
export interface CeilingHole {
  readonly id: string
  readonly out: Length
}

/** Every hole in the ceiling: along the wall, out from it, and its height above its own floor as a proof. `listAt`: the place of the list of holes. */
export function ceilingHoles(
  it: Treatment,
  at: Place,
  list: readonly CeilingHole[],
  listAt: Place,
  facts: {
    readonly stand: Brackets
    readonly ceiling: Floor
    readonly floor: Floor
    readonly frame: Frame
    readonly projection: Known<Length>
  },
  window: Window,
  what: (hole: string) => string,
): { readonly holes: readonly Hole[]; readonly reckonings: readonly LengthReckoning[] } {
  const { left, right, supports } = facts.stand
  const columns = [
    { key: 'left', side: 'left' as const, x: left },
    ...supports.map(({ id, x }) => ({ key: `support-${id}`, side: 'middle' as const, support: id, x })),
    { key: 'right', side: 'right' as const, x: right },
  ]
  const all = columns.map(({ key, side, x, ...rest }) => {
    const over = ceilingAt(`${at}#ceiling-bracket-${key}`, facts.ceiling.points, known(x))
    const ground = floorAt(`${at}#floor-bracket-${key}`, facts.floor.points, known(x))
    const outward = fromCasing(`${at}#bracket-from-casing-${key}`, side, x, facts.frame)
    const corner = fromCorner(`${at}#bracket-from-corner-${key}`, side, x, facts.frame, window, windowOf(at))
    const height = fromFloor(`${at}#from-floor-${key}`, over, ground)
    const each = list.map((hole): Hole => {
      const own = projectionAt(it, at, side === 'right' ? 'right' : 'left', facts.projection)
      const out = { value: hole.out, from: below(listAt, hole.id, 'out') }
      return {
        id: `${'support' in rest ? 'support' : 'bracket'}-${key.replace('support-', '')}-${hole.id}`,
        on: 'support' in rest ? 'support' : 'bracket',
        what: what(hole.id),
        side,
        ...rest,
        x,
        height: over,
        fromFloor: height,
        fromCasing: outward,
        ...(corner ? { fromCorner: corner } : {}),
        fromWall: sum(
          `${at}#from-wall-${key}-${hole.id}`,
          'drapery/from-wall',
          plus('drapery/projection', own),
          plus('drapery/hole-out', out),
        ),
      }
    })
    return {
      each,
      working: [over, ground, outward, ...(corner ? [corner] : []), height, ...each.flatMap(({ fromWall }) => fromWall ?? [])],
    }
  })
  return { holes: all.flatMap((one) => one.each), reckonings: all.flatMap((one) => one.working) }
}
