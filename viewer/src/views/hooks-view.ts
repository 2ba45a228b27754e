import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { bare } from '../data/amount.ts'
import { factsOf, type HookMap, type HookPlace, type PanelMakeUp } from '../data/facts.ts'
import type { Sheet } from '../data/sheet.ts'
import { originOf } from '../data/working.ts'
import { figure, figureStyle } from '../elements/figure.ts'
import type { ShownHook } from '../elements/hook-cards.ts'
import type { DrawnHeading } from '../elements/hook-picture.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, tell } from '../elements/shared.ts'
import { Sized } from '../elements/sized.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { capital, fill, words } from '../words.ts'
import '../elements/hook-cards.ts'
import '../elements/hook-picture.ts'
import '../elements/threading-picture.ts'

const wideFrom = 1000
const cardsAt = { margin: 20, gap: 5 }

/** Where each hook of a panel goes: the heading laid flat, a card a hook, what is needed, and what must be done before the rod goes up. */
@customElement('hooks-view')
export class HooksView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property({ type: Number }) panel = 0
  private readonly size = new Sized(this)

  static override readonly styles = [
    base,
    sentenceStyle,
    figureStyle,
    css`
      :host { overflow: auto; display: flex; flex-direction: column }
      .switch { padding: 10px 10px 0 }
      .switch:not(:has(*)) { display: none }
      hook-picture { flex: none; margin-top: 14px }
      .space { flex: 1 1 0; max-height: 40px }
      .band { display: grid; grid-template-columns: auto auto auto minmax(0, 1fr); gap: 10px 34px; margin-top: 18px; padding: 14px 20px 16px; border-top: 1px solid var(--faint); background: var(--panel); flex: 1 0 auto; align-content: start }
      h2 { font-size: 15px; font-weight: 400; color: var(--ink2) }
      .counts { display: flex; align-items: center; gap: 6px; font-size: 16px; min-height: 48px; color: var(--ink2) }
      .counts b { font-size: 25px; line-height: 1; color: var(--ink); margin-right: 12px }
      .counts .tape { background: var(--tape); color: var(--tapeink); border-left: 4px solid var(--tapehook); border-radius: 2px; padding: 3px 9px 5px }
      .counts .over { font-size: 18px; font-weight: 600; color: var(--ink); white-space: nowrap }
      .counts .under { color: var(--fail) }
      .before { border-left: 5px solid var(--warn); padding-left: 12px; align-self: center; font-size: 18px; line-height: 1.3; grid-column: span 2 }
      .before h2 { color: var(--warn); font-weight: 700; font-size: 18px }
      threading-picture { grid-column: 1 / -1; min-width: 0 }
      button { font-size: 25px; font-weight: 700; min-width: 48px; min-height: 48px; color: var(--ink) }
      @media (max-width: 999px) { .before { grid-column: 1 / -1 } hook-picture { margin-top: 26px } hook-cards { margin-top: 14px } .band { margin-top: 26px; padding-top: 20px; gap: 22px 34px } }
      @media (max-width: 599px) { .band { grid-template-columns: 1fr 1fr; gap: 4px 20px } hook-picture { display: none } }
      @media (min-width: 1000px) { .before { order: -1; grid-column: 4; grid-row: 1 } }
    `,
  ]

  override render() {
    const { sheet } = this
    const made = factsOf(sheet.plan, 'drapery/make-up@1').flatMap(({ value }) => value.panels)
    const maps = factsOf(sheet.plan, 'drapery/hook-map@1').map(({ value }) => value)
    const panel = made[this.panel]
    const map = maps.find(({ places }) => places.some((place) => place.panel === panel?.panel))
    if (!panel || !map) return html`<p>${words.notYet}</p>`
    const places = map.places.filter((place) => place.panel === panel.panel).toSorted((a, b) => a.hook.n - b.hook.n)
    const mirrored = panel.outer === 'left'
    const { width, height } = this.size
    return html`<div class="switch"><slot></slot></div>
      <hook-picture .width=${width} .heading=${this.heading(panel, places, mirrored, map.drawnAs === 'carriers')} 
        .stretch=${width < wideFrom ? (height > 900 ? 1.45 : 1) : height < 660 ? 0.75 : 1} .cards=${width >= wideFrom ? cardMiddles(width, places.length, mirrored) : []}></hook-picture>
      <hook-cards ?mirrored=${mirrored} .hooks=${places.map((place) => this.card(place))}></hook-cards>
      ${this.band(map, panel)}`
  }

  private heading(panel: PanelMakeUp, places: readonly HookPlace[], mirrored: boolean, carried: boolean): DrawnHeading {
    const { sheet } = this
    const whole = Math.max(1, ...places.map(({ hook }) => hook.across))
    const pleats = places.filter(({ hook }) => hook.on === 'pleat')
    const [first, last] = [(pleats[0]?.hook.across ?? 0) / whole, (pleats.at(-1)?.hook.across ?? 0) / whole]
    const captions = [
      {
        at: (first + last) / 2,
        lines: [fill(words.spaces, { n: pleats.length - 1, space: sheet.write(panel.space.value).text })],
      },
      ...(panel.return.value > 0
        ? [{ at: (1 + last) / 2, lines: [words.returnPart, sheet.write(panel.return.value).text] }]
        : []),
    ]
    return {
      hooks: places.map(({ hook, number }) => ({
        across: hook.across / whole,
        pleat: hook.on === 'pleat',
        runs: number !== undefined,
      })),
      mirrored,
      carried,
      toWall: panel.return.value > 0,
      captions,
      says: fill(words.headingSays, { panel: words.panelNames[panel.outer], n: places.length }),
    }
  }

  private card({ hook, to, number, note }: HookPlace): ShownHook {
    const { sheet } = this
    const on =
      hook.on === 'pleat'
        ? fill(words.pleat, { n: hook.pleat ?? hook.n - 1 })
        : hook.on === 'leading-edge'
          ? words.leadingEdge
          : words.outerEdge
    return {
      n: hook.n,
      runs: number !== undefined,
      to: number === undefined ? sheet.say(to) : `${sheet.say(to)} ${number}`,
      on: note ? sheet.say(note) : on,
      special: note !== undefined || number === undefined,
    }
  }

  private band(map: HookMap, panel: PanelMakeUp) {
    const { sheet } = this
    const stays = map.places.filter(({ number }) => number === undefined)
    return html`<section class="band">
      <div><h2>${words.hooksCount}</h2><div class="counts">${words.need}<b>${map.places.length}</b></div></div>
      <div><h2>${fill(words.bearers, { what: capital(sheet.say(map.bearers.what)) })}</h2><div class="counts"><button @click=${() => tell(this, 'open-number', map.bearers.name)}>${map.bearers.value}</button>${this.packed(map)}</div></div>
      <div><h2>${words.pins}</h2><div class="counts"><button @click=${() => tell(this, 'open-number', panel.pin.from)}>${figure(sheet.write(panel.pin.value))}</button></div></div>
      <threading-picture .groups=${map.threading.map(({ what, count }) => ({ count, says: sheet.say(what) }))}></threading-picture>
      ${
        map.threading.length === 0
          ? nothing
          : html`<div class="before"><h2>${words.beforeTheRodGoesUp}</h2><p>${words.threadFirst}</p>
        ${stays.length > 0 ? html`<p>${sentence(fill(words.stays, { n: stays.length, where: sheet.say(stays[0]?.to ?? '') }))}</p>` : nothing}</div>`
      }
    </section>`
  }

  /** What was packed, told by the count from which the need is taken away. */
  private packed({ bearers }: HookMap) {
    const { sheet } = this
    const over = sheet.plan.reckonings.find(({ terms }) => terms.some(({ from, sign }) => from === bearers.name && sign === -1))
    const packed = over?.terms.find(({ sign }) => sign === 1)
    if (!over || !packed) return nothing
    const came = originOf(packed.from, sheet).kind === 'reading'
    const rest =
      over.value === 0
        ? nothing
        : html`<span class=${over.value > 0 ? 'over' : 'over under'}>${fill(over.value > 0 ? words.spare : words.short, { n: Math.abs(over.value) })}</span>`
    return html`${came ? words.came : words.ordered}<b class=${came ? 'tape' : ''}>${bare(packed.value).text}</b>${rest}`
  }
}

/** Middles of the cards when they all stand in one row. */
function cardMiddles(width: number, n: number, mirrored: boolean): readonly number[] {
  const each = (width - 2 * cardsAt.margin + cardsAt.gap) / n
  const middles = Array.from({ length: n }, (_, i) => cardsAt.margin + i * each + (each - cardsAt.gap) / 2)
  return mirrored ? middles.toReversed() : middles
}
