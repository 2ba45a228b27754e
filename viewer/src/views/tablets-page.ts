import { html, nothing } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { dayAndTime } from '../data/moment.ts'
import { asked, post } from '../data/served.ts'
import { plainPage } from '../elements/plain-page.ts'
import { base, buttons } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { deskWords } from '../words/desk.ts'
import { fill, words } from '../words.ts'

interface Device {
  readonly id: string
  readonly name: string
  readonly since: string
  readonly seen?: string
}
interface Devices {
  readonly network: boolean
  readonly devices: readonly Device[]
  readonly addresses: readonly string[]
}
interface Code {
  readonly code: string
  readonly until: string
  readonly link: string
  readonly qr: string
}
const picture = (svg: string): string => `data:image/svg+xml;utf8,${encodeURIComponent(svg)}`

/** At the desk: lets a tablet in, and says which ones there are. */
@customElement('tablets-page')
export class TabletsPage extends SpokenElement {
  @state() private known?: Devices
  @state() private code?: Code
  @state() private wrong?: string

  static override readonly styles = [base, buttons, plainPage]

  override connectedCallback(): void {
    super.connectedCallback()
    void this.tried(async () => {
      this.known = await asked<Devices>('/devices')
    })
  }

  override render() {
    return html`<main><a class="back" href="#/">${words.back}</a><h1>${deskWords().tabletsTitle}</h1>
      ${this.wrong === undefined ? nothing : html`<p class="fail" role="alert">${this.wrong}</p>`}
      ${this.known ? this.about(this.known) : nothing}</main>`
  }
  private about({ network, devices, addresses }: Devices) {
    if (!network) return html`<p>${deskWords().tabletsOff}</p>`
    return html`<p>${fill(deskWords().tabletsHelp, { address: addresses[0] ?? location.origin })}</p>
      ${this.code ? this.shown(this.code) : nothing}
      <button class="button go" @click=${this.newCode}>${this.code ? deskWords().anotherCode : deskWords().letIn}</button>
      <h2>${deskWords().tabletsKnown}</h2>
      ${devices.length === 0 ? html`<p class="quiet">${deskWords().tabletsNone}</p>` : html`<ul>${devices.map((device) => this.device(device))}</ul>`}`
  }
  private shown({ code, until, link, qr }: Code) {
    return html`<img class="squares" alt=${fill(deskWords().squaresOf, { link })} src=${picture(qr)} />
      <p>${fill(deskWords().codeIs, { code, until: new Date(until).toTimeString().slice(0, 5).replace(/^0/, '') })}</p><p class="quiet">${link}</p>`
  }
  private device({ id, name, since, seen }: Device) {
    const when = fill(deskWords().tabletSince, { since: dayAndTime(since), seen: seen === undefined ? '–' : dayAndTime(seen) })
    return html`<li><div>${name}<small>${when}</small></div>
      <button class="chip" aria-label=${fill(deskWords().sendAwayWho, { name })} @click=${() => this.sendAway(id)}>${deskWords().sendAway}</button></li>`
  }

  private readonly newCode = (): void =>
    void this.tried(async () => {
      this.code = await asked<Code>('/devices/code', post({}))
    })
  private sendAway(id: string): void {
    void this.tried(async () => {
      const { devices } = await asked<Pick<Devices, 'devices'>>('/devices/revoke', post({ id }))
      if (this.known) this.known = { ...this.known, devices }
    })
  }
  private async tried(work: () => Promise<void>): Promise<void> {
    try {
      await work()
      this.wrong = undefined
    } catch (error) {
      this.wrong = error instanceof Error ? error.message : String(error)
    }
  }
}
