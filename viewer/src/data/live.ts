import type { Place } from '@evenhem/job'
import type { SentEntry } from './site.ts'

/** Who has this job open, and which window: a device of the log, and its name where it was given one. */
export interface Here {
  readonly by: string
  readonly at: Place | ''
  readonly name?: string
}
/** What is done with what the server tells by itself. */
export interface Hears {
  /** It is in contact again: what came meanwhile is to be asked for. */
  readonly opened: () => void
  readonly lost: () => void
  /** It is still there. */
  readonly still: () => void
  readonly entries: (entries: readonly SentEntry[]) => void
  readonly here: (here: readonly Here[]) => void
  /** The order was changed. */
  readonly job: () => void
}

// The server says every ten seconds that it is there.
const silenceMs = 25_000
/** It asks again soon, then less and less often. */
const againMs = { first: 500, last: 10_000 }

/** What the server tells while the page is seen: a page that nobody sees holds no connection, of which a browser has six. */
export class Live {
  private readonly base: string
  private readonly by: string
  private readonly hears: Hears
  private source?: EventSource
  private timer: ReturnType<typeof setTimeout> | undefined
  private at: Place | '' = ''
  private isLive = false
  private pause = againMs.first

  constructor(base: string, by: string, hears: Hears) {
    this.base = base
    this.by = by
    this.hears = hears
    document.addEventListener('visibilitychange', this.again)
    addEventListener('online', this.again)
    this.again()
  }
  close(): void {
    document.removeEventListener('visibilitychange', this.again)
    removeEventListener('online', this.again)
    this.end()
  }
  /** From now on others see this window as held here. The new stream opens before the old one ends, so that nothing is missed. */
  show(at: Place | ''): void {
    if (at === this.at) return
    this.at = at
    if (this.isLive) this.open(this.source)
  }

  private readonly again = (): void => {
    this.end()
    if (document.visibilityState === 'visible') this.open()
  }
  private end(): void {
    clearTimeout(this.timer)
    this.source?.close()
    this.isLive = false
  }
  private open(before?: EventSource): void {
    const { at } = this
    const source = new EventSource(`${this.base}live?by=${encodeURIComponent(this.by)}&at=${encodeURIComponent(at)}`)
    this.source = source
    const on = <T>(name: string, hear: (data: T) => void) =>
      source.addEventListener(name, ({ data }: MessageEvent<string>) => {
        this.wait(silenceMs, this.gone)
        hear(JSON.parse(data) as T)
      })
    source.onopen = () => {
      before?.close()
      this.wait(silenceMs, this.gone)
      if (!this.isLive) this.hears.opened()
      this.isLive = true
      this.pause = againMs.first
      // Somebody went on while it opened.
      if (at !== this.at) this.open(source)
    }
    source.onerror = () => {
      before?.close()
      if (source === this.source) this.gone()
    }
    on('still', this.hears.still)
    on<{ readonly entries: readonly SentEntry[] }>('log', ({ entries }) => this.hears.entries(entries))
    on<{ readonly here: readonly Here[] }>('here', ({ here }) => this.hears.here(here))
    on('job', this.hears.job)
    this.wait(silenceMs, this.gone)
  }
  private readonly gone = (): void => {
    this.end()
    this.hears.lost()
    this.wait(this.pause, this.again)
    this.pause = Math.min(againMs.last, this.pause * 2)
  }
  private wait(ms: number, then: () => void): void {
    clearTimeout(this.timer)
    this.timer = setTimeout(then, ms)
  }
}
