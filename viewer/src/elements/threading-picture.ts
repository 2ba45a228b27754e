import { textWidth } from '@evenhem/drawing'
import { css, html, LitElement, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { base } from './shared.ts'
import { Sized } from './sized.ts'

/** What goes on the rod between two brackets, or outside one. */
export interface Threaded {
  readonly count: number
  readonly says: string
}

const rod = 58
const half = 15
const outer = 108
/** Captions: the first one's baseline, the next one's below it. */
const captions = { y: 94, line: 20, size: 15 }

/** The rod from left to right before it goes up: what is threaded outside and between its brackets, each drawn once. */
@customElement('threading-picture')
export class ThreadingPicture extends LitElement {
  @property({ attribute: false }) groups: readonly Threaded[] = []
  private readonly size = new Sized(this)

  static override readonly styles = [
    base,
    css`
      svg { display: block }
      text { font-family: inherit; text-anchor: middle; fill: var(--ink) }
      .count { font-size: 29px; font-weight: 700 }
      .says { font-size: ${captions.size}px; fill: var(--ink2) }
      .says.first { text-anchor: start } .says.last { text-anchor: end }
      .rod { stroke: var(--rodline); stroke-width: calc(1.3px * var(--k)); fill: var(--rod) }
      .ring { fill: none; stroke: var(--rodline); stroke-width: calc(1.8px * var(--k)) }
      .bracket { fill: var(--ink) }
    `,
  ]

  override render() {
    const { width } = this.size
    if (width < 200 || this.groups.length === 0) return nothing
    const height = 6 + this.baseline(this.groups.length - 1, width)
    return html`<svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${this.groups.map(({ count, says }) => `${count} ${says}`).join(', ')}>
      <rect class="rod" x="12" y=${rod - 6} width=${width - 24} height="12" /><circle class="rod" cx="10" cy=${rod} r="9" /><circle class="rod" cx=${width - 10} cy=${rod} r="9" />
      ${this.groups.map((group, n) => this.group(group, n, width))}
    </svg>`
  }

  /** Where a group lies: the outer ones are narrow, what is between shares the rest. */
  private span(n: number, width: number): readonly [from: number, to: number] {
    const inner = (width - 2 * outer) / Math.max(1, this.groups.length - 2)
    if (n === 0) return [20, outer]
    return n === this.groups.length - 1 ? [width - outer, width - 20] : [outer + (n - 1) * inner, outer + n * inner]
  }

  private group({ count, says }: Threaded, n: number, width: number) {
    const [from, to] = this.span(n, width)
    const middle = (from + to) / 2
    const apart = Math.min(16, (to - from - 30) / Math.max(1, count - 1))
    const rings = Array.from({ length: count }, (_, i) => middle + (i - (count - 1) / 2) * apart)
    const bracket = n === 0 ? nothing : svg`<rect class="bracket" x=${from - 4} y=${rod - 15} width="8" height="30" rx="2" />`
    return svg`${rings.map((x) => svg`<ellipse class="ring" cx=${x} cy=${rod} rx="4" ry=${half} />`)}${bracket}
      <text class="count" x=${middle} y="30">${count}</text>${this.words(says, n, middle, width)}`
  }

  /** Under its group; at the ends it stays on the page. */
  private words(says: string, n: number, middle: number, width: number) {
    const y = this.baseline(n, width)
    if (n === 0) return svg`<text class="says first" x="2" y=${y}>${says}</text>`
    return n === this.groups.length - 1
      ? svg`<text class="says last" x=${width - 2} y=${y}>${says}</text>`
      : svg`<text class="says" x=${middle} y=${y}>${says}</text>`
  }

  /** Captions that would run into one another stand one below the other, each under its own part of the rod. */
  private baseline(n: number, width: number): number {
    const wide = this.groups.reduce(
      (sum, { says }) => sum + textWidth(says, { size: captions.size, weight: 400 }) + captions.line,
      0,
    )
    return captions.y + (wide > width ? n * captions.line : 0)
  }
}
