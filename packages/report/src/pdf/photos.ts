import { marksOver } from '../photo-html.ts'
import type { ShownPhoto } from '../photos.ts'
import type { Block, Files, Photo } from './blocks.ts'
import { colours } from './picture.ts'

/** A frame's width on paper, in mm. */
const frameWidth = 54

/** What is marked on a photo, as on the page: a light line below each dark one, as wide on every photo. */
function marksFile(photo: ShownPhoto): string | undefined {
  const over = marksOver(photo)
  if (!over) return undefined
  const millimetre = photo.width / frameWidth
  const style = `path{fill:none;stroke-linejoin:round}.under{stroke:#fff;stroke-width:${1.5 * millimetre}}
.over{stroke:${colours.fail};stroke-width:${0.6 * millimetre}}
text{font-family:"Source Sans 3";font-weight:600;fill:${colours.ink};paint-order:stroke;stroke:#fff;stroke-width:${1.2 * millimetre};stroke-linejoin:round}
.ends{text-anchor:end}`
  return over.markup.replace(/<svg([^>]*)>/, `<svg xmlns="http://www.w3.org/2000/svg"$1><style>${style}</style>`)
}

function photo(one: ShownPhoto, files: Files): Photo {
  const bytes = files.photo(one)
  const marks = bytes && marksFile(one)
  return {
    alternative: one.alternative,
    name: one.name,
    when: one.when ?? '',
    says: one.says,
    notHere: one.notHere,
    ...(bytes ? { file: files.add(`${one.hash}.jpg`, bytes) } : {}),
    ...(marks ? { marks: files.add(`${one.hash}-marks.svg`, marks) } : {}),
  }
}

/** Photos in frames of one shape, each with its caption. */
export const photos = (all: readonly ShownPhoto[], files: Files): Block => ({
  kind: 'photos',
  of: all.map((one) => photo(one, files)),
})
