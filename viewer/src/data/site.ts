import type { Place, Readings } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import {
  type Entry,
  type Event,
  eventId,
  fold,
  foundWith,
  hashOf,
  historyOf,
  isWrong,
  type Last,
  type Line,
  readEvent,
  type Site,
  write,
  writeEvent,
} from '@evenhem/site-log'
import { formAt } from './form.ts'
import type { Keeper, KeptLine } from './keeper.ts'
import type { Here } from './live.ts'
import { momentHere } from './moment.ts'
import { rawLength } from './raw.ts'
import { type JobServer, Refused } from './served.ts'
import { ServedEntries } from './served-entries.ts'

/** A value to put at a place: as it is written into the log, and as it was read here. Without both it withdraws. */
export interface Entered {
  readonly place: Place
  readonly value?: unknown
  readonly read?: unknown
}
/** An entry as the server sends it; why it was refused is said in every language. */
export type SentEntry = Omit<Entry, 'refused'> & {
  readonly refused?: NonNullable<Entry['refused']> & { readonly says: Readonly<Record<string, string>> }
}

/** How the tablet stands to the server. */
export interface Contact {
  /** Entries that the server has not confirmed. */
  readonly waiting: number
  /** Photos that it has not. */
  readonly photos?: number
  /** When it last answered, in milliseconds. */
  readonly last?: number
  /** It did not answer, or refused: what it said. */
  readonly trouble?: string
  /** It knows nobody by this tablet: it wants to be paired. */
  readonly unpaired?: true
  /** Whether entries outlast the page. */
  readonly lasts: boolean
  /** The server tells by itself what others enter. */
  readonly live: boolean
  /** The other devices that have this job open now. */
  readonly others: readonly Here[]
}

const eventOf = (text: string): Event | undefined => {
  const event = readEvent(text)
  return isWrong(event) ? undefined : event
}
const entryOf = ({ text, read }: KeptLine): readonly SentEntry[] => {
  const event = eventOf(text)
  return event ? [{ event, ...(read === undefined ? {} : { read }) }] : []
}
const lastOf = (lines: readonly KeptLine[]): Last | undefined => {
  const line = lines.at(-1)
  const event = line && eventOf(line.text)
  return line && event ? { n: line.n, count: event.count, hash: hashOf(line.text) } : undefined
}

const mostAtOnce = 200
const firstWaitMs = 2_000
const longestWaitMs = 30_000
/** With a copy of what others wrote, nobody waits longer than this for the rest before the sheet is shown. */
const startsAfterMs = 1_500

/**
 * What was found on site, as this tablet knows it: its own entries, kept until the server has confirmed them and after, and those of others.
 * Tells of `change` whenever something came, and of `contact` whenever how it stands to the server changed.
 */
export class SiteStore extends EventTarget {
  private readonly job: string
  private readonly keeper: Keeper
  private readonly server: JobServer
  private own: readonly KeptLine[] = []
  private readonly served: ServedEntries
  private sending: Promise<void> | undefined
  private wait = firstWaitMs
  private timer: ReturnType<typeof setTimeout> | undefined
  entries: readonly SentEntry[] = []
  site: Site = fold([])
  contact: Contact

  constructor(job: string, keeper: Keeper, server: JobServer) {
    super()
    this.job = job
    this.keeper = keeper
    this.server = server
    this.served = new ServedEntries(job, keeper)
    this.contact = { waiting: 0, lasts: keeper.lasts, live: false, others: [] }
  }

  /** Takes up what this tablet kept, then asks the server for the rest. Resolves when it answered or could not, or soon where a copy is kept. */
  async start(): Promise<void> {
    const hasCopy = await this.served.load()
    this.own = await this.keeper.lines(this.job)
    this.folded()
    const asked = this.refresh()
    await (hasCopy ? Promise.race([asked, new Promise((done) => setTimeout(done, startsAfterMs))]) : asked)
  }
  stop(): void {
    clearTimeout(this.timer)
  }

