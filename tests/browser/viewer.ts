import { execFile } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import type { TestProject } from 'vitest/node'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** Builds the viewer into a folder of its own, so that tests see what is in the checkout now. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-viewer-'))
  await promisify(execFile)(process.execPath, [`${root}viewer/build.js`, folder], { cwd: root })
  project.provide('viewer', folder)
  return () => rm(folder, { recursive: true })
}

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built viewer. */
    readonly viewer: string
  }
}
