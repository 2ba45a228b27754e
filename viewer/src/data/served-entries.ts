import { eventId } from '@evenhem/site-log'
import type { Keeper, KeptEntry } from './keeper.ts'
import type { SentEntry } from './site.ts'

/** The entries of a job that the server has, of all devices, with a copy of them on this tablet. */
export class ServedEntries {
  all: readonly SentEntry[] = []
  private readonly job: string
  private readonly keeper: Keeper
  private kept: ReadonlyMap<string, KeptEntry> = new Map()
  /** What came by itself while the whole log was asked for: the answer may be older. */
  private meanwhile: readonly SentEntry[] = []

  constructor(job: string, keeper: Keeper) {
    this.job = job
    this.keeper = keeper
  }
  /** Takes up the copy; whether there is one. */
  async load(): Promise<boolean> {
    const kept = await this.keeper.entries(this.job)
    this.kept = new Map(kept.map((each) => [each.id, each]))
    this.all = kept.map(({ entry }) => entry)
    return kept.length > 0
  }

  /** Asks for the whole log, which then goes before the copy. Throws what asking throws. */
  async ask(log: () => Promise<readonly SentEntry[]>): Promise<void> {
    this.meanwhile = []
    const entries = await log()
    this.all = [...entries, ...this.meanwhile]
    const ids = new Set<string>(this.all.map(({ event }) => eventId(event)))
    void this.keep(
      this.all,
      [...this.kept.values()].filter(({ id }) => !ids.has(id)),
    )
  }
  /** Takes entries that the server tells of. */
  take(entries: readonly SentEntry[]): void {
    this.meanwhile = [...this.meanwhile, ...entries]
    this.all = [...this.all, ...entries]
    void this.keep(entries)
  }

  /** A copy that there is no room for is no loss: the server has it. */
  private async keep(entries: readonly SentEntry[], forget: readonly KeptEntry[] = []): Promise<void> {
    const made = entries.map((entry): KeptEntry => ({ job: this.job, id: eventId(entry.event), entry }))
    const news = made.filter(({ id, entry }) => JSON.stringify(this.kept.get(id)?.entry) !== JSON.stringify(entry))
    if (news.length === 0 && forget.length === 0) return
    const gone = new Set(forget)
    this.kept = new Map([...[...this.kept.values()].filter((each) => !gone.has(each)), ...news].map((each) => [each.id, each]))
    await this.keeper.keepEntries(news, forget).catch(() => undefined)
  }
}
