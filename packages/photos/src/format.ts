/** The formats that are taken in, by the ending that their files get. */
export type Format = 'jpg' | 'png' | 'webp' | 'heic'

const text = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to))
const begins = (bytes: Uint8Array, ...start: readonly number[]): boolean => start.every((byte, at) => bytes[at] === byte)

// Brands of ISO/IEC 23008-12, annex B and 10.2 (from memory): still pictures and sequences that are coded as HEVC, and those that do not say how.
const heic = new Set(['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1'])

const isHeic = (bytes: Uint8Array): boolean => text(bytes, 4, 8) === 'ftyp' && heic.has(text(bytes, 8, 12))
const isWebp = (bytes: Uint8Array): boolean => text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 12) === 'WEBP'

/** What a file is by its content, whatever it is called; undefined for all that is not taken in. */
export function formatOf(bytes: Uint8Array): Format | undefined {
  if (begins(bytes, 0xff, 0xd8, 0xff)) return 'jpg'
  if (begins(bytes, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'png'
  if (isWebp(bytes)) return 'webp'
  return isHeic(bytes) ? 'heic' : undefined
}
