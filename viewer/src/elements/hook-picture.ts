import { css, html, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { words } from '../words.ts'
import { base } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

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
  /** Hooks hang in carriers of the rod, not in rings around it. */
  readonly carried: boolean
  /** The outer edge goes to the wall; else it hangs free. */
  readonly toWall: boolean
  /** Where a caption lies on the cloth, in parts of the whole, and what it says. */
  readonly captions: readonly { readonly at: number; readonly lines: readonly string[] }[]
  readonly says: string
}

/** Heights in the picture, in pixels; `k` makes it taller where there is room. */
const heights = (k: number) => ({
  rod: 34 * k,
  rodEnd: 68 * k,
  cloth: 74 * k,
  heading: 150 * k,
  edge: 196 * k,
  eye: 83 * k,
  pin: 34 * k,
  ring: 25 * k,
  angle: 92 * k,
})
type Heights = ReturnType<typeof heights>

/** The top of a panel as it lies on its rod, with a stroke from every hook down to its card. */
@customElement('hook-picture')
export class HookPicture extends SpokenElement {
  @property({ attribute: false }) heading?: DrawnHeading
  @property({ type: Number }) width = 0
  /** Middles of the cards below, in the order of the hooks; none: the cards stand in several rows. */
  @property({ attribute: false }) cards: readonly number[] = []
  @property({ type: Number }) stretch = 1

