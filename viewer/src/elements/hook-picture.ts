import { css, html, LitElement, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { words } from '../words.ts'
import { base } from './shared.ts'

/** A hook in the picture: how far along the heading, from the leading edge, in parts of the whole. */
export interface DrawnHook {
  readonly across: number
  readonly pleat: boolean
  readonly runs: boolean
}
/** The heading of one panel, laid flat. */
export interface DrawnHeading {
  readonly hooks: readonly DrawnHook[]
  readonly mirrored: boolean
  /** Where a caption lies on the cloth, in parts of the whole, and what it says. */
  readonly captions: readonly { readonly at: number; readonly says: string }[]
  readonly says: string
}

const rod = { top: 34, bottom: 68 }
const cloth = { top: 74, heading: 150, bottom: 196 }

/** The top of a panel as it lies on its rod, with a stroke from every hook down to its card. */
@customElement('hook-picture')
export class HookPicture extends LitElement {
  @property({ attribute: false }) heading?: DrawnHeading
  @property({ type: Number }) width = 0
  /** Middles of the cards below, in the order of the hooks; none: the cards stand in several rows. */
  @property({ attribute: false }) cards: readonly number[] = []

  static override readonly styles = [
    base,
    css`
      svg { display: block; overflow: hidden }
      text { font: 500 14.5px inherit; font-family: inherit; fill: var(--ink2) }
      .rod { fill: var(--rod); stroke: var(--rodline); stroke-width: calc(1.3px * var(--k)) }
      .grain { stroke: var(--rodline); stroke-width: 0.6; opacity: 0.45; fill: none }
      .fabric { fill: var(--fabric) } .shade { fill: var(--fshade) }
      .fold { fill: none; stroke: var(--fold); stroke-width: 0.9 }
      .edge { fill: none; stroke: var(--fedge); stroke-width: calc(1.3px * var(--k)); stroke-linejoin: round }
      .pleat { fill: none; stroke: var(--fedge); stroke-width: 1.2 }
      .ring { fill: none; stroke: var(--rodline); stroke-width: calc(2.2px * var(--k)) }
      .pin { fill: none; stroke: var(--ink); stroke-width: 3; stroke-linecap: round }
      .angle { fill: none; stroke: var(--ink); stroke-width: 2.6 }
      .wall { stroke: var(--ink); stroke-width: calc(2.6px * var(--k)) }
      .frac { font-feature-settings: 'frac' }
      .caption { paint-order: stroke; stroke: var(--fabric); stroke-width: 5px; stroke-linejoin: round; fill: var(--ink) }
      .lead { fill: none; stroke: var(--line); stroke-width: 1 }
      .name { font-weight: 600; fill: var(--ink) }
    `,
  ]

  override render() {
    const { heading, width } = this
    if (!heading || width < 50) return nothing
    const [from, to] = [36, width - 44]
    const along = (part: number) => (heading.mirrored ? width - (from + part * (to - from)) : from + part * (to - from))
    const height = this.cards.length > 0 ? 262 : 204
    return html`<svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${heading.says}>
      ${this.rodPart(heading, along)}${this.clothPart(heading, along)}${heading.hooks.map((hook) => hookMark(hook, along(hook.across), heading.mirrored))}
      ${wall(along(1), heading.mirrored)}
      ${this.cards.map((card, n) => leader(along(heading.hooks[n]?.across ?? 0), card))}
      <text class="name" x=${along(0) + (heading.mirrored ? 4 : -4)} y="20" text-anchor=${heading.mirrored ? 'end' : 'start'}>${words.leadingEdge}</text>
      ${heading.captions.map(({ at, says }) => svg`<text class="caption" x=${along(at)} y="184" text-anchor="middle">${says.split(/(\d+\/\d+)/).map((part, n) => (n % 2 ? svg`<tspan class="frac">${part}</tspan>` : part))}</text>`)}
    </svg>`
  }

  private rodPart({ hooks, mirrored }: DrawnHeading, along: (part: number) => number) {
    const last = along(hooks.findLast((hook) => hook.runs)?.across ?? 1) + (mirrored ? -14 : 14)
    const open = mirrored ? this.width + 4 : -4
    return svg`<path class="rod" d="M${open} ${rod.top}H${last}V${rod.bottom}H${open}" /><path class="grain" d="M${open} ${rod.top + 11}H${last}" />`
  }

  private clothPart({ hooks }: DrawnHeading, along: (part: number) => number) {
    const pleats = hooks.filter((hook) => hook.pleat).map((hook) => along(hook.across))
    const [left, right] = [Math.min(along(0), along(1)), Math.max(along(0), along(1))]
    const outline = `M${left} ${cloth.top}H${right}V${cloth.bottom}${waves(right, left, 26)}Z`
    return svg`<path class="fabric" d=${outline} />
      ${pleats.map((x) => svg`<path class="shade" d="M${x} ${cloth.top}h7v${cloth.heading - cloth.top}c0 14 5 24 6 46h-12z" />
        <path class="fold" d="M${x - 7} ${cloth.top}v76c0 14-5 24-6 45M${x + 7} ${cloth.top}v76c0 14 5 24 6 45" /><path class="pleat" d="M${x} ${cloth.top}v76" />`)}
      <path class="fold" d="M${left} ${cloth.heading}H${right}" /><path class="edge" d=${outline} />`
  }
}

/** The cut edge below, swinging a little. */
const waves = (from: number, to: number, count: number): string =>
  Array.from({ length: count }, (_, n) => {
    const step = (to - from) / count
    return `q${step / 2} ${n % 2 ? 6 : -6} ${step} 0`
  }).join('')

const hookMark = ({ runs }: DrawnHook, x: number, mirrored: boolean) =>
  runs
    ? svg`<ellipse class="ring" cx=${x} cy="54" rx="5" ry="25" /><circle class="ring" cx=${x} cy="83" r="4.2" /><path class="pin" d="M${x} 88v34" />`
    : svg`<path class="angle" d="M${x} 90h${mirrored ? -13 : 13}" /><circle class="ring" cx=${x} cy="90" r="4.2" /><path class="pin" d="M${x} 94v32" />`

const wall = (x: number, mirrored: boolean) => {
  const out = mirrored ? -1 : 1
  const strokes = Array.from({ length: 22 }, (_, n) => `M${x} ${20 + n * 8.5}l${out * 12} -9`).join('')
  return svg`<path class="lead" d=${strokes} /><path class="wall" d="M${x} 10V${cloth.bottom + 8}" />`
}

const leader = (x: number, card: number) => svg`<path class="lead" d="M${x} ${cloth.bottom + 4}V${cloth.bottom + 12}L${card} 246V258" />`
