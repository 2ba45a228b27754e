import { below, nameOf, type Place, type PlacedWindow, type Readings, windowsOf } from '@evenhem/job'
import type { ReadingUnit } from '@evenhem/length'
import { planText } from '@evenhem/planner'
import { css, html, LitElement, nothing } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { changedPlaces, changesOf, isNews } from '../data/changes.ts'
import type { Lasting } from '../data/lasting.ts'
import { startPlanning } from '../data/planning.ts'
import { writeLast } from '../data/progress.ts'
import type { Refused, Served } from '../data/served.ts'
import type { PutShown, SheetOrder } from '../data/sheet.ts'
import type { Signing } from '../data/signing.ts'
import type { Contact, Entered, SiteStore } from '../data/site.ts'
import type { SitePhoto } from '../data/site-photos.ts'
import type { Tablet } from '../data/tablet.ts'
import type { HowTold, SiteTools } from '../data/tools.ts'
import { type Address, readAddress } from '../data/way.ts'
import { Choices } from '../elements/choices.ts'
import type { Notice } from '../elements/notice-strip.ts'
import { base } from '../elements/shared.ts'
import type { Planned, PluginWords } from '../worker.ts'
import type { HouseOrder } from './house-page.ts'
import { HousePlans } from './house-plans.ts'
import './state-page.ts'

/** What stands in the way of a job: nobody is known here, one of many is to be chosen, or what went wrong. */
type Instead = { readonly is: 'pair' } | { readonly is: 'jobs' } | { readonly is: 'trouble'; readonly says: string }

/** The whole page: has the job planned in a worker, and shows the house or a window's sheet in a light, a unit and a language. */
@customElement('evenhem-app')
export class EvenhemApp extends LitElement {
  @state() private served?: Served
  @state() private planned?: Planned
  @state() private instead?: Instead
  @state() private address: Address = readAddress(location.hash)
  /** The scripts of house and sheet have come: the first paint does not wait for them. */
  @state() private canShow = false
  /** Something that has to be said beside the sheet, until it is closed. */
  @state() private notice?: Notice
  private windows: readonly PlacedWindow[] = []
  private words: PluginWords = []
  private readonly planning = startPlanning()
  private readonly choices = new Choices(this)
  private readonly plans = new HousePlans(this, this.planning, (error) => this.failed(error))
  private tablet?: Tablet
  /** What comes after the first paint. */
  private beside?: typeof import('../data/tablet.ts')
  /** The order's own readings with what was found on site. */
  private readings: Readings = {}
  @state() private put?: PutShown
  @state() private contact?: Contact
  @state() private lasting?: Lasting
  /** What stood before the last values that were put here. */
  private former: readonly Entered[] = []
  private own: readonly Place[] = []
  private untold: readonly Place[] = []
  private following: Promise<void> = Promise.resolve()
  private readonly followAddress = () => void this.tried(() => this.show())

  static override readonly styles = [base, css`:host { min-height: 100dvh; background: var(--sheet) }`]

  override connectedCallback(): void {
    super.connectedCallback()
    addEventListener('popstate', this.followAddress)
    void this.tried(() => this.load())
  }

  override disconnectedCallback(): void {
    removeEventListener('popstate', this.followAddress)
    this.tablet?.close()
    super.disconnectedCallback()
  }

  /** The plan that this sheet shows, in the one text form of plans; undefined while there is none. */
  planText(): string | undefined {
    return this.planned && planText(this.planned.plan)
  }

  override render() {
    const { nextLight, nextLanguage } = this.choices
    const strip = this.notice
      ? html`<notice-strip .notice=${this.notice} @notice-read=${() => (this.notice = undefined)}></notice-strip>`
      : nothing
    return html`<div @next-unit=${() => this.choices.nextUnit(this.unit)} @next-light=${nextLight} @next-language=${nextLanguage} @need-windows=${({ detail }: CustomEvent<readonly Place[]>) => this.plans.need(detail)}>${this.page()}${strip}</div>`
  }

