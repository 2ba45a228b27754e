import { css, html, nothing, svg } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { base, buttons, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** Lines as they were drawn: shares of the width and height, x and y in turn. */
export type Strokes = readonly (readonly number[])[]
const rounded = (share: number): number => Math.round(Math.min(1, Math.max(0, share)) * 1000) / 1000
/** A line of a signature as a path, in a box so wide and so high. */
export const strokePath = (stroke: readonly number[], width: number, height: number): string =>
  stroke
    .flatMap((share, i) =>
      i % 2 === 0 ? [`${i === 0 ? 'M' : 'L'}${rounded(share) * width} ${rounded(stroke[i + 1] ?? 0) * height}`] : [],
    )
    .join('')

/** Where somebody signs with a finger or a pen. Tells of `signed` with all lines after each of them, and after they were cleared. */
@customElement('signature-pad')
export class SignaturePad extends SpokenElement {
  @property() name = ''
  @property() clears = ''
  @property({ attribute: false }) strokes: Strokes = []
  /** The line that is being drawn. */
  @state() private now?: readonly number[]

  static override readonly styles = [
    base,
    buttons,
    css`
      .field { position: relative; height: 200px; border: 2px solid var(--line); border-radius: 6px; background: var(--sheet); touch-action: none; cursor: crosshair }
      svg { position: absolute; inset: 0; width: 100%; height: 100%; pointer-events: none }
      path { fill: none; stroke: var(--ink); stroke-width: 3; stroke-linecap: round; stroke-linejoin: round }
      .line { stroke: var(--faint); stroke-width: 1.5 }
      .chip { margin-top: 8px }
    `,
  ]

  override render() {
    return html`<div class="field" role="img" aria-label=${this.name} @pointerdown=${this.down} @pointermove=${this.move} @pointerup=${this.up} @pointercancel=${this.up}>
        <svg viewBox="0 0 1000 300" preserveAspectRatio="none" aria-hidden="true"><path class="line" d="M30 235H970" vector-effect="non-scaling-stroke" />${[...this.strokes, ...(this.now ? [this.now] : [])].map(line)}</svg></div>
      ${this.strokes.length > 0 ? html`<button class="chip" @click=${this.clear}>${this.clears}</button>` : nothing}`
  }

  private point(event: PointerEvent): readonly [number, number] {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect()
    return [rounded((event.clientX - box.left) / box.width), rounded((event.clientY - box.top) / box.height)]
  }
  private down(event: PointerEvent): void {
    ;(event.currentTarget as HTMLElement).setPointerCapture(event.pointerId)
    this.now = this.point(event)
  }
  private move(event: PointerEvent): void {
    if (this.now) this.now = [...this.now, ...this.point(event)]
  }
  private up(): void {
    const { now } = this
    this.now = undefined
    if (now) tell(this, 'signed', [...this.strokes, now])
  }
  private readonly clear = (): void => {
    tell(this, 'signed', [])
  }
}

const line = (stroke: readonly number[]) => svg`<path d=${strokePath(stroke, 1000, 300)} vector-effect="non-scaling-stroke" />`
