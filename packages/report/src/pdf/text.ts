import { textWidth } from '@evenhem/drawing'
import type { Line } from '../outline.ts'
import type { NumberPiece, Said } from '../voice.ts'
import type { Block, Piece, Row, RowsLook, Text } from './blocks.ts'

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

/** How many lines sentences take, each beginning one, where so many letters stand on a line. */
export const linesOf = (all: readonly Said[], letters: number): number =>
  all
    .flatMap((says) =>
      says
        .map((part) => (typeof part === 'string' ? part : part.written.text))
        .join('')
        .split('\n'),
    )
    .reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / letters)), 0)

/** Widths of the columns of names, in mm, where a list has one; the template has 1.4 more for each. */
const columns: Readonly<Partial<Record<RowsLook, number>>> = { facts: 20.6, care: 24, corrections: 45.6, point: 34, small: 35.6 }
const millimetres = 0.3528
const asWide = (text: Text): string => text.map((piece) => (typeof piece === 'string' ? piece : '00 00/00')).join('')

/** Rows as a list. */
export function rows(all: readonly Row[], look: RowsLook): Block {
  const type = { size: (look === 'small' ? 9 : 10) * millimetres, weight: 400 } as const
  const most = columns[look] ?? Number.POSITIVE_INFINITY
  return { kind: 'rows', of: all.map((each) => ({ ...each, isLong: textWidth(asWide(each.name), type) > most })), look }
}
