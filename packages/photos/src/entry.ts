import { createRequire } from 'node:module'
import { fileURLToPath, pathToFileURL } from 'node:url'

/** The program of the process that decodes, and what Node needs to run it. */
export interface Entry {
  readonly file: string
  readonly flags: readonly string[]
}

const isSource = import.meta.url.endsWith('.ts')
const loader = (): string => pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href

/** It lies beside this file; from source it is run as this repository runs all its sources. */
export const entry = (): Entry => ({
  file: fileURLToPath(new URL(isSource ? './process.ts' : './process.js', import.meta.url)),
  flags: isSource ? ['--import', loader()] : [],
})
