import { advances, characters } from './widths.generated.ts'

/** A weight of the drawing's typeface. */
export type Weight = keyof typeof advances
/** How words are set: size in scene units. */
export interface Type {
  readonly size: number
  readonly weight: Weight
}

const places = new Map([...characters].map((character, place) => [character, place]))

/** For characters that the table lacks, on the wide side, so that a label is never wider than its box. */
function roughly(codePoint: number): number {
  if (codePoint < 0x20 || (codePoint >= 0x300 && codePoint < 0x370) || (codePoint >= 0x200b && codePoint < 0x2010)) return 0
  return codePoint < 0x1100 ? 780 : 1050
}

/** Width of words in Source Sans 3, in the units of `size`, from the font's own advance widths; kerning only makes it narrower. */
export function textWidth(text: string, { size, weight }: Type): number {
  let total = 0
  for (const character of text) {
    const place = places.get(character)
    total += place === undefined ? roughly(character.codePointAt(0) as number) : (advances[weight][place] as number)
  }
  return (total * size) / 1000
}

/** The words, cut with `…` where they would be wider than `width`; empty when nothing fits. */
export function cut(text: string, type: Type, width: number): string {
  if (textWidth(text, type) <= width) return text
  const kept = [...text]
  while (kept.length > 0 && textWidth(`${kept.join('').trimEnd()}…`, type) > width) kept.pop()
  return kept.length > 0 ? `${kept.join('').trimEnd()}…` : ''
}

/** Words in at most `most` lines of `width`, the last one cut. */
export function wrap(text: string, type: Type, width: number, most: number): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ').filter((one) => one !== '')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word
    if (lines.length > 0 && (lines.length === most || textWidth(longer, type) <= width)) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines.map((line) => cut(line, type, width)).filter((line) => line !== '')
}
