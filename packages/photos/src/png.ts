import { crc32, deflateSync } from 'node:zlib'
import type { Pixels } from './heic.ts'

// PNG (W3C Recommendation, third edition, 5.2, 5.3, 11.2 and 11.3.2.3; from memory): a signature, then chunks of length, name, content and checksum.
const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])

function chunk(name: string, content: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), content])
  const [length, checksum] = [Buffer.alloc(4), Buffer.alloc(4)]
  length.writeUInt32BE(content.length)
  checksum.writeUInt32BE(crc32(body))
  return Buffer.concat([length, body, checksum])
}

function head(width: number, height: number): Buffer {
  const content = Buffer.alloc(13)
  content.writeUInt32BE(width)
  content.writeUInt32BE(height, 4)
  // Eight bits each of red, green and blue, not interlaced.
  content.set([8, 2, 0, 0, 0], 8)
  return content
}

/** Each row with the filter that changes nothing before it. */
function rows({ data, width, height }: Pixels): Buffer {
  const filtered = Buffer.alloc((width * 3 + 1) * height)
  for (let row = 0; row < height; row++)
    filtered.set(data.subarray(row * width * 3, (row + 1) * width * 3), row * (width * 3 + 1) + 1)
  return filtered
}

// Its name, an end, and the one way of compressing.
const profileHead = 'profile\0\0'

/** Pixels with their colour profile, as an uncompressed PNG: what reads it knows what its colours mean. */
export const pngWithProfile = (pixels: Pixels, profile: Uint8Array): Buffer =>
  Buffer.concat([
    signature,
    chunk('IHDR', head(pixels.width, pixels.height)),
    chunk('iCCP', Buffer.concat([Buffer.from(profileHead, 'latin1'), deflateSync(profile)])),
    chunk('IDAT', deflateSync(rows(pixels), { level: 0 })),
    chunk('IEND', new Uint8Array()),
  ])
