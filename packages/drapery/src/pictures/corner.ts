import type { Mark } from '@evenhem/drawing'
import { inch } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import { mm } from './shapes.ts'

/** How high a corner's line and its angle stand when the room's ceiling is not known; no number is read from it. */
const unsaid = 96 * inch

/** The corners of a window's walls: a dashed line where the walls are unfolded, and the bends by which what is seen from above is folded. */
export const cornersPicture = rule({ id: 'corners-picture', on: 'window', needs: {}, gives: { layers } }).run(({ it, room }) => {
  const corners = it.walls.slice(1).flatMap(({ left }, i) => {
    const degrees = it.walls[i]?.corner
    return left === undefined ? [] : [{ x: mm(left), degrees }]
  })
  if (corners.length === 0) return {}
  const top = mm(room.ceiling ?? unsaid)
  const unfolded = corners.flatMap(({ x, degrees }): readonly Mark[] => [
    { kind: 'line', role: 'hidden', from: [x, 0], to: [x, top] },
    {
      kind: 'caption',
      role: 'dimension',
      at: [x, mm(8 * inch)],
      anchor: 'middle',
      ...(degrees === undefined ? { code: 'drapery/angle-unknown' } : { text: `${degrees}°` }),
    },
  ])
  const bends = corners.flatMap(({ x, degrees }) => (degrees === undefined ? [] : [{ x, degrees }]))
  return {
    layers: [
      { view: 'elevation', depth: 52, marks: unfolded },
      { view: 'marks', depth: 52, marks: unfolded },
      ...(bends.length > 0 ? [{ view: 'plan' as const, depth: 0, marks: [], bends }] : []),
    ],
  }
})
