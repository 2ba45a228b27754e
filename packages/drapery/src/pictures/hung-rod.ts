import type { Mark, Point } from '@evenhem/drawing'
import type { Length } from '@evenhem/length'
import type { Coverage, HookMap, HungLine, Reach, Rod, RodLoads, RodSag } from '../facts/index.ts'
import { worstSag } from '../rules/rod-beam.ts'
import { mm, outline, through } from './shapes.ts'

/** Parts of the longest rod of a window: how thick a rod is drawn, and how high and deep what belongs to it. */
export const shares = {
  ...{ rod: 0.012, saddle: 0.016, bracket: 0.036, finial: 0.017, least: 600 },
  ...{ arrow: 0.07, from: 0.012, cloth: 0.075, words: 0.36, note: 0.055, above: 0.2, margin: 0.115, sign: 0.03, tall: 0.72 },
} as const

/** Where a rod is drawn: the height of its underside where it is straight, what the shares are of, and how steep it hangs. */
export interface Sheet {
  readonly y: number
  readonly wide: number
  readonly steep: number
}
/** What is drawn of a rod. */
export interface HungRod {
  readonly loads: RodLoads
  readonly rod: Rod
  readonly reach: Reach
  readonly hungLine?: HungLine | undefined
}

/** How far down the rod is at a place along the wall, in mm: between the places that are known a straight line. */
function downOn(line: RodLoads['line'], x: number): number {
  const after = line.findIndex((point) => mm(point.x) >= x)
  const [a, b] = [line[Math.max(0, after - 1)], line[after < 0 ? line.length - 1 : after]]
  if (!a || !b) return 0
  const way = mm(b.x - a.x)
  const share = way === 0 ? 0 : Math.min(1, (x - mm(a.x)) / way)
  return mm(a.down) + share * mm(b.down - a.down)
}
/** The points of a rod's underside: where it is held, where it is known to be, and where it hangs the lowest. */
export interface Bent {
  readonly held: readonly Point[]
  readonly along: readonly Point[]
  /** From the straight line between its brackets down to the rod. */
  readonly sag?: { readonly of: RodSag; readonly from: Point; readonly to: Point } | undefined
}
export function bentOf({ loads, rod, hungLine }: HungRod, { y, steep }: Sheet): Bent {
  const isMoved = hungLine?.points.some(({ moved }) => (moved?.value ?? 0) !== 0)
  const at = (x: number): Point => [x, y - steep * downOn(loads.line, x)]
  const held = loads.carried.map(({ x }): Point => (isMoved ? at(mm(x.value)) : [mm(x.value), y]))
  const ends = [mm(rod.left.value), mm(rod.right.value)] as const
  const inner = loads.line.map(({ x }) => mm(x)).filter((x) => x > ends[0] && x < ends[1])
  const sag = sagOn(worstSag(loads.sags), held, loads, steep)
  const free = [...ends, ...inner].filter((x) => ![...held, ...(sag ? [sag.to] : [])].some((point) => point[0] === x)).map(at)
  const along = [...free, ...held, ...(sag ? [sag.to] : [])].sort((a, b) => a[0] - b[0])
  return { held, along, ...(sag ? { sag } : {}) }
}
function sagOn(of: RodSag | undefined, held: readonly Point[], { carried }: RodLoads, steep: number): Bent['sag'] {
  const ends = [of?.from, of?.to].map((id) => held[carried.findIndex(({ bracket }) => bracket === id)])
  const [a, b] = ends
  if (!of || !a || !b) return undefined
  const x = mm(of.x.value)
  const from = a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0])
  return { of, from: [x, from], to: [x, from - steep * mm(of.sag.value)] }
}

/** The rod itself, as thick as it is drawn. */
export function rodOf({ along }: Bent, { wide }: Sheet): Mark {
  const thick = shares.rod * wide
  return outline('rod', [...along.map(([x, y]): Point => [x, y + thick]), ...along.toReversed()])
}
/** A finial at each end that reaches beyond the rod. */
export function finialsOf({ reach }: HungRod, { along }: Bent, { wide }: Sheet): readonly Mark[] {
  const radius = shares.finial * wide
  const at = (end: Point | undefined, tip: Length, outer: 1 | -1): readonly Mark[] =>
    end && mm(tip) * outer > end[0] * outer
      ? [{ kind: 'circle', role: 'finial', at: [end[0] + outer * radius, end[1] + (shares.rod * wide) / 2], radius }]
      : []
  return [...at(along[0], reach.left.value, -1), ...at(along.at(-1), reach.right.value, 1)]
}
/** What the rod lies on, below it, and the straight line from one to the next. */
export function saddles({ held }: Bent, { wide }: Sheet): readonly Mark[] {
  const [half, deep] = [shares.saddle * wide, shares.bracket * wide]
  const each = held.map(([x, y]) =>
    outline('bracket', [
      [x - half, y],
      [x + half, y],
      [x + 0.4 * half, y - deep],
      [x - 0.4 * half, y - deep],
    ]),
  )
  return [...each, through('hidden', held)]
}

/** Where the panels hang as the rod is drawn: closed or open; nothing where it hangs the lowest somewhere between. */
export function clothOf(
  { shares: panels }: Coverage,
  { stacks = [] }: HookMap,
  when: string,
  { along }: Bent,
  { wide, y }: Sheet,
): readonly Mark[] {
  if (when === 'drapery/when-between') return []
  const bottom = Math.min(...along.map((point) => point[1])) - shares.cloth * wide
  return panels.flatMap(({ panel, outer, end, leading }) => {
    const stack = stacks.find((each) => each.panel === panel)?.width.value
    const isOpen = when === 'drapery/when-stacked'
    if (isOpen && stack === undefined) return []
    const inner = isOpen ? end.value + (outer === 'left' ? (stack as number) : -(stack as number)) : leading.value
    const [left, right] = [mm(Math.min(end.value, inner)), mm(Math.max(end.value, inner))]
    const top = along.filter(([x]) => x > left && x < right)
    const high = (x: number): number => along.findLast(([px]) => px <= x)?.[1] ?? y
    return [outline('fabric-shade', [[left, high(left)], ...top, [right, high(right)], [right, bottom], [left, bottom]])]
  })
}
