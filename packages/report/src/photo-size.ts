/** How large a picture is, in pixels. */
export interface PictureSize {
  readonly width: number
  readonly height: number
}

/** The marker of a frame's head: every coding but that of tables (C4), extensions (C8) and arithmetic conditioning (CC). */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)

/** The size of a JPEG by the head of its frame (ITU-T T.81, B.1.1 and B.2.2; from memory); undefined where its beginning, as much as is given, has none. */
export function sizeOfJpeg(bytes: Uint8Array): PictureSize | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined
  for (let at = 2; at + 9 <= bytes.length && bytes[at] === 0xff; at += 2 + view.getUint16(at + 2))
    if (isFrame(bytes[at + 1] as number)) {
      const [width, height] = [view.getUint16(at + 7), view.getUint16(at + 5)]
      return width > 0 && height > 0 ? { width, height } : undefined
    }
  return undefined
}
