// Runs the tests that cover some files again and again, each time with one file's text changed on the way to them; the
// source tree is never written. One process holds one vitest for all changes. Started by flip-runs.ts, which sends each
// change and waits for the name of the test that it fails.
import { fileURLToPath } from 'node:url'
import { createVitest, type TestModule, type TestSpecification } from 'vitest/node'

/** What a worker is asked: the tests with `text` in place of `file`. */
export interface FlipRun {
  readonly file: string
  readonly text: string
}
/** What it answers: the name of a test that failed; nothing when all passed. */
export interface FlipAnswer {
  readonly failed: string | undefined
}
/** What a worker is started with, as JSON: files by their full paths, tests or folders of them below the root. */
export interface FlipTests {
  readonly files: readonly string[]
  readonly tests: readonly string[]
}

const root = fileURLToPath(new URL('../..', import.meta.url))
const { files, tests }: FlipTests = JSON.parse(process.argv[2] ?? '')
const conditions = ['source', 'module', 'node', 'development|production']
let changed: FlipRun | undefined

const vitest = await createVitest(
  'test',
  {
    root,
    config: false,
    watch: false,
    include: tests.map((path) => (path.endsWith('.ts') ? path : `${path}/**/*.test.ts`)),
    related: [...files],
    pool: 'threads',
    isolate: false,
    maxWorkers: 1,
    bail: 1,
    testTimeout: 20_000,
    reporters: [{}],
    // The order that they are given in: the quickest first.
    sequence: {
      sequencer: class {
        sort = async (specs: TestSpecification[]) => specs
        shard = async (specs: TestSpecification[]) => specs
      },
    },
  },
  {
    resolve: { conditions },
    ssr: { resolve: { conditions } },
    plugins: [{ name: 'flip', enforce: 'pre', transform: (_, id) => (id === changed?.file ? changed.text : undefined) }],
  },
)

const failedIn = (module: TestModule): string | undefined => {
  if (module.ok()) return undefined
  const [test] = [...module.children.allTests('failed')]
  return test ? test.fullName : `${module.relativeModuleId} could not be loaded: ${module.errors()[0]?.message}`
}
async function run(specifications: readonly TestSpecification[]) {
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications([...specifications])
  const failed = testModules.map(failedIn).find((name) => name !== undefined)
  const [unhandled] = unhandledErrors
  return { testModules, failed: failed ?? (unhandled === undefined ? undefined : String(unhandled)) }
}
const answer = (failed: string | undefined) => process.send?.({ failed } satisfies FlipAnswer)

const found = await vitest.globTestSpecifications()
const first = await run(found)
const took = new Map(first.testModules.map((module) => [module.moduleId, module.diagnostic().duration]))
const quickest = [...found].sort((a, b) => (took.get(a.moduleId) ?? 0) - (took.get(b.moduleId) ?? 0))
// Without a change all must pass; otherwise every change would seem to fail them.
answer(found.length === 0 ? `there are no tests of ${files}` : first.failed)

process.on('message', async (next: FlipRun) => {
  const before = changed?.file
  changed = next
  for (const file of new Set([before, next.file])) if (file) vitest.invalidateFile(file)
  answer((await run(quickest)).failed)
})
process.on('disconnect', () => process.exit())
