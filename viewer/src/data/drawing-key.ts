import { figuresOf, type Scene } from '@evenhem/drawing'
import type { Length } from '@evenhem/length'

/** A number of a drawing with the words that found no room beside it. */
export interface KeyLine {
  readonly what: string
  readonly value?: Length
  readonly of: string
}

/** Words of numbers that stand without them, once for the same words and number: so no caption is dropped in silence. */
export function keyOf(scene: Scene, say: (code: string) => string): readonly KeyLine[] {
  const drawn = figuresOf(scene)
    .filter(({ captions }) => captions.length === 0)
    .map(({ figure: { what, value, of } }) => ({ what: say(what), ...(value === undefined ? {} : { value }), of }))
  return [...new Map(drawn.filter(({ what }) => what !== '').map((line) => [`${line.what} ${line.value}`, line])).values()]
}
