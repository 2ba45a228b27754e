import { type Length, millimetre, type ReadingUnit } from '@evenhem/length'
import { css, html, LitElement, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { base } from './shared.ts'
import { Sized } from './sized.ts'

/** How a blade is divided: nanometres between two marks, how many to the next number, and how tall a mark is. */
interface Division {
  readonly mark: number
  readonly marksToANumber: number
  /** Pixels between two numbers on a blade 820 wide. */
  readonly apart: number
  readonly tall: (mark: number) => number
  readonly number: (n: number) => string
}
const inch = 25_400_000
const inches: Division = {
  mark: inch / 16,
  marksToANumber: 16,
  apart: 280,
  tall: (n) => (n % 16 === 0 ? 1 : n % 8 === 0 ? 0.72 : n % 4 === 0 ? 0.56 : n % 2 === 0 ? 0.42 : 0.28),
  number: (n) => String(n),
}
const millimetres: Division = {
  mark: millimetre,
  marksToANumber: 10,
  apart: 130,
  tall: (n) => (n % 10 === 0 ? 1 : n % 5 === 0 ? 0.62 : 0.36),
  number: (n) => String(n * 10),
}

/** The stretch of the tape that the hand should see: compare two pictures, not two strings. */
@customElement('tape-blade')
export class TapeBlade extends LitElement {
  @property({ attribute: false }) length = 0 as Length
  @property() unit: ReadingUnit = 'in'
  @property() says = ''
  /** What was ordered, and how much it may be off: drawn over the blade. */
  @property({ attribute: false }) ordered?: Length
  @property({ attribute: false }) allowed?: Length
  @property() name = ''
  private readonly size = new Sized(this)

  static override readonly styles = [
    base,
    css`
      :host { height: clamp(110px, 18vh, 214px); overflow: hidden }
      svg { display: block; width: 100%; height: 100% }
      .blade { fill: var(--tape); stroke: var(--tapeedge) }
      .marks { stroke: var(--tapeink); stroke-width: 1.6; fill: none }
      .whole { stroke: var(--tapeink); stroke-width: 3; fill: none }
      text { fill: var(--tapeink); font-weight: 700; text-anchor: end }
      .here { stroke: var(--ink); stroke-width: 6; fill: none }
      .arrow { fill: var(--ink) }
      .band { stroke: var(--pass); stroke-width: 6; fill: none }
      .ordered { stroke: var(--ink); stroke-width: 2.4; fill: none }
      .name { fill: var(--ink2); font-size: 15px; font-weight: 400 }
    `,
  ]

  override render() {
    const { width, height } = this.size
    if (width === 0) return html``
    const division = this.unit === 'in' || this.unit === 'ft-in' ? inches : millimetres
    const scale = (division.apart * Math.max(0.7, Math.min(1, width / 820))) / (division.mark * division.marksToANumber)
    const [top, tall] = [26, height - 40]
    return html`<svg role="img" aria-label=${this.says}><rect class="blade" x="-2" y=${top} width=${width + 4} height=${tall} />
      ${this.marks(division, scale, top, tall)}${this.meant(scale, top)}
      <path class="here" d="M${width / 2} 16V${height}" /><path class="arrow" d="M${width / 2 - 20} 0h40l-20 28z" /></svg>`
  }

  /** The band that is allowed, and the order in it. */
  private meant(scale: number, top: number) {
    const { ordered, allowed, name } = this
    if (ordered === undefined) return nothing
    const x = (length: number) => this.size.width / 2 + (length - this.length) * scale
    const band =
      allowed === undefined ? nothing : svg`<path class="band" d="M${x(ordered - allowed)} ${top - 7}H${x(ordered + allowed)}" />`
    // The arrow of the value keeps its place free.
    const end = Math.abs(x(ordered) - this.size.width / 2) < 40 ? this.size.width / 2 - 30 : x(ordered) - 8
    return svg`${band}<path class="ordered" d="M${x(ordered)} ${top - 16}v30" /><text class="name" x=${end} y=${top - 13}>${name}</text>`
  }

  private marks({ mark, marksToANumber, tall: tallness, number }: Division, scale: number, top: number, tall: number) {
    const { width } = this.size
    const half = width / 2 / scale + mark * marksToANumber
    const first = Math.max(0, Math.ceil((this.length - half) / mark))
    const count = Math.floor((this.length + half) / mark) - first + 1
    const all = Array.from({ length: Math.max(0, count) }, (_, i) => first + i)
    const x = (n: number) => Math.round((width / 2 + (n * mark - this.length) * scale) * 10) / 10
    const lines = (some: readonly number[]) =>
      some.map((n) => `M${x(n)} ${top}v${Math.round(tallness(n) * tall * 0.62)}`).join('')
    const wholes = all.filter((n) => n % marksToANumber === 0)
    const size = Math.min(72, tall * 0.4)
    return svg`<path class="marks" d=${lines(all.filter((n) => n % marksToANumber !== 0))} /><path class="whole" d=${lines(wholes)} />
      ${wholes.map((n) => svg`<text x=${x(n) - 10} y=${top + tall - 12} font-size=${size}>${number(n / marksToANumber)}</text>`)}`
  }
}
