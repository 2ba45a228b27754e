import { type Entry, entry } from './entry.ts'
import type { Format } from './format.ts'
import { type Limits, usualLimits } from './limits.ts'
import type { Cleaned } from './messages.ts'
import { type Ended, type Reader, startReader } from './reader.ts'
import { type Refused, refusedFor } from './refused.ts'

export type { Cleaned } from './messages.ts'

/** Decodes photos in a process of its own, two at a time or, where one needs much memory, by itself, and makes their cleaned copies. */
export interface Cleaner {
  /**
   * The copies of a photo: upright, in sRGB, and nothing in them but the picture. What cannot be read, or only at too high a cost, is refused. Throws when the
   * process of the decoders cannot be started, or when this was closed meanwhile.
   */
  readonly clean: (file: string, format: Format) => Promise<Cleaned | Refused>
  /** The most bytes that the process has held so far. */
  readonly peak: () => number
  readonly close: () => void
}

interface Task {
  readonly file: string
  readonly format: Format
  /** Nothing else is read beside it. */
  isAlone: boolean
  readonly done: (cleaned: Cleaned | Refused) => void
  readonly failed: (error: Error) => void
}

const mostAtOnce = 2

/** `program`: what runs in the process; left out, the one that decodes. */
export function cleaner(given: Partial<Limits> = {}, program: Entry = entry()): Cleaner {
  const limits: Limits = { ...usualLimits, ...given }
  const waiting: Task[] = []
  const running = new Set<Task>()
  let reader: Reader | undefined
  let idle: NodeJS.Timeout | undefined
  let [peak, isClosed] = [0, false]

  const fits = ({ isAlone }: Task): boolean =>
    running.size === 0 || (!isAlone && running.size < mostAtOnce && ![...running].some((each) => each.isAlone))

  function goOn(): void {
    clearTimeout(idle)
    for (let next = waiting[0]; next && fits(next); next = waiting[0]) {
      waiting.shift()
      running.add(next)
      void read(next)
    }
    if (running.size > 0 || !reader) return
    reader.hold(false)
    idle = setTimeout(rest, limits.restMs).unref()
  }
  function rest(): void {
    reader?.end()
    reader = undefined
  }

  async function read(task: Task): Promise<void> {
    reader ??= startReader(program, limits, ended)
    reader.hold(true)
    const answer = await reader.read(task)
    if (!answer || !running.delete(task)) return
    peak = Math.max(peak, answer.peak)
    if (answer.cleaned === 'heavy') again(task)
    else task.done(answer.cleaned)
    goOn()
  }
  /** Before all others, and with nothing beside it. */
  const again = (task: Task): void => void waiting.unshift(Object.assign(task, { isAlone: true }))

  /** A process that ends takes what it was reading with it. Of two photos nobody knows which one it was, so each is read again by itself. */
  function ended(end: Ended): void {
    const tasks = [...running]
    running.clear()
    reader = undefined
    const [only] = tasks
    if (end.is === 'not-started') for (const { failed } of [...tasks, ...waiting.splice(0)]) failed(new Error(end.why))
    else if (only && tasks.length === 1) only.done(refusal(end.is))
    else for (const task of tasks.reverse()) again(task)
    goOn()
  }
  const refusal = (why: Exclude<Ended['is'], 'not-started'>): Refused => {
    if (why === 'too-slow') return refusedFor('photo/too-slow', { seconds: limits.mostMs / 1000 })
    if (why === 'too-much-memory') return refusedFor('photo/too-much-memory', { most: Math.round(limits.mostMemory / 1e6) })
    return refusedFor('photo/stops-reader')
  }

  const clean: Cleaner['clean'] = (file, format) =>
    new Promise((done, failed) => {
      if (isClosed) throw new Error(closed)
      waiting.push({ file, format, isAlone: false, done, failed })
      goOn()
    })

  function close(): void {
    isClosed = true
    for (const { failed } of [...running, ...waiting.splice(0)]) failed(new Error(closed))
    running.clear()
    clearTimeout(idle)
    rest()
  }

  return { clean, peak: () => peak, close }
}

const closed = 'Unexpected photo after the end, expected none; the process that reads photos was closed.'
