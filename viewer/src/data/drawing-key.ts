import { type Figure, figuresOf, type Scene } from '@evenhem/drawing'
import { type Amount, type Writing, weighed } from './amount.ts'

/** A number of a drawing with the words that found no room beside it. */
export interface KeyLine {
  readonly what: string
  readonly value?: Amount
  readonly of: string
}

/** Words of numbers that stand without them, once for the same words and number: so no caption is dropped in silence. */
export function keyOf(scene: Scene, writing: Writing & { readonly say: (code: string) => string }): readonly KeyLine[] {
  const drawn = figuresOf(scene)
    .filter(({ captions }) => captions.length === 0)
    .map(({ figure }): KeyLine => ({ what: writing.say(figure.what), ...numberOf(figure, writing), of: figure.of }))
  return [...new Map(drawn.filter(({ what }) => what !== '').map((line) => [`${line.what} ${line.value?.text}`, line])).values()]
}
const numberOf = ({ value, mass }: Figure, writing: Writing): Pick<KeyLine, 'value'> =>
  mass !== undefined ? { value: weighed(mass, writing) } : value === undefined ? {} : { value: writing.write(value) }
