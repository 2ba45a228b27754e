import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import type { FlipAnswer, FlipRun, FlipTests } from './flip-worker.ts'

/** What became of a change: the name of a test that it fails; undefined when all pass. */
export type Fate = string | undefined

const script = fileURLToPath(new URL('flip-worker.ts', import.meta.url))
/** Milliseconds. The tests of a change take about a second, or ten where much else is running. */
const long = 240_000

/** What a process says next, how it ends, or that it says nothing for so many milliseconds. */
async function said(from: ChildProcess, patience: number): Promise<FlipAnswer> {
  const stop = new AbortController()
  const late = setTimeout(() => stop.abort(), patience)
  try {
    const [answer, signal] = await Promise.race(['message', 'exit'].map((event) => once(from, event, { signal: stop.signal })))
    // A process that ends says its code, or none and the signal that ended it.
    return answer !== null && typeof answer === 'object' ? answer : { failed: `(the tests end with ${answer ?? signal})` }
  } catch {
    return { failed: '(the tests never end)' }
  } finally {
    clearTimeout(late)
    stop.abort()
  }
}

/** A process that has run the tests without a change. Throws when they fail so: every change would seem to fail them. */
async function started(tests: FlipTests): Promise<ChildProcess> {
  const worker = fork(script, [JSON.stringify(tests)], { execArgv: ['--import', 'tsx', '--conditions=source'] })
  const { failed } = await said(worker, long)
  if (failed === undefined) return worker
  worker.kill('SIGKILL')
  throw new Error(`Unexpected failure of ${failed} without any change, expected none; mend that first`)
}

/**
 * Runs the tests with one change at a time, on `workers` processes of one vitest each. When its tests have not ended after
 * `patience` milliseconds they never do, and the process is replaced. Gives the fate of every change, in their order.
 */
export async function runFlips(
  changes: readonly FlipRun[],
  tests: FlipTests,
  workers: number,
  patience = long,
): Promise<readonly Fate[]> {
  const fates: Fate[] = []
  const left = changes.entries()
  const work = async () => {
    let worker = await started(tests)
    for (const [i, change] of left) {
      worker.send(change)
      const { failed } = await said(worker, patience)
      fates[i] = failed
      if (failed?.startsWith('(')) {
        worker.kill('SIGKILL')
        worker = await started(tests)
      }
    }
    worker.kill('SIGKILL')
  }
  await Promise.all(Array.from({ length: workers }, work))
  return fates
}
