import { html, nothing } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { dayAndTime } from '../data/moment.ts'
import { asked, baseNow, post } from '../data/served.ts'
import { plainPage } from '../elements/plain-page.ts'
import { base, buttons } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { deskWords } from '../words/desk.ts'
import { fill, language, words } from '../words.ts'

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
interface Link {
  readonly id: string
  readonly name: string
  readonly since: string
}
interface MadeLink extends Link {
  readonly link: string
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
  /** Links to the report of this job, where one is served here. */
  @state() private links?: readonly Link[]
  /** The one that was just made: nobody is shown its address again. */
  @state() private made?: MadeLink
  @state() private wrong?: string

  static override readonly styles = [base, buttons, plainPage]

  override connectedCallback(): void {
    super.connectedCallback()
    void this.tried(async () => {
      this.known = await asked<Devices>('/devices')
      const { links } = await asked<{ readonly links: readonly Link[] }>(`${baseNow()}links`).catch(() => ({ links: undefined }))
      this.links = links
    })
  }

  override render() {
    return html`<main><a class="back" href="#/">${words.back}</a><h1>${deskWords().tabletsTitle}</h1>
      ${this.wrong === undefined ? nothing : html`<p class="fail" role="alert">${this.wrong}</p>`}
      ${this.known ? this.about(this.known) : nothing}${this.known?.network && this.links ? this.shared(this.links) : nothing}</main>`
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
  /** Links by which a customer reads the report. */
  private shared(links: readonly Link[]) {
    const says = deskWords()
    return html`<h2>${says.linksTitle}</h2><p>${says.linksHelp}</p>
      <form @submit=${this.makeLink}><label>${says.linkFor}<input name="name" required maxlength="40" autocomplete="off" /></label><button class="button">${says.makeLink}</button></form>
      ${this.made ? html`<p class="given">${says.linkIs}</p><p class="address">${this.made.link}</p>` : nothing}
      ${links.length === 0 ? html`<p class="quiet given">${says.linksNone}</p>` : html`<ul class="given">${links.map((link) => this.given(link))}</ul>`}`
  }
  private given({ id, name, since }: Link) {
    const says = deskWords()
    return html`<li><div>${name}<small>${fill(says.linkSince, { since: dayAndTime(since) })}</small></div>
      <button class="chip" aria-label=${fill(says.takeBackLinkOf, { name })} @click=${() => this.takeBack(id)}>${says.takeBackLink}</button></li>`
  }
  private readonly makeLink = (event: SubmitEvent): void => {
    event.preventDefault()
    const form = event.target as HTMLFormElement
    const name = String(new FormData(form).get('name'))
    void this.tried(async () => {
      const made = await asked<MadeLink>(`${baseNow()}links`, post({ name }))
      this.made = { ...made, link: `${made.link}?lang=${language}` }
      this.links = [...(this.links ?? []), made]
      form.reset()
    })
  }
  private takeBack(id: string): void {
    void this.tried(async () => {
      this.links = (await asked<{ readonly links: readonly Link[] }>(`${baseNow()}links/revoke`, post({ id }))).links
      if (this.made?.id === id) this.made = undefined
    })
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
