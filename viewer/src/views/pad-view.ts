import type { Mark } from '@evenhem/drawing'
import { below, type Place, tokens } from '@evenhem/job'
import { type Length, lengthWords, spanishLengthWords } from '@evenhem/length'
import { css, html, nothing, type PropertyValues } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { type Amount, bare } from '../data/amount.ts'
import { type Changes, changesOf, isNothing } from '../data/changes.ts'
import { type Form, formAt } from '../data/form.ts'
import { isOff, type Meant, meantAt } from '../data/meant.ts'
import { clockOf } from '../data/moment.ts'
import { type Keyed, type KeyedValue, keyedValue, nothingKeyed, outside, shorter, typedMore } from '../data/pad.ts'
import { rawLength } from '../data/raw.ts'
import type { Sheet } from '../data/sheet.ts'
import type { Entered } from '../data/site.ts'
import type { SiteTools } from '../data/tools.ts'
import { figure, figureStyle } from '../elements/figure.ts'
import { Media } from '../elements/media.ts'
import type { PadWord } from '../elements/pad-keys.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { verdictSign, verdictStyle } from '../elements/verdict.ts'
import { capital, fill, language, words } from '../words.ts'
import { shownPlace } from './shown.ts'
import { changeLines } from './shown-changes.ts'
import '../elements/pad-keys.ts'
import '../elements/tape-blade.ts'
import '../elements/value-field.ts'
import './room-drawing.ts'

/** Waiting this long after a key before the plan is tried: nobody types two digits apart. */
const restMs = 180

