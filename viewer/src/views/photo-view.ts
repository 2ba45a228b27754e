import { css, html, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Sheet } from '../data/sheet.ts'
import type { Entered } from '../data/site.ts'
import { type MarkKind, type PhotoMark, photoOfs, putMark, putPhoto, putPhotoOf, type SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import { tell } from '../elements/shared.ts'
import { WholeView } from '../elements/whole-view.ts'
import { photoWords } from '../words/photos.ts'
import { words } from '../words.ts'
import '../elements/photo-marks.ts'

const kinds: readonly MarkKind[] = ['point', 'arrow', 'area', 'words']

/** One photo: what it shows, when it was taken, and what is marked on it. */
@customElement('photo-view')
export class PhotoView extends WholeView {
  @property({ attribute: false }) sheet!: Sheet
  @property({ attribute: false }) photo?: SitePhoto
  @property({ attribute: false }) tools!: SiteTools
  @state() private kind?: MarkKind
  /** A mark that waits for its words. */
  @state() private written?: PhotoMark

  static override readonly styles = [
    ...WholeView.look,
    css`
      main { display: grid; grid-template: 68px minmax(0, 1fr) auto / minmax(0, 1fr); height: 100dvh }
      .told { padding: 14px 20px 18px; display: grid; gap: 12px; max-height: 50dvh; overflow: auto }
      legend { float: left; margin-right: 8px }
      input { flex: 1 }
      form { display: flex; gap: 8px }
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

  override render() {
    const { photo, sheet } = this
    return html`<main>${this.head(`${sheet.room.name}, ${sheet.window.name}`, photo?.says ?? photoWords().none)}
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
}
