import { below, type MarkOnAPhoto, type PlacedWindow, type Readings } from '@evenhem/job'
import type { Section } from './outline.ts'
import type { PictureSize } from './photo-size.ts'
import type { Voice } from './voice.ts'

/** A copy of a photo that a report may show: its address, as it stands in the page, and its size where that is known. */
export interface PhotoCopy extends Partial<PictureSize> {
  readonly src: string
}
/** The copy of a photo by its hash; undefined when it is not here. */
export type Photos = (hash: string) => PhotoCopy | undefined
export const noPhotos: Photos = () => undefined

/** A photo as a paper shows it. */
export interface ShownPhoto extends PictureSize {
  /** When in the work it was taken, or what it is of. */
  readonly name: string
  /** What it shows, as somebody wrote it. */
  readonly says: string
  /** The day on which it was taken in, in words. */
  readonly when?: string
  /** For who cannot see it: what it shows, and what the marks on it say. */
  readonly alternative: string
  /** Absent where the photo is not here; `notHere` is said then. */
  readonly src?: string
  readonly hash: string
  readonly notHere: string
  readonly marks: readonly MarkOnAPhoto[]
}

/** The order in which photos of a window are shown. */
const order = ['before', 'closed', 'open', 'detail', 'after', 'other'] as const
type Of = (typeof order)[number]
/** The frame that all photos stand in; a photo of unknown size is taken to fill it. */
export const frame: PictureSize = { width: 3, height: 2 }

type Window = PlacedWindow['window']
const ofPhoto = ({ found }: Window, hash: string): Of => found?.photoOf?.[hash] ?? 'other'
const isHash = (text: string): boolean => /^[0-9a-f]{64}$/.test(text)

/** The hashes of a window's photos: before, closed, open, details, after something was mended, and the others. */
export const photoHashes = (window: Window): readonly string[] =>
  Object.keys(window.found?.photos ?? {})
    .filter(isHash)
    .sort((a, b) => order.indexOf(ofPhoto(window, a)) - order.indexOf(ofPhoto(window, b)))

/** A photo with its caption; whatever was marked on it lies over it and is said too. `shows`: what is to be seen on it, for who cannot see it. */
export function shownPhoto(
  hash: string,
  about: Pick<ShownPhoto, 'name' | 'says' | 'when' | 'marks'>,
  shows: string,
  copies: Photos,
  voice: Voice,
): ShownPhoto {
  const copy = copies(hash)
  const { width, height } = copy?.width && copy.height ? { width: copy.width, height: copy.height } : frame
  const marked = about.marks.flatMap(({ says }) => says ?? [])
  const alternative = [
    about.name,
    shows,
    ...(marked.length > 0 ? [voice.text('report/photo-marked', { says: marked.join('; ') })] : []),
  ]
  return {
    ...about,
    hash,
    width,
    height,
    alternative: alternative.filter((text) => text !== '').join('. '),
    ...(copy ? { src: copy.src } : {}),
    notHere: voice.text('report/photo-not-here', { photo: hash.slice(0, 8) }),
  }
}

/** The photos of a window as installed; undefined when none was taken. */
export function photosOfWindow(
  { window, place }: PlacedWindow,
  readings: Readings,
  copies: Photos,
  voice: Voice,
): Section<ShownPhoto> | undefined {
  const of = photoHashes(window).map((hash) => {
    const when = readings[below(place, 'found', 'photos', hash)]?.when
    const about = {
      name: voice.text(`report/photo-of-${ofPhoto(window, hash)}`),
      says: window.found?.photos?.[hash] ?? '',
      ...(when ? { when: voice.day(when) } : {}),
      marks: Object.values(window.found?.photoMarks?.[hash] ?? {}),
    }
    return shownPhoto(hash, about, about.says, copies, voice)
  })
  return of.length > 0 ? { title: voice.text('report/photos'), of } : undefined
}
