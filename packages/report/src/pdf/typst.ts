import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname } from 'node:path'
import { NodeCompiler, type NodeError } from '@myriaddreamin/typst-ts-node-compiler'
import { lettersIn } from './letters.ts'
import { giveBack } from './memory.ts'

const require = createRequire(import.meta.url)
/** Found by its package, so that a bundle finds it too. */
const template = require.resolve('@evenhem/report/report.typ')
/** Nothing in it is read by a document: all its files are in memory. */
const workspace = `${dirname(template)}/`

/** Upright cuts in the weights that drawings and pages are set in, under the SIL Open Font License 1.1. */
const faces = [
  ...['400Regular', '500Medium', '600SemiBold', '700Bold', '800ExtraBold'].map((cut) => ['source-sans-3', 'SourceSans3', cut]),
  ['source-serif-4', 'SourceSerif4', '400Regular'],
] as const

interface Fonts {
  readonly blobs: readonly Buffer[]
  /** Code points that every one of the fonts has. */
  readonly letters: ReadonlySet<number>
}
let loaded: Fonts | undefined
/** The fonts, read once. */
function fonts(): Fonts {
  if (loaded) return loaded
  const blobs = faces.map(([folder, family, cut]) =>
    readFileSync(require.resolve(`@expo-google-fonts/${folder}/${cut}/${family}_${cut}.ttf`)),
  )
  const [first = new Set<number>(), ...others] = blobs.map(lettersIn)
  const letters = new Set([...first].filter((letter) => others.every((each) => each.has(letter))))
  loaded = { blobs, letters }
  return loaded
}

/** Whether the fonts can set a letter. Signs that only join or break others need no picture. */
export const canSet = (letter: number): boolean => fonts().letters.has(letter) || letter === 0x200b

/** A document that is being put together. */
export interface Document {
  /** Gives it a file, by a name of letters, digits, dots and dashes. */
  readonly add: (name: string, bytes: Uint8Array) => void
  /** Sets `report.json`. `timestamp`: when it was made, in seconds since 1970. Throws with all that was said when something cannot be set, PDF/UA-1 forbids it, or a font is missing. */
  readonly set: (timestamp: number) => Uint8Array
}

export function newDocument(): Document {
  const compiler = NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs: [...fonts().blobs] }] })
  return {
    add: (name, bytes) => compiler.mapShadow(`${workspace}${name}`, Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length)),
    set: (timestamp) => typeset(compiler, timestamp),
  }
}

function typeset(compiler: NodeCompiler, timestamp: number): Uint8Array {
  giveBack()
  const compiled = compiler.compile({ mainFileContent: readFileSync(template, 'utf8') })
  const trouble = [compiled.takeError(), compiled.takeWarnings()].flatMap((one) => (one ? saidOf(compiler, one) : []))
  if (trouble.length > 0 || !compiled.result) throw unset(trouble)
  try {
    // All that was read is in what was compiled.
    compiler.resetShadow()
    compiler.evictCache(0)
    return compiler.pdf(compiled.result, { pdfStandard: 'ua-1', creationTimestamp: timestamp })
  } catch (error) {
    throw unset([String(error)])
  } finally {
    compiler.evictCache(0)
  }
}

const saidOf = (compiler: NodeCompiler, error: NodeError): readonly string[] =>
  (compiler.fetchDiagnostics(error) as { message: string }[]).map(({ message }) => message)

const unset = (trouble: readonly string[]): Error =>
  new Error(`Unexpected trouble while setting the PDF, expected none; look at the template report.typ: ${trouble.join('; ')}`)
