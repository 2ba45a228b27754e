import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { choicesOf, drawnThings, putOf, type SitePoint } from '../data/points.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { choiceName } from '../words/choices.ts'
import { photoWords } from '../words/photos.ts'
import { capital, fill, words } from '../words.ts'
import { shownPlace } from './shown.ts'

type Choice = 'cause' | 'owner' | 'state'
type Line = 'what' | 'trade' | 'who' | 'by' | 'note'

/** One thing that is left to mend: what is wrong, why, who mends it, by when, how it looked and how it stands. Each is put by itself. */
@customElement('point-view')
export class PointView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property({ attribute: false }) point?: SitePoint
  @property({ attribute: false }) photos: readonly SitePhoto[] = []
  @property({ attribute: false }) tools!: SiteTools

  static override readonly styles = [
    base,
    buttons,
    css`
      :host { position: fixed; inset: 0; z-index: 2; background: var(--sheet); overflow: auto }
      header { display: flex; align-items: center; gap: 6px; height: 68px; padding: 0 16px 0 8px; border-bottom: 1px solid var(--faint); position: sticky; top: 0; background: var(--sheet); z-index: 1 }
      .back { width: 48px; height: 48px; display: grid; place-items: center; border-radius: 6px }
      h1 { font-size: 23px; line-height: 1.15; font-weight: 600; overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
      small { display: block; font-size: 14.5px; color: var(--ink2) }
      .told { max-width: 760px; margin: 0 auto; padding: 18px 20px 40px; display: grid; gap: 20px }
      fieldset { border: 0; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 8px }
      legend, label { padding: 0; margin-bottom: 6px; font-size: 16px; color: var(--ink2) }
      .chip[aria-pressed='true'] { background: var(--ink); color: var(--sheet); border-color: var(--ink) }
      .unsafe[aria-pressed='true'] { background: var(--fail); border-color: var(--fail) }
      form { display: grid; grid-template-columns: 1fr auto; gap: 0 8px }
      label { grid-column: 1 / -1 }
      input { min-width: 0; min-height: 52px; font-size: 18px; color: inherit; background: var(--sheet); border: 2px solid var(--line); border-radius: 6px; padding: 6px 12px }
      form .button { min-height: 52px; font-size: 17px }
      ul { display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 14px }
      img { width: 100%; aspect-ratio: 4 / 3; object-fit: cover; border: 1px solid var(--line); border-radius: 4px }
      li .chip { padding: 0 8px; font-size: 14.5px }
    `,
  ]

  override connectedCallback(): void {
    super.connectedCallback()
    addEventListener('keydown', this.onKey)
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('h1')?.focus())
  }
  override disconnectedCallback(): void {
    removeEventListener('keydown', this.onKey)
    super.disconnectedCallback()
  }

  override render() {
    const { sheet, point } = this
    const title = point?.what ?? photoWords().newPoint
    return html`<main><header><button class="back" aria-label=${words.back} @click=${this.leave}><svg width="22" height="22" aria-hidden="true"><path d="M14 3L6 11l8 8" fill="none" stroke="currentColor" stroke-width="2.4" /></svg></button>
        <div><small>${sheet.room.name}, ${sheet.window.name}</small><h1 tabindex="-1">${title}</h1></div></header>
      ${point ? html`<div class="told">${this.about(point)}</div>` : nothing}</main>`
  }
  private about(point: SitePoint) {
    const says = photoWords()
    return html`${this.line(point, 'what')}
      <fieldset><legend>${says.danger}</legend><button class="chip unsafe" aria-pressed=${point.unsafe === true} @click=${() => this.put(point, 'unsafe', point.unsafe !== true)}>${says.unsafe}</button></fieldset>
      ${this.where(point)}${this.choice(point, 'cause')}${this.choice(point, 'owner')}
      ${point.owner === 'other trade' ? this.line(point, 'trade') : nothing}${this.line(point, 'who')}${this.line(point, 'by', 'date')}
      ${this.choice(point, 'state')}${this.line(point, 'note')}${this.pictures(point)}`
  }

  private line(point: SitePoint, member: Line, type = 'text') {
    const submit = (event: SubmitEvent) => {
      event.preventDefault()
      const text = String(new FormData(event.target as HTMLFormElement).get(member)).trim()
      this.put(point, member, text === '' ? undefined : text)
    }
    return html`<form @submit=${submit}><label for=${member}>${photoWords().members[member]}</label><input id=${member} name=${member} type=${type} .value=${point[member] ?? ''} maxlength="500" autocomplete="off" /><button class="button">${words.save}</button></form>`
  }
  private choice(point: SitePoint, member: Choice) {
    const now = point[member] ?? (member === 'state' ? 'open' : undefined)
    return html`<fieldset><legend>${photoWords().members[member]}</legend>${choicesOf(point.at, member).map(
      (choice) =>
        html`<button class="chip" aria-pressed=${now === choice} @click=${() => this.put(point, member, choice)}>${capital(choiceName(choice))}</button>`,
    )}</fieldset>`
  }
  /** Its place on the drawing, where a pin shows it. */
  private where(point: SitePoint) {
    const { sheet } = this
    return html`<fieldset><legend>${photoWords().where}</legend>${drawnThings(sheet.window, sheet.place).map((place) => {
      const isOn = point.about === place
      return html`<button class="chip" aria-pressed=${isOn} @click=${() => this.put(point, 'at', isOn ? undefined : place)}>${capital(shownPlace(sheet, place))}</button>`
    })}</fieldset>`
  }
  private pictures(point: SitePoint) {
    if (this.photos.length === 0) return nothing
    const says = photoWords()
    const toggle = (photo: SitePhoto, member: 'before' | 'after') => {
      const isHeld = point[member].includes(photo.hash)
      return html`<button class="chip" aria-pressed=${isHeld} aria-label=${fill(says.showsIt, { says: photo.says, when: says[member] })} @click=${() => this.put(point, `${member}/${photo.hash}`, !isHeld)}>${says[member]}</button>`
    }
    return html`<ul aria-label=${says.title}>${this.photos.map((photo) => html`<li><img src=${photo.small} alt=${photo.says} />${toggle(photo, 'before')} ${toggle(photo, 'after')}</li>`)}</ul>`
  }

  private put(point: SitePoint, member: string, value: unknown): void {
    void this.tools.put([putOf(point, member, value)], 'untold')
  }
  private readonly leave = (): void => {
    tell(this, 'go-back')
  }
  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return
    event.preventDefault()
    this.leave()
  }
}
