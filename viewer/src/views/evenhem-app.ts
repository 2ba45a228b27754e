import { nameOf, type Place, type PlacedWindow, type Readings, windowsOf } from '@evenhem/job'
import type { ReadingUnit } from '@evenhem/length'
import { planText } from '@evenhem/planner'
import { css, html, LitElement } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { changedPlaces, changesOf, isNews } from '../data/changes.ts'
import type { House, ShortWindow } from '../data/house.ts'
import { startPlanning } from '../data/planning.ts'
import { chosenLanguage, chosenLight, chosenUnit, following, type Light, lights, shine, units } from '../data/preferences.ts'
import { writeLast } from '../data/progress.ts'
import { fetchJob, type Served } from '../data/served.ts'
import type { PutShown, SheetOrder } from '../data/sheet.ts'
import type { Contact, Entered, SiteStore } from '../data/site.ts'
import type { SiteTools } from '../data/tools.ts'
import { readAddress } from '../data/way.ts'
import { base } from '../elements/shared.ts'
import { type Language, language, languages, speak } from '../words.ts'
import type { Planned, PluginWords } from '../worker.ts'
import type { HouseOrder } from './house-page.ts'
import './state-page.ts'

const systemIsDark = matchMedia('(prefers-color-scheme: dark)')
const ofBrowser = (): Language => languages.find((each) => navigator.language.startsWith(each)) ?? 'en'

/** The whole page: fetches the job once, has it planned in a worker, and shows the house or a window's sheet in a light, a unit and a language. */
@customElement('evenhem-app')
export class EvenhemApp extends LitElement {
  @state() private served?: Served
  @state() private planned?: Planned
  @state() private house?: House
  @state() private shorts: ReadonlyMap<string, ShortWindow> = new Map()
  @state() private trouble?: string
  @state() private light: Light = 'paper'
  @state() private unit?: ReadingUnit
  @state() private language: Language = 'en'
  /** Shows the house instead of a sheet. */
  @state() private atHouse = false
  /** The scripts of house and sheet have come: the first paint does not wait for them. */
  @state() private canShow = false
  private windows: readonly PlacedWindow[] = []
  private isAsked = false
  private words: PluginWords = []
  private readonly planning = startPlanning()
  private site?: SiteStore
  /** The order's own readings with what was found on site. */
  private readings: Readings = {}
  @state() private put?: PutShown
  @state() private contact?: Contact
  /** What stood before the last values that were put here. */
  private former: readonly Entered[] = []
  private own: readonly Place[] = []
  private following: Promise<void> = Promise.resolve()
  private readonly followSystem = () => this.setLight(chosenLight.read())
  private readonly followAddress = () => void this.tried(() => this.show())
  private readonly forPrint = () => shine('paper')
  private readonly afterPrint = () => shine(this.light)

  static override readonly styles = [base, css`:host { min-height: 100dvh; background: var(--sheet) }`]

  override connectedCallback(): void {
    super.connectedCallback()
    this.setLight(chosenLight.read())
    this.setLanguage(chosenLanguage.read() ?? ofBrowser())
    this.unit = chosenUnit.read()
    systemIsDark.addEventListener('change', this.followSystem)
    addEventListener('popstate', this.followAddress)
    addEventListener('beforeprint', this.forPrint)
    addEventListener('afterprint', this.afterPrint)
    void this.tried(() => this.load())
  }

  override disconnectedCallback(): void {
    systemIsDark.removeEventListener('change', this.followSystem)
    removeEventListener('popstate', this.followAddress)
    removeEventListener('beforeprint', this.forPrint)
    removeEventListener('afterprint', this.afterPrint)
    this.site?.stop()
    super.disconnectedCallback()
  }

  /** The plan that this sheet shows, in the one text form of plans; undefined while there is none. */
  planText(): string | undefined {
    return this.planned && planText(this.planned.plan)
  }

  override render() {
    return html`<div @next-unit=${this.nextUnit} @next-light=${this.nextLight} @next-language=${this.nextLanguage} @need-windows=${this.needWindows}>${this.page()}</div>`
  }

  private page() {
    const { served, windows } = this
    const sheet = this.canShow && !this.atHouse ? this.order() : undefined
    if (sheet)
      return html`<window-sheet .order=${sheet} .light=${this.light} .windows=${windows} .tools=${this.tools} .contact=${this.contact}></window-sheet>`
    const house = this.canShow && this.atHouse ? this.houseOrder() : undefined
    if (house) return html`<house-page .order=${house} .light=${this.light} .contact=${this.contact}></house-page>`
    return html`<state-page .served=${served} .trouble=${this.trouble} .empty=${served?.ordered !== undefined && windows.length === 0} @try-again=${() => this.tried(() => this.load())}></state-page>`
  }

  private order(): SheetOrder | undefined {
    const { served, planned, language } = this
    const ordered = served?.ordered
    const found = this.windows.find(({ place }) => place === planned?.plan.window)
    if (!ordered || !planned || !found) return undefined
    return { ordered, readings: this.readings, found, planned, unit: this.reading, language, put: this.put }
  }

  private houseOrder(): HouseOrder | undefined {
    const { served, house, shorts, words, windows, language } = this
    return served?.ordered && { ordered: served.ordered, windows, house, shorts, words, unit: this.reading, language }
  }

  /** The reader's choice, else the order's own unit. */
  private get reading(): ReadingUnit {
    return this.unit ?? (this.served?.ordered?.units === 'in' ? 'in' : 'mm')
  }

