import { css, html, nothing, svg } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { MarkKind, PhotoMark } from '../data/site-photos.ts'
import { photoWords } from '../words/photos.ts'
import { fill } from '../words.ts'
import { base, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

interface Point {
  readonly x: number
  readonly y: number
}
const hundred = (share: number): number => Math.round(share * 10_000) / 100
const step = 0.02
const within = (share: number): number => Math.min(1, Math.max(0, share))
const ways: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-step, 0],
  ArrowRight: [step, 0],
  ArrowUp: [0, -step],
  ArrowDown: [0, step],
}

/** A photo with what is marked on it. A touch puts a mark of the kind that is chosen, arrow keys and Enter do too. Tells of `marked`. */
@customElement('photo-marks')
export class PhotoMarks extends SpokenElement {
  @property() src = ''
  @property() says = ''
  @property({ attribute: false }) marks: readonly PhotoMark[] = []
  /** What a touch puts; absent: nothing. */
  @property() kind?: MarkKind
  /** Where keys have led, and where a mark of two ends began. */
  @state() private cursor?: Point
  @state() private begun?: Point

  static override readonly styles = [
    base,
    css`
      :host { display: grid; place-items: center; min-height: 0; background: var(--panel) }
      .frame { position: relative; max-width: 100%; max-height: 100%; touch-action: none }
      img { display: block; max-width: 100%; max-height: var(--tall, 60dvh); user-select: none; -webkit-user-drag: none }
      .frame.marking { cursor: crosshair }
      svg { position: absolute; inset: 0; width: 100%; height: 100%; overflow: visible; pointer-events: none }
      .under { stroke: #fff; stroke-width: 7; fill: none; opacity: 0.85 }
      .over { stroke: #a01c2c; stroke-width: 3; fill: none }
      .cursor { stroke: var(--act); stroke-width: 3 }
      b { position: absolute; translate: -50% 14px; background: #fff; color: #16212b; border: 2px solid #a01c2c; border-radius: 4px; padding: 1px 7px; font-size: 15px; line-height: 1.25; font-weight: 600; pointer-events: none; max-width: 60%; overflow-wrap: anywhere }
      b.words { translate: 0 0 }
    `,
  ]

  override render() {
    const name = this.kind ? fill(photoWords().touchTo, { says: this.says, kind: photoWords().kinds[this.kind] }) : this.says
    return html`<div class="frame ${this.kind ? 'marking' : ''}" role="img" aria-label=${name} tabindex=${this.kind ? 0 : nothing} @pointerdown=${this.down} @pointerup=${this.up} @keydown=${this.key}>
      <img src=${this.src} alt="" draggable="false" />
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">${this.marks.map((mark) => lines(mark))}${this.pending()}</svg>
      ${this.marks.map((mark) => (mark.says ? html`<b class=${mark.kind}>${mark.says}</b>` : nothing))}</div>`
  }
  /** Where words stand; the page's policy takes no style that is written into it. */
  protected override updated(): void {
    const said = this.marks.filter(({ says }) => says)
    this.renderRoot.querySelectorAll('b').forEach(({ style }, i) => {
      style.left = `${hundred(said[i]?.x ?? 0)}%`
      style.top = `${hundred(said[i]?.y ?? 0)}%`
    })
  }
  private pending() {
    const at = this.cursor
    if (!at) return nothing
    const [x, y] = [hundred(at.x), hundred(at.y)]
    return svg`<path class="cursor" vector-effect="non-scaling-stroke" d="M${x - 3} ${y}H${x + 3}M${x} ${y - 4}V${y + 4}" />`
  }

  private point(event: PointerEvent): Point {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect()
    return { x: within((event.clientX - box.left) / box.width), y: within((event.clientY - box.top) / box.height) }
  }
  private down(event: PointerEvent): void {
    if (!this.kind) return
    this.begun = this.point(event)
    ;(event.currentTarget as HTMLElement).setPointerCapture(event.pointerId)
  }
  private up(event: PointerEvent): void {
    const { begun } = this
    if (begun) this.put(begun, this.point(event))
  }
  private key(event: KeyboardEvent): void {
    if (!this.kind) return
    const way = ways[event.key]
    const at = this.cursor ?? { x: 0.5, y: 0.5 }
    if (way) this.cursor = { x: within(at.x + way[0]), y: within(at.y + way[1]) }
    else if (event.key === 'Enter') this.enter(at)
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  private enter(at: Point): void {
    const hasTwo = this.kind === 'arrow' || this.kind === 'area'
    if (hasTwo && !this.begun) this.begun = at
    else this.put(this.begun ?? at, at)
  }
  /** An arrow begins where the finger went down and ends where it was lifted; of a mere touch it comes from below. */
  private put(from: Point, to: Point): void {
    this.begun = undefined
    const { kind } = this
    if (!kind) return
    const near = Math.hypot(from.x - to.x, from.y - to.y) < 0.02
    tell(this, 'marked', shaped(kind, from, to, near))
  }
}

const rounded = (share: number): number => Math.round(share * 10_000) / 10_000
function shaped(kind: MarkKind, from: Point, to: Point, near: boolean): PhotoMark {
  const [x, y] = [rounded(to.x), rounded(to.y)]
  if (kind === 'arrow') {
    const tail = near ? { x: within(to.x + 0.12), y: within(to.y + 0.16) } : from
    return { kind, x, y, toX: rounded(tail.x), toY: rounded(tail.y) }
  }
  if (kind === 'area') {
    const other = near ? { x: within(to.x + 0.2), y: within(to.y + 0.2) } : from
    return { kind, x, y, toX: rounded(other.x), toY: rounded(other.y) }
  }
  return { kind, x, y }
}

/** A light line below each dark one, so that a mark is seen on any picture. */
function lines({ kind, x, y, toX = x, toY = y }: PhotoMark) {
  const d = path(kind, hundred(x), hundred(y), hundred(toX), hundred(toY))
  return d === ''
    ? nothing
    : svg`<path class="under" vector-effect="non-scaling-stroke" d=${d} /><path class="over" vector-effect="non-scaling-stroke" d=${d} />`
}
function path(kind: MarkKind, x: number, y: number, toX: number, toY: number): string {
  if (kind === 'words') return ''
  if (kind === 'point') return `M${x - 3} ${y}a3 4 0 1 0 6 0a3 4 0 1 0 -6 0`
  if (kind === 'area') return `M${x} ${y}H${toX}V${toY}H${x}Z`
  const angle = Math.atan2(y - toY, x - toX)
  const barb = (turn: number) => `L${x - 4 * Math.cos(angle + turn)} ${y - 4 * Math.sin(angle + turn)}`
  return `M${toX} ${toY}L${x} ${y}${barb(0.5)}M${x} ${y}${barb(-0.5)}`
}
