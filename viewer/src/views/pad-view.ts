import type { Mark } from '@evenhem/drawing'
import { below, type Place, placeInWords, tokens, valueAt } from '@evenhem/job'
import { type Length, lengthWords, spanishLengthWords } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import { css, html, nothing, type PropertyValues } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { type Amount, bare } from '../data/amount.ts'
import { type Changes, changesOf, isNothing } from '../data/changes.ts'
import { type Form, formAt } from '../data/form.ts'
import {
  inUnit,
  type Keyed,
  type KeyedValue,
  keyedValue,
  nothingKeyed,
  outside,
  shorter,
  turned,
  typedMore,
  withDigit,
  withParts,
} from '../data/pad.ts'
import { rawLength } from '../data/raw.ts'
import type { Sheet } from '../data/sheet.ts'
import type { Entered } from '../data/site.ts'
import type { SiteTools } from '../data/tools.ts'
import { figure, figureStyle } from '../elements/figure.ts'
import { Media } from '../elements/media.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { verdictSign, verdictStyle } from '../elements/verdict.ts'
import { capital, fill, language, words } from '../words.ts'
import { changeLines } from './shown-changes.ts'
import '../elements/tape-blade.ts'
import './room-drawing.ts'

type Capture = NonNullable<WindowPlan['steps'][number]['captures']>[number]

/** Waiting this long after a key before the plan is tried: nobody types two digits apart. */
const restMs = 180

