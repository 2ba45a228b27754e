/** What one quick pass over a text tells before it is parsed. */
export interface Scan {
  /** Where the first bracket beyond the limit of nesting stands. */
  readonly tooDeep?: number
  /** How many names of members there are; fewer in the value read means that a name stands twice. */
  readonly names: number
  /** Whether a number or an escape may be one that does not survive being read. */
  readonly odd: boolean
}

/** How deep a job file may nest. Its own lists and objects come to 12; plugins may add to that. */
export const deepest = 64

const space = 0x20
const quote = 0x22
const minus = 0x2d
const zero = 0x30
const colon = 0x3a
const openBracket = 0x5b
const backslash = 0x5c
const closeBracket = 0x5d
const openBrace = 0x7b
const closeBrace = 0x7d
const isDigit = (code: number): boolean => code >= zero && code <= 0x39

/** The offset after a string that begins at `from`; the end of the text when it does not end. */
function afterString(text: string, from: number): number {
  for (let end = text.indexOf('"', from + 1); end > 0; end = text.indexOf('"', end + 1)) {
    let before = end - 1
    while (text.charCodeAt(before) === backslash) before--
    if ((end - before) % 2 === 1) return end + 1
  }
  return text.length
}

/** The offset after a number that begins at `from`. */
function afterNumber(text: string, from: number): number {
  let end = from + 1
  for (
    let code = text.charCodeAt(end);
    isDigit(code) || code === 0x2e || (code | 0x20) === 0x65 || code === minus || code === 0x2b;
  )
    code = text.charCodeAt(++end)
  return end
}

// Up to 15 digits a double holds exactly as written.
const isOdd = (number: string): boolean => number.length > 15 || /^-0(\.0*)?$|e/i.test(number)

/** Looks over a text, well-formed or not, once. It keeps nothing and builds nothing, so it costs little more than reading the characters. */
export function scan(text: string): Scan {
  let depth = 0
  let names = 0
  let odd = text.includes('\\u') && /\\u[dD][89a-fA-F]/.test(text)
  for (let at = 0; at < text.length; ) {
    const code = text.charCodeAt(at)
    // Most of an indented file is spaces.
    if (code <= space) at++
    else if (code === quote) at = afterString(text, at)
    else if (code === minus || isDigit(code)) {
      const end = afterNumber(text, at)
      odd ||= isOdd(text.slice(at, end))
      at = end
    } else {
      at++
      if (code === colon) names++
      else if (code === openBrace || code === openBracket) {
        if (++depth > deepest) return { tooDeep: at - 1, names, odd }
      } else if (code === closeBrace || code === closeBracket) depth--
    }
  }
  return { names, odd }
}
