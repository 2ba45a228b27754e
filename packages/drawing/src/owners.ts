import type { Figure, Layer, Mark } from './marks.ts'

/** Codes for so many layers of drapery, from the glass outward. */
const namesOf = (count: number): readonly string[] =>
  count === 2
    ? ['drawing/layer-inner', 'drawing/layer-outer']
    : count === 3
      ? ['drawing/layer-inner', 'drawing/layer-middle', 'drawing/layer-outer']
      : Array.from({ length: count }, (_, n) => `drawing/layer-${Math.min(n + 1, 9)}`)

function named(mark: Mark, layer: string): Mark {
  if (mark.kind === 'group') return { ...mark, marks: mark.marks.map((each) => named(each, layer)) }
  if (mark.kind === 'detail') return { ...mark, layer, marks: mark.marks.map((each) => named(each, layer)) }
  return 'figure' in mark ? { ...mark, figure: { ...mark.figure, layer } } : mark
}

/** The code of each layer of drapery by its place, from the glass outward; empty where there is one alone. */
export function ownersOf(layers: readonly Layer[]): ReadonlyMap<string, string> {
  const places = [...new Set(layers.flatMap(({ on }) => on ?? []))]
  const owners = places.filter((place) => !places.some((other) => other.startsWith(`${place}/`)))
  const names = namesOf(owners.length)
  return new Map(owners.length < 2 ? [] : owners.map((place, n) => [place, names[n] as string]))
}

/** Where several layers of drapery hang one before the other, each number is told with its layer. */
export function withOwners(layers: readonly Layer[]): readonly Layer[] {
  const owners = ownersOf(layers)
  if (owners.size === 0) return layers
  return layers.map((layer) => {
    const name = owners.get(layer.on ?? '')
    return name === undefined ? layer : { ...layer, marks: layer.marks.map((mark) => named(mark, name)) }
  })
}

/** The caption of a number, with its layer. */
export const captionOf = ({ what, layer }: Pick<Figure, 'what' | 'layer'>, say: (code: string) => string): string => {
  const caption = say(what)
  return layer && caption ? `${caption}, ${say(layer)}` : caption
}