  private page() {
    const { instead, canShow, address } = this
    if (instead?.is === 'pair' || address.is === 'pair')
      return html`<pair-page .code=${address.is === 'pair' ? address.code : ''} @paired=${this.paired}></pair-page>`
    if (address.is === 'tablets') return html`<tablets-page></tablets-page>`
    if (instead?.is === 'jobs') return html`<jobs-page></jobs-page>`
    if (address.is === 'hand-over' && canShow) return this.handOver()
    return (canShow && (this.atHouse ? this.housePage() : this.sheet())) || this.statePage()
  }
  private sheet() {
    const { contact, lasting, windows, tools } = this
    const { light } = this.choices
    const order = this.order()
    return (
      order &&
      html`<window-sheet .order=${order} .light=${light} .windows=${windows} .tools=${tools} .contact=${contact} .lasting=${lasting} .photos=${this.photos(order.found.place)}></window-sheet>`
    )
  }
  private housePage() {
    const order = this.houseOrder()
    return (
      order &&
      html`<house-page .order=${order} .light=${this.choices.light} .contact=${this.contact} .lasting=${this.lasting}></house-page>`
    )
  }
  private handOver() {
    const signatures = this.beside?.signaturesIn(this.readings) ?? []
    return html`<hand-over-page .order=${this.houseOrder()} .signatures=${signatures} .sign=${this.sign}></hand-over-page>`
  }
  /** Whether the signature was kept. An order whose bytes nobody vouches for is not signed. */
  private readonly sign = async (signing: Signing): Promise<boolean> => {
    const { served, site, beside } = this
    if (!site || !beside || served?.hash === undefined) return false
    return this.putAll([beside.signed(signing, served.hash, site.entries)], 'untold')
  }
  private statePage() {
    const { served, windows, instead } = this
    const trouble = instead?.is === 'trouble' ? instead.says : undefined
    return html`<state-page .served=${served} .trouble=${trouble} .empty=${served?.ordered !== undefined && windows.length === 0} @try-again=${() => this.tried(() => this.load())}></state-page>`
  }

  private order(): SheetOrder | undefined {
    const { served, planned } = this
    const ordered = served?.ordered
    const found = this.windows.find(({ place }) => place === planned?.plan.window)
    if (!ordered || !planned || !found) return undefined
    const { readings, unit, put } = this
    return { ordered, readings, found, planned, unit, language: this.choices.language, put }
  }

  private houseOrder(): HouseOrder | undefined {
    const { served, words, windows, unit } = this
    const { house, shorts } = this.plans
    return served?.ordered && { ordered: served.ordered, windows, house, shorts, words, unit, language: this.choices.language }
  }

  /** The reader's choice, else the order's own unit. */
  private get unit(): ReadingUnit {
    return this.choices.unit ?? (this.served?.ordered?.units === 'in' ? 'in' : 'mm')
  }
  private get atHouse(): boolean {
    return this.addressed() === undefined
  }
  private get site(): SiteStore | undefined {
    return this.tablet?.site
  }

  /** Says on the page what went wrong. */
  private async tried(work: () => Promise<void>): Promise<void> {
    this.instead = undefined
    try {
      await work()
    } catch (error) {
      this.canShow = false
      await this.goInstead(error)
    }
  }
  private async goInstead(error: unknown): Promise<void> {
    const { code } = error as Partial<Refused>
    if (code === 'unpaired') await import('./pair-page.ts')
    if (code === 'many-jobs') await import('./jobs-page.ts')
    this.instead =
      code === 'unpaired' ? { is: 'pair' } : code === 'many-jobs' ? { is: 'jobs' } : { is: 'trouble', says: told(error) }
  }

  private async load(): Promise<void> {
    await this.lead()
    const scripts = Promise.all([import('./window-sheet.ts'), import('./house-page.ts'), import('../elements/notice-strip.ts')])
    const beside = await import('../data/tablet.ts')
    const { Tablet, baseNow, lasting } = beside
    this.beside = beside
    this.tablet?.close()
    const tablet = await Tablet.open(baseNow(), () => (this.notice = { is: 'otherTab' }))
    this.tablet = tablet
    this.windows = tablet.served.ordered ? windowsOf(tablet.served.ordered) : []
    this.served = tablet.served
    if (!tablet.served.ordered) return
    const { site } = tablet
    const stands = () => {
      this.contact = { ...site.contact, photos: tablet.photos.waiting }
    }
    site.addEventListener('contact', stands)
    tablet.photos.addEventListener('change', stands)
    await tablet.start()
    await this.take()
    await scripts
    this.canShow = true
    site.addEventListener('change', () => this.follow())
    tablet.addEventListener('order', () => this.reorder())
    this.follow()
    this.lasting = await lasting(() => (this.notice ??= { is: 'needsServer' }))
  }
  /** Pages that lie beside the job come when they are asked for. */
  private async lead(): Promise<void> {
    if (this.address.is === 'pair') await import('./pair-page.ts')
    if (this.address.is === 'tablets') await import('./tablets-page.ts')
    if (this.address.is === 'hand-over') await import('./hand-over-page.ts')
  }
  private readonly paired = (): void => {
    history.replaceState(null, '', location.pathname)
    this.address = readAddress('')
    void this.tried(() => this.load())
  }

