import { createHash } from 'node:crypto'
import sharp, { type Sharp } from 'sharp'

// Photos for tests, drawn by this program.

/** Four colours, one in each quarter, so that every way of turning or mirroring the picture looks different: red, green, blue, white. */
export function drawn(width = 400, height = 300): Sharp {
  const data = Buffer.alloc(width * height * 3)
  const colours = [
    [220, 30, 30],
    [30, 180, 30],
    [30, 30, 220],
    [250, 250, 250],
  ] as const
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      data.set(colours[(x < width / 2 ? 0 : 1) + (y < height / 2 ? 0 : 2)] ?? [], (y * width + x) * 3)
  return sharp(data, { raw: { width, height, channels: 3 } })
}

export const jpeg = (width?: number, height?: number): Promise<Buffer> => drawn(width, height).jpeg({ quality: 92 }).toBuffer()

/** A JPEG that does not get small: noise, the same for the same seed. */
export function noise(width: number, height: number, seed = 1): Promise<Buffer> {
  const data = Buffer.alloc(width * height * 3)
  let state = seed >>> 0
  for (let at = 0; at < data.length; at++) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    data[at] = state >>> 24
  }
  return sharp(data, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 90 })
    .toBuffer()
}

export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

const names = { '220,30,30': 'red', '30,180,30': 'green', '30,30,220': 'blue', '250,250,250': 'white' } as const
/** What `cornersOf` says of a drawn photo that stands upright. */
export const upright = ['red', 'green', 'blue', 'white']

/** The colours in the middle of a picture's quarters, row by row: the nearest of those that are drawn, or the numbers where none is near. */
export async function cornersOf(bytes: Uint8Array): Promise<readonly string[]> {
  const { data, info } = await sharp(bytes).toColourspace('srgb').removeAlpha().raw().toBuffer({ resolveWithObject: true })
  const at = (x: number, y: number) => [
    ...data.subarray((y * info.width + x) * info.channels, (y * info.width + x) * info.channels + 3),
  ]
  const [left, right] = [info.width >> 2, (info.width * 3) >> 2]
  const [top, bottom] = [info.height >> 2, (info.height * 3) >> 2]
  return [at(left, top), at(right, top), at(left, bottom), at(right, bottom)].map(nameOf)
}
function nameOf(colour: readonly number[]): string {
  const near = Object.entries(names).find(([written]) =>
    written.split(',').every((part, i) => Math.abs(Number(part) - (colour[i] ?? 0)) < 14),
  )
  return near?.[1] ?? colour.join()
}
