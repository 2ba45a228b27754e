import type { Place } from '@evenhem/job'
import { css, html, nothing, type PropertyValues } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { ShortWindow } from '../data/house.ts'
import { dayAndTime } from '../data/moment.ts'
import { sayOn, tapeOf } from '../data/sheet.ts'
import type { Acceptance, Role, Signed, Signing } from '../data/signing.ts'
import { plainPage } from '../elements/plain-page.ts'
import { sentence, sentenceStyle } from '../elements/sentence.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import type { Strokes } from '../elements/signature-pad.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { verdictSign, verdictStyle } from '../elements/verdict.ts'
import { handOverWords } from '../words/hand-over.ts'
import { counted, fill, words } from '../words.ts'
import type { HouseOrder } from './house-page.ts'
import '../elements/signature-pad.ts'

const roles: readonly Role[] = ['installer', 'customer']
const acceptances: readonly Acceptance[] = ['without open points', 'with open points']

/** The whole house is handed over: what is done, what is left open, and who signs for it. */
@customElement('hand-over-page')
export class HandOverPage extends SpokenElement {
  @property({ attribute: false }) order!: HouseOrder
  @property({ attribute: false }) signatures: readonly Signed[] = []
  /** Puts a signature; whether it was kept. */
  @property({ attribute: false }) sign!: (signing: Signing) => Promise<boolean>
  @state() private signer: Role = 'installer'
  @state() private accepts?: Acceptance
  @state() private strokes: Strokes = []
  @state() private typed = false
  @state() private wrong?: string
  /** What somebody is writing stays while an entry of anybody has the house looked at again. */
  private wasKnown = false

  static override readonly styles = [
    base,
    buttons,
    plainPage,
    sentenceStyle,
    verdictStyle,
    css`
      fieldset { border: 0; margin: 20px 0 0; padding: 0; display: flex; flex-wrap: wrap; gap: 8px }
      legend { padding: 0; margin-bottom: 6px; font-size: 17px; font-weight: 600 }
      .chip { white-space: normal; text-align: left }
      .chip[aria-pressed='true'] { background: var(--ink); color: var(--sheet); border-color: var(--ink) }
      .open li { grid-template-columns: 26px minmax(0, 1fr) }
      signature-pad { margin-top: 20px }
      .typed { display: flex; align-items: center; gap: 12px; min-height: 48px; font-weight: 400 }
      .typed input { width: 26px; min-height: 26px; margin: 0 }
    `,
  ]

