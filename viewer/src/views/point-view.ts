import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { PunchPoint } from '../data/facts.ts'
import { choicesOf, drawnThings, leaveOut, putOf } from '../data/points.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import { WholeView } from '../elements/whole-view.ts'
import { choiceName } from '../words/choices.ts'
import { photoWords } from '../words/photos.ts'
import { capital, fill, words } from '../words.ts'
import { shownPlace } from './shown.ts'

type Choice = 'cause' | 'owner' | 'state'
type Line = 'what' | 'trade' | 'who' | 'by' | 'note'

/** One thing that is left to mend: what is wrong, why, who mends it, by when, how it looked and how it stands. Each is put by itself. */
@customElement('point-view')
export class PointView extends WholeView {
  @property({ attribute: false }) sheet!: Sheet
  @property({ attribute: false }) point!: PunchPoint
  @property({ attribute: false }) photos: readonly SitePhoto[] = []
  @property({ attribute: false }) tools!: SiteTools

  static override readonly styles = [
    ...WholeView.look,
    css`
      :host { overflow: auto }
      header { position: sticky; top: 0; z-index: 1 }
      .told { max-width: 760px; margin: 0 auto; padding: 18px 20px 40px; display: grid; gap: 20px }
      legend, label { margin-bottom: 6px }
      label { grid-column: 1 / -1; font-size: 16px; color: var(--ink2) }
      .unsafe[aria-pressed='true'] { background: var(--fail); border-color: var(--fail) }
      form { display: grid; grid-template-columns: 1fr auto; gap: 0 8px }
      ul { display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 14px }
      img { width: 100%; aspect-ratio: 4 / 3; object-fit: cover; border: 1px solid var(--line); border-radius: 4px }
      li .chip { padding: 0 8px; font-size: 14.5px }
    `,
  ]

  override render() {
    const { sheet, point } = this
    return html`<main>${this.head(`${sheet.room.name}, ${sheet.window.name}`, point.what ?? photoWords().newPoint)}<div class="told">${this.about(point)}</div></main>`
  }
  private about(point: PunchPoint) {
    const says = photoWords()
    return html`${this.line('what')}
      <fieldset><legend>${says.danger}</legend>${this.chip(says.unsafe, point.isUnsafe, 'unsafe', !point.isUnsafe, 'unsafe')}</fieldset>
      ${this.where()}${this.choice('cause')}${this.choice('owner')}
      ${point.owner === 'other trade' ? this.line('trade') : nothing}${this.line('who')}${this.line('by', 'date')}
      ${this.choice('state')}${this.line('note')}${this.pictures()}${this.goes()}`
  }

  private line(member: Line, type = 'text') {
    const submit = (event: SubmitEvent) => {
      event.preventDefault()
      const text = String(new FormData(event.target as HTMLFormElement).get(member)).trim()
      this.put(member, text === '' ? undefined : text)
    }
    return html`<form @submit=${submit}><label for=${member}>${photoWords().members[member]}</label><input id=${member} name=${member} type=${type} .value=${this.point[member] ?? ''} maxlength="500" autocomplete="off" /><button class="button">${words.save}</button></form>`
  }
  private chip(name: string, isOn: boolean, member: string, value: unknown, look = '') {
    return html`<button class="chip ${look}" aria-pressed=${isOn} @click=${() => this.put(member, value)}>${name}</button>`
  }
  private choice(member: Choice) {
    const now = this.point[member]
    return html`<fieldset><legend>${photoWords().members[member]}</legend>${choicesOf(this.point, member).map((choice) =>
      this.chip(capital(choiceName(choice)), now === choice, member, choice),
    )}</fieldset>`
  }
  /** Its place on the drawing, where a pin shows it. */
  private where() {
    const { sheet, point } = this
    return html`<fieldset><legend>${photoWords().where}</legend>${drawnThings(sheet.window, sheet.place).map(({ at, within }) =>
      this.chip(capital(shownPlace(sheet, at, within)), point.at === at, 'at', point.at === at ? undefined : at),
    )}</fieldset>`
  }
  private pictures() {
    if (this.photos.length === 0) return nothing
    const says = photoWords()
    const toggle = (photo: SitePhoto, member: 'before' | 'after') => {
      const isHeld = this.point[member].includes(photo.hash)
      return html`<button class="chip" aria-pressed=${isHeld} aria-label=${fill(says.showsIt, { says: photo.says, when: says[member] })} @click=${() => this.put(`${member}/${photo.hash}`, !isHeld)}>${says[member]}</button>`
    }
    return html`<ul aria-label=${says.title}>${this.photos.map((photo) => html`<li><img src=${photo.small} alt=${photo.says} />${toggle(photo, 'before')} ${toggle(photo, 'after')}</li>`)}</ul>`
  }
  /** A point that was put by mistake is taken back whole; one of the order stays. */
  private goes() {
    const put = leaveOut(this.point, this.sheet.readings)
    if (put.length === 0) return nothing
    const away = async () => {
      if (await this.tools.put(put, 'untold')) this.leave()
    }
    return html`<button class="button" @click=${away}>${photoWords().leavePoint}</button>`
  }

  private put(member: string, value: unknown): void {
    void this.tools.put([putOf(this.point, member, value)], 'untold')
  }
}
