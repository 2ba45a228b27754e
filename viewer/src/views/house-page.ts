import { type Job, type Place, type PlacedWindow, placeInWords } from '@evenhem/job'
import { type ReadingUnit, writeLength } from '@evenhem/length'
import { css, html, nothing, type PropertyValues } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { House, OpenCheck, ShortWindow, Standing, StandingWindow } from '../data/house.ts'
import type { Lasting } from '../data/lasting.ts'
import type { Light } from '../data/preferences.ts'
import { readLast } from '../data/progress.ts'
import { baseNow } from '../data/served.ts'
import { sayOn, tapeOf } from '../data/sheet.ts'
import type { Contact } from '../data/site.ts'
import { heightOf, scaleOf, type WalkedRoom, walkedRooms, widthOf } from '../data/walls.ts'
import { addressOf, handOverAddress } from '../data/way.ts'
import { Media } from '../elements/media.ts'
import type { OpenRow } from '../elements/open-list.ts'
import type { ShownRoom, ShownWindow } from '../elements/room-strip.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, tell } from '../elements/shared.ts'
import { Sized } from '../elements/sized.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { verdictOf, verdictSign, verdictStyle } from '../elements/verdict.ts'
import { counted, fill, type Language, language, unitNames, words } from '../words.ts'
import type { PluginWords } from '../worker.ts'
import '../elements/open-list.ts'
import '../elements/room-strip.ts'
import '../elements/sheet-bar.ts'

/** What the page of a house is made from. Without `house` its plan is still worked out. */
export interface HouseOrder {
  readonly ordered: Job
  readonly windows: readonly PlacedWindow[]
  readonly house?: House
  readonly shorts: ReadonlyMap<Place, ShortWindow>
  readonly words: PluginWords
  readonly unit: ReadingUnit
  readonly language: Language
}

const standings: readonly Standing[] = ['fail', 'measure', 'warn', 'unknown', 'pass']

/** So many rows are shown at first, and so many more at a touch. */
const rows = { first: 6, more: 40 }

/** The house: every window drawn small at one scale, what is open, what to measure next as one walks, and where to go on. */
@customElement('house-page')
export class HousePage extends SpokenElement {
  @property({ attribute: false }) order!: HouseOrder
  @property() light: Light = 'paper'
  @property({ attribute: false }) contact?: Contact
  @property({ attribute: false }) lasting?: Lasting
  @state() private shownOpen = rows.first
  @state() private shownAsks = rows.first
  private say!: ReturnType<typeof sayOn>
  private rooms: readonly WalkedRoom[] = []
  private standings: ReadonlyMap<Place, StandingWindow> = new Map()
  private byPlace: ReadonlyMap<Place, PlacedWindow> = new Map()
  private last?: PlacedWindow
  private readonly size = new Sized(this)
  private readonly wide = new Media(this, '(min-width: 1000px)')