  protected override willUpdate(): void {
    this.wasKnown ||= this.isKnown
  }
  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('order') || this.isKnown) return
    tell(
      this,
      'need-windows',
      this.order.windows.map(({ place }) => place),
    )
  }
  /** Nobody signs before everything was looked at. */
  private get isKnown(): boolean {
    const { house, shorts, windows } = this.order
    return house !== undefined && windows.every(({ place }) => shorts.has(place))
  }
  /** How many windows have steps left. */
  private get unfinished(): number {
    return [...this.order.shorts.values()].filter(({ done, steps }) => done < steps).length
  }

  override render() {
    const says = handOverWords()
    const { ordered } = this.order
    const firm = this.open().filter(({ isFirm }) => isFirm)
    return html`<main><a class="back" href="#/">${words.back}</a><h1>${says.title}: ${ordered.job.name}</h1>
      <h2>${says.windows}</h2><ul>${this.order.windows.map(({ place, room, window }) => this.window(place, `${room.name}, ${window.name}`))}</ul>
      <h2>${says.left}</h2>${this.leftOpen()}
      ${this.signatures.length === 0 ? nothing : html`<h2>${says.signed}</h2><ul>${this.signatures.map((each) => html`<li><div>${`${says.roles[each.role]} ${each.name}, ${dayAndTime(each.when ?? '')}`}${each.accepts ? html`<small>${says.acceptances[each.accepts]}</small>` : nothing}</div></li>`)}</ul>`}
      ${firm.length > 0 ? html`<p class="fail" role="alert">${says.firm}</p><ul class="open">${firm.map((each) => this.openRow(each))}</ul>` : this.wasKnown ? this.form() : nothing}</main>`
  }

  private window(place: Place, name: string) {
    const short = this.order.shorts.get(place)
    const gone = short ? fill(handOverWords().stepsGone, { n: short.done, m: short.steps }) : words.beingDrawn
    return html`<li><div>${name}</div><small>${gone}</small></li>`
  }
  /** Of the whole house, then of each window as one walks. */
  private open(): ShortWindow['open'] {
    const { house, shorts, windows } = this.order
    return [...(house?.checks ?? []), ...windows.flatMap(({ place }) => shorts.get(place)?.open ?? [])]
  }
  private leftOpen() {
    const says = handOverWords()
    if (!this.isKnown) return html`<p class="quiet">${words.beingDrawn}</p>`
    const [open, { unfinished }] = [this.open(), this]
    if (open.length === 0 && unfinished === 0) return html`<p class="quiet">${says.nothingLeft}</p>`
    return html`${unfinished === 0 ? nothing : html`<p>${counted(unfinished, says.unfinishedOne, says.unfinishedMany)}</p>`}<ul class="open">${open.map((each) => this.openRow(each))}</ul>`
  }
  private openRow({ verdict, code, says, values, on }: ShortWindow['open'][number]) {
    const { words: spoken, language, unit } = this.order
    const window = this.order.windows.find(({ place }) => on === place || on.startsWith(`${place}/`))
    const text = sayOn(spoken, language, tapeOf[unit]).say(says ?? code, values)
    return html`<li>${verdictSign(verdict)}<div>${sentence(text)}${window ? html`<small>${window.room.name}, ${window.window.name}</small>` : nothing}</div></li>`
  }

  private form() {
    const says = handOverWords()
    const isCustomer = this.signer === 'customer'
    return html`<form @submit=${this.submit}>
      <fieldset><legend>${says.who}</legend>${roles.map((role) => this.chip(says.roles[role], this.signer === role, () => (this.signer = role)))}</fieldset>
      ${isCustomer ? html`<fieldset><legend>${says.accepts}</legend>${this.acceptable().map((each) => this.chip(says.acceptances[each], this.accepts === each, () => (this.accepts = each)))}</fieldset>` : nothing}
      <label>${says.name}<input name="name" autocomplete="off" maxlength="100" /></label>
      ${isCustomer ? html`<label>${says.leftHere}<input name="left" autocomplete="off" maxlength="300" /></label>` : nothing}
      <signature-pad .strokes=${this.strokes} .name=${says.pad} .clears=${says.clear} @signed=${(event: CustomEvent<Strokes>) => (this.strokes = event.detail)}></signature-pad>
      <label class="typed"><input type="checkbox" .checked=${this.typed} @change=${(event: Event) => (this.typed = (event.target as HTMLInputElement).checked)} />${says.typed}</label>
      <p class="quiet">${says.note}</p>
      ${this.wrong === undefined ? nothing : html`<p class="fail" role="alert">${this.wrong}</p>`}
      <button class="button go">${says.go}</button></form>`
  }
  /** Nobody accepts without open points while there are some, or a window is not finished. */
  private acceptable(): readonly Acceptance[] {
    return !this.isKnown || this.open().length > 0 || this.unfinished > 0 ? acceptances.slice(1) : acceptances
  }
  private chip(name: string, isOn: boolean, choose: () => void) {
    return html`<button type="button" class="chip" aria-pressed=${isOn} @click=${choose}>${name}</button>`
  }

  private async submit(event: SubmitEvent): Promise<void> {
    event.preventDefault()
    const form = event.target as HTMLFormElement
    const filled = new FormData(form)
    const name = String(filled.get('name') ?? '').trim()
    this.wrong = this.lacking(name)
    if (this.wrong !== undefined) return
    if (!(await this.sign(this.signing(name, String(filled.get('left') ?? '').trim())))) return
    form.reset()
    this.strokes = []
    this.typed = false
  }
  private signing(name: string, left: string): Signing {
    const { signer: role, strokes, accepts } = this
    return {
      ...{ role, name, strokes },
      ...(role === 'customer' && accepts ? { accepts } : {}),
      ...(this.typed ? { typed: true } : {}),
      ...(left === '' ? {} : { left }),
    }
  }
  private lacking(name: string): string | undefined {
    const says = handOverWords()
    if (!this.isKnown) return says.lookedAtAgain
    if (name === '' || (this.strokes.length === 0 && !this.typed)) return says.lacks
    return this.signer === 'customer' && !(this.accepts && this.acceptable().includes(this.accepts))
      ? says.lacksChoice
      : undefined
  }
}
