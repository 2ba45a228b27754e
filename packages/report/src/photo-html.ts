import type { MarkOnAPhoto } from '@evenhem/job'
import { html, type Markup } from './markup.ts'
import { frame, type ShownPhoto } from './photos.ts'

type Size = Pick<ShownPhoto, 'width' | 'height'>

const round = (share: number): number => Math.round(share * 10) / 10

/** A mark as a path in pixels of the photo; words have none. A ring and the barbs of an arrow have one size on every photo. */
function pathOf({ kind, x, y, toX = x, toY = y }: MarkOnAPhoto, { width, height }: Size): string {
  const unit = Math.max(width / frame.width, height / frame.height) / 10
  const [left, top, right, bottom] = [x * width, y * height, toX * width, toY * height].map(round) as [
    number,
    number,
    number,
    number,
  ]
  if (kind === 'words') return ''
  if (kind === 'point') return ringAt(left, top, round(unit * 1.6))
  if (kind === 'area') return `M${left} ${top}H${right}V${bottom}H${left}Z`
  const angle = Math.atan2(top - bottom, left - right)
  const barb = (turn: number) =>
    `L${round(left - unit * 2 * Math.cos(angle + turn))} ${round(top - unit * 2 * Math.sin(angle + turn))}`
  return `M${right} ${bottom}L${left} ${top}${barb(0.5)}M${left} ${top}${barb(-0.5)}`
}
const ringAt = (x: number, y: number, radius: number): string =>
  `M${round(x - radius)} ${y}a${radius} ${radius} 0 1 0 ${radius * 2} 0a${radius} ${radius} 0 1 0 ${-radius * 2} 0`

/** A light line below each dark one, so that a mark is seen on any picture. Words stay within it: from its right half on they end at their place. */
function markOn(mark: MarkOnAPhoto, size: Size): Markup {
  const d = pathOf(mark, size)
  const lines = d === '' ? undefined : html`<path class="under" d="${d}"/><path class="over" d="${d}"/>`
  return html`${lines}${mark.says ? wordsAt(mark, size) : undefined}`
}
function wordsAt({ kind, x, y, says }: MarkOnAPhoto, { width, height }: Size): Markup {
  const size = Math.max(width / frame.width, height / frame.height) * 0.18
  const down = kind === 'words' ? 0 : size * 1.6
  const below = y * height + down + size * 0.3 > height ? y * height - size : y * height + Math.max(down, size)
  return html`<text x="${round(x * width)}" y="${round(below)}" font-size="${round(size)}" class="${x > 0.5 ? 'ends' : 'begins'}">${says}</text>`
}

/** What is marked on a photo, laid over it. */
export function marksOver({ marks, width, height }: ShownPhoto): Markup | undefined {
  if (marks.length === 0) return undefined
  return html`<svg viewBox="0 0 ${width} ${height}" aria-hidden="true">${marks.map((mark) => markOn(mark, { width, height }))}</svg>`
}

/** No picture waits until it is scrolled to: paper needs all of them. */
const picture = (photo: ShownPhoto): Markup => {
  const { src, alternative, width, height, notHere } = photo
  if (src === undefined) return html`<p class="missing">${notHere}</p>`
  return html`<img src="${src}" alt="${alternative}" width="${width}" height="${height}">${marksOver(photo)}`
}

const captioned = (photo: ShownPhoto): Markup => {
  const { name, when, says } = photo
  return html`<figure><div class="frame">${picture(photo)}</div><figcaption><b>${name}</b>${when ? html` ${when}` : undefined}${says ? html`<span>${says}</span>` : undefined}</figcaption></figure>
`
}

/** Photos in frames of one shape, each with its caption. */
export const photosHtml = (photos: readonly ShownPhoto[]): Markup => html`<div class="photos">${photos.map(captioned)}</div>`

export const photoStyle = `.photos{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(54mm,100%),1fr));gap:3mm 7mm;margin-top:1.6mm}
.photos figure{display:block;min-width:0;break-inside:avoid}
.frame{display:grid;aspect-ratio:${frame.width}/${frame.height};background:#f3f4f2}
.frame>*{grid-area:1/1;width:100%;height:100%;min-width:0;min-height:0}
.frame img{display:block;object-fit:contain}
.frame path{fill:none;vector-effect:non-scaling-stroke;stroke-linejoin:round}
.frame .under{stroke:#fff;stroke-width:1.5mm}.frame .over{stroke:var(--fail);stroke-width:.6mm}
.frame text{font-weight:600;fill:var(--ink);paint-order:stroke;stroke:#fff;stroke-width:.28em;stroke-linejoin:round}
.frame text.ends{text-anchor:end}
.frame .missing{display:grid;place-items:center;text-align:center;border:.35mm dashed var(--ink2);padding:4mm;font-size:9pt}
.photos figcaption{display:block;margin-top:1.2mm;order:0}.photos figcaption b{color:var(--ink);font-weight:600}.photos figcaption span{display:block;color:var(--ink)}`