  static override readonly styles = [
    base,
    sentenceStyle,
    verdictStyle,
    css`
      :host { display: grid; min-height: 100dvh; grid-template: 68px 1fr auto / minmax(0, 1fr); background: var(--sheet) }
      sheet-bar { position: sticky; top: 0; z-index: 1; height: 68px }
      main { padding: 24px 32px 20px; min-width: 0 }
      .rooms { display: flex; flex-wrap: wrap; gap: 30px 40px; align-items: flex-end }
      room-strip { max-width: 100% }
      .counts { display: flex; flex-wrap: wrap; gap: 6px 26px; min-height: 48px; margin: -14px 0 12px; font-size: 17px; text-align: left; align-items: center }
      .counts span { display: inline-flex; gap: 9px; align-items: center }
      aside { scroll-margin-top: 68px }
      .over { display: inline-flex; align-items: center; min-height: 60px; margin-top: 14px; padding: 6px 18px; border: 2px solid var(--act); border-radius: 6px; color: var(--act); font-size: 19px; font-weight: 600; text-decoration: none }
      .scale { margin-top: 22px; font-size: 15px; color: var(--ink2) }
      aside { border-top: 2px solid var(--ink); padding: 6px 32px 130px }
      .go { position: sticky; bottom: 0; z-index: 1; background: var(--sheet); padding: 10px 32px 14px }
      .go a { display: flex; align-items: center; justify-content: space-between; gap: 14px; min-height: 88px; padding: 10px 24px; border-radius: 6px; background: var(--act); color: var(--onact); text-decoration: none; font-size: 16.5px; line-height: 1.2 }
      .go svg { flex: none }
      .go b { display: block; font-size: 26px; line-height: 1.15; font-weight: 700; margin-top: 2px; overflow-wrap: anywhere }
      aside { padding-bottom: 16px }
      @media (min-width: 1000px) {
        :host { grid-template: 68px 1fr auto / minmax(0, 1fr) 384px }
        sheet-bar { grid-column: 1 / -1 }
        main { grid-row: 2 / 4 }
        aside { grid-column: 2; border-top: 0; border-left: 1px solid var(--faint); background: var(--panel); padding: 10px 24px 16px }
        .go { grid-column: 2; background: var(--panel); border-left: 1px solid var(--faint); padding: 10px 24px 18px; align-self: end }
        .go svg { flex: none }
      .go b { font-size: 22px }
      }
      @media (max-width: 599px) {
        :host { grid-template-rows: 60px 1fr auto }
        sheet-bar { height: 60px }
        main { padding: 18px 16px }
        aside { padding: 4px 16px 12px }
        .go { padding: 8px 12px 10px }
        .go a { min-height: 68px; padding: 8px 16px; font-size: 15px }
        .go svg { flex: none }
      .go b { font-size: 20px }
      }
      @media print { .go { display: none } sheet-bar { position: static } }
    `,
  ]

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('order')) return
    const { order } = this
    const before = changed.get('order') as HouseOrder | undefined
    const { ordered, windows, house, unit } = order
    if (before?.windows !== windows) {
      this.rooms = walkedRooms(ordered, windows)
      this.byPlace = new Map(windows.map((window) => [window.place, window]))
      const last = readLast(ordered.job.number)
      this.last = windows.find(({ place }) => place === last)
    }
    if (before?.house !== house) this.standings = new Map(house?.windows.map((window) => [window.place, window]))
    if (before?.unit !== unit || before.language !== order.language || before.words !== order.words)
      this.say = sayOn(order.words, order.language, tapeOf[unit])
  }

  override render() {
    const { ordered, windows, unit } = this.order
    const scale = this.scale()
    return html`
      <sheet-bar .contact=${this.contact} .lasting=${this.lasting} .windows=${windows} .house=${baseNow() === '/' ? undefined : '/'} .leads=${words.allJobs} .over=${this.over()} .heading=${ordered.job.name} .unit=${unitNames(unit, ordered.units)} .light=${this.light}></sheet-bar>
      <main>${this.counts()}<div class="rooms">${scale === 0 ? nothing : this.rooms.map((room) => html`<room-strip .room=${this.room(room)} .scale=${scale}></room-strip>`)}</div>
        <p class="scale">${words.oneScale}</p><a class="over" href=${handOverAddress}>${words.handOver}</a></main>
      <aside aria-label=${words.houseOpen}>${this.beside()}</aside>
      <div class="go">${this.goOn(this.last ?? windows[0])}</div>`
  }

  /** Walls are as tall as lets a few of them stand side by side. */
  private scale(): number {
    const { width } = this.size
    if (width < 100) return 0
    const narrow = width < 600
    const room = width - (narrow ? 32 : this.wide.matches ? 384 + 64 : 64)
    return scaleOf(this.order.windows, { width: room, height: narrow ? 150 : 200 })
  }

  private over(): string {
    const { ordered, windows } = this.order
    return fill(words.jobOver, {
      number: ordered.job.number,
      windows: counted(windows.length, words.windowsOne, words.windowsMany),
      rooms: counted(this.rooms.length, words.roomsOne, words.roomsMany),
    })
  }

  private room({ room, windows }: WalkedRoom): ShownRoom {
    const { unit } = this.order
    const height = room.ceiling === undefined ? undefined : writeLength(room.ceiling, tapeOf[unit]).text
    return {
      name: room.name,
      ...(height === undefined ? {} : { ceiling: fill(words.ceiling, { height }) }),
      windows: windows.map(({ found, n }) => this.window(found, n)),
    }
  }

  private window(found: PlacedWindow, n: number): ShownWindow {
    const { place } = found
    const short = this.order.shorts.get(place)
    const standing = this.standings.get(place)
    const [shown, steps] = [short?.done ?? 0, short?.steps ?? 0]
    return {
      place,
      n,
      name: found.window.name,
      address: addressOf(found),
      width: widthOf(found),
      height: heightOf(found.room),
      ...(short ? { picture: short.picture ?? null } : {}),
      ...(standing ? { standing: standing.standing } : {}),
      rest: restOf(standing, shown, steps),
      ...(shown > 0 && steps > 0 ? { gone: shown / steps } : {}),
      isNow: found === this.last,
      holders: (this.contact?.others ?? []).filter(({ at }) => at === place).map(({ name, by }) => name ?? by),
    }
  }

  /** How many windows stand how: the way to the list of what is open. */
  private counts() {
    const { house } = this.order
    if (!house) return html`<div class="counts"></div>`
    const of = (standing: Standing) => house.windows.filter((window) => window.standing === standing).length
    return html`<button class="counts" @click=${() => this.renderRoot.querySelector('aside')?.scrollIntoView({ block: 'start' })}>${standings
      .filter((standing) => of(standing) > 0)
      .map(
        (standing) => html`<span>${verdictSign(verdictOf[standing])}${of(standing)} ${words.standing[standing]}</span>`,
      )}</button>`
  }

  private beside() {
    const { house } = this.order
    if (!house) return nothing
    const all = [...this.houseRows(house), ...this.windowRows(house)]
    const open = (['fail', 'warn', 'unknown'] as const).flatMap((verdict) => all.filter((row) => row.verdict === verdict))
    const asks = house.asks.slice(0, this.shownAsks).map(({ at, holds }) => this.ask(at, holds))
    return html`
      ${asks.length === 0 ? nothing : html`<open-list .heading=${words.inWalkingOrder} .rows=${asks} .more=${Math.max(0, house.asks.length - this.shownAsks)} @show-more=${() => (this.shownAsks += rows.more)}></open-list>`}
      <open-list .heading=${words.houseOpen} .none=${words.houseWell} .rows=${open.slice(0, this.shownOpen)} .more=${Math.max(0, open.length - this.shownOpen)}
        @show-more=${() => (this.shownOpen += rows.more)}></open-list>
      ${house.faults > 0 ? html`<p>${fill(words.houseTroubles, { n: house.faults })}</p>` : nothing}`
  }

  private houseRows(house: House): readonly OpenRow[] {
    return house.checks.map((check) => ({
      verdict: check.verdict,
      title: this.roomOf(check.on) ?? words.wholeHouse,
      says: this.said(check),
    }))
  }

  /** Windows with something open: stops first, then what is to be looked at. What waits for a reading is in the other list. */
  private windowRows(house: House): readonly OpenRow[] {
    const all = (['fail', 'warn', 'unknown'] as const).flatMap((standing) =>
      house.windows
        .filter((window) => window.standing === standing)
        .map(({ place, open }) => ({ place, open, verdict: standing })),
    )
    this.askFor(all.slice(0, this.shownOpen).map(({ place }) => place))
    return all.map(({ place, open, verdict }) => {
      const first = this.order.shorts.get(place)?.open[0]
      return {
        verdict,
        title: this.titled(place),
        says: first ? this.said(first) : '',
        ...(open > 1 ? { rest: fill(words.moreOpen, { n: open - 1 }) } : {}),
        ...this.linked(place),
      }
    })
  }

  /** Asks for what is not here yet, after this is drawn. */
  private askFor(places: readonly Place[]): void {
    const missing = places.filter((place) => !this.order.shorts.has(place))
    if (missing.length > 0) void Promise.resolve().then(() => tell(this, 'need-windows', missing))
  }

  private ask(at: Place, holds: number): OpenRow {
    const place = at.split('/').slice(0, 5).join('/')
    const says = placeInWords(this.order.ordered, at, this.byPlace.has(place) ? place : '', language)
    return {
      verdict: 'unknown',
      title: this.byPlace.has(place)
        ? this.titled(place)
        : (this.roomOf(at.split('/').slice(0, 3).join('/')) ?? words.wholeHouse),
      says,
      rest: counted(holds, words.holdsUpOne, words.holdsUp),
      ...this.linked(place),
    }
  }

  private said = ({ code, says, values }: OpenCheck): string => this.say.say(says ?? code, values)
  private roomOf(on: Place): string | undefined {
    return this.rooms.find(({ room }) => on === `/rooms/${room.id}`)?.room.name
  }
  private titled(place: Place): string {
    const found = this.byPlace.get(place)
    return found ? `${found.room.name}, ${found.window.name}` : ''
  }
  private linked(place: Place): Pick<OpenRow, 'address'> {
    const found = this.byPlace.get(place)
    return found ? { address: addressOf(found) } : {}
  }

  private goOn(window: PlacedWindow | undefined) {
    return window
      ? html`<a href=${addressOf(window)}><span>${this.last ? words.goOn : words.beginHere}<b>${sentence(this.titled(window.place))}</b></span>
          <svg width="26" height="34" aria-hidden="true"><path d="M6 4l14 13L6 30" fill="none" stroke="currentColor" stroke-width="3.4" /></svg></a>`
      : nothing
  }
}

/** What else there is to say of a window: how much is open, or how far somebody is. */
function restOf(standing: StandingWindow | undefined, shown: number, steps: number): string {
  if (!standing) return ''
  if (standing.standing === 'measure') return counted(standing.missing, words.readingsOne, words.readingsMany)
  if (standing.standing !== 'pass') return fill(words.openMany, { n: standing.open })
  if (shown > 0) return fill(words.stepsGone, { n: Math.min(steps, shown + 1), m: steps })
  return steps > 0 ? fill(words.stepsMany, { n: steps }) : ''
}