  /** Says on the page what went wrong. */
  private async tried(work: () => Promise<void>): Promise<void> {
    this.trouble = undefined
    try {
      await work()
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error)
      this.canShow = false
    }
  }

  private async load(): Promise<void> {
    const scripts = Promise.all([import('./window-sheet.ts'), import('./house-page.ts')])
    const keeping = import('../data/keeping.ts')
    this.served = await fetchJob()
    const { ordered, readings } = this.served
    if (!ordered) return
    this.windows = windowsOf(ordered)
    if (this.windows.length === 0) return
    this.site?.stop()
    const site = await (await keeping).openSite(ordered.job.number)
    this.site = site
    this.contact = site.contact
    await site.start()
    this.readings = site.readings(readings)
    this.words = await this.planning.plan({ ask: 'take', ordered, readings: this.readings })
    await this.show()
    await scripts
    this.canShow = true
    site.addEventListener('change', () => this.follow())
    site.addEventListener('contact', () => {
      this.contact = site.contact
    })
  }

  /** What the sheet may do about what was found. */
  private readonly tools: SiteTools = {
    put: (entered, how) => this.putAll(entered, how),
    undo: () => this.putAll(this.former),
    read: () => {
      this.put = undefined
    },
    tryOut: (window, more) => this.planning.plan({ ask: 'try', window, readings: { ...this.readings, ...more } }),
    history: (place) => this.site?.history(place) ?? [],
    live: (place) => this.site?.live(place) ?? [],
    conflicts: (below) => this.site?.conflicts(below) ?? [],
    refused: (below) => this.site?.refused(below) ?? [],
  }

  private async putAll(entered: readonly Entered[], how?: 'quietly'): Promise<void> {
    const { site } = this
    if (!site) return
    this.former = entered.map(({ place }) => site.standing(place, this.served?.readings ?? {}))
    this.own = how === 'quietly' ? [] : entered.map(({ place }) => place)
    await site.put(entered)
    await this.following
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
    this.forget(places)
    const before = this.planned?.plan
    if (!before) return
    const plan = await this.planning.plan({ ask: 'window', window: before.window })
    if (this.planned?.plan !== before) return
    const isOwn = places.some((place) => this.own.includes(place))
    const changes = changesOf(before, plan)
    if (isOwn || (isNews(changes) && !this.put)) this.put = { places, changes, canUndo: isOwn }
    if (isOwn) this.own = []
    this.planned = { plan, words: this.words }
  }

  /** What was drawn small of windows that may have changed is asked for again. */
  private forget(places: readonly Place[]): void {
    const touched = new Set(places.map((place) => place.split('/').slice(0, 5).join('/')))
    const ofWindows = this.windows.filter(({ place }) => touched.has(place)).length === touched.size
    this.shorts = ofWindows ? new Map([...this.shorts].filter(([place]) => !touched.has(place))) : new Map()
    this.isAsked = false
    this.house = undefined
  }

  /** Shows what the address says. A job of one window opens on its sheet, any other on its house. */
  private async show(): Promise<void> {
    const found = this.addressed()
    this.atHouse = found === undefined
    if (!found) return this.showHouse()
    if (this.planned?.plan.window === found.place) return
    const plan = await this.planning.plan({ ask: 'window', window: found.place })
    // Whoever goes on quickly sees the last one.
    if (this.addressed() !== found) return
    this.put = undefined
    this.planned = { plan, words: this.words }
    writeLast(this.served?.ordered?.job.number ?? '', found.place)
  }

  private showHouse(): void {
    document.title = this.served?.ordered?.job.name ?? 'Evenhem'
  }

  /** The plan of the whole house comes after the windows that are seen: of thousands it takes a while. */
  private askForHouse(): void {
    if (this.isAsked) return
    this.isAsked = true
    this.planning.plan({ ask: 'house' }).then((house) => (this.house = house), this.failed)
  }

  private addressed(): PlacedWindow | undefined {
    const address = readAddress(location.hash)
    if (address.is === 'start') return this.windows.length === 1 ? this.windows[0] : undefined
    return address.is === 'window' ? this.windows.find((each) => nameOf(each) === `${address.room}/${address.window}`) : undefined
  }

  private readonly failed = (error: unknown): void => {
    this.trouble = error instanceof Error ? error.message : String(error)
  }

  private needWindows({ detail }: CustomEvent<readonly string[]>): void {
    const windows = detail.filter((place) => !this.shorts.has(place))
    if (windows.length === 0) return
    this.planning.plan({ ask: 'short', windows }).then((shorts) => {
      this.shorts = new Map([...this.shorts, ...shorts.map((short) => [short.place, short] as const)])
      this.askForHouse()
    }, this.failed)
  }

  private setLight(chosen: Light | undefined): void {
    this.light = chosen ?? (systemIsDark.matches ? 'night' : 'paper')
    shine(this.light)
  }

  private setLanguage(chosen: Language): void {
    speak(chosen)
    this.language = chosen
    document.documentElement.lang = chosen
  }

  private nextLight(): void {
    const light = following(lights, this.light)
    chosenLight.write(light)
    this.setLight(light)
  }

  private nextLanguage(): void {
    const next = following(languages, language)
    chosenLanguage.write(next)
    this.setLanguage(next)
  }

  private nextUnit(): void {
    this.unit = following(units, this.reading)
    chosenUnit.write(this.unit)
  }
}
