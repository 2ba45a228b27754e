import { drawingCss } from '@evenhem/drawing'
import { css, html, nothing, svg, unsafeCSS } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Standing } from '../data/house.ts'
import type { SmallPicture } from '../data/small-picture.ts'
import { fill, words } from '../words.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'
import { verdictOf, verdictSign, verdictStyle } from './verdict.ts'

/** A window as its room shows it, its words made. Sizes in millimetres. */
export interface ShownWindow {
  readonly place: string
  readonly address: string
  readonly n: number
  readonly name: string
  readonly width: number
  readonly height: number
  /** Undefined while it is being planned; null when it cannot be drawn yet. */
  readonly picture?: SmallPicture | null
  readonly standing?: Standing
  readonly rest: string
  /** How far its steps are gone, from 0 to 1. */
  readonly gone?: number
  readonly isNow: boolean
  /** Other tablets that have it open. */
  readonly holders: readonly string[]
}
export interface ShownRoom {
  readonly name: string
  readonly ceiling?: string
  readonly windows: readonly ShownWindow[]
}

/** The walls of a room side by side on one floor line, each a link to its window's sheet. Drawn when it comes near the screen. */
@customElement('room-strip')
export class RoomStrip extends SpokenElement {
  @property({ attribute: false }) room!: ShownRoom
  /** Pixels a millimetre, of the whole house. */
  @property({ type: Number }) scale = 0.08
  @state() private isNear = false
  private readonly watch = new IntersectionObserver((seen) => this.see(seen), { rootMargin: '400px' })

  static override readonly styles = [
    base,
    sentenceStyle,
    verdictStyle,
    unsafeCSS(drawingCss()),
    css`
      .place { display: block; max-width: 100% }
      header { display: flex; justify-content: space-between; align-items: baseline; gap: 14px; margin-bottom: 8px }
      h2 { font-size: 18px; line-height: 1.2; font-weight: 600 }
      header span { font-size: 15px; color: var(--ink2); white-space: nowrap }
      ol { display: flex; flex-wrap: wrap; gap: 14px 12px; align-items: start }
      li { max-width: 100% }
      a { display: block; color: inherit; text-decoration: none; border-radius: 4px; min-width: 150px }
      .picture { position: relative; display: flex; align-items: flex-end; min-height: var(--tall); width: max-content; max-width: 100% }
      .picture > svg:first-child { display: block; max-width: 100%; overflow: visible }
      .verdict { position: absolute; left: 50%; top: 46%; translate: -50% -50% }
      .drawing path { vector-effect: non-scaling-stroke }
      .drawing .wall { stroke-width: calc(2.4px * var(--k)) }
      .drawing .casing { stroke-width: calc(1.2px * var(--k)) }
      .drawing .waiting { fill: none; stroke: var(--line); stroke-width: 1.1; stroke-dasharray: 5 4 }
      .drawing .ground { stroke: var(--ink); stroke-width: calc(2.4px * var(--k)); fill: none }
      .now .drawing .area.wall-face { fill: var(--markbg) }
      .now .drawing .wall { stroke: var(--mark) }
      .below { display: grid; grid-template-columns: auto 1fr; gap: 0 10px; align-items: start; margin-top: 8px; width: 0; min-width: 100% }
      .below > b { font-size: 34px; line-height: 1; font-weight: 700 }
      .below span { overflow-wrap: anywhere; font-size: 16px; line-height: 1.2; font-weight: 600; display: block }
      small { display: block; font-size: 14.5px; line-height: 1.25; color: var(--ink2) }
      .holders { font-weight: 600; color: var(--ink) }
      .now :is(b, span) { color: var(--mark) }
      .fail span { color: var(--fail) }
      .gone { grid-column: 1 / -1; width: 100%; height: 4px; margin-top: 6px; stroke: var(--faint); stroke-width: 4 }
      .gone .done { stroke: var(--act) }
    `,
  ]

  override connectedCallback(): void {
    super.connectedCallback()
    this.watch.observe(this)
  }
  override disconnectedCallback(): void {
    this.watch.disconnect()
    super.disconnectedCallback()
  }

  private see(seen: readonly IntersectionObserverEntry[]): void {
    if (!seen.some(({ isIntersecting }) => isIntersecting)) return
    this.watch.disconnect()
    this.isNear = true
    tell(
      this,
      'need-windows',
      this.room.windows.map(({ place }) => place),
    )
  }

  override render() {
    const { room, scale } = this
    const tall = Math.max(...room.windows.map(({ height, picture }) => picture?.box.height ?? height)) * scale
    // On one floor line, however many lines stand below it.
    this.style.setProperty('--tall', `${Math.ceil(tall)}px`)
    const wide = room.windows.reduce((sum, { width }) => sum + width * scale + 12, 0)
    // Until it is near it only keeps its place.
    if (!this.isNear)
      return html`<header><h2>${room.name}</h2></header><svg class="place" width=${Math.round(wide)} height=${Math.round(tall + 60)} aria-hidden="true"></svg>`
    return html`<header><h2>${room.name}</h2>${room.ceiling ? html`<span>${sentence(room.ceiling)}</span>` : nothing}</header>
      <ol>${room.windows.map((window) => html`<li>${this.window(window)}</li>`)}</ol>`
  }

  private window(window: ShownWindow) {
    const { n, name, standing, rest, gone, isNow, address, picture, holders } = window
    const sign = standing && standing !== 'pass' && picture !== undefined ? verdictSign(verdictOf[standing]) : nothing
    return html`<a href=${address} class="${isNow ? 'now' : ''} ${standing ?? ''}">
      <span class="picture">${this.picture(window)}<span aria-hidden="true">${sign}</span></span>
      <div class="below"><b aria-hidden="true">${n}</b><div><span>${name}</span><small>${standing ? `${words.standing[standing]}${rest ? ` · ${rest}` : ''}` : words.beingDrawn}</small>${holders.length > 0 ? html`<small class="holders">${fill(words.atThis, { names: holders.join(', ') })}</small>` : nothing}</div>
        ${gone ? html`<svg class="gone" aria-hidden="true" viewBox="0 0 100 4" preserveAspectRatio="none"><path d="M0 2H100" /><path class="done" d="M0 2H${Math.round(gone * 100)}" /></svg>` : nothing}</div></a>`
  }

  private picture({ picture, name, width, height, standing, rest }: ShownWindow) {
    const state = standing ? words.standing[standing] : words.beingDrawn
    const says = fill(words.windowPicture, { room: this.room.name, window: name, state, rest })
    if (!picture) return this.waiting(width, height, says)
    const { box, shapes } = picture
    return html`<svg class="drawing" role="img" aria-label=${says} viewBox="${box.x} ${box.y} ${box.width} ${box.height}" width=${Math.round(box.width * this.scale)} height=${Math.round(box.height * this.scale)}>
      ${shapes.map(({ role, area, d }) => svg`<path class="${area ? 'area' : 'stroke'} ${role}" d=${d} />`)}</svg>`
  }

  /** A wall that nobody has measured, or that is not planned yet: its floor stands. */
  private waiting(width: number, height: number, says: string) {
    const [w, h] = [Math.round(width * this.scale), Math.round(height * this.scale)]
    return html`<svg class="drawing" role="img" aria-label=${says} width=${w} height=${h}><path class="waiting" d="M1 ${h}V1H${w - 1}V${h}" /><path class="ground" d="M0 ${h - 1}H${w}" /></svg>`
  }
}
