import type { Length } from '@evenhem/length'
import { css, html, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { type LadderNumber, ladderNumbers } from '../data/ladder.ts'
import type { Sheet } from '../data/sheet.ts'
import { Awake } from '../elements/awake.ts'
import { figure, figureStyle, figureWidth } from '../elements/figure.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, tell } from '../elements/shared.ts'
import { Sized } from '../elements/sized.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { fill, words } from '../words.ts'
import { marksClosedBy } from './shown.ts'
import '../elements/tape-blade.ts'

const keys: Readonly<Record<string, 1 | -1>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  PageDown: 1,
  ' ': 1,
  ArrowLeft: -1,
  ArrowUp: -1,
  PageUp: -1,
}

const limited = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))

/** One number at a time, as large as the screen allows, to be read from the ladder: what it is, from where, the tape there, what was before and what comes. */
@customElement('ladder-view')
export class LadderView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @state() private at = 0
  private touchedAt?: number
  private readonly size = new Sized(this)

  static override readonly styles = [
    base,
    figureStyle,
    sentenceStyle,
    css`
      :host { position: fixed; inset: 0; z-index: 2; background: var(--sheet); touch-action: pan-y }
      section { height: 100%; display: grid; grid-template: 76px minmax(0, 1fr) auto auto minmax(120px, 18vh) / minmax(0, 1fr); text-align: center }
      header { display: grid; grid-template-columns: 1fr auto 1fr; align-items: center; padding: 0 14px; gap: 10px; font-size: 22px; font-weight: 600 }
      header button { justify-self: start; display: inline-flex; align-items: center; gap: 8px; min-height: 54px; padding: 0 14px 0 8px; border: 1px solid var(--line); border-radius: 6px; font-size: 17px; font-weight: 500 }
      .told { display: flex; flex-direction: column; justify-content: center; min-height: 0; padding: 0 10px; overflow: hidden }
      h1 { font-size: clamp(26px, 5.4vmin, 48px); line-height: 1.1; font-weight: 700; letter-spacing: -0.01em }
      .from { font-size: clamp(20px, 4vmin, 36px); line-height: 1.25; color: var(--ink2) }
      .big { display: block; font-size: var(--big); line-height: 1; margin: 1.6vh 0 1vh; white-space: nowrap }
      .big .number, .big .figure { display: block; margin: 0 auto }
      .closed h1 { color: var(--fail); margin-bottom: 12px }
      .off { font-size: 18px; color: var(--ink2) }
      .near { display: flex; justify-content: space-between; gap: 14px; padding: 14px 24px; min-height: 78px; text-align: left; font-size: 20px; color: var(--ink2); align-items: baseline }
      .near > div:last-child { text-align: right }
      .near b { font-size: 34px; color: var(--ink); padding: 0 6px }
      footer { display: grid; grid-template-columns: 27% 1fr; border-top: calc(2px * var(--k)) solid var(--ink) }
      footer button { font-size: clamp(24px, 4.4vmin, 36px); font-weight: 700; text-align: center; line-height: 1.1; padding: 6px }
      .next { background: var(--act); color: var(--onact) }
      footer button[aria-disabled='true'] { background: var(--sheet); color: var(--ink2); font-weight: 500; font-size: 22px; cursor: default }
      footer button:focus-visible { outline-offset: -8px }
      .next:focus-visible { outline-color: var(--onact) }
      @media (max-width: 599px) { .near { font-size: 16px; padding: 10px 14px } .near b { font-size: 26px } header { font-size: 18px } }
      @media (max-height: 600px) { section { grid-template-rows: 60px minmax(0, 1fr) 0 auto 84px } tape-blade { display: none } .near { min-height: 0; padding: 4px 20px } .big { margin: 1vh 0 } }
    `,
  ]

  constructor() {
    super()
    new Awake(this)
  }

  override connectedCallback(): void {
    super.connectedCallback()
    addEventListener('keydown', this.onKey)
  }
  override disconnectedCallback(): void {
    removeEventListener('keydown', this.onKey)
    super.disconnectedCallback()
  }

  override render() {
    const numbers = ladderNumbers(this.sheet)
    const now = numbers[Math.min(this.at, numbers.length - 1)]
    return html`<section @touchstart=${this.onTouchStart} @touchend=${this.onTouchEnd}>
      <header><button @click=${() => tell(this, 'go-back')}><svg width="20" height="20" aria-hidden="true"><path d="M13 3L6 10l7 7" fill="none" stroke="currentColor" stroke-width="2.4" /></svg>${words.ladderSheet}</button>
        <div>${now ? fill(words.ladderAt, { n: this.at + 1, m: numbers.length }) : nothing}</div></header>
      ${this.inside(now, numbers)}</section>`
  }

  /** Nothing is marked while a stop stands. */
  private inside(now: LadderNumber | undefined, numbers: readonly LadderNumber[]) {
    const closed = marksClosedBy(this.sheet)
    if (closed) return html`<div class="told closed"><h1>${words.closed}</h1><p class="from">${sentence(closed)}</p></div>`
    return now ? this.one(now, numbers) : html`<div class="told"><p class="from">${words.notDrawn}</p></div>`
  }

  private one(now: LadderNumber, numbers: readonly LadderNumber[]) {
    const amount = this.sheet.write(now.value)
    this.style.setProperty('--big', `${this.fontSize(now.value)}px`)
    return html`
      <div class="told" aria-live="polite"><h1>${now.what}</h1><div class="from">${now.from}</div>
        <b class="big">${figure(amount)}</b>
        ${amount.off === 0 ? nothing : html`<p class="off">${fill(words.tapeRounded, { way: amount.off > 0 ? words.fewer : words.more })}</p>`}</div>
      <tape-blade .length=${now.value} .unit=${this.sheet.unit} .says=${fill(words.blade, { number: amount.text })}></tape-blade>
      <div class="near"><div>${this.beside(numbers[this.at - 1], words.ladderDone)}</div><div>${this.beside(numbers[this.at + 1], words.ladderThen)}</div></div>
      <footer><button aria-disabled=${this.at === 0 ? 'true' : nothing} @click=${() => this.move(-1)}>${words.back}</button>${this.next(this.at === numbers.length - 1)}</footer>`
  }

  private next(isLast: boolean) {
    return html`<button class="next" aria-disabled=${isLast ? 'true' : nothing} @click=${() => this.move(1)}>${isLast ? words.lastNumber : words.nextNumber}</button>`
  }

  private beside(other: LadderNumber | undefined, when: string) {
    return other ? html`${when} <b>${figure(this.sheet.write(other.value))}</b> ${other.short}` : nothing
  }

  /** As large as the room allows, either way. */
  private fontSize(value: Length): number {
    const { width, height } = this.size
    const wide = (width - 32) / figureWidth(this.sheet.write(value))
    // What stands above and below it; on a phone its words take two lines more.
    const words = width < 600 ? 200 : 150
    const blade = limited(0.18 * height, 110, 214)
    const tall = height <= 600 ? height - 274 : height - 154 - blade - Math.max(120, 0.18 * height) - words
    return Math.max(60, Math.floor(Math.min(wide, tall / 0.86, 460)))
  }

  private move(by: 1 | -1): void {
    this.at = Math.min(ladderNumbers(this.sheet).length - 1, Math.max(0, this.at + by))
  }

  /** Arrows, space and page keys: the buttons of a presenter send these. A button that has the focus answers to space itself. */
  private readonly onKey = (event: KeyboardEvent): void => {
    const by = keys[event.key]
    if (event.key === 'Escape') tell(this, 'go-back')
    else if (by && !(event.key === ' ' && this.shadowRoot?.activeElement)) {
      event.preventDefault()
      this.move(by)
    }
  }

  private onTouchStart({ touches }: TouchEvent): void {
    this.touchedAt = touches.length === 1 ? touches[0]?.clientX : undefined
  }

  private onTouchEnd({ changedTouches }: TouchEvent): void {
    const by = (changedTouches[0]?.clientX ?? 0) - (this.touchedAt ?? changedTouches[0]?.clientX ?? 0)
    if (Math.abs(by) > 60) this.move(by < 0 ? 1 : -1)
  }
}
