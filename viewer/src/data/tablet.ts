import type { Place } from '@evenhem/job'
import { type Keeper, openKeeper } from './keeper.ts'
import { type Here, Live } from './live.ts'
import { PhotoBox } from './photo-box.ts'
import { type JobServer, jobServer, photoServer, Refused, type Served, type ServedCopy } from './served.ts'
import { SiteStore } from './site.ts'

export { lasting } from './lasting.ts'
export { baseNow } from './served.ts'
export { signaturesIn, signed } from './signing.ts'
export { photosIn } from './site-photos.ts'

/** With a copy of the job, nobody waits longer than this for the server. */
const startsAfterMs = 1_500
const after = <T>(ms: number, what: T): Promise<T> => new Promise((done) => setTimeout(() => done(what), ms))

/** Where this tablet keeps what it enters: by the number of the job, and by its address where one server has many. */
const keyOf = (base: string, { ordered }: Served): string => `${base === '/' ? '' : base}${ordered?.job.number ?? ''}`

/**
 * The job as this tablet has it: the order from the server, or as it was kept here; what was found on site; and what others enter meanwhile.
 * Tells of `order` when the order was changed.
 */
export class Tablet extends EventTarget {
  private readonly keeper: Keeper
  private readonly server: JobServer
  private readonly tabs = new BroadcastChannel('evenhem')
  private live?: Live
  private copy: ServedCopy
  readonly site: SiteStore
  readonly photos: PhotoBox

  private constructor(keeper: Keeper, server: JobServer, copy: ServedCopy) {
    super()
    this.keeper = keeper
    this.server = server
    this.copy = copy
    const key = keyOf(server.base, copy.served)
    this.site = new SiteStore(key, keeper, server)
    this.photos = new PhotoBox(key, keeper, photoServer(server.base))
    this.tabs.onmessage = () => void Promise.all([this.site.reread(), this.photos.reread()])
    for (const kept of [this.site, this.photos]) kept.addEventListener('kept', () => this.tabs.postMessage('kept'))
  }

  /** Opens the job at an address. Throws `Refused` when the server has none there, and what fetch throws when nothing is kept either. `waits`: another tab has to be closed first. */
  static async open(base: string, waits: () => void): Promise<Tablet> {
    const server = jobServer(base)
    const asked = server.job()
    asked.catch(() => undefined)
    const keeper = await openKeeper(waits)
    const tablet = new Tablet(keeper, server, await latest(asked, await keeper.served(base).catch(() => undefined)))
    await tablet.keep()
    return tablet
  }
  /** Takes up what was found, and stays in contact. */
  async start(): Promise<void> {
    const { site, server, keeper, photos } = this
    await Promise.all([site.start(), photos.reread()])
    this.live = new Live(server.base, await keeper.device(), {
      opened: () => {
        site.hears()
        void site.refresh()
        void photos.send()
        void this.again()
      },
      lost: () => site.hearsNoMore(),
      still: () => {
        site.hears()
        void photos.send()
      },
      entries: (entries) => site.take(entries),
      here: (here) => void this.meets(here),
      job: () => void this.again(),
    })
  }
  close(): void {
    this.live?.close()
    this.tabs.close()
    this.photos.close()
    this.site.stop()
  }

  get served(): Served {
    return this.copy.served
  }
  /** From now on others see this window as held here. */
  show(at: Place | ''): void {
    this.live?.show(at)
  }

  private async meets(here: readonly Here[]): Promise<void> {
    const me = await this.keeper.device()
    this.site.hears(here.filter(({ by }) => by !== me))
  }
  /** Asks for the order again: it may have been changed. */
  private async again(): Promise<void> {
    const copy = await this.server.job().catch(() => undefined)
    if (!copy || copy.tag === this.copy.tag) return
    this.copy = copy
    await this.keep()
    this.dispatchEvent(new Event('order'))
  }
  /** Without room for a copy the job stays as long as the page is open. */
  private async keep(): Promise<void> {
    const { base } = this.server
    const kept = await this.keeper.served(base).catch(() => undefined)
    if (kept?.tag !== this.copy.tag) await this.keeper.keepServed(base, this.copy).catch(() => undefined)
  }
}

/** What the server answers, or the copy when it does not answer soon. That it has no such job, or many, goes before a copy. */
function latest(asked: Promise<ServedCopy>, kept: ServedCopy | undefined): Promise<ServedCopy> {
  if (!kept) return asked
  const orKept = asked.catch((error) => {
    if (error instanceof Refused && error.code !== 'unpaired') throw error
    return kept
  })
  return Promise.race([orKept, after(startsAfterMs, kept)])
}