  /** Puts values over whatever stands at their places. They count at once; the server hears of them as soon as it can. */
  async put(entered: readonly Entered[], who?: string): Promise<void> {
    const reads = new Map(entered.map(({ place, read }) => [place, read]))
    const clock = momentHere(new Date())
    const made = await this.keeper.add(this.job, (device, kept) => {
      const site = fold(this.with(kept))
      const last = lastOf(kept.filter(({ by }) => by === device))
      const lines = write({ device, last, clock, ...(who ? { who } : {}) }, entered, site)
      return lines.map((line) => this.keptLine(line, reads.get(line.event.place)))
    })
    await this.reread()
    if (made.length === 0) return
    this.dispatchEvent(new Event('kept'))
    void this.send()
  }
  /** Takes up what is kept: another tab of this tablet may have put something too. */
  async reread(): Promise<void> {
    this.own = await this.keeper.lines(this.job)
    this.folded()
  }
  private keptLine({ event: { by, n, place }, text }: Line, read: unknown): KeptLine {
    return { job: this.job, by, n, text, place, sent: false, ...(read === undefined ? {} : { read }) }
  }

  /** The readings of an order with what was found laid over them. */
  readings(ordered: Readings): Readings {
    return foundWith(ordered, this.site)
  }

  /** What stands at a place and nobody put anything over. */
  live(place: Place): readonly SentEntry[] {
    return (this.site.places.get(place)?.live ?? []) as readonly SentEntry[]
  }

  /** Places below a place at which values stand against each other. */
  conflicts(below: Place): readonly Place[] {
    return this.site.conflicts.map(({ place }) => place).filter((place) => place.startsWith(`${below}/`))
  }
  /** Entries below a place whose values were left out: a panel may have gone from the order. */
  refused(below: Place): readonly SentEntry[] {
    return this.entries.filter(({ event, refused }) => refused !== undefined && event.place.startsWith(`${below}/`))
  }

  /** What stands at a place now, as it would be put again; the order's own reading where the log has none. */
  standing(place: Place, ordered: Readings): Entered {
    const entry = this.live(place).at(-1)
    if (entry) return { place, value: entry.event.value, read: entry.read }
    const read = ordered[place]?.value
    if (read === undefined || this.site.places.get(place)?.withdrawn) return { place }
    return { place, read, value: formAt(place)?.is === 'length' ? rawLength(read as Length) : read }
  }

  /** Everything that was ever put at a place, the latest last. */
  history(place: Place): readonly SentEntry[] {
    return historyOf(this.entries, place)
  }

  /** Everything the server has, and then what it has not. */
  async refresh(): Promise<void> {
    try {
      await this.served.ask(this.server.log)
      this.folded()
      this.heard()
    } catch (error) {
      this.notHeard(error)
    }
    await this.send()
  }
  /** Takes entries that the server tells of. */
  take(entries: readonly SentEntry[]): void {
    this.served.take(entries)
    this.heard()
    this.folded()
  }

  /** The server tells by itself: that it is there, or who else is. */
  hears(others = this.contact.others): void {
    this.heard()
    this.told({ live: true, others })
  }
  /** It does not tell any more, so nobody knows who is there. */
  hearsNoMore(): void {
    this.told({ live: false, others: [] })
  }

  /** Sends what waits, in order; one at a time, however often it is asked for. */
  private send(): Promise<void> {
    this.sending ??= this.sendAll().finally(() => {
      this.sending = undefined
      if (this.contact.waiting > 0 && !this.timer) this.tryLater()
    })
    return this.sending
  }
  private tryLater(): void {
    this.timer = setTimeout(() => {
      this.timer = undefined
      void this.send()
    }, this.wait)
    this.wait = Math.min(longestWaitMs, this.wait * 2)
  }

