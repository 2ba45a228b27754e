import { formula, type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { type FloorPoint, floorAt, straight } from './floor.ts'

/** Where a hook hangs when its panel is drawn, between its leading edge and its outer end. */
export const hookDrawn = (name: string, drawn: Length, leading: LengthReckoning, end: LengthReckoning): LengthReckoning =>
  formula(
    name,
    'drapery/hook-along',
    drawn,
    'drapery/hooks-spread',
    plus('drapery/leading-edge', leading),
    plus('drapery/outer-end', end),
  )

/** How far the hem clears below a hook: straight between the hooks that it was read below, level beyond the outer ones, as the floor is taken. */
export function hemAt(name: string, readings: readonly FloorPoint[], x: Known<Length>): LengthReckoning {
  const read = floorAt(name, readings, x)
  const named: Readonly<Record<string, string>> = {
    'drapery/floor-point': 'drapery/hem-read',
    'drapery/floor-point-x': 'drapery/hook-along',
  }
  return { ...read, what: 'drapery/hem-now', terms: read.terms.map((term) => ({ ...term, what: named[term.what] ?? term.what })) }
}

/** How far the hem has to rise below a hook to hang as ordered; under an apron a hem that ends too low clears it by more. */
export const liftOf = (hemAt: 'floor' | 'sill' | 'apron', now: Length, ordered: Length): Length =>
  (hemAt === 'apron' ? now - ordered : ordered - now) as Length

/** What the hem clears once a pin is set again: a deeper pin lifts the hem by as much as it is deeper. */
export const clearsAfter = (
  name: string,
  hemAt: 'floor' | 'sill' | 'apron',
  now: LengthReckoning,
  pin: Known<Length>,
  set: LengthReckoning,
): LengthReckoning => {
  const [up, down] = hemAt === 'apron' ? [minus, plus] : [plus, minus]
  return sum(name, 'drapery/hem-after', plus('drapery/hem-now', now), up('drapery/pin-set', set), down('drapery/pin-now', pin))
}

/** The floor below a place as `floorAt` has it, as a bare number for drawings and comparisons: not rounded, and no reckoning is made of it. */
export function floorUnder(points: readonly FloorPoint[], x: number): number {
  const a = points.findLast((point) => point.x.value <= x)
  const b = points.find((point) => point.x.value > x)
  if (!a || !b) return (a ?? b)?.y.value ?? 0
  return straight(x, a.x.value, a.y.value, b.x.value, b.y.value)
}
