/** The code points that a font has a glyph for, from its `cmap` table in the formats 4 and 12 (OpenType 1.9, `cmap`). */
export function lettersIn(font: Uint8Array): ReadonlySet<number> {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength)
  const start = tableAt(view, 'cmap')
  const letters = new Set<number>()
  for (let n = 0; n < view.getUint16(start + 2); n++) {
    const at = start + view.getUint32(start + 4 + 8 * n + 4)
    const format = view.getUint16(at)
    if (format === 4) addSegments(view, at, letters)
    if (format === 12) addGroups(view, at, letters)
  }
  return letters
}

function tableAt(view: DataView, name: string): number {
  for (let n = 0; n < view.getUint16(4); n++) {
    const at = 12 + 16 * n
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)))
    if (tag === name) return view.getUint32(at + 8)
  }
  throw new Error(`Unexpected font without the table ${name}, expected OpenType; install the fonts anew.`)
}

function addSegments(view: DataView, at: number, letters: Set<number>): void {
  const twice = view.getUint16(at + 6)
  const [ends, starts, deltas, offsets] = [at + 14, at + 16 + twice, at + 16 + 2 * twice, at + 16 + 3 * twice]
  for (let n = 0; n < twice; n += 2) {
    const [first, last] = [view.getUint16(starts + n), view.getUint16(ends + n)]
    const [delta, offset] = [view.getUint16(deltas + n), view.getUint16(offsets + n)]
    for (let letter = first; letter <= last && letter !== 0xffff; letter++) {
      const glyph = offset === 0 ? letter : view.getUint16(offsets + n + offset + 2 * (letter - first))
      if (glyph !== 0 && ((glyph + delta) & 0xffff) !== 0) letters.add(letter)
    }
  }
}

function addGroups(view: DataView, at: number, letters: Set<number>): void {
  for (let n = 0; n < view.getUint32(at + 12); n++) {
    const group = at + 16 + 12 * n
    for (let letter = view.getUint32(group); letter <= view.getUint32(group + 4); letter++) letters.add(letter)
  }
}
