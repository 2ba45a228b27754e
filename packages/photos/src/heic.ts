import { readFile } from 'node:fs/promises'
import heic from 'heic-decode'
import sharp, { type Sharp } from 'sharp'
import { pngWithProfile } from './png.ts'

/**
 * The picture of a HEIC file, upright, no longer than 1600 pixels; its colours, where it has a profile, by that profile. The library that knows the rest of the
 * formats reads the head of these files and not the picture. Throws what the decoders throw, and a RangeError for more pixels than may be.
 */
export async function decodeHeic(file: string, mostPixels: number): Promise<Sharp> {
  const { icc } = await sharp(file, { limitInputPixels: false }).metadata()
  const small = await pixelsOf(await readFile(file), mostPixels)
  return icc ? sharp(pngWithProfile(small, icc)) : sharp(small.data, { raw: { ...small, channels: 3 } })
}

/** Pixels as red, green and blue, a byte each. */
export interface Pixels {
  readonly data: Uint8Array
  readonly width: number
  readonly height: number
}

async function pixelsOf(buffer: Uint8Array, mostPixels: number): Promise<Pixels> {
  const pictures = await heic.all({ buffer })
  try {
    const [first] = pictures
    if (!first || first.width * first.height > mostPixels) throw new RangeError('too many pixels')
    const { data, width, height } = await first.decode()
    const whole = sharp(data, { raw: { width, height, channels: 4 }, limitInputPixels: mostPixels })
    const resized = whole
      .resize({ width: 1600, height: 1600, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#fff' })
    const { data: rgb, info } = await resized.raw().toBuffer({ resolveWithObject: true })
    return { data: rgb, width: info.width, height: info.height }
  } finally {
    pictures.dispose()
  }
}
