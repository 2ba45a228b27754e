import { readFileSync } from 'node:fs'
import { Worker } from 'node:worker_threads'
import { clean } from './clean.ts'
import type { Answer, Errand } from './messages.ts'

// The process that decodes what strangers made. It is told files, answers their cleaned copies, and may be killed at any moment.

/** Looks at the memory from a thread of its own: decoders stand still everything else. */
const watch = (most: number): Worker =>
  new Worker(`setInterval(() => { if (process.memoryUsage.rss() > ${most}) process.kill(process.pid, 'SIGKILL') }, 25)`, {
    eval: true,
    execArgv: [],
  })

const say = (answer: Answer): void => void process.send?.(answer)
const kibibyte = 1024

/** The most bytes that this process has held. Linux counts in `maxRSS` what its parent held when it started this one, and in `VmHWM` not (from memory). */
function peak(): number {
  try {
    const [, held] = /^VmHWM:\s*(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8')) ?? []
    if (held !== undefined) return Number(held) * kibibyte
  } catch {
    // A system without such a file.
  }
  return process.resourceUsage().maxRSS * kibibyte
}

process.on('message', async (errand: Errand) => {
  const cleaned = await clean(errand)
  say({ is: 'done', id: errand.id, cleaned, peak: peak() })
})
process.once('disconnect', () => process.exit())
// Ctrl+C reaches every process of a terminal. This one ends with its parent, which may have a photo to finish first.
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => undefined)
watch(Number(process.argv[2]))
say({ is: 'ready' })
