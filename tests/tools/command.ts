import { randomUUID } from 'node:crypto'
import { rm } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { type BuildOptions, build, type Plugin } from 'esbuild'
import type { TestProject } from 'vitest/node'

const cli = fileURLToPath(new URL('../../packages/cli/', import.meta.url))
const reader = fileURLToPath(new URL('../../packages/photos/src/process.ts', import.meta.url))
const external = ['fastify', '@fastify/*', 'ajv', 'qrcode', 'sharp', '@myriaddreamin/*', 'heic-decode', 'proper-lockfile']
const options: BuildOptions = {
  bundle: true,
  platform: 'node',
  format: 'esm',
  conditions: ['source'],
  external,
  logLevel: 'warning',
}

/** Where a bundle finds the program of the process that reads photos: a source looks beside itself. */
const readerAt = (file: string): Plugin => ({
  name: 'reader of photos',
  setup: ({ onLoad }) =>
    onLoad({ filter: /photos[\\/]src[\\/]entry\.ts$/ }, () => ({
      contents: `export const entry = () => (${JSON.stringify({ file, flags: [] })})`,
    })),
})

/**
 * Bundles the command line from source once for all tests of a project: loading a hundred sources takes longer than what
 * they do. The file lies as deep as a built one, so that it finds what it looks for beside itself.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const id = randomUUID()
  const [outfile, photos] = [`${cli}dist/test-${id}.mjs`, `${cli}dist/photos-${id}.mjs`]
  await Promise.all([
    build({ ...options, entryPoints: [`${cli}src/index.ts`], outfile, plugins: [readerAt(photos)] }),
    build({ ...options, entryPoints: [reader], outfile: photos }),
  ])
  project.provide('command', outfile)
  return async () => void (await Promise.all([outfile, photos].map((file) => rm(file))))
}

declare module 'vitest' {
  interface ProvidedContext {
    /** The command line, as a file for `node`. */
    readonly command: string
  }
}