  private async sendAll(): Promise<void> {
    for (let next = this.nextLines(); next.length > 0; next = this.nextLines()) {
      try {
        if (!(await this.sendLines(next))) return
      } catch (error) {
        this.notHeard(error)
        return
      }
    }
  }
  private nextLines(): readonly KeptLine[] {
    const first = this.own.find(({ sent }) => !sent)
    return first ? this.own.filter(({ by, sent }) => !sent && by === first.by).slice(0, mostAtOnce) : []
  }

  /** Whether it may go on. */
  private async sendLines(lines: readonly KeptLine[]): Promise<boolean> {
    const answer = await this.server.send(lines.map(({ text }) => text))
    if (answer.is === 'kept') {
      await this.mark(lines, true)
      this.take(answer.entries)
      return true
    }
    if (await this.settle(lines, answer.code, answer.last)) return true
    throw new Refused(answer.code, answer.message)
  }

  /**
   * The server has less than was sent to it once (its folder was put back to an older state): it gets it again. It has another line under the
   * same number: somebody else writes under this name, so what it has not goes under a new one.
   */
  private async settle(lines: readonly KeptLine[], code: string, last: Last | undefined): Promise<boolean> {
    const by = lines[0]?.by ?? ''
    const there = last?.n ?? 0
    if (code === 'log/gap' && there + 1 < (lines[0]?.n ?? 0)) {
      const again = this.own.filter((line) => line.by === by && line.n > there && line.sent)
      await this.mark(again, false)
      return again.length > 0
    }
    if (code !== 'log/clash' && code !== 'log/chain') return false
    await this.underNewName(lines)
    return true
  }

  private async underNewName(lines: readonly KeptLine[]): Promise<void> {
    const device = await this.keeper.rename()
    const names = new Map<string, string>()
    let last: Last | undefined
    const renamed = lines.flatMap((line): readonly KeptLine[] => {
      const event = eventOf(line.text)
      if (!event) return []
      const n = (last?.n ?? 0) + 1
      const { before: _, ...rest } = event
      const over = event.over?.map((id) => (names.get(id) ?? id) as NonNullable<Event['over']>[number])
      const moved: Event = { ...rest, by: device, n, ...(last ? { before: last.hash } : {}), ...(over ? { over } : {}) }
      const text = writeEvent(moved)
      names.set(eventId(event), eventId(moved))
      last = { n, count: event.count, hash: hashOf(text) }
      return [{ ...line, by: device, n, text }]
    })
    await this.keeper.replace(this.job, lines, renamed)
    this.own = [...this.own.filter((line) => !lines.includes(line)), ...renamed]
    this.folded()
  }

  private async mark(lines: readonly KeptLine[], sent: boolean): Promise<void> {
    const marked = lines.map((line) => ({ ...line, sent }))
    await this.keeper.replace(this.job, [], marked)
    const by = new Map(marked.map((line) => [`${line.by}:${line.n}`, line]))
    this.own = this.own.map((line) => by.get(`${line.by}:${line.n}`) ?? line)
  }

  /** Own lines and all others, each once. What the server read of an entry counts more than what this tablet made of it. */
  private with(own: readonly KeptLine[]): readonly SentEntry[] {
    return [...new Map([...own.flatMap(entryOf), ...this.served.all].map((entry) => [eventId(entry.event), entry])).values()]
  }
  private folded(): void {
    this.entries = this.with(this.own)
    this.site = fold(this.entries)
    this.dispatchEvent(new Event('change'))
    this.told({})
  }
  private heard(): void {
    this.wait = firstWaitMs
    const { trouble: _, unpaired: __, ...contact } = this.contact
    this.contact = contact
    this.told({ last: Date.now() })
  }
  private notHeard(error: unknown): void {
    const trouble = error instanceof Error ? error.message : String(error)
    this.told({ trouble, ...(error instanceof Refused && error.code === 'unpaired' ? { unpaired: true } : {}) })
  }
  private told(change: Partial<Contact>): void {
    this.contact = { ...this.contact, ...change, waiting: this.own.filter(({ sent }) => !sent).length }
    this.dispatchEvent(new Event('contact'))
  }
}
