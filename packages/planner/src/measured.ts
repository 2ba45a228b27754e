import type { Figure, Layer, Mark } from '@evenhem/drawing'
import type { Place } from '@evenhem/job'
import type { From, Reckoning } from '@evenhem/length'

/** What was read at the window, by place. */
type Read = Readonly<Record<Place, { readonly value?: unknown }>>

/** Where a number comes from: a reckoning that only takes one number over stands for that number. */
export function settle(from: From, reckonings: ReadonlyMap<string, Reckoning>): From {
  const found = reckonings.get(from)
  const only = found?.how === 'given' ? found.terms[0] : undefined
  return only ? settle(only.from, reckonings) : from
}

/** Layers in which every number that was read at the window lies on tape: a rule sees what was found, but not that somebody read it. */
export function asMeasured(layers: readonly Layer[], readings: Read, all: readonly Reckoning[]): readonly Layer[] {
  const reckonings = new Map(all.map((reckoning) => [reckoning.name, reckoning]))
  const onTape = (figure: Figure): Figure => {
    const isRead = figure.value !== undefined && readings[settle(figure.of, reckonings)]?.value !== undefined
    return isRead && (figure.state === 'ordered' || figure.state === 'computed') ? { ...figure, state: 'measured' } : figure
  }
  const mapped = (mark: Mark): Mark => {
    if (mark.kind === 'group' || mark.kind === 'detail') return { ...mark, marks: mark.marks.map(mapped) }
    return 'figure' in mark ? { ...mark, figure: onTape(mark.figure) } : mark
  }
  return layers.map((layer) => ({ ...layer, marks: layer.marks.map(mapped) }))
}
