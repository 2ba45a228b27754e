import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { PunchPoint } from '../data/facts.ts'
import { clockOf } from '../data/moment.ts'
import { isSettled } from '../data/points.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import { base, buttons, tell } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { choiceName } from '../words/choices.ts'
import { photoWords } from '../words/photos.ts'
import { fill, language } from '../words.ts'

/** The photos of a window: take one, choose some, touch one to mark and name it. Tells of `open-photo`. */
@customElement('photos-view')
export class PhotosView extends SpokenElement {
  @property({ attribute: false }) sheet!: Sheet
  @property({ attribute: false }) tools!: SiteTools
  /** Told anew whenever a photo came or went on its way. */
  @property({ attribute: false }) photos: readonly SitePhoto[] = []
  @property({ attribute: false }) points: readonly PunchPoint[] = []

  static override readonly styles = [
    base,
    buttons,
    css`
      :host { padding: 20px 24px; overflow: auto }
      section { max-width: 720px; margin-bottom: 26px }
      h2 { font-size: 20px; line-height: 1.2; margin-bottom: 10px }
      ol { margin-bottom: 14px }
      ol li { border-top: 1px solid var(--faint) }
      .n { margin: 0; font-size: 30px; line-height: 1; font-weight: 700 }
      section p { margin: 0 0 14px }
      section .button { width: 100% }
      .take { display: grid; grid-template-columns: 2fr 1fr; gap: 10px; max-width: 720px }
      label.button { cursor: pointer; min-height: 72px }
      label:focus-within { outline: 3px solid var(--act); outline-offset: 2px }
      p { margin-top: 18px; font-size: 17px; color: var(--ink2) }
      ul { display: grid; grid-template-columns: repeat(auto-fill, minmax(170px, 1fr)); gap: 18px 14px; margin-top: 22px }
      li button { display: block; width: 100% }
      ol li button { display: grid; grid-template-columns: 44px 1fr; align-items: start; padding: 10px 0; min-height: 48px }
      .frame { display: grid; place-items: center; aspect-ratio: 4 / 3; background: var(--panel); border: 1px solid var(--line); border-radius: 4px; overflow: hidden }
      img { width: 100%; height: 100%; object-fit: cover; display: block }
      b { display: block; margin-top: 6px; font-size: 16.5px; line-height: 1.25; font-weight: 600; overflow-wrap: anywhere }
      small { display: block; font-size: 14.5px; line-height: 1.3; color: var(--ink2) }
      small.fail { color: var(--fail) }
      @media (max-width: 599px) { :host { padding: 14px 16px } ul { grid-template-columns: 1fr 1fr } }
    `,
  ]

  override render() {
    const words = photoWords()
    return html`${this.pointList()}<div class="take">${this.input(words.take, 'go', true)}${this.input(words.choose, '', false)}</div>
      ${this.photos.length === 0 ? html`<p>${words.none}</p>` : html`<ul aria-label=${words.title}>${this.photos.map((photo) => html`<li>${this.card(photo)}</li>`)}</ul>`}`
  }

  /** What is left to mend here, first what can hurt somebody and what is open. */
  private pointList() {
    const words = photoWords()
    return html`<section><h2>${words.points}</h2>${this.points.length === 0 ? html`<p>${words.noPoints}</p>` : html`<ol>${this.points.map((point) => html`<li>${this.point(point)}</li>`)}</ol>`}
      <button class="button" @click=${() => tell(this, 'new-point')}>${words.newPoint}</button></section>`
  }
  private point(point: PunchPoint) {
    const words = photoWords()
    const rest = [point.owner && choiceName(point.owner), point.who, point.by && fill(words.byDay, { day: point.by })]
    return html`<button @click=${() => tell(this, 'open-point', point.id)}><b class="n">${point.number}</b><span><b>${point.what ?? words.newPoint}</b>
      <small>${[choiceName(point.state), ...rest].filter(Boolean).join(' · ')}</small>${point.isUnsafe && !isSettled(point) ? html`<small class="fail">${words.unsafe}</small>` : nothing}</span></button>`
  }

  private input(name: string, look: string, camera: boolean) {
    return html`<label class="button ${look}">${name}<input class="unseen" type="file" accept="image/jpeg,image/png,image/webp,image/heic,.heic" ?multiple=${!camera} capture=${camera ? 'environment' : nothing} @change=${this.taken} /></label>`
  }
  private async taken(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement
    const files = [...(input.files ?? [])]
    input.value = ''
    const kept = await this.tools.takePhotos(this.sheet.place, files, photoWords().unnamed)
    // One that was just taken is named next.
    if (kept.length === 1 && input.hasAttribute('capture')) tell(this, 'open-photo', kept[0])
  }

  private card(photo: SitePhoto) {
    const words = photoWords()
    const of = photo.of && words.ofs[photo.of]
    return html`<button @click=${() => tell(this, 'open-photo', photo.hash)}>
      <span class="frame"><img src=${photo.small} alt=${fill(words.photoOf, { says: photo.says })} loading="lazy" @error=${missing} /></span>
      <b>${photo.says}</b><small>${[of, clockOf(photo.when), photo.marks.length > 0 && fill(words.marksMany, { n: photo.marks.length })].filter(Boolean).join(' · ')}</small>${state(photo)}</button>`
  }
}

/** How far it is on its way; nothing once the server has it. */
function state({ gone, refused }: SitePhoto) {
  const words = photoWords()
  if (refused) return html`<small class="fail">${refused[language] ?? refused.en}</small>`
  if (gone === undefined) return nothing
  return html`<small>${gone > 0 ? fill(words.onItsWay, { n: Math.floor(gone * 100) }) : words.waits}</small>`
}
/** A picture that neither this tablet nor the server can show now. */
function missing(event: Event): void {
  ;(event.target as HTMLImageElement).style.visibility = 'hidden'
}
