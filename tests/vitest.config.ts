import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { isLong } from './tools/long.ts'

const root = fileURLToPath(new URL('..', import.meta.url))
const command = 'tests/tools/command.ts'
// Packages are tested from their source, so that no build is needed.
const conditions = ['source', 'module', 'node', 'development|production']

// Nothing here keeps anything between files, and packages need not be loaded anew for each.
const shared = { pool: 'threads', isolate: false }
const nowhere = ['**/node_modules/**', '**/dist/**']
const project = (name: string, include: string[], more: object = {}) => ({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: { name, root, include, exclude: nowhere, ...shared, ...more },
})

// What starts processes of its own, sets type or opens reports in a browser runs with the long tests alone.
const late = [
  'packages/cli/test/{photos,report,report-pdf,verify-later,watching}.test.ts',
  'packages/mechanics/test/outside.test.ts',
  'packages/photos/test/{cleaner,crashes}.test.ts',
  'packages/report/test/{browser,pdf}.test.ts',
]
// One project for all of it, as each project loads every package anew.
const parts = project(
  'parts',
  [
    'packages/*/test/**/*.test.ts',
    'plugins/*/test/**/*.test.ts',
    'viewer/test/**/*.test.ts',
    'tests/{together,unseen,references,architecture,manual,gallery,browser}/**/*.test.ts',
  ],
  {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    globalSetup: [command, 'tests/browser/viewer.ts'],
    exclude: [...nowhere, ...late],
  },
)
// What takes minutes runs when asked for: `all` by `npm run test:long`, a fixed slice in CI. Files outside `tests/long` try a few
// of theirs whenever tests run, and more here.
const wide = [
  'packages/drawing/test/overlap.test.ts',
  'tests/browser/{away,looks,measuring,sheet}.test.ts',
  'tests/together/{day,two-tablets,validator}.test.ts',
]
const long = isLong
  ? [
      project('long', ['tests/long/**/*.test.ts', ...wide, ...late], {
        testTimeout: 1_800_000,
        hookTimeout: 600_000,
        globalSetup: [command, 'tests/browser/viewer.ts'],
      }),
    ]
  : []
// Public collections that this repository does not hold: `npm run test:corpora -- <folder>`.
const corpora = process.env.EVENHEM_CORPORA
  ? [project('corpora', ['tests/corpora/**/*.test.ts'], { testTimeout: 600_000, hookTimeout: 60_000 })]
  : []
// Browsers that npm does not bring: `npm run test:others`.
const others = process.env.EVENHEM_OTHERS
  ? [
      project('others', ['tests/others/**/*.test.ts'], {
        testTimeout: 60_000,
        hookTimeout: 60_000,
        expect: { poll: { timeout: 15_000 } },
        globalSetup: [command, 'tests/browser/viewer.ts'],
      }),
    ]
  : []

export default defineConfig({
  root,
  test: {
    // Left to itself vitest keeps one core free, which on two cores is half of them.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [parts, ...long, ...corpora, ...others],
  },
})