/** Entering what the tape says: the stretch of blade that the hand should see, what was ordered and allowed, and what saving would change. */
@customElement('pad-view')
export class PadView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property() at: Place = ''
  @property({ attribute: false }) tools!: SiteTools
  @state() private keyed: Keyed = nothingKeyed('in')
  @state() private written = ''
  @state() private tried?: { readonly of: number; readonly changes: Changes }
  private readonly timer = { id: 0 }
  private readonly roomy = new Media(this, '(min-width: 600px) and (min-height: 1000px)')

  static override readonly styles = [
    base,
    buttons,
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
      .said b { color: var(--ink); font-weight: 600 }
      .keys { background: var(--panel); border-top: 1px solid var(--faint); padding: 10px 12px 12px; display: grid; gap: 8px }
      .fractions { display: grid; grid-template-columns: repeat(17, 1fr); gap: 6px }
      .fractions button { grid-column: span 2 }
      .fractions .odd { grid-column: 2 / span 2 }
      .tenths { display: grid; grid-template-columns: repeat(10, 1fr); gap: 6px }
      .digits { display: grid; grid-template-columns: repeat(3, 1fr) 1.3fr; gap: 8px }
      .key { min-height: 62px; border: 1px solid var(--line); border-radius: 6px; background: var(--sheet); font-size: 26px; font-weight: 500; text-align: center; display: grid; place-items: center; border-top: 3px solid var(--tapehook) }
      .digits .key { border-top: 1px solid var(--line); min-height: 66px }
      .digits .word { font-size: 18px }
      .key.on { background: var(--tape); color: var(--tapeink) }
      .small { font-size: 19px; min-height: 56px }
      .save { grid-row: 3 / 5; grid-column: 4; background: var(--act); color: var(--onact); border-color: var(--act); font-size: 24px; font-weight: 600; line-height: 1.1 }
      .save .number { display: block; font-size: 34px; font-weight: 700 }
      .save[aria-disabled='true'] { background: var(--sheet); color: var(--ink2); border-color: var(--line) }
      .choices { display: grid; gap: 10px; padding-top: 14px }
      .choices .button { justify-content: flex-start; text-align: left; min-height: 72px }
      .choices .button[aria-pressed='true'] { background: var(--markbg) }
      textarea, input { font: inherit; font-size: 20px; color: inherit; background: var(--sheet); border: 2px solid var(--line); border-radius: 6px; padding: 10px 12px; width: 100% }
      textarea { min-height: 120px }
      .one .button { width: 100% }
      .one { padding: 12px 16px 16px; background: var(--panel); border-top: 1px solid var(--faint) }
      @media (max-width: 599px) {
        .told { padding: 10px 16px } tape-blade { margin: 4px -16px 0; height: 84px }
        h1 { font-size: 21px } .big { font-size: 56px } .now { grid-template-columns: 1fr; min-height: 0; gap: 2px }
        .key { min-height: 46px; font-size: 21px } .digits .key { min-height: 50px } .small { min-height: 42px; font-size: 15px }
        .keys { padding: 8px; gap: 6px } .fractions { gap: 3px } .digits { gap: 6px } .hint { display: none } .save .number { font-size: 26px }
        dl { gap: 4px 12px; font-size: 15.5px }
      }
      @media (min-width: 1000px) and (min-aspect-ratio: 1/1) {
        main { grid-template: 68px minmax(0, 1fr) / minmax(0, 1fr) 520px } header { grid-column: 1 / -1 }
        .keys, .one { border-top: 0; border-left: 1px solid var(--faint); align-content: start }
        .key { min-height: 74px } .small { min-height: 66px; font-size: 17px } .digits .key { min-height: 92px }
      }
    `,
  ]

  override connectedCallback(): void {
    super.connectedCallback()
    addEventListener('keydown', this.onKey)
    const { form } = this
    const metric = this.sheet.unit === 'mm' || this.sheet.unit === 'cm'
    this.keyed = nothingKeyed(form?.is === 'length' ? (metric ? 'mm' : 'in') : 'count')
    const stands = this.found
    if (form?.is === 'text' && typeof stands === 'string') this.written = stands
    if (form?.is === 'date') this.written = typeof stands === 'string' ? stands : new Date().toISOString().slice(0, 10)
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
  private get capture(): Capture | undefined {
    return this.sheet.plan.steps.flatMap(({ captures = [] }) => captures).find(({ at }) => at === this.at)
  }
  /** What stands there now: a reading, else what was ordered. */
  private get found(): unknown {
    return this.sheet.readings[this.at]?.value ?? valueAt(this.sheet.ordered, this.at)
  }

  override render() {
    const { form, sheet, at } = this
    const over = placeInWords(sheet.ordered, at.slice(0, at.lastIndexOf('/')), sheet.place, language)
    return html`<main><header><button class="back" aria-label=${words.back} @click=${this.leave}><svg width="22" height="22" aria-hidden="true"><path d="M14 3L6 11l8 8" fill="none" stroke="currentColor" stroke-width="2.4" /></svg></button>
        <div><small>${sheet.room.name}, ${sheet.window.name}${over ? ` · ${over}` : ''}</small><h1 tabindex="-1">${capital(this.named())}</h1></div></header>
      ${form?.is === 'length' || form?.is === 'count' || form?.is === 'number' ? this.numbers(form) : this.others(form)}</main>`
  }
  private named(): string {
    const last = this.at.lastIndexOf('/')
    return placeInWords(this.sheet.ordered, this.at, this.at.slice(0, last), language) || tokens(this.at).at(-1) || ''
  }

  private numbers(form: Form) {
    const now = keyedValue(this.keyed)
    const isLength = form.is === 'length'
    const shown = now.is === 'value' ? this.amount(now.read) : undefined
    return html`<div class="told">${this.about()}
        ${isLength ? this.blade(now) : nothing}
        <div class="now"><div class="big ${shown ? '' : 'none'}" aria-live="polite">${shown ? figure(shown) : this.keyed.typed || '–'}</div>${this.verdict(now, form)}</div></div>
      <div class="keys">${isLength ? this.fractions() : nothing}${this.digits(now, form)}</div>`
  }

  private amount(read: number): Amount {
    return this.form?.is === 'length' ? this.sheet.write(read as Length) : bare(read)
  }

  /** What is measured, drawn with its number alone where there is room, and what is known of it. */
  private about() {
    const isDrawn =
      this.roomy.matches && this.sheet.layers.some(({ marks }) => marks.some((mark) => figuresIn(mark).includes(this.at)))
    const picture = html`<room-drawing .sheet=${this.sheet} .only=${this.at} view="elevation"></room-drawing>`
    return html`<div class="about ${isDrawn ? 'pictured' : ''}">${isDrawn ? picture : nothing}<div>${this.facts()}${this.hint()}</div></div>`
  }

  private facts() {
    const { capture, sheet, at } = this
    const ordered = valueAt(sheet.ordered, at)
    const expected =
      capture?.expected &&
      ('length' in capture.expected ? capture.expected.length : 'count' in capture.expected ? capture.expected.count : undefined)
    const allowed = capture?.tolerance && 'length' in capture.tolerance ? capture.tolerance.length : undefined
    const reading = sheet.readings[at]
    const number = (value: unknown) => (typeof value === 'number' ? figure(this.amount(value), 600) : String(value))
    const rows = [
      ...(ordered !== undefined && typeof ordered !== 'object'
        ? [[words.orderedValue, number(ordered)]]
        : expected !== undefined
          ? [[words.expected, number(expected)]]
          : []),
      ...(allowed === undefined ? [] : [[words.allowed, html`± ${number(allowed)}`]]),
      ...(reading === undefined
        ? []
        : [[`${words.reading}, ${clockOf(reading.when)}`, html`<span class="tape">${number(reading.value)}</span>`]]),
    ]
    return rows.length === 0 ? nothing : html`<dl>${rows.map(([name, value]) => html`<dt>${name}</dt><dd>${value}</dd>`)}</dl>`
  }
  private hint() {
    const last = tokens(this.at).at(-1) ?? ''
    const hint = Object.hasOwn(words.hints, last) ? words.hints[last as keyof typeof words.hints] : undefined
    return hint ? html`<p class="hint">${hint}</p>` : nothing
  }

  private blade(now: KeyedValue) {
    const { capture } = this
    const meant = this.orderedNumber()
    const tolerance = capture?.tolerance && 'length' in capture.tolerance ? capture.tolerance.length : undefined
    const shown = now.is === 'value' ? now.read : (meant ?? 0)
    return html`<tape-blade .length=${shown as Length} .unit=${this.keyed.unit === 'mm' ? 'mm' : 'in'} .ordered=${meant as Length | undefined} .allowed=${tolerance} .name=${valueAt(this.sheet.ordered, this.at) === undefined ? words.expected : words.orderedValue}
      .says=${fill(words.blade, { number: this.amount(shown).text })}></tape-blade>`
  }
  private orderedNumber(): number | undefined {
    const ordered = valueAt(this.sheet.ordered, this.at)
    const { expected } = this.capture ?? {}
    if (typeof ordered === 'number') return ordered
    return expected && ('length' in expected ? expected.length : 'count' in expected ? expected.count : undefined)
  }

  /** Whether it can be, what it is against the order, and what saving it would change. */
  private verdict(now: KeyedValue, form: Form) {
    if (now.is === 'none') return html`<div></div>`
    if (now.is === 'wrong') return this.said('fail', wrongIn(now))
    const passes = outside(form, now.read)
    if (passes)
      return this.said(
        'fail',
        fill(passes.end === 'least' ? words.tooLittle : words.tooMuch, { limit: this.amount(passes.limit).text }),
      )
    const { tried } = this
    const lines =
      tried?.of === now.read ? (isNothing(tried.changes) ? [words.changesNothing] : changeLines(this.sheet, tried.changes)) : []
    const more = lines.length > 4 ? [...lines.slice(0, 3), fill(words.moreChanges, { n: lines.length - 3 })] : lines
    const list = html`<ul aria-label=${words.savingChanges}>${more.map((line) => html`<li>${sentence(line)}</li>`)}</ul>`
    return this.against(now.read, list)
  }
  private against(read: number, list: unknown) {
    const meant = this.orderedNumber()
    const { tolerance } = this.capture ?? {}
    const off = meant === undefined ? undefined : read - meant
    if (off === undefined) return html`<div class="said">${list}</div>`
    const by = this.amount(Math.abs(off)).text
    const way = off === 0 ? words.asOrdered : fill(off > 0 ? words.more_ : words.less_, { by })
    if (!tolerance || !('length' in tolerance))
      return html`<div class="said"><span></span><div>${sentence(way)}</div>${list}</div>`
    return this.said(
      Math.abs(off) <= tolerance.length ? 'pass' : 'warn',
      `${Math.abs(off) <= tolerance.length ? words.inside : words.outsideTolerance} ${way}`,
      list,
    )
  }
  private said(verdict: 'pass' | 'warn' | 'fail', says: string, list: unknown = nothing) {
    return html`<div class="said">${verdictSign(verdict)}<div>${sentence(says)}</div>${list}</div>`
  }

  private fractions() {
    if (this.keyed.unit === 'mm')
      return html`<div class="tenths">${Array.from({ length: 10 }, (_, n) => this.fraction(n, `.${n}`, `0.${n}`, 'small'))}</div>`
    const name = (n: number) => this.sheetFraction(n)
    return html`<div class="fractions">${[0, 2, 4, 6, 8, 10, 12, 14].map((n) => this.fraction(n, n === 0 ? words.whole : name(n), undefined, n === 0 ? 'small' : ''))}</div>
      <div class="fractions">${[1, 3, 5, 7, 9, 11, 13, 15].map((n) => this.fraction(n, name(n), undefined, `small ${n === 1 ? 'odd' : ''}`))}</div>`
  }
  private sheetFraction(sixteenths: number) {
    return figure(writtenFraction(sixteenths), 500, false)
  }
  private fraction(n: number, shown: unknown, spoken: string | undefined, look: string) {
    const on = this.keyed.typed === '' && this.keyed.parts === n && (n > 0 || this.keyed.whole !== '')
    return html`<button class="key ${look} ${on ? 'on' : ''}" aria-label=${spoken ?? nothing} aria-pressed=${on} @click=${() => this.key((keyed) => withParts(keyed, n))}>${shown}</button>`
  }

  private digits(now: KeyedValue, form: Form) {
    const digit = (n: string) => html`<button class="key" @click=${() => this.key((keyed) => withDigit(keyed, n))}>${n}</button>`
    const ordered = this.orderedNumber()
    const goes = now.is === 'value' && outside(form, now.read) === undefined
    const canBeNegative = 'least' in form && (form.least ?? 0) < 0
    return html`<div class="digits">
      ${digit('7')}${digit('8')}${digit('9')}
      <button class="key word" aria-disabled=${ordered === undefined} @click=${() => ordered !== undefined && this.save({ place: this.at, ...asEntered(ordered, form) })}>${words.sameAsOrdered}</button>
      ${digit('4')}${digit('5')}${digit('6')}
      <button class="key word" @click=${this.cannot}>${words.cannotMeasure}</button>
      ${digit('1')}${digit('2')}${digit('3')}
      <button class="key save" aria-disabled=${!goes} @click=${() => this.saveKeyed(now, form)}>${words.save}${now.is === 'value' ? figure(this.amount(now.read)) : nothing}</button>
      ${this.lastRow(form, canBeNegative)}${digit('0')}
      <button class="key" aria-label=${words.takeBack} @click=${() => this.key(shorter)}><svg width="34" height="26" aria-hidden="true"><path d="M11 3h20v20H11L2 13zM16 9l9 8M25 9l-9 8" fill="none" stroke="currentColor" stroke-width="2.2" /></svg></button>
    </div>`
  }
  private lastRow(form: Form, canBeNegative: boolean) {
    if (form.is !== 'length') return html`<span></span>`
    if (canBeNegative)
      return html`<button class="key word" aria-pressed=${this.keyed.negative} @click=${() => this.key(turned)}>± ${words.below}</button>`
    const other = this.keyed.unit === 'mm' ? 'in' : 'mm'
    return html`<button class="key word" @click=${() => this.key((keyed) => inUnit(keyed, other))}>${other}</button>`
  }

  /** What is no number: a tick, one of several, a day or words. */
  private others(form: Form | undefined) {
    if (form?.is === 'choice' || form?.is === 'tick') {
      const choices =
        form.is === 'choice'
          ? form.choices.map((choice) => [choice, choice] as const)
          : ([
              [true, words.yes],
              [false, words.no],
            ] as const)
      return html`<div class="told">${this.facts()}${this.hint()}<div class="choices">${choices.map(
        ([value, name]) =>
          html`<button class="button" aria-pressed=${this.found === value} @click=${() => this.save({ place: this.at, value, read: value })}>${capital(this.choiceName(String(name)))}</button>`,
      )}</div></div>`
    }
    const isDate = form?.is === 'date'
    const field = isDate
      ? html`<input type="date" .value=${this.written} aria-label=${this.named()} @input=${this.onWritten} />`
      : html`<textarea .value=${this.written} aria-label=${this.named()} @input=${this.onWritten}></textarea>`
    return html`<div class="told">${this.hint()}${field}</div>
      <div class="one"><button class="button go" aria-disabled=${this.written.trim() === ''} @click=${this.saveWritten}>${words.save}</button></div>`
  }
  private choiceName(choice: string): string {
    return Object.hasOwn(words.choices, choice) ? words.choices[choice as keyof typeof words.choices] : choice
  }
  private onWritten(event: Event): void {
    this.written = (event.target as HTMLInputElement).value
  }
  private saveWritten(): void {
    const value = this.written.trim()
    if (value !== '') void this.save({ place: this.at, value, read: value })
  }

  private key(change: (keyed: Keyed) => Keyed): void {
    this.keyed = change(this.keyed)
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

  private saveKeyed(now: KeyedValue, form: Form): void {
    if (now.is === 'value' && outside(form, now.read) === undefined)
      void this.save({ place: this.at, value: now.raw, read: now.read })
  }
  private async save(entered: Entered): Promise<void> {
    await this.tools.put([entered])
    this.leave()
  }
  private readonly cannot = (): void => {
    const { sheet, at } = this
    const what = placeInWords(sheet.ordered, at, sheet.place, language)
    const value = fill(words.cannotNote, { place: what })
    void this.save({
      place: below(sheet.place, 'found', 'notes', `not measured: ${at.slice(sheet.place.length + 1)}`),
      value,
      read: value,
    })
  }
  private readonly leave = (): void => {
    tell(this, 'go-back')
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.leave()
    const { form } = this
    const isNumber = form !== undefined && ['length', 'count', 'number'].includes(form.is)
    if (!isNumber || event.ctrlKey || event.metaKey || event.altKey) return
    const isOnButton = this.shadowRoot?.activeElement instanceof HTMLButtonElement
    if (event.key === 'Backspace') this.key(shorter)
    else if (event.key === 'Enter' && !isOnButton) this.saveKeyed(keyedValue(this.keyed), form)
    else if (/^[0-9a-z ./'"-]$/i.test(event.key) && !(event.key === ' ' && isOnButton))
      this.key((keyed) => typedMore(keyed, event.key))
    else return
    event.preventDefault()
  }
}

/** The places of the figures in a mark. */
const figuresIn = (mark: Mark): readonly string[] =>
  mark.kind === 'group' || mark.kind === 'detail' ? mark.marks.flatMap(figuresIn) : 'figure' in mark ? [mark.figure.of] : []
const writtenFraction = (sixteenths: number): Amount => {
  let [above, below] = [sixteenths, 16]
  while (above % 2 === 0) [above, below] = [above / 2, below / 2]
  return { text: `${above}/${below}`, negative: false, whole: '', numerator: above, denominator: below, unit: 'in' }
}
const clockOf = (when: string | undefined): string => /T(\d\d:\d\d)/.exec(when ?? '')?.[1]?.replace(/^0/, '') ?? ''

const asEntered = (value: number, form: Form): Pick<Entered, 'value' | 'read'> => ({
  read: value,
  value: form.is === 'length' ? rawLength(value as Length) : value,
})

function wrongIn({ code, values }: Extract<KeyedValue, { is: 'wrong' }>): string {
  const table: Readonly<Record<string, { readonly says: string }>> = language === 'es' ? spanishLengthWords : lengthWords
  return fill(table[code]?.says ?? words.noNumber, values)
}
