import type { Layer, Mark, Role, Segment } from '@evenhem/drawing'

/** Lines or an area of one role, as an SVG path in whole millimetres, y down. */
export interface SmallShape {
  readonly role: Role
  readonly area: boolean
  readonly d: string
}
/** A window as it is drawn when it is no larger than a stamp: true to its plan, without numbers. */
export interface SmallPicture {
  /** What it takes of the wall in millimetres, y down. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  readonly shapes: readonly SmallShape[]
}

/** Rings, brackets and folds are finer than a stamp shows; hatches and labels belong to the sheet. */
const shown: readonly Role[] = [
  'wall',
  'wall-face',
  'baseboard',
  'casing',
  'frame',
  'glass',
  'obstacle',
  'rod',
  'finial',
  'fabric',
  'fabric-shade',
]

const at = (x: number, y: number): string => `${Math.round(x)} ${Math.round(-y)}`
function segment(step: Segment): string {
  if (step[0] === 'Z') return 'Z'
  const points = step.slice(1) as readonly number[]
  return step[0] + points.flatMap((x, n) => (n % 2 === 0 ? [at(x, points[n + 1] as number)] : [])).join(' ')
}

function shapeOf(mark: Mark): Omit<SmallShape, 'role'> | undefined {
  switch (mark.kind) {
    case 'line':
      return { area: false, d: `M${at(...mark.from)}L${at(...mark.to)}` }
    case 'path':
      return { area: mark.d.at(-1)?.[0] === 'Z', d: mark.d.map(segment).join('') }
    case 'rect':
      return {
        area: true,
        d: `M${at(...mark.at)}h${Math.round(mark.width)}v${-Math.round(mark.height)}h${-Math.round(mark.width)}Z`,
      }
    case 'circle':
      return { area: true, d: circle(mark.at, Math.round(mark.radius)) }
    default:
      return undefined
  }
}
const circle = ([x, y]: readonly [number, number], r: number): string =>
  `M${at(x - r, y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`

function shapesIn(mark: Mark): readonly SmallShape[] {
  if (mark.kind === 'group') return mark.marks.flatMap(shapesIn)
  const shape = 'role' in mark && shown.includes(mark.role) ? shapeOf(mark) : undefined
  return shape && 'role' in mark ? [{ role: mark.role, ...shape }] : []
}

/** The stamp of a window with its drapery stacked, so that its glass is seen. Undefined when its wall cannot be drawn yet. */
export function smallPicture(layers: readonly Layer[]): SmallPicture | undefined {
  const shapes = layers
    .filter(({ view, state }) => view === 'elevation' && state !== 'drawn')
    .toSorted((a, b) => a.depth - b.depth)
    .flatMap(({ marks }) => marks.flatMap(shapesIn))
  const box = boxOf(shapes)
  return box && { box, shapes }
}

/** What walls and the surfaces between them take. */
function boxOf(shapes: readonly SmallShape[]): SmallPicture['box'] | undefined {
  const numbers = shapes
    .filter(({ role, d }) => role.startsWith('wall') && !/[a-z]/.test(d))
    .flatMap(({ d }) => [...d.matchAll(/(-?\d+) (-?\d+)/g)].map((found) => [Number(found[1]), Number(found[2])] as const))
  if (numbers.length === 0) return undefined
  const [xs, ys] = [numbers.map(([x]) => x), numbers.map(([, y]) => y)]
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}
