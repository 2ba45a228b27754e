import qrcode from 'qrcode'

/** A text as a square that a camera reads, as SVG. Throws when it is longer than some two thousand characters. */
export const qrSvg = (text: string): Promise<string> =>
  qrcode.toString(text, { type: 'svg', errorCorrectionLevel: 'M', margin: 4 })

/** The same for a terminal: dark on light whatever its colours are, or in blocks alone where it shows none. */
export const qrText = (text: string, hasColours: boolean): Promise<string> =>
  hasColours ? qrcode.toString(text, { type: 'terminal', small: true }) : qrcode.toString(text, { type: 'utf8' })
