import {
  closedMarks,
  compose,
  type Dimension,
  drawingCss,
  type Layer,
  type Mark,
  phone,
  type Scene,
  screen,
  toSvg,
} from '@evenhem/drawing'
import { css, html, nothing, unsafeCSS } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { type KeyLine, keyOf } from '../data/drawing-key.ts'
import type { Sheet } from '../data/sheet.ts'
import { spoken } from '../data/spoken.ts'
import { brokenWall, brokenWallStyle } from '../elements/broken-wall.ts'
import { figure, figureStyle } from '../elements/figure.ts'
import { base, tell } from '../elements/shared.ts'
import { Sized } from '../elements/sized.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { fill, words } from '../words.ts'
import { marksClosedBy, shownAsks } from './shown.ts'

/** How a drapery is looked at: closed, drawn aside, or closed and from above. */
export type Looking = 'drawn' | 'stacked' | 'above'

/** Pixels below a drawing for words that found no room on it: each number has its words, on the drawing or there. */
const keyTall = 54

/** A drawing of the window, as large as there is room. A touch on a number, or Enter, opens its working. */
@customElement('room-drawing')
export class RoomDrawing extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property() view: 'elevation' | 'plan' | 'marks' | 'level' | 'hem' | 'loads' = 'elevation'
  /** Only the number of this place, on a small picture. */
  @property() only?: string
  @property() drapery: Looking = 'drawn'
  /** The figure whose working is open. */
  @property() touched?: string
  private readonly size = new Sized(this)
  private readonly parser = new DOMParser()
  /** The first picture draws itself from the wall inward, numbers last; later ones are there at once. */
  private isFirst = true

  static override readonly styles = [
    base,
    unsafeCSS(drawingCss()),
    brokenWallStyle,
    figureStyle,
    css`
      :host { position: relative; overflow: hidden; background: var(--sheet) }
      section { max-width: 620px; margin: 0 auto; padding: 20px; height: 100%; overflow: auto }
      h2 { font-size: 20px; font-weight: 600; line-height: 1.3 }
      li { font-size: 17px; border-top: 1px solid var(--faint) }
      section li button { min-height: 48px; width: 100%; color: var(--act); font-weight: 500 }
      h2 + ul { margin-top: 10px }
      @media (prefers-reduced-motion: no-preference) {
        .first .drawing :is(.casing, .frame, .glass) { animation: appear 160ms 60ms both }
        .first .drawing :is(.rod, .ring, .bracket, .finial) { animation: appear 160ms 140ms both }
        .first .drawing :is(.fabric, .fabric-shade, .fold, .pleat) { animation: appear 160ms 220ms both }
        .first .drawing :is(.figure, .tape, .detail, .detail-edge, .finding, text) { animation: appear 160ms 320ms both }
      }
      @keyframes appear { from { opacity: 0 } }
      .key { position: absolute; inset: auto 0 0; height: 54px; padding: 0 16px 6px; display: flex; flex-wrap: nowrap; gap: 0 22px; justify-content: safe center; overflow-x: auto; font-size: 15px; color: var(--ink2) }
      .key li { padding: 0; border: 0 }
      .key button { min-height: 48px; min-width: 48px; white-space: nowrap }
      .key .number { color: var(--ink); font-size: 17px }
      @media (max-width: 599px) { .key { font-size: 14px } .key .number { font-size: 15px } }
      @media print { .drawing { width: 100%; height: auto; max-height: 150mm } .key { position: static; flex-wrap: wrap; height: auto } :host { overflow: visible } }
      .drawing { user-select: none; -webkit-user-select: none }
    `,
  ]

  override render() {
    const { width, height } = this.size
    if (width < 100 || height < 100) return nothing
    const scene = this.scene(width, height)
    if (scene.items.length === 0) return this.nothingYet()
    const isKeyed = this.only === undefined && keyOf(scene, this.sheet).length > 0
    const shown = isKeyed ? this.scene(width, height - keyTall) : scene
    return html`<div class=${this.isFirst ? 'first' : ''} @click=${this.onTouch} @keydown=${this.onKey}>${this.nodes(shown)}</div>
      ${isKeyed ? this.key(keyOf(shown, this.sheet)) : nothing}`
  }

  protected override updated(): void {
    if (this.renderRoot.querySelector('svg.drawing') && this.isFirst) setTimeout(() => (this.isFirst = false), 600)
  }

  /** The words that found no room beside their numbers. */
  private key(lines: readonly KeyLine[]) {
    return html`<ul class="key">${lines.map(
      ({ what, value, of }) =>
        html`<li><button @click=${() => tell(this, 'open-number', of)}>${value === undefined ? '?' : figure(value, 600)} ${what}</button></li>`,
    )}</ul>`
  }

  /** Too little is known to draw anything: the floor, a wall that is not there yet, and what to measure. */
  private nothingYet() {
    return html`<section>${brokenWall}<h2>${words.notYet}</h2><ul>${shownAsks(this.sheet).map(({ at, what }) => html`<li><button @click=${() => tell(this, 'enter-value', at)}>${what}</button></li>`)}</ul></section>`
  }

  /** Gives the focus to the number that was touched before. */
  focusFigure(of: string): void {
    const figures = [...this.renderRoot.querySelectorAll<SVGElement>('[data-of]')]
    figures.find((figure) => figure.dataset.of === of)?.focus()
  }

  private scene(width: number, height: number): Scene {
    const { write, say, weigh } = this.sheet
    const layers = marksClosedBy(this.sheet) === '' ? this.sheet.layers : closedMarks(this.sheet.layers)
    const small = width < 600
    const shown = this.only === undefined ? (small ? sparse(layers, this.view) : layers) : alone(layers, this.only)
    return compose(shown, {
      view: this.view,
      state: this.drapery === 'stacked' ? 'stacked' : 'drawn',
      width,
      height,
      sizes: small ? phone : screen,
      write,
      say,
      weigh,
      speak: (length) => spoken(write(length)),
      tellsRounding: true,
      ...(this.touched === undefined ? {} : { touched: this.touched }),
      ...(this.only === undefined ? {} : { hasTape: false, touched: this.only }),
    })
  }

  /** The drawing as nodes. It is parsed as XML, where nothing of a job's text can become an element, a style or a script. */
  private nodes(scene: Scene): Node {
    const { room, window } = this.sheet
    const title = fill(titles()[this.view], {
      window: `${room.name}, ${window.name}`,
      state: words[this.drapery],
    })
    const parsed = this.parser.parseFromString(toSvg(scene, { title, interactive: true }), 'image/svg+xml')
    return document.importNode(parsed.documentElement, true)
  }

  private onTouch(event: Event): void {
    const of = (event.target as Element).closest<SVGElement>('[data-of]')?.dataset.of
    if (of !== undefined) tell(this, 'open-number', of)
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    this.onTouch(event)
  }
}

