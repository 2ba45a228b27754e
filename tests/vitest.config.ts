import { readdirSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))
const folders = (path: string) =>
  readdirSync(`${root}${path}`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
// Packages are tested from their source, so that no build is needed.
const conditions = ['source', 'module', 'node', 'development|production']

const project = (name: string, include: string, more: object = {}) => ({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: { name, root, include: [include], exclude: ['**/node_modules/**', '**/dist/**'], ...more },
})

const packages = folders('packages').map((name) => project(name, `packages/${name}/test/**/*.test.ts`))
const plugins = folders('plugins')
  .filter((name) => name !== 'node_modules' && name !== 'dist')
  .map((name) => project(name, `plugins/${name}/test/**/*.test.ts`))
const across = ['together', 'unseen', 'references', 'architecture', 'manual'].map((name) =>
  project(name, `tests/${name}/**/*.test.ts`, { testTimeout: 20_000 }),
)
const browser = project('browser', 'tests/browser/**/*.test.ts', { testTimeout: 60_000, hookTimeout: 60_000 })
// What takes minutes runs when asked for: `all` by `npm run test:long`, a fixed slice in CI.
const long = process.env.EVENHEM_LONG
  ? [project('long', 'tests/long/**/*.test.ts', { testTimeout: 1_800_000, hookTimeout: 600_000 })]
  : []
// Public collections that this repository does not hold: `npm run test:corpora -- <folder>`.
const corpora = process.env.EVENHEM_CORPORA
  ? [project('corpora', 'tests/corpora/**/*.test.ts', { testTimeout: 600_000, hookTimeout: 60_000 })]
  : []

export default defineConfig({
  root,
  test: {
    // Left to itself vitest keeps one core free, which on two cores is half of them.
    pool: 'threads',
    // Nothing here keeps anything between files, and packages need not be loaded anew for each.
    isolate: false,
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [...packages, ...plugins, project('viewer', 'viewer/test/**/*.test.ts'), ...across, browser, ...long, ...corpora],
  },
})
