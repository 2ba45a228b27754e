import { Folding } from './bend.ts'
import type { Bend, Detail, Dimension, Group, Layer, Mark } from './marks.ts'
import type { LeftOut } from './scene.ts'

/** A thousand kilometres, in mm: farther out nothing is drawn. */
const farthest = 1e9

/** True when every number in a mark is a place on a wall. */
const isDrawable = (value: unknown): boolean => {
  if (typeof value === 'number') return Math.abs(value) <= farthest
  if (Array.isArray(value)) return value.every(isDrawable)
  return (
    typeof value !== 'object' ||
    value === null ||
    Object.entries(value).every(([key, item]) => key === 'figure' || isDrawable(item))
  )
}

/** Groups opened up; their words are kept apart. */
const opened = (mark: Mark): readonly Exclude<Mark, Group>[] => (mark.kind === 'group' ? mark.marks.flatMap(opened) : [mark])
const groups = (mark: Mark): readonly Group[] => (mark.kind === 'group' ? [mark, ...mark.marks.flatMap(groups)] : [])

/** What the marks of a view come to: from back to front, one of each dimension. */
export interface Gathered {
  readonly marks: readonly Exclude<Mark, Group | Detail>[]
  readonly details: readonly Detail[]
  readonly groups: readonly Group[]
  readonly leftOut: readonly LeftOut[]
}

/** The marks of one kind. */
export const only = <K extends Mark['kind']>(marks: readonly Mark[], kind: K) =>
  marks.filter((mark): mark is Extract<Mark, { kind: K }> => mark.kind === kind)

const keyOf = (mark: Dimension): string => JSON.stringify([mark.figure.of, mark.side, mark.from, mark.to])

/** Several treatments may say the same dimension of the wall: it is drawn once. */
function once(marks: readonly Exclude<Mark, Group>[]): readonly Exclude<Mark, Group>[] {
  const seen = new Set<string>()
  return marks.filter((mark) => {
    if (mark.kind !== 'dimension') return true
    const key = keyOf(mark)
    return !seen.has(key) && seen.add(key)
  })
}

/** The same folded at corners; what cannot be drawn so is left out. */
const folded = (marks: readonly Exclude<Mark, Group>[], bends: readonly Bend[]): readonly Exclude<Mark, Group>[] => {
  const folding = new Folding(bends)
  return marks.flatMap((mark) => folding.mark(mark) ?? []).flatMap(opened)
}

const nameOf = (mark: Mark, why: LeftOut['why']): LeftOut => ({
  what: 'figure' in mark ? mark.figure.what : mark.kind,
  ...('figure' in mark ? { of: mark.figure.of } : 'of' in mark && typeof mark.of === 'string' ? { of: mark.of } : {}),
  why,
})

/** Takes the marks of a view and a state of the drapery from all layers, sorted by depth, else in the order given. */
export function gather(layers: readonly Layer[], view: Layer['view'], state: 'drawn' | 'stacked'): Gathered {
  const shown = layers.filter((layer) => layer.view === view && (layer.state === undefined || layer.state === state))
  const all = shown.toSorted((a, b) => a.depth - b.depth).flatMap((layer) => layer.marks)
  const bends = shown.flatMap((layer) => layer.bends ?? [])
  const whole = once(all.flatMap(opened))
  const drawn = whole.filter(isDrawable)
  const drawable = bends.length > 0 ? folded(drawn, bends) : drawn
  return {
    marks: drawable.filter((mark) => mark.kind !== 'detail'),
    details: drawable.filter((mark) => mark.kind === 'detail'),
    groups: all.flatMap(groups),
    leftOut: [
      ...whole.filter((mark) => !isDrawable(mark)).map((mark) => nameOf(mark, 'not a place')),
      ...(bends.length > 0
        ? drawn.filter((mark) => !new Folding(bends).mark(mark)).map((mark) => nameOf(mark, 'around a corner'))
        : []),
    ],
  }
}
