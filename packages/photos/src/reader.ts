import { type ChildProcess, fork } from 'node:child_process'
import type { Entry } from './entry.ts'
import type { Limits } from './limits.ts'
import type { Answer, Errand } from './messages.ts'

/** How the process ended: by a photo, or before it had begun. */
export type Ended =
  | { readonly is: 'too-slow' | 'too-much-memory' | 'stops-reader' }
  | { readonly is: 'not-started'; readonly why: string }
export type Done = Extract<Answer, { is: 'done' }>

/** The process that decodes, from its start to its end. */
export interface Reader {
  /** What came of a photo; undefined when the process ended before. */
  readonly read: (photo: Pick<Errand, 'file' | 'format' | 'isAlone'>) => Promise<Done | undefined>
  /** Whether this process waits for it before it ends itself. */
  readonly hold: (isHeld: boolean) => void
  readonly end: () => void
}

/** Enough for scripts; what decoders hold lies outside. In MiB. */
const scriptMemory = 256
const mostSaid = 2_000

/** Starts it. `ended` is told once, unless it was ended from here. */
export function startReader(program: Entry, limits: Limits, ended: (end: Ended) => void): Reader {
  const child = start(program, limits)
  const open = new Map<number, { readonly done: (answer?: Done) => void; timer?: NodeJS.Timeout }>()
  let [last, isLate, isOver, said] = [0, false, false, '']
  let isReady: (is: boolean) => void = () => undefined
  const ready = new Promise<boolean>((resolve) => {
    isReady = resolve
  })

  child.stderr?.setEncoding('utf8').on('data', (text) => {
    said = (said + text).slice(-mostSaid)
  })
  child.on('message', (answer: Answer) => {
    if (answer.is === 'ready') isReady(true)
    else settle(answer.id, answer)
  })
  function settle(id: number, answer?: Done): void {
    clearTimeout(open.get(id)?.timer)
    open.get(id)?.done(answer)
    open.delete(id)
  }

  async function over(signal: NodeJS.Signals | null, why = ''): Promise<void> {
    if (isOver) return
    isOver = true
    isReady(false)
    const wasReady = await ready
    for (const id of [...open.keys()]) settle(id)
    if (!isEnded) ended(wasReady ? { is: isLate ? 'too-slow' : causeOf(signal) } : { is: 'not-started', why: why || said })
  }
  let isEnded = false
  child.once('close', (_code, signal) => void over(signal))
  child.once('error', (error) => void over(null, error.message))

  const late = (): void => {
    isLate = true
    child.kill('SIGKILL')
  }
  const read: Reader['read'] = ({ file, format, isAlone }) =>
    new Promise((done) => {
      const id = ++last
      const errand: Errand = { id, file, format, limits, isAlone }
      open.set(id, { done })
      void ready.then((is) => {
        const mine = open.get(id)
        if (!is || !mine) return
        mine.timer = setTimeout(late, limits.mostMs)
        child.send(errand, () => undefined)
      })
    })

  return {
    read,
    hold: (isHeld) => {
      for (const each of [child, child.channel, child.stderr as unknown as ChildProcess]) each?.[isHeld ? 'ref' : 'unref']()
    },
    end: () => {
      isEnded = true
      child.kill('SIGKILL')
    },
  }
}

const start = ({ file, flags }: Entry, { mostMemory }: Limits): ChildProcess =>
  fork(file, [String(mostMemory)], {
    execArgv: [...flags, `--max-old-space-size=${scriptMemory}`],
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  })

/** Whoever watches its memory kills it, and so does a system that has none left; a script without memory aborts. */
const causeOf = (signal: NodeJS.Signals | null): 'too-much-memory' | 'stops-reader' =>
  signal === 'SIGKILL' || signal === 'SIGABRT' ? 'too-much-memory' : 'stops-reader'
