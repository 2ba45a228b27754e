import { below, type Place, type Readings } from '@evenhem/job'
import type { BoxedPhoto, PhotoBox } from './photo-box.ts'
import type { Entered } from './site.ts'

export type MarkKind = 'point' | 'arrow' | 'area' | 'words'
/** A mark on a photo. Places are shares of its width and height, from the left and from the top. */
export interface PhotoMark {
  readonly kind: MarkKind
  readonly x: number
  readonly y: number
  readonly toX?: number
  readonly toY?: number
  readonly says?: string
}
/** When a photo was taken. */
export type PhotoOf = 'before' | 'closed' | 'open' | 'detail' | 'after'
export const photoOfs: readonly PhotoOf[] = ['before', 'closed', 'open', 'detail', 'after']

/** A photo of a window, with what was found about it. */
export interface SitePhoto extends BoxedPhoto {
  readonly hash: string
  readonly says: string
  readonly of?: PhotoOf
  readonly marks: readonly (PhotoMark & { readonly at: Place })[]
  /** When it was put, as it was written. */
  readonly when?: string
}

const photosAt = (window: Place): Place => below(window, 'found', 'photos')
const marksAt = (window: Place, hash: string): Place => below(window, 'found', 'photoMarks', hash)
const ofAt = (window: Place, hash: string): Place => below(window, 'found', 'photoOf', hash)

/** The photos of a window that the readings tell of, the earliest first. */
export function photosIn(readings: Readings, window: Place, box: PhotoBox): readonly SitePhoto[] {
  const at = `${photosAt(window)}/`
  return Object.entries(readings)
    .filter(([place]) => place.startsWith(at))
    .map(([place, { value, when }]) => photo(readings, window, place.slice(at.length), String(value), when, box))
    .sort((a, b) => Date.parse(a.when ?? '') - Date.parse(b.when ?? ''))
}
function photo(
  readings: Readings,
  window: Place,
  hash: string,
  says: string,
  when: string | undefined,
  box: PhotoBox,
): SitePhoto {
  const at = `${marksAt(window, hash)}/`
  const marks = Object.entries(readings).flatMap(([place, { value }]) =>
    place.startsWith(at) ? [{ ...(value as PhotoMark), at: place }] : [],
  )
  const of = readings[ofAt(window, hash)]?.value as PhotoOf | undefined
  return { hash, says, marks, ...(of ? { of } : {}), ...(when ? { when } : {}), ...box.photo(hash) }
}

const entered = (place: Place, value: unknown): Entered => ({ place, value, read: value })
export const putPhoto = (window: Place, hash: string, says: string): Entered =>
  entered(below(window, 'found', 'photos', hash), says)
export const putPhotoOf = (window: Place, hash: string, of: PhotoOf): Entered => entered(ofAt(window, hash), of)
/** A mark has a name that no other tablet gives. */
export const putMark = (window: Place, hash: string, mark: PhotoMark): Entered =>
  entered(below(marksAt(window, hash), newName()), mark)

const newName = (): string => [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => (byte % 36).toString(36)).join('')
