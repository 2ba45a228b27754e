import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { lettersIn } from './letters.ts'

const require = createRequire(import.meta.url)

/** Upright cuts in the weights that drawings and pages are set in, under the SIL Open Font License 1.1. */
const faces = [
  ...['400Regular', '500Medium', '600SemiBold', '700Bold', '800ExtraBold'].map((cut) => ['source-sans-3', 'SourceSans3', cut]),
  ['source-serif-4', 'SourceSerif4', '400Regular'],
] as const

/** The files of all fonts of a document. */
export const fontFiles = (): readonly string[] =>
  faces.map(([folder, family, cut]) => require.resolve(`@expo-google-fonts/${folder}/${cut}/${family}_${cut}.ttf`))

let loaded: ReadonlySet<number> | undefined
/** Code points that every one of the fonts has, read once. */
function letters(): ReadonlySet<number> {
  if (loaded) return loaded
  const [first = new Set<number>(), ...others] = fontFiles().map((file) => lettersIn(readFileSync(file)))
  loaded = new Set([...first].filter((letter) => others.every((each) => each.has(letter))))
  return loaded
}

/** Whether the fonts can set a letter. Signs that only join or break others need no picture. */
export const canSet = (letter: number): boolean => letters().has(letter) || letter === 0x200b