/** Entering what the tape says: the stretch of blade that the hand should see, what was ordered and allowed, and what saving would change. */
@customElement('pad-view')
export class PadView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property() at: Place = ''
  @property({ attribute: false }) tools!: SiteTools
  @state() private keyed: Keyed = nothingKeyed('in')
  @state() private tried?: { readonly of: number; readonly changes: Changes }
  private readonly timer = { id: 0 }
  private readonly roomy = new Media(this, '(min-width: 600px) and (min-height: 1000px)')

  static override readonly styles = [
    base,
    figureStyle,
    sentenceStyle,
    verdictStyle,
    css`
      :host { position: fixed; inset: 0; z-index: 3; background: var(--sheet) }
      main { height: 100%; display: grid; grid-template: auto minmax(0, 1fr) auto / minmax(0, 1fr) }
      header { display: flex; align-items: center; gap: 12px; min-height: 68px; padding: 0 16px 0 8px; border-bottom: 1px solid var(--faint) }
      .back { width: 48px; height: 48px; display: grid; place-items: center; flex: none }
      header small { display: block; font-size: 14.5px; color: var(--ink2); line-height: 1.25 }
      h1 { font-size: 26px; line-height: 1.1; font-weight: 700 }
      h1:focus-visible { outline: none }
      .about { display: grid; grid-template-columns: minmax(0, 1fr); gap: 4px 24px }
      .about.pictured { grid-template-columns: 270px minmax(0, 1fr) }
      room-drawing { height: 290px }
      .told { overflow: auto; padding: 16px 24px 12px; display: flex; flex-direction: column; min-height: 0 }
      dl { display: grid; grid-template-columns: auto auto auto 1fr; gap: 6px 18px; align-items: baseline; font-size: 17px; border-bottom: 1px solid var(--faint); padding-bottom: 10px }
      dt { color: var(--ink2) } dd .number { font-size: 22px; font-weight: 600 }
      .tape { background: var(--tape); color: var(--tapeink); border-left: 4px solid var(--tapehook); border-radius: 2px; padding: 2px 8px; outline: 1.5px solid var(--tapeedge) }
      .hint { font-size: 17px; color: var(--ink2); padding: 10px 0 }
      tape-blade { margin: 6px -24px 0; height: clamp(110px, 15vh, 180px); flex: none }
      .now { display: grid; grid-template-columns: minmax(180px, auto) 1fr; gap: 6px 28px; align-items: center; padding-top: 10px; min-height: 116px }
      .big { font-size: 84px; line-height: 1; font-weight: 700; white-space: nowrap }
      .big.none { color: var(--line) }
      .said { font-size: 18px; display: grid; grid-template-columns: 26px 1fr; gap: 4px 10px; align-items: start }
      .said ul { grid-column: 2; color: var(--ink2); font-size: 16.5px; line-height: 1.35 }
      @media (max-width: 599px) {
        .told { padding: 10px 16px } tape-blade { margin: 4px -16px 0; height: 84px } .hint { display: none }
        h1 { font-size: 21px } .big { font-size: 56px } .now { grid-template-columns: 1fr; min-height: 0; gap: 2px }
        dl { gap: 4px 12px; font-size: 15.5px }
      }
      @media (min-width: 1000px) and (min-aspect-ratio: 1/1) {
        main { grid-template: 68px minmax(0, 1fr) / minmax(0, 1fr) 520px } header { grid-column: 1 / -1 }
      }
    `,
  ]

  override connectedCallback(): void {
    super.connectedCallback()
    addEventListener('keydown', this.onKey)
    const isMetric = this.sheet.unit === 'mm' || this.sheet.unit === 'cm'
    this.keyed = nothingKeyed(this.form?.is === 'length' ? (isMetric ? 'mm' : 'in') : 'count')
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('h1')?.focus())
  }
  override disconnectedCallback(): void {
    removeEventListener('keydown', this.onKey)
    clearTimeout(this.timer.id)
    super.disconnectedCallback()
  }
  protected override updated(changed: PropertyValues): void {
    if (changed.has('keyed' as never)) this.trySoon()
  }

  private get form(): Form | undefined {
    return formAt(this.at)
  }
  /** What holds it: the name of the place is told from there on. */
  private get holder(): Place {
    return this.at.slice(0, this.at.lastIndexOf('/'))
  }
  private get name(): string {
    return capital(shownPlace(this.sheet, this.at, this.holder) || (tokens(this.at).at(-1) ?? ''))
  }

  override render() {
    const { sheet, form } = this
    const over = this.holder === sheet.place ? '' : shownPlace(sheet, this.holder)
    return html`<main><header><button class="back" aria-label=${words.back} @click=${this.leave}><svg width="22" height="22" aria-hidden="true"><path d="M14 3L6 11l8 8" fill="none" stroke="currentColor" stroke-width="2.4" /></svg></button>
        <div><small>${sheet.room.name}, ${sheet.window.name}${over ? ` · ${over}` : ''}</small><h1 tabindex="-1">${this.name}</h1></div></header>
      ${isNumber(form) ? this.numbers(form, meantAt(sheet, this.at)) : this.field(form)}</main>`
  }

  private numbers(form: Form, meant: Meant) {
    const now = keyedValue(this.keyed)
    const shown = now.is === 'value' ? this.amount(now.read) : undefined
    const goes = now.is === 'value' && outside(form, now.read) === undefined
    return html`<div class="told">${this.about(meant)}
        ${form.is === 'length' ? this.blade(now, meant) : nothing}
        <div class="now"><div class="big ${shown ? '' : 'none'}" aria-live="polite">${shown ? figure(shown) : this.keyed.typed || '–'}</div>${this.verdict(now, form, meant)}</div></div>
      <pad-keys .keyed=${this.keyed} .saves=${goes ? shown : undefined} .besides=${this.besides(form, meant)} ?canBeNegative=${'least' in form && (form.least ?? 0) < 0}
        @keyed=${(event: CustomEvent<Keyed>) => {
          this.keyed = event.detail
        }} @save=${this.saveKeyed} @same=${() => this.saveNumber(form, meant.value)} @cannot=${this.cannot} @withdraw=${() => this.save({ place: this.at })}></pad-keys>`
  }
  /** What can be done without keying in: the same as ordered, and giving up, or taking back what stands. */
  private besides(form: Form, { value }: Meant): readonly PadWord[] {
    const isRead = this.sheet.readings[this.at] !== undefined
    const cannot = form.is === 'length' ? words.cannotMeasure : words.cannotCount
    return [
      { name: words.sameAsOrdered, event: 'same', can: value !== undefined },
      isRead ? { name: words.withdraw, event: 'withdraw', can: true } : { name: cannot, event: 'cannot', can: true },
    ]
  }

  private field(form: Form | undefined) {
    const { sheet, at } = this
    return html`<div class="told">${this.about(meantAt(sheet, at))}
      <value-field .form=${form} .name=${this.name} .value=${sheet.readings[at]?.value} @value=${({ detail }: CustomEvent<unknown>) => this.save({ place: at, value: detail, read: detail })}></value-field></div>`
  }

  private amount(read: number): Amount {
    return this.form?.is === 'length' ? this.sheet.write(read as Length) : bare(read)
  }

  /** What is measured, drawn with its number alone where there is room, and what is known of it. */
  private about(meant: Meant) {
    const isDrawn =
      this.roomy.matches && this.sheet.layers.some(({ marks }) => marks.some((mark) => figuresIn(mark).includes(this.at)))
    const picture = html`<room-drawing .sheet=${this.sheet} .only=${this.at} view="elevation"></room-drawing>`
    return html`<div class="about ${isDrawn ? 'pictured' : ''}">${isDrawn ? picture : nothing}<div>${this.facts(meant)}${this.hint()}</div></div>`
  }

  private facts({ value, isOrdered, allowed }: Meant) {
    const reading = this.sheet.readings[this.at]
    const number = (given: unknown) => (typeof given === 'number' ? figure(this.amount(given), 600) : String(given))
    const rows = [
      ...(value === undefined ? [] : [[isOrdered ? words.orderedValue : words.expected, number(value)]]),
      ...(allowed === undefined ? [] : [[words.allowed, html`± ${number(allowed)}`]]),
      ...(reading === undefined
        ? []
        : [[`${words.reading}, ${clockOf(reading.when)}`, html`<span class="tape">${number(reading.value)}</span>`]]),
    ]
    return rows.length === 0 ? nothing : html`<dl>${rows.map(([name, shown]) => html`<dt>${name}</dt><dd>${shown}</dd>`)}</dl>`
  }
  private hint() {
    const last = tokens(this.at).at(-1) ?? ''
    const hint = Object.hasOwn(words.hints, last) ? words.hints[last as keyof typeof words.hints] : undefined
    return hint ? html`<p class="hint">${hint}</p>` : nothing
  }

  private blade(now: KeyedValue, { value, isOrdered, allowed }: Meant) {
    const shown = now.is === 'value' ? now.read : (value ?? 0)
    return html`<tape-blade .length=${shown as Length} .unit=${this.keyed.unit === 'mm' ? 'mm' : 'in'} .ordered=${value as Length | undefined} .allowed=${allowed} .name=${isOrdered ? words.orderedValue : words.expected}
      .says=${fill(words.blade, { number: this.amount(shown).text })}></tape-blade>`
  }

  /** Whether it can be, what it is against what is meant, and what saving it would change. */
  private verdict(now: KeyedValue, form: Form, meant: Meant) {
    if (now.is === 'none') return html`<div></div>`
    if (now.is === 'wrong') return this.said('fail', wrongIn(now))
    const passes = outside(form, now.read)
    if (passes)
      return this.said(
        'fail',
        fill(passes.end === 'least' ? words.tooLittle : words.tooMuch, { limit: this.amount(passes.limit).text }),
      )
    const list = html`<ul aria-label=${words.savingChanges}>${this.changesFor(now.read).map((line) => html`<li>${sentence(line)}</li>`)}</ul>`
    return this.against(now.read, meant, list)
  }
  private changesFor(read: number): readonly string[] {
    const { tried } = this
    if (tried?.of !== read) return []
    const lines = isNothing(tried.changes) ? [words.changesNothing] : changeLines(this.sheet, tried.changes)
    return lines.length > 4 ? [...lines.slice(0, 3), fill(words.moreChanges, { n: lines.length - 3 })] : lines
  }
  private against(read: number, meant: Meant, list: unknown) {
    if (meant.value === undefined) return html`<div class="said">${list}</div>`
    const off = read - meant.value
    const by = this.amount(Math.abs(off)).text
    const same = meant.isOrdered ? words.asOrdered : words.asExpected
    const way = off === 0 ? same : fill(off > 0 ? words.more_ : words.less_, { by })
    if (meant.allowed === undefined) return html`<div class="said"><span></span><div>${sentence(way)}</div>${list}</div>`
    return isOff(meant, read, 'length')
      ? this.said('warn', `${words.outsideTolerance} ${way}`, list)
      : this.said('pass', `${words.inside} ${way}`, list)
  }
  private said(verdict: 'pass' | 'warn' | 'fail', says: string, list: unknown = nothing) {
    return html`<div class="said">${verdictSign(verdict)}<div>${sentence(says)}</div>${list}</div>`
  }

  /** What saving would change, once the fingers rest. */
  private trySoon(): void {
    clearTimeout(this.timer.id)
    const now = keyedValue(this.keyed)
    if (now.is !== 'value' || this.tried?.of === now.read) return
    this.timer.id = setTimeout(async () => {
      const plan = await this.tools.tryOut(this.sheet.place, { [this.at]: { value: now.read } }).catch(() => undefined)
      if (plan) this.tried = { of: now.read, changes: changesOf(this.sheet.plan, plan) }
    }, restMs)
  }

  private saveKeyed(): void {
    const [now, form] = [keyedValue(this.keyed), this.form]
    if (form && now.is === 'value' && outside(form, now.read) === undefined)
      void this.save({ place: this.at, value: now.raw, read: now.read })
  }
  private saveNumber(form: Form, read: number | undefined): void {
    if (read === undefined) return
    void this.save({ place: this.at, read, value: form.is === 'length' ? rawLength(read as Length) : read })
  }
  /** Parts are counted one after the other: only what a count changes is told. */
  private async save(entered: Entered): Promise<void> {
    if (await this.tools.put([entered], this.form?.is === 'count' ? 'quietly' : undefined)) this.leave()
  }
  private readonly cannot = (): void => {
    const { sheet, at } = this
    const value = fill(words.cannotNote, { place: shownPlace(sheet, at) })
    const name = `not measured: ${at.slice(sheet.place.length + 1)}`
    void this.save({ place: below(sheet.place, 'found', 'notes', name), value, read: value })
  }
  private readonly leave = (): void => {
    tell(this, 'go-back')
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.leave()
    if (!isNumber(this.form) || event.ctrlKey || event.metaKey || event.altKey) return
    const isOnButton = focused(this.renderRoot) instanceof HTMLButtonElement
    if (event.key === 'Backspace') this.keyed = shorter(this.keyed)
    else if (event.key === 'Enter' && !isOnButton) this.saveKeyed()
    else if (/^[0-9a-z ./'"-]$/i.test(event.key) && !(event.key === ' ' && isOnButton))
      this.keyed = typedMore(this.keyed, event.key)
    else return
    event.preventDefault()
  }
}

const isNumber = (form: Form | undefined): form is Form => form !== undefined && ['length', 'count', 'number'].includes(form.is)

/** What has the focus below a root, in shadow roots too. */
function focused(root: ParentNode): Element | null | undefined {
  const element = (root as ShadowRoot).activeElement
  return element?.shadowRoot?.activeElement ?? element
}

/** The places of the figures in a mark. */
const figuresIn = (mark: Mark): readonly string[] =>
  mark.kind === 'group' || mark.kind === 'detail' ? mark.marks.flatMap(figuresIn) : 'figure' in mark ? [mark.figure.of] : []

function wrongIn({ code, values }: Extract<KeyedValue, { is: 'wrong' }>): string {
  const table: Readonly<Record<string, { readonly says: string }>> = language === 'es' ? spanishLengthWords : lengthWords
  return fill(table[code]?.says ?? words.noNumber, values)
}
