import type { Figure, Layer, Mark } from '@evenhem/drawing'
import { type Ground, originOf } from './working.ts'

/** Layers in which every number that was read at the window lies on tape: a rule sees what was found, but not that somebody read it. */
export function asMeasured(layers: readonly Layer[], ground: Ground): readonly Layer[] {
  const onTape = (figure: Figure): Figure => {
    const isRead = figure.value !== undefined && originOf(figure.of, ground).kind === 'reading'
    return isRead && (figure.state === 'ordered' || figure.state === 'computed') ? { ...figure, state: 'measured' } : figure
  }
  const mapped = (mark: Mark): Mark => {
    if (mark.kind === 'group' || mark.kind === 'detail') return { ...mark, marks: mark.marks.map(mapped) }
    return 'figure' in mark ? { ...mark, figure: onTape(mark.figure) } : mark
  }
  return layers.map((layer) => ({ ...layer, marks: layer.marks.map(mapped) }))
}
