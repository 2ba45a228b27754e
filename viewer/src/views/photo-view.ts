import { css, html, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Sheet } from '../data/sheet.ts'
import type { Entered } from '../data/site.ts'
import { type MarkKind, type PhotoMark, photoOfs, putMark, putPhoto, putPhotoOf, type SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { photoWords } from '../words/photos.ts'
import { words } from '../words.ts'
import '../elements/photo-marks.ts'

const kinds: readonly MarkKind[] = ['point', 'arrow', 'area', 'words']

/** One photo: what it shows, when it was taken, and what is marked on it. */
@customElement('photo-view')
export class PhotoView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property({ attribute: false }) photo?: SitePhoto
  @property({ attribute: false }) tools!: SiteTools
  @state() private kind?: MarkKind
  /** A mark that waits for its words. */
  @state() private written?: PhotoMark

  static override readonly styles = [
    base,
    buttons,
    css`
      :host { position: fixed; inset: 0; z-index: 2; background: var(--sheet) }
      main { display: grid; grid-template: 68px minmax(0, 1fr) auto / minmax(0, 1fr); height: 100dvh }
      header { display: flex; align-items: center; gap: 6px; padding: 0 16px 0 8px; border-bottom: 1px solid var(--faint) }
      .back { width: 48px; height: 48px; display: grid; place-items: center; border-radius: 6px }
      h1 { font-size: 23px; line-height: 1.15; font-weight: 600; overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
      small { display: block; font-size: 14.5px; color: var(--ink2) }
      .told { padding: 14px 20px 18px; display: grid; gap: 12px; max-height: 50dvh; overflow: auto }
      fieldset { border: 0; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 8px; align-items: center }
      legend { float: left; padding: 0; margin-right: 8px; font-size: 16px; color: var(--ink2) }
      .chip[aria-pressed='true'] { background: var(--ink); color: var(--sheet); border-color: var(--ink) }
      input { flex: 1; min-width: 0; min-height: 52px; font: inherit; font-size: 18px; color: inherit; background: var(--sheet); border: 2px solid var(--line); border-radius: 6px; padding: 6px 12px }
      form { display: flex; gap: 8px }
      form .button { min-height: 52px; font-size: 17px }
      li { display: flex; gap: 10px; align-items: center; justify-content: space-between; border-top: 1px solid var(--faint); min-height: 48px; font-size: 17px }
      photo-marks { --tall: calc(50dvh - 40px) }
      @media (min-width: 1000px) and (min-aspect-ratio: 1/1) {
        main { grid-template: 68px minmax(0, 1fr) / minmax(0, 1fr) 384px }
        header { grid-column: 1 / -1 }
        .told { max-height: none; border-left: 1px solid var(--faint); align-content: start }
        photo-marks { --tall: calc(100dvh - 68px) }
      }
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
    const { photo, sheet } = this
    const says = photo?.says ?? photoWords().none
    return html`<main><header><button class="back" aria-label=${words.back} @click=${this.leave}><svg width="22" height="22" aria-hidden="true"><path d="M14 3L6 11l8 8" fill="none" stroke="currentColor" stroke-width="2.4" /></svg></button>
        <div><small>${sheet.room.name}, ${sheet.window.name}</small><h1 tabindex="-1">${says}</h1></div></header>
      ${photo ? html`<photo-marks .src=${photo.large} .says=${photo.says} .marks=${photo.marks} .kind=${this.kind} @marked=${this.marked}></photo-marks><div class="told">${this.about(photo)}</div>` : nothing}</main>`
  }

  private about(photo: SitePhoto) {
    const says = photoWords()
    const place = this.sheet.place
    return html`${this.written ? this.line('mark', says.markSays, '', says.putMark, this.named) : nothing}
      <fieldset><legend>${says.mark}</legend>${kinds.map((kind) => html`<button class="chip" aria-pressed=${this.kind === kind} @click=${() => (this.kind = this.kind === kind ? undefined : kind)}>${says.kinds[kind]}</button>`)}</fieldset>
      <fieldset><legend>${says.taken}</legend>${photoOfs.map((of) => html`<button class="chip" aria-pressed=${photo.of === of} @click=${() => this.put(putPhotoOf(place, photo.hash, of))}>${says.ofs[of]}</button>`)}</fieldset>
      ${this.line('says', says.shows, photo.says, words.save, (text) => this.put(putPhoto(place, photo.hash, text)))}
      ${photo.marks.length === 0 ? nothing : html`<ul aria-label=${says.marks}>${photo.marks.map((mark) => html`<li>${says.kinds[mark.kind]}${mark.says ? `: ${mark.says}` : ''}<button class="chip" @click=${() => this.put({ place: mark.at })}>${says.takeAway}</button></li>`)}</ul>`}
      <button class="button go" @click=${() => tell(this, 'new-point', photo)}>${says.pointHere}</button>
      <button class="button" @click=${this.leaveOut}>${says.remove}</button>`
  }

  private line(name: string, label: string, value: string, go: string, done: (text: string) => void) {
    const submit = (event: SubmitEvent) => {
      event.preventDefault()
      const text = String(new FormData(event.target as HTMLFormElement).get(name)).trim()
      if (text !== '') done(text)
    }
    return html`<form @submit=${submit}><input name=${name} aria-label=${label} placeholder=${label} .value=${value} maxlength="200" autocomplete="off" /><button class="button">${go}</button></form>`
  }

  /** Words are asked for before they are put; any other mark is put as it is. */
  private marked({ detail }: CustomEvent<PhotoMark>): void {
    if (detail.kind === 'words') this.written = detail
    else this.putMark(detail)
  }
  private readonly named = (says: string): void => {
    const { written } = this
    this.written = undefined
    if (written) this.putMark({ ...written, says })
  }
  private putMark(mark: PhotoMark): void {
    const { photo, sheet } = this
    if (photo) this.put(putMark(sheet.place, photo.hash, mark))
  }
  private put(...entered: readonly Entered[]): void {
    void this.tools.put(entered, 'untold')
  }
  /** It is not shown any more; the log keeps that it was there. */
  private readonly leaveOut = (): void => {
    const { photo, sheet } = this
    if (!photo) return
    const { place } = putPhoto(sheet.place, photo.hash, '')
    this.put({ place }, ...photo.marks.map(({ at }) => ({ place: at })))
    this.leave()
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
