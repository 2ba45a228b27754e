import sharp, { type FailOnOptions, type Sharp } from 'sharp'
import { decodeHeic } from './heic.ts'
import type { Cleaned, Errand } from './messages.ts'
import { type Refused, refusedFor } from './refused.ts'
import { isHeavy } from './weight.ts'

// Everything else that the library could read stays closed, whatever the content says.
sharp.block({ operation: ['VipsForeignLoad'] })
sharp.unblock({
  operation: ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp', 'VipsForeignLoadHeif'],
})
sharp.cache(false)

const quality = 80

/**
 * The two copies of a photo: upright, on white where it was transparent, in sRGB, with neither profile nor any other data beside the picture. `heavy`, and
 * nothing done, where it would hold so much that nothing may be read beside it, and something may be. Never throws: what cannot be read is refused.
 */
export async function clean({ file, format, limits, isAlone }: Errand): Promise<Cleaned | Refused | 'heavy'> {
  try {
    const head = await sharp(file, { limitInputPixels: false }).metadata()
    const pixels = head.width * head.height
    if (pixels > limits.mostPixels)
      return refusedFor('photo/too-many-pixels', { pixels: mega(pixels), most: limits.mostPixels / 1e6 })
    if (!isAlone && isHeavy(format, head, limits)) return 'heavy'
    return format === 'heic' ? await copiesOf(await decodeHeic(file, limits.mostPixels)) : await read(file, limits)
  } catch {
    return refusedFor('photo/damaged')
  }
}

const mega = (pixels: number): number => Math.ceil(pixels / 100_000) / 10

const opened = (file: string, { mostPixels }: Errand['limits'], failOn: FailOnOptions): Sharp =>
  sharp(file, { failOn, limitInputPixels: mostPixels }).autoOrient()

/** Whatever a decoder remarks on is damage, but for one thing: then only what it takes for an error is, and an end before its time. */
const read = (file: string, limits: Errand['limits']): Promise<Cleaned> =>
  copiesOf(opened(file, limits, 'warning')).catch((error: Error) => {
    if (error.message.trim() !== oddScan) throw error
    return copiesOf(opened(file, limits, 'error'))
  })
/** Widespread phones write numbers into the head of a sequential scan that decoders do not use; the picture is whole (read: issue 1578 of the library). */
const oddScan = 'VipsJpeg: Invalid SOS parameters for sequential JPEG'

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
