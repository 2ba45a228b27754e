import type { Line } from '../outline.ts'
import type { NumberPiece, Said } from '../voice.ts'
import type { Piece, Row, Text } from './blocks.ts'

const numbered = (text: string): Piece => ({
  number: text
    .split(/( ?\d+\/\d+)/)
    .filter((part) => part !== '')
    .map((part) => (/\d\/\d/.test(part) ? { fraction: part } : part)),
})
/** A number with its unit, where the sentence has to say it. */
const withUnit = ({ written, unit }: NumberPiece): Piece => numbered(unit ? `${written.text} ${unit}` : written.text)
const asWritten = ({ written }: NumberPiece): Piece => numbered(written.text)
/** A number as on the drawing, whose unit is said below it. */
export const bare = ({ written }: NumberPiece): Piece => numbered(written.text.replace(/ (mm|cm)$/, ''))

const pieces = (says: Said, number: (piece: NumberPiece) => Piece): Text =>
  says.map((part) => (typeof part === 'string' ? part : number(part)))

/** A sentence of a text. */
export const said = (says: Said): Text => pieces(says, withUnit)
/** A fact of a list, whose unit is said once for all. */
export const fact = (says: Said): Text => pieces(says, asWritten)
export const row = ({ name = [], says }: Line): Row => ({ name: fact(name), says: says.map(fact) })
