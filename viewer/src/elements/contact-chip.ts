import type { Place, PlacedWindow } from '@evenhem/job'
import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Lasting } from '../data/lasting.ts'
import type { Here } from '../data/live.ts'
import type { Contact } from '../data/site.ts'
import { tabletsAddress } from '../data/way.ts'
import { deskWords } from '../words/desk.ts'
import { counted, fill } from '../words.ts'
import { Media } from './media.ts'
import { base, buttons, popover } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

const nameOf = ({ name, by }: Here): string => name ?? by
const clock = (ms: number): string => new Date(ms).toTimeString().slice(0, 5).replace(/^0/, '')

// Tablet and server, joined or apart: it is read by its shape, not by a colour.
const joined = html`<svg width="30" height="16" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2"><path d="M2 3h7v10H2zM21 3h7v10h-7zM9 8h12" /></svg>`
const apart = html`<svg width="30" height="16" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2"><path d="M2 3h7v10H2zM21 3h7v10h-7zM9 8h3M18 8h3" /></svg>`

/** How this tablet stands to the server and to other tablets: always there, in ink; a touch tells the rest. */
@customElement('contact-chip')
export class ContactChip extends SpokenElement {
  @property({ attribute: false }) contact!: Contact
  /** Absent while it is not known yet. */
  @property({ attribute: false }) lasting?: Lasting
  @property({ attribute: false }) windows: readonly PlacedWindow[] = []
  /** The window that is shown here. */
  @property() at: Place | '' = ''
  private readonly narrow = new Media(this, '(max-width: 599px)')

  static override readonly styles = [
    base,
    buttons,
    popover,
    css`
      :host { display: block; flex: none }
      .chip span { max-width: 150px; overflow: hidden; text-overflow: ellipsis }
      .chip { border-color: transparent; color: var(--ink2); padding: 0 8px }
      [popover] { max-width: 360px; padding: 14px 16px; font-size: 16.5px; line-height: 1.35 }
      p + p, ul, a { margin-top: 8px }
      p:not(.first), li { color: var(--ink2) }
      a { display: flex; min-height: 48px; align-items: center; color: var(--act); font-weight: 600 }
      @media print { .chip { display: none } }
    `,
  ]

  override render() {
    const { contact } = this
    const says = this.says()
    return html`<button class="chip" popovertarget="contact" aria-label=${says}>${contact.live ? joined : apart}${this.beside()}</button>
      <div id="contact" popover><p class="first">${says}</p>${this.lines().map((line) => html`<p>${line}</p>`)}${this.others()}${this.link()}</div>`
  }

  /** The one thing to know, in words: what waits goes before all. */
  private says(): string {
    const { live, last } = this.contact
    if (this.waiting > 0) return fill(deskWords().waiting, { n: this.waiting })
    if (live) return deskWords().inContact
    return last === undefined ? deskWords().contactNever : fill(deskWords().noContactSince, { when: clock(last) })
  }
  /** Entries and photos that the server has not. */
  private get waiting(): number {
    return this.contact.waiting + (this.contact.photos ?? 0)
  }
  /** What stands beside the sign: nothing while all is well. A phone has room for a number. */
  private beside() {
    const { waiting } = this
    const { live } = this.contact
    const here = this.contact.others.filter(({ at }) => at !== '' && at === this.at)
    if (this.narrow.matches) return waiting > 0 ? html`<span>${waiting}</span>` : nothing
    if (waiting > 0 || !live) return html`<span>${waiting > 0 ? this.says() : deskWords().noContact}</span>`
    return here.length > 0 ? html`<span>${fill(deskWords().isHere, { names: here.map(nameOf).join(', ') })}</span>` : nothing
  }

  private lines(): readonly string[] {
    const { waiting, photos = 0, last, live, trouble, lasts } = this.contact
    const { lasting } = this
    const says = deskWords()
    return [
      ...(waiting > 0 ? [counted(waiting, says.contactWaitingOne, says.contactWaiting)] : []),
      ...(photos > 0 ? [counted(photos, says.photosWaitOne, says.photosWait)] : []),
      ...(this.waiting > 0 ? [] : [says.allSent]),
      ...(last === undefined ? [] : [fill(deskWords().contactLast, { when: clock(last) })]),
      ...(live || trouble === undefined ? [] : [trouble]),
      ...(lasts ? [] : [deskWords().contactForgets]),
      ...(lasts && lasting ? [lasting.page === 'kept' ? deskWords().allHere : deskWords().needsServer] : []),
      ...(lasting?.room === undefined ? [] : [fill(deskWords().littleRoom, { n: Math.max(0, Math.floor(lasting.room / 1e6)) })]),
    ]
  }
  private others() {
    const { others } = this.contact
    if (others.length === 0) return nothing
    return html`<p>${deskWords().othersHere}</p><ul>${others.map((each) => html`<li>${nameOf(each)}${this.where(each)}</li>`)}</ul>`
  }
  private where({ at }: Here): string {
    const found = this.windows.find(({ place }) => place === at)
    return found ? `: ${found.room.name}, ${found.window.name}` : ''
  }
  private link() {
    return this.contact.unpaired
      ? html`<a href="#pair=">${deskWords().pairAgain}</a>`
      : html`<a href=${tabletsAddress}>${deskWords().tabletsTitle}</a>`
  }
}
