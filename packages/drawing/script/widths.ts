// Writes src/widths.generated.ts: advance widths of Source Sans 3, read from the font files that the viewer ships.
// Run by hand after a font update: npx tsx packages/drawing/script/widths.ts [--compare]
import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { create, type Font } from 'fontkit'
import { decompress } from 'wawoff2'

const { resolve } = createRequire(import.meta.url)
const weights = [400, 500, 600, 700, 800] as const
const target = new URL('../src/widths.generated.ts', import.meta.url)

const open = async (subset: string, weight: number): Promise<Font> => {
  const file = resolve(`@fontsource-variable/source-sans-3/files/source-sans-3-${subset}-wght-normal.woff2`)
  return (create(Buffer.from(await decompress(readFileSync(file)))) as Font).getVariation({ wght: weight })
}

const range = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, n) => String.fromCodePoint(from + n))
/** Latin, Latin-1, Latin Extended-A, and the marks that captions and figures use. */
const wanted = [...range(0x20, 0x7e), ...range(0xa0, 0x17f), ...'–—‘’‚“”„†•…‰′″‹›⁄€™−×÷≈≤≥ȘșȚț⅛⅜⅝⅞']

/** In thousandths of an em; a character that no file has is left out. */
async function advancesAt(weight: number): Promise<Map<string, number>> {
  // One after the other: the unpacker has one memory.
  const fonts = [await open('latin', weight), await open('latin-ext', weight)]
  const widthOf = (character: string): number | undefined => {
    const font = fonts.find((one) => one.hasGlyphForCodePoint(character.codePointAt(0) as number))
    return font && Math.round((font.glyphForCodePoint(character.codePointAt(0) as number).advanceWidth / font.unitsPerEm) * 1000)
  }
  return new Map(
    wanted.flatMap((character) => {
      const width = widthOf(character)
      return width === undefined ? [] : [[character, width]]
    }),
  )
}

const tables = new Map<number, Map<string, number>>()
for (const weight of weights) tables.set(weight, await advancesAt(weight))
const characters = [...(tables.get(400) as Map<string, number>).keys()]
const lines = weights.map(
  (weight) => `  ${weight}: [${characters.map((character) => tables.get(weight)?.get(character)).join(',')}],`,
)
const text = `// Generated from @fontsource-variable/source-sans-3 by script/widths.ts. Advance widths in thousandths of an em.
/** The characters of the table, in its order. */
export const characters = ${JSON.stringify(characters.join(''))}
/** By weight, one width for each character. */
export const advances = {
${lines.join('\n')}
} as const
`
if (process.argv.includes('--compare')) {
  if (readFileSync(target, 'utf8') !== text)
    throw new Error('Unexpected widths.generated.ts, expected the widths of the installed font; run script/widths.ts')
} else writeFileSync(target, text)
