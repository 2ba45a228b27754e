import { createHash } from 'node:crypto'
import { marksOver } from '../photo-html.ts'
import type { ShownPhoto } from '../photos.ts'
import type { Block, Files, Photo } from './blocks.ts'
import { colours } from './picture.ts'

/** A frame's width on paper, in mm. */
const frameWidth = 54

/** What is marked on a photo, as on the page: a light line below each dark one, as wide on every photo. */
function marksOn(photo: ShownPhoto): string {
  const over = marksOver(photo)
  if (!over) return ''
  const millimetre = photo.width / frameWidth
  const style = `path{fill:none;stroke-linejoin:round}.under{stroke:#fff;stroke-width:${1.5 * millimetre}}
.over{stroke:${colours.fail};stroke-width:${0.6 * millimetre}}
text{font-family:"Source Sans 3";font-weight:600;fill:${colours.ink};paint-order:stroke;stroke:#fff;stroke-width:${1.2 * millimetre};stroke-linejoin:round}
.ends{text-anchor:end}`
  return `<style>${style}</style>${over.markup.replace(/^<svg[^>]*>|<\/svg>$/g, '')}`
}

/** A photo by its file with its marks over it, as one picture: a JPEG by itself would be unpacked while the document is set, a hundred times as large. */
function pictureOf(photo: ShownPhoto, file: string): string {
  const { width, height } = photo
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><image width="${width}" height="${height}" href="${file}"/>${marksOn(photo)}</svg>`
}

/** A picture's name. A photo that is shown twice, each time with other marks, is two pictures. */
const nameOf = ({ hash, marks }: ShownPhoto): string =>
  marks.length === 0 ? hash : `${hash}-${createHash('sha256').update(JSON.stringify(marks)).digest('hex').slice(0, 16)}`

function photo(one: ShownPhoto, files: Files): Photo {
  const { alternative, name, when = '', says, notHere, hash } = one
  const jpeg = files.photo(one)
  if (!jpeg) return { alternative, name, when, says, notHere }
  files.add(`${hash}.jpg`, jpeg)
  const file = files.add(`${nameOf(one)}.svg`, pictureOf(one, `${hash}.jpg`))
  return { alternative, name, when, says, notHere, file }
}

/** Photos in frames of one shape, each with its caption. */
export const photos = (all: readonly ShownPhoto[], files: Files): Block => ({
  kind: 'photos',
  of: all.map((one) => photo(one, files)),
})
