import { below, type Place, type Treatment } from '@evenhem/job'
import {
  kilogramForce,
  type Length,
  type LengthReckoning,
  metre,
  millimetre,
  type Reckoning,
  twelveDigits,
} from '@evenhem/length'
import { type Beam, type Drawn, type Hanging, type Hung, hung, type Loads } from '@evenhem/mechanics'
import { spliceAt } from '../arithmetic/index.ts'
import type { Coverage, HookMap, HungLine, Reach, Rod, RodBody, RodSag } from '../facts/index.ts'
import { supportsOf } from '../hardware/index.ts'

export const metres = (length: number): number => length / metre
export const nanometres = (x: number): Length => Math.round(x * metre) as Length

/** What a rod is under. */
export interface Under {
  readonly rod: Rod
  readonly coverage: Coverage
  readonly hookMap: HookMap
  readonly panelLoads: readonly { readonly panel: string; readonly weight: Reckoning }[]
  readonly rodBody: RodBody & { readonly weight: Reckoning }
  readonly reach: Reach
  readonly hungLine?: HungLine | undefined
}
/** A bracket or support: `left`, `right` or the id of a support. */
export interface HeldPlace {
  readonly id: string
  readonly part: 'bracket' | 'support'
  readonly x: LengthReckoning
}
/** The places where a rod is held, from left to right. A support that is named as an end bracket gets a name of its own. */
export const heldAt = (it: Treatment, at: Place, { held }: Rod): readonly HeldPlace[] => {
  const own = supportsOf(it, at).map(({ id }) => (id === 'left' || id === 'right' ? `support-${id}` : id))
  const ids = ['left', ...own, 'right']
  return held.map((x, i) => ({ id: ids[i] ?? 'right', part: i === 0 || i === held.length - 1 ? 'bracket' : 'support', x }))
}
/** Nearer than this two supports are one: 1 cm. */
const apart = 10 * millimetre
/** Whether each place is clear of the one before and all are on the rod. */
export const areInOrder = (held: readonly HeldPlace[], { left, right }: Rod): boolean =>
  held.every(({ x }, i) => {
    const before = held[i - 1]
    return x.value >= left.value && x.value <= right.value && (!before || x.value - before.x.value >= apart)
  })
/** A bracket or support by its name, and where it stands. */
interface Standing {
  readonly id: string
  readonly x: { readonly value: number }
}
/** The rod as a beam: with finials as loads at their middles, splices that turn, and brackets that stand out of line. Without a known stiffness it is the same all along, which is enough for what brackets carry. */
export function beamOf(
  it: Treatment,
  at: Place,
  { rod, rodBody, reach, hungLine }: Under,
  held: readonly Standing[] = heldAt(it, at, rod),
): Beam {
  const middle = (end: number, tip: number) => metres((end + tip) / 2)
  const [from, to] = [middle(rod.left.value, reach.left.value), middle(rod.right.value, reach.right.value)]
  const isKnown = rodBody.stiffness.length > 0
  const moved = (id: string) => metres(hungLine?.points.find(({ bracket }) => bracket === id)?.moved?.value ?? 0)
  const line = straightThrough(held.map(({ id, x }) => [metres(x.value), moved(id)] as const))
  const splices = rodBody.turns
    ? (it.rod?.splices ?? []).map(({ id, fromLeft }) => {
        const place = below(at, 'rod', 'splices', id, 'fromLeft')
        return metres(spliceAt(`${at}#splice-${id}`, rod.left, { value: fromLeft, from: place }).value)
      })
    : []
  return {
    from,
    to,
    stiffness: isKnown ? rodBody.stiffness.map((each) => ({ from: metres(each.from), ei: each.ei })) : [{ from, ei: 1 }],
    supports: held.map(({ id, x }) => ({ at: metres(x.value), down: isKnown ? line(metres(x.value)) - moved(id) : 0 })),
    splices: [...new Set(splices)].sort((a, b) => a - b),
  }
}
/** The straight line through the outer two of points. */
export function straightThrough(points: readonly (readonly [number, number])[]): (x: number) => number {
  const [[a, from] = [0, 0], [b, to] = [1, 0]] = [points[0], points.at(-1)]
  return (x) => (b === a ? from : from + ((to - from) * (x - a)) / (b - a))
}

/** What the rod itself and its finials weigh, along it. */
const ownLoads = ({ rod, rodBody: { weight, finial } }: Under, { from, to }: Beam): Loads => ({
  spread: [
    {
      from: metres(rod.left.value),
      to: metres(rod.right.value),
      each: (kilogramForce * weight.value) / metres(rod.right.value - rod.left.value),
    },
  ],
  points: finial ? [from, to].map((at) => ({ at, force: kilogramForce * finial.value })) : [],
})
/** Each panel on the rod, drawn and stacked; what would hang beyond the rod hangs at its end. */
const hanging = (it: Treatment, { coverage, hookMap, panelLoads }: Under, { from, to }: Beam): readonly Hanging[] =>
  coverage.shares.flatMap(({ panel, outer, end, leading, width }) => {
    const load = panelLoads.find((each) => each.panel === panel)
    if (!load) return []
    const onRod = (x: number) => Math.min(Math.max(metres(x), from), to)
    const stack = hookMap.stacks?.find((each) => each.panel === panel)?.width.value ?? width.value / 3
    const stacked = end.value + (outer === 'left' ? stack : -stack)
    const drawn = onRod(leading.value)
    return [
      {
        outer: onRod(end.value),
        drawn,
        stacked: it.draw === 'stationary' ? drawn : onRod(stacked),
        weight: kilogramForce * load.weight.value,
      },
    ]
  })
/** The rod under its load, however its panels are drawn; undefined when it would fold up. */
export const hungRod = (it: Treatment, under: Under, beam: Beam, steps?: number): Hung | undefined =>
  hung(beam, ownLoads(under, beam), hanging(it, under, beam), steps)

/** What weighs as much as a load, kg: so loads are told to people. */
export const kilogramsOfLoad = (newtons: number): number => twelveDigits(newtons / kilogramForce)
/** A code that says how panels are drawn. */
export const drawnAs = (drawn: Drawn): string =>
  drawn.every((each) => each === 1)
    ? 'drapery/when-drawn'
    : drawn.every((each) => each === 0)
      ? 'drapery/when-stacked'
      : 'drapery/when-between'

/** The place that hangs lowest for what is allowed there; of places that are alike the first from the left. */
export const worstSag = (sags: readonly RodSag[]): RodSag | undefined =>
  [...sags].sort((a, b) => b.sag.value / b.most.value - a.sag.value / a.most.value)[0]
