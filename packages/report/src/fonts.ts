import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'

interface Face {
  readonly family: string
  readonly weights: string
  readonly folder: string
  readonly file: (subset: string) => string
}

/** One hand in two cuts, under the SIL Open Font License 1.1. The serif comes with its axis of optical sizes. */
const faces: readonly Face[] = [
  {
    family: 'Source Sans 3 Variable',
    weights: '200 900',
    folder: '@fontsource-variable/source-sans-3',
    file: (subset) => `source-sans-3-${subset}-wght-normal.woff2`,
  },
  {
    family: 'Source Serif 4 Variable',
    weights: '200 900',
    folder: '@fontsource-variable/source-serif-4',
    file: (subset) => `source-serif-4-${subset}-opsz-normal.woff2`,
  },
]
/** Latin is in every report; its extension only where a letter of it is. */
const subsets = ['latin', 'latin-ext'] as const

const require = createRequire(import.meta.url)

type Ranges = readonly (readonly [from: number, to: number])[]
const rangesOf = (written: string): Ranges =>
  written.split(',').map((range) => {
    const [from = '', to = from] = range.replace('U+', '').split('-')
    return [Number.parseInt(from, 16), Number.parseInt(to, 16)]
  })
const hasLetterIn = (ranges: Ranges, letters: ReadonlySet<number>): boolean =>
  [...letters].some((letter) => ranges.some(([from, to]) => from <= letter && letter <= to))

/** The code points of a text, without a copy of it: a house's report is long. */
function lettersOf(text: string): ReadonlySet<number> {
  const letters = new Set<number>()
  for (const one of text) letters.add(one.codePointAt(0) as number)
  return letters
}

/** The fonts that a text needs, as rules of a style sheet that hold the fonts themselves. A drawing has no serifs in it. */
export function fontsFor(text: string, of: 'page' | 'drawing' = 'page'): string {
  const letters = lettersOf(text)
  return faces
    .slice(0, of === 'drawing' ? 1 : faces.length)
    .flatMap((face) => {
      const ranges: Readonly<Record<string, string>> = JSON.parse(
        readFileSync(require.resolve(`${face.folder}/unicode.json`), 'utf8'),
      )
      return subsets
        .filter((subset) => subset === 'latin' || hasLetterIn(rangesOf(ranges[subset] ?? ''), letters))
        .map((subset) => ruleOf(face, subset, ranges[subset] ?? ''))
    })
    .join('\n')
}

function ruleOf({ family, weights, folder, file }: Face, subset: string, range: string): string {
  const data = readFileSync(require.resolve(`${folder}/files/${file(subset)}`)).toString('base64')
  return `@font-face{font-family:"${family}";font-weight:${weights};font-display:block;src:url(data:font/woff2;base64,${data}) format("woff2");unicode-range:${range}}`
}
