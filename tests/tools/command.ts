import { randomUUID } from 'node:crypto'
import { rm } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { TestProject } from 'vitest/node'

const cli = fileURLToPath(new URL('../../packages/cli/', import.meta.url))

/**
 * Bundles the command line from source once for all tests of a project: loading a hundred sources takes longer than what
 * they do. The file lies as deep as a built one, so that it finds what it looks for beside itself.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const outfile = `${cli}dist/test-${randomUUID()}.mjs`
  await build({
    entryPoints: [`${cli}src/index.ts`],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    conditions: ['source'],
    external: ['fastify', '@fastify/*', 'ajv', 'qrcode', 'sharp', 'proper-lockfile'],
    logLevel: 'warning',
  })
  project.provide('command', outfile)
  return () => rm(outfile)
}

declare module 'vitest' {
  interface ProvidedContext {
    /** The command line, as a file for `node`. */
    readonly command: string
  }
}
