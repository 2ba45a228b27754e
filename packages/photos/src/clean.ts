import sharp, { type Sharp } from 'sharp'
import type { Format } from './format.ts'
import { decodeHeic } from './heic.ts'
import type { Limits } from './limits.ts'
import type { Cleaned } from './messages.ts'
import { type Refused, refusedFor } from './refused.ts'

// Everything else that the library could read stays closed, whatever the content says.
sharp.block({ operation: ['VipsForeignLoad'] })
sharp.unblock({
  operation: ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp', 'VipsForeignLoadHeif'],
})
sharp.cache(false)

type Most = Pick<Limits, 'mostPixels'>
const quality = 80

/**
 * The two copies of a photo: upright, on white where it was transparent, in sRGB, with neither profile nor any other data beside the picture. Never throws:
 * what cannot be read is refused.
 */
export async function clean(file: string, format: Format, limits: Most): Promise<Cleaned | Refused> {
  try {
    return (await tooMany(file, limits)) ?? (await copiesOf(await opened(file, format, limits)))
  } catch {
    return refusedFor('photo/damaged')
  }
}

const mega = (pixels: number): number => Math.ceil(pixels / 100_000) / 10

/** Told by its head, before anything is decoded. */
async function tooMany(file: string, { mostPixels }: Most): Promise<Refused | undefined> {
  const { width, height } = await sharp(file, { limitInputPixels: false }).metadata()
  if (width * height <= mostPixels) return undefined
  return refusedFor('photo/too-many-pixels', { pixels: mega(width * height), most: mostPixels / 1e6 })
}

const opened = async (file: string, format: Format, { mostPixels }: Most): Promise<Sharp> =>
  format === 'heic' ? decodeHeic(file, mostPixels) : sharp(file, { failOn: 'warning', limitInputPixels: mostPixels }).autoOrient()

const within = (size: number) => ({ width: size, height: size, fit: 'inside', withoutEnlargement: true }) as const

/** Decoded once: the small copy is made from the large one. */
async function copiesOf(photo: Sharp): Promise<Cleaned> {
  const shown = photo.resize(within(1600)).flatten({ background: '#fff' }).toColourspace('srgb')
  const { data, info } = await shown.raw().toBuffer({ resolveWithObject: true })
  const pixels = () => sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } })
  const [large, small] = await Promise.all([
    pixels().jpeg({ quality }).toBuffer(),
    pixels().resize(within(320)).jpeg({ quality }).toBuffer(),
  ])
  return { large, small }
}