/** The drawing with one number of its own and no other. */
const alone = (layers: readonly Layer[], of: string): readonly Layer[] =>
  layers.map((layer) => ({ ...layer, marks: layer.marks.flatMap((mark) => withOnly(mark, of)) }))
const withOnly = (mark: Mark, of: string): readonly Mark[] => {
  if (mark.kind === 'group') return [{ ...mark, marks: mark.marks.flatMap((one) => withOnly(one, of)) }]
  if (mark.kind === 'detail' || mark.kind === 'caption' || mark.kind === 'cross' || mark.kind === 'finding') return []
  return 'figure' in mark && mark.figure.of !== of ? [] : [mark]
}

/** On a phone only the numbers that one pencils or measures are on the drawing: it stays large, and the others are in their workings. */
const sparse = (layers: readonly Layer[], view: RoomDrawing['view']): readonly Layer[] => {
  const below = layers.flatMap((layer) => (layer.view === view ? layer.marks : [])).filter((mark) => isRow(mark, 'below'))
  const sides: readonly Dimension['side'][] = [...leftOut[view], ...(below.length > mostBelow ? (['below'] as const) : [])]
  const isForPhone = (mark: Mark): boolean =>
    mark.kind === 'height' ? mark.role === 'mark' : !sides.some((side) => isRow(mark, side))
  return layers.map((layer) => ({ ...layer, marks: layer.marks.filter(isForPhone) }))
}
const isRow = (mark: Mark, side: Dimension['side']): boolean => mark.kind === 'dimension' && mark.side === side
/** More numbers along a wall than this leave it no room on a phone; they stand in the list below the drawing. */
const mostBelow = 4
const leftOut = {
  elevation: ['right'],
  plan: [],
  marks: ['right', 'above'],
  level: [],
  hem: [],
  loads: [],
} as const satisfies Record<string, readonly Dimension['side'][]>
const titles = () => ({
  marks: words.marksTitle,
  level: words.levelTitle,
  hem: words.hemTitle,
  loads: words.loadsTitle,
  elevation: words.drawingTitle,
  plan: words.drawingTitle,
})
