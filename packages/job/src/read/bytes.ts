import { isUtf8 } from 'node:buffer'
import { error, type Finding, info } from './finding.ts'

/** The text of a file, and what is odd about its encoding. `whole`: every byte is in it; otherwise it can only be shown. */
export interface Decoded {
  readonly text: string
  readonly whole: boolean
  readonly findings: readonly Finding[]
}

const mark = '\uFEFF'
const lenient = () => new TextDecoder('utf-8', { ignoreBOM: true })
const start = { from: 0, to: 0 }

// JSON begins with an ASCII character, so a zero byte beside it, or a mark, tells UTF-16.
const isUtf16 = ({ length, 0: first, 1: second }: Uint8Array): boolean =>
  (first === 0xff && second === 0xfe) ||
  (first === 0xfe && second === 0xff) ||
  (length > 1 && length % 2 === 0 && (first === 0) !== (second === 0))

/** How many bytes from the start are UTF-8. Halving finds it with the platform's own decoder. */
function goodBytes(bytes: Uint8Array): number {
  const holds = (length: number): boolean => {
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, length), { stream: true })
      return true
    } catch {
      return false
    }
  }
  let good = 0
  let bad = bytes.length + 1
  while (bad - good > 1) {
    const middle = (good + bad) >> 1
    if (holds(middle)) good = middle
    else bad = middle
  }
  return good
}

function oddByte(bytes: Uint8Array): Finding {
  // Streaming leaves out a character that is begun and not ended, so the text ends where the odd one begins.
  const before = lenient().decode(bytes.subarray(0, goodBytes(bytes)), { stream: true })
  const offset = Buffer.byteLength(before)
  const byte = (bytes[offset] ?? 0).toString(16).toUpperCase().padStart(2, '0')
  return error('job/utf-8', { from: before.length, to: before.length + 1 }, { byte: `0x${byte}`, number: offset + 1 })
}

/**
 * Bytes to text. A job file is UTF-8 (RFC 8259, section 8.1). A byte order mark before it is kept, read over and mentioned;
 * UTF-16 and bytes that are no UTF-8 are refused, since guessing would change names.
 */
export function decode(bytes: Uint8Array | string): Decoded {
  if (typeof bytes === 'string') return withMark(bytes)
  if (isUtf16(bytes)) return { text: '', whole: false, findings: [error('job/utf-16', start)] }
  if (!isUtf8(bytes)) return { text: lenient().decode(bytes), whole: false, findings: [oddByte(bytes)] }
  return withMark(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('utf8'))
}

const withMark = (text: string): Decoded => ({
  text,
  whole: true,
  findings: text.startsWith(mark) ? [info('job/byte-order-mark', { from: 0, to: 1 })] : [],
})

/** The same text with a space in the place of a byte order mark: what is parsed, with every offset as in the file. */
export const withoutMark = (text: string): string => (text.startsWith(mark) ? ` ${text.slice(1)}` : text)