  static override readonly styles = [
    base,
    css`
      svg { display: block; overflow: hidden }
      text { font-family: inherit; font-weight: 500; font-size: 15px; fill: var(--ink2) }
      .rod { fill: var(--rod); stroke: var(--rodline); stroke-width: calc(1.3px * var(--k)) }
      .grain { stroke: var(--rodline); stroke-width: 0.6; opacity: 0.45; fill: none }
      .fabric { fill: var(--fabric) } .shade { fill: var(--fshade) }
      .fold { fill: none; stroke: var(--fold); stroke-width: 0.9 }
      .edge { fill: none; stroke: var(--fedge); stroke-width: calc(1.3px * var(--k)); stroke-linejoin: round }
      .pleat { fill: none; stroke: var(--fedge); stroke-width: 1.2 }
      .ring { fill: none; stroke: var(--rodline); stroke-width: calc(2.2px * var(--k)) }
      .carrier { fill: var(--sheet); stroke: var(--rodline); stroke-width: calc(1.6px * var(--k)) }
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
    const at = heights(this.stretch)
    const height = at.edge + (this.cards.length > 0 ? 50 : 8)
    return html`<svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${heading.says}>
      ${this.rodPart(heading, along, at)}${clothPart(heading, along, at)}${heading.toWall ? wall(along(1), heading.mirrored, at) : nothing}
      ${heading.hooks.map((hook) => hookMark(hook, along(hook.across), heading, at))}
      ${this.cards.map((card, n) => leader(bearing(heading, n, along), card, at.edge))}
      <text class="name" x=${along(0) + (heading.mirrored ? 4 : -4)} y="20" text-anchor=${heading.mirrored ? 'end' : 'start'}>${words.leadingEdge}</text>
      ${heading.captions.map(({ at: part, lines }) => lines.map((line, n) => caption(line, along(part), at.edge - 12 - 18 * (lines.length - 1 - n))))}
    </svg>`
  }

  private rodPart({ hooks, mirrored }: DrawnHeading, along: Along, { rod, rodEnd }: Heights) {
    const last = along(hooks.findLast((hook) => hook.runs)?.across ?? 1) + (mirrored ? -14 : 14)
    const open = mirrored ? this.width + 4 : -4
    return svg`<path class="rod" d="M${open} ${rod}H${last}V${rodEnd}H${open}" /><path class="grain" d="M${open} ${rod + (rodEnd - rod) * 0.3}H${last}" />`
  }
}

const caption = (says: string, x: number, y: number) =>
  svg`<text class="caption" x=${x} y=${y} text-anchor="middle">${says.split(/(\d+\/\d+)/).map((part, n) => (n % 2 ? svg`<tspan class="frac">${part}</tspan>` : part))}</text>`

type Along = (part: number) => number

function clothPart({ hooks }: DrawnHeading, along: Along, { cloth, heading, edge }: Heights) {
  const pleats = hooks.filter((hook) => hook.pleat).map((hook) => along(hook.across))
  const [left, right] = [Math.min(along(0), along(1)), Math.max(along(0), along(1))]
  const outline = `M${left} ${cloth}H${right}V${edge}${waves(right, left, 26)}Z`
  const deep = heading - cloth
  const below = edge - heading
  return svg`<path class="fabric" d=${outline} />
    ${pleats.map(
      (x) => svg`<path class="shade" d="M${x} ${cloth}h7v${deep}c0 14 5 24 6 ${below}h-12z" />
      <path class="fold" d="M${x - 7} ${cloth}v${deep}c0 14-5 24-6 ${below}M${x + 7} ${cloth}v${deep}c0 14 5 24 6 ${below}" /><path class="pleat" d="M${x} ${cloth}v${deep}" />`,
    )}
    <path class="fold" d="M${left} ${heading}H${right}" /><path class="edge" d=${outline} />`
}

/** The cut edge below, swinging a little. */
const waves = (from: number, to: number, count: number): string =>
  Array.from({ length: count }, (_, n) => {
    const step = (to - from) / count
    return `q${step / 2} ${n % 2 ? 6 : -6} ${step} 0`
  }).join('')

const ringed = (x: number, { eye, ring, pin }: Heights) =>
  svg`<ellipse class="ring" cx=${x} cy=${eye - 4.2 - ring} rx="5" ry=${ring} /><circle class="ring" cx=${x} cy=${eye} r="4.2" /><path class="pin" d="M${x} ${eye + 5}v${pin}" />`
/** Hooked into a carrier that runs along the lower edge of the rod. */
const inCarrier = (x: number, { rodEnd, eye, pin }: Heights) =>
  svg`<rect class="carrier" x=${x - 6.5} y=${rodEnd - 11} width="13" height="17" rx="2" /><path class="ring" d="M${x} ${rodEnd + 6}V${eye - 4.2}" /><circle class="ring" cx=${x} cy=${eye} r="4.2" /><path class="pin" d="M${x} ${eye + 5}v${pin}" />`
/** Hooked to an angle that stands out from the wall. */
const atWall = (wall: number, x: number, { angle, pin }: Heights) =>
  svg`<path class="angle" d="M${wall} ${angle}H${x}" /><circle class="ring" cx=${x} cy=${angle} r="4.2" /><path class="pin" d="M${x} ${angle + 5}v${pin}" />`
const hookMark = ({ runs }: DrawnHook, x: number, { mirrored, carried }: DrawnHeading, at: Heights) =>
  runs ? (carried ? inCarrier : ringed)(x, at) : atWall(x, x + fromWall(mirrored), at)
/** A hook at the wall hangs a little in front of it. */
const fromWall = (mirrored: boolean): number => (mirrored ? 14 : -14)
/** Where the nth hook bears. */
const bearing = ({ hooks, mirrored }: DrawnHeading, n: number, along: Along): number =>
  along(hooks[n]?.across ?? 0) + (hooks[n]?.runs === false ? fromWall(mirrored) : 0)

const wall = (x: number, mirrored: boolean, { edge }: Heights) => {
  const out = mirrored ? -1 : 1
  const strokes = Array.from({ length: Math.floor(edge / 8.5) - 1 }, (_, n) => `M${x} ${20 + n * 8.5}l${out * 12} -9`).join('')
  return svg`<path class="lead" d=${strokes} /><path class="wall" d="M${x} 10V${edge + 8}" />`
}

const leader = (x: number, card: number, edge: number) =>
  svg`<path class="lead" d="M${x} ${edge + 4}V${edge + 10}L${card} ${edge + 38}V${edge + 47}" />`
