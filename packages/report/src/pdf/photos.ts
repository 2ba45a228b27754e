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

/** A photo with its marks, as one picture: a JPEG by itself would be unpacked while the document is set, a hundred times as large. */
function photoFile(photo: ShownPhoto, jpeg: Uint8Array): string {
  const { width, height } = photo
  const data = Buffer.from(jpeg.buffer, jpeg.byteOffset, jpeg.length).toString('base64')
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><image width="${width}" height="${height}" href="data:image/jpeg;base64,${data}"/>${marksOn(photo)}</svg>`
}

function photo(one: ShownPhoto, files: Files): Photo {
  const { alternative, name, when = '', says, notHere } = one
  const jpeg = files.photo(one)
  const file = jpeg ? { file: files.add(`${one.hash}.svg`, photoFile(one, jpeg)) } : {}
  return { alternative, name, when, says, notHere, ...file }
}

/** Photos in frames of one shape, each with its caption. */
export const photos = (all: readonly ShownPhoto[], files: Files): Block => ({
  kind: 'photos',
  of: all.map((one) => photo(one, files)),
})