  /** Has the order planned as it was found. */
  private async take(): Promise<void> {
    const { ordered, readings } = this.served ?? {}
    this.windows = ordered ? windowsOf(ordered) : []
    if (!ordered || !readings || this.windows.length === 0) return
    this.readings = this.site?.readings(readings) ?? readings
    this.words = await this.planning.plan({ ask: 'take', ordered, readings: this.readings })
    await this.show('anew')
  }
  /** The workroom sent another order: it is planned with everything that was found. */
  private reorder(): void {
    const again = async () => {
      this.served = this.tablet?.served
      this.plans.forget([], this.windows)
      await this.take()
      this.notice = { is: 'newOrder' }
    }
    this.following = this.following.then(again).catch(this.failed)
  }

  private photos(window: Place): readonly SitePhoto[] {
    return this.tablet && this.beside ? this.beside.photosIn(this.readings, window, this.tablet.photos) : []
  }
  /** Photos are kept one after the other: what there is room for stays. */
  private async takePhotos(window: Place, files: readonly Blob[], says: string): Promise<readonly string[]> {
    const hashes: string[] = []
    for (const file of files) {
      const hash = await this.tablet?.photos.take(file).catch((error) => {
        this.notice = { is: 'notKept', why: told(error) }
      })
      if (hash && (await this.putAll([{ place: below(window, 'found', 'photos', hash), value: says, read: says }], 'quietly')))
        hashes.push(hash)
    }
    return hashes
  }

  /** What the sheet may do about what was found. */
  private readonly tools: SiteTools = {
    put: (entered, how) => this.putAll(entered, how),
    undo: async () => void (await this.putAll(this.former)),
    read: () => {
      this.put = undefined
    },
    tryOut: (window, more) => this.planning.plan({ ask: 'try', window, readings: { ...this.readings, ...more } }),
    history: (place) => this.site?.history(place) ?? [],
    live: (place) => this.site?.live(place) ?? [],
    conflicts: (below) => this.site?.conflicts(below) ?? [],
    refused: (below) => this.site?.refused(below) ?? [],
    photos: (window) => this.photos(window),
    takePhotos: (window, files, says) => this.takePhotos(window, files, says),
  }

  private async putAll(entered: readonly Entered[], how?: HowTold): Promise<boolean> {
    const { site } = this
    if (!site) return false
    const former = entered.map(({ place }) => site.standing(place, this.served?.readings ?? {}))
    const places = entered.map(({ place }) => place)
    this.own = how === undefined ? places : []
    this.untold = how === 'untold' ? places : []
    try {
      await site.put(entered)
    } catch (error) {
      // Nothing of it was kept: whoever entered it still sees it, and hears why.
      this.notice = { is: 'notKept', why: told(error) }
      return false
    }
    this.former = former
    await this.following
    return true
  }
  /** Plans anew with what came, and says what that changed. One after the other: the last one to come is the one that stays. */
  private follow(): void {
    this.following = this.following.then(() => this.followOnce()).catch(this.failed)
  }
  private async followOnce(): Promise<void> {
    const { site, served } = this
    if (!site || !served) return
    const readings = site.readings(served.readings)
    const places = changedPlaces(this.readings, readings)
    if (places.length === 0) return
    this.readings = readings
    await this.planning.plan({ ask: 'found', readings })
    this.plans.forget(places, this.windows)
    const before = this.planned?.plan
    if (!before) return
    const plan = await this.planning.plan({ ask: 'window', window: before.window })
    if (this.planned?.plan !== before) return
    const isOwn = places.some((place) => this.own.includes(place))
    const changes = changesOf(before, plan)
    const isTold = !places.every((place) => this.untold.includes(place))
    if (isTold && (isOwn || (isNews(changes) && !this.put))) this.put = { places, changes, canUndo: isOwn }
    if (isOwn) this.own = []
    this.planned = { plan, words: this.words }
  }

  /** Shows what the address says. A job of one window opens on its sheet, any other on its house. */
  private async show(how?: 'anew'): Promise<void> {
    this.address = readAddress(location.hash)
    await this.lead()
    const found = this.addressed()
    this.tablet?.show(found?.place ?? '')
    if (!found) return this.showHouse()
    if (how !== 'anew' && this.planned?.plan.window === found.place) return
    const plan = await this.planning.plan({ ask: 'window', window: found.place })
    // Whoever goes on quickly sees the last one.
    if (this.addressed()?.place !== found.place) return
    this.put = undefined
    this.planned = { plan, words: this.words }
    writeLast(this.served?.ordered?.job.number ?? '', found.place)
  }

  private showHouse(): void {
    document.title = this.served?.ordered?.job.name ?? 'Evenhem'
  }

  private addressed(): PlacedWindow | undefined {
    const { address, windows } = this
    if (address.is === 'start') return windows.length === 1 ? windows[0] : undefined
    return address.is === 'window' ? windows.find((each) => nameOf(each) === `${address.room}/${address.window}`) : undefined
  }

  private readonly failed = (error: unknown): void => {
    this.instead = { is: 'trouble', says: told(error) }
  }
}

const told = (error: unknown): string => (error instanceof Error ? error.message : String(error))
