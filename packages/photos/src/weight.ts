import type { Metadata } from 'sharp'
import type { Format } from './format.ts'
import type { Limits } from './limits.ts'

type Head = Pick<Metadata, 'width' | 'height' | 'channels' | 'depth' | 'isProgressive'>

/**
 * Bytes that a decoder holds of a picture at once, at the most: of what is read row by row none; of a JPEG in several scans two for each number, of an
 * interlaced PNG all, of a WebP four for each pixel, since its head does not say whether it is one that needs them (measured with the decoders in use).
 */
export function heldOf(format: Exclude<Format, 'heic'>, { width, height, channels, depth, isProgressive }: Head): number {
  const pixels = width * height
  if (format === 'webp') return pixels * 4
  if (!isProgressive) return 0
  return pixels * channels * (format === 'jpg' || depth === 'ushort' ? 2 : 1)
}

/** So much of what may be held in all: two photos have room beside what the process needs by itself. */
const share = 1 / 6

/** Whether nothing may be read beside a photo. HEIC is decoded in one piece, by scripts that give nothing back. */
export const isHeavy = (format: Format, head: Head, { mostMemory }: Pick<Limits, 'mostMemory'>): boolean =>
  format === 'heic' || heldOf(format, head) > mostMemory * share
