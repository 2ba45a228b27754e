import { short } from './finding.ts'
import { codeOf, fault, here, type Reader, see, take } from './reader.ts'
import type { Leaf } from './tree.ts'

// What people write without quotes: words, and numbers in another notation than JSON's.
const word = /[^\s\p{Cc}"'{}[\],:/“”‘’]+(?:\/[^\s\p{Cc}"'{}[\],:/“”‘’]+)*/uy
const phrase = /[ \t]+[^\s"'{}[\],:/“”‘’]+(?=[^\r\n"'{}[\]]{0,200}(?:[\r\n,}\]]|$))/y
const number = /^-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?$/
const length =
  /-?(?:(?:\d+[ -])?\d+\/\d+(?: ?(?:in|ft|mm|cm|m|"))?|\d+(?:\.\d+)? ?(?:in|ft|mm|cm|m|["'″′½¼¾⅛⅜⅝⅞]))(?=[\s,}\]]|$)/y
// From the space on: what is before it may not stand inside quotes.
const plain = {
  '"': /[ !#-[\]-\uffff]+/y,
  "'": /[ -&(-[\]-\uffff]+/y,
  '”': /(?:(?![“”])[ !#-[\]-\uffff])+/y,
  '’': /(?:(?![‘’])[ -[\]-\uffff])+/y,
}
const quotes: Readonly<Record<string, keyof typeof plain>> = { '"': '"', "'": "'", '“': '”', '”': '”', '‘': '’', '’': '’' }
const words: Readonly<Record<string, unknown>> = { true: true, false: false, null: null }
const lookalikes: Readonly<Record<string, string>> = {
  true: 'true',
  false: 'false',
  null: 'null',
  none: 'null',
  nil: 'null',
  undefined: 'null',
}
const escapes: Readonly<Record<string, string>> = { '"': '"', '\\': '\\', '/': '/', b: '\b', f: '\f', n: '\n', r: '\r', t: '\t' }

export const isQuote = (character: string): boolean => Object.hasOwn(quotes, character)
const leaf = (reader: Reader, start: number, is: Leaf['is'], value: unknown): Leaf => ({ is, start, end: reader.at, value })

/** Where a value is missing. */
export const nothing = (reader: Reader): Leaf => leaf(reader, reader.at, 'nothing', undefined)

/** Text between quotes. Quotes of another kind are read as if they were the right ones. */
export function readText(reader: Reader): Leaf {
  const start = reader.at
  const kind = quotes[here(reader)] ?? '"'
  reader.at++
  let value = ''
  for (;;) {
    value += take(reader, plain[kind])
    const character = here(reader)
    if (character === '' || character === '\n' || character === '\r') return openText(reader, start, value)
    if (character === '\\') value += readEscape(reader)
    else if (character < ' ') fault(reader, 'job/control-character', reader.at, ++reader.at, { got: codeOf(character) })
    else break
  }
  reader.at++
  if (kind !== '"')
    fault(reader, 'job/quotes', start, reader.at, {
      got: short(reader.text.slice(start, reader.at)),
      meant: short(JSON.stringify(value)),
    })
  return leaf(reader, start, 'string', value)
}

/** Text whose line ends before its quote. A comma at the end of the line was meant to stand behind it. */
function openText(reader: Reader, start: number, value: string): Leaf {
  const hasComma = value.endsWith(',') && reader.text[reader.at - 1] === ','
  if (hasComma) reader.at--
  fault(reader, 'job/open-text', start, reader.at)
  return leaf(reader, start, 'string', hasComma ? value.slice(0, -1) : value)
}

function readEscape(reader: Reader): string {
  const start = reader.at
  const four = /^\\u([0-9a-fA-F]{4})/.exec(reader.text.slice(start, start + 6))
  const known = escapes[reader.text[start + 1] ?? '']
  reader.at += four ? 6 : 1
  if (four) return String.fromCharCode(Number.parseInt(four[1] ?? '', 16))
  if (known === undefined && /[\r\n]|^$/.test(here(reader))) fault(reader, 'job/escape', start, reader.at, { got: '\\' })
  else {
    const got = `\\${here(reader)}`
    reader.at = start + got.length
    if (known === undefined) fault(reader, 'job/escape', start, reader.at, { got })
  }
  return known ?? ''
}

/** What stands without quotes: a number, true, false, null, or something that is none of them. */
export function readBare(reader: Reader): Leaf {
  const start = reader.at
  const text = see(reader, length)
  if (text !== '') return readLengthLike(reader, text)
  const got = take(reader, word)
  if (number.test(got)) return leaf(reader, start, 'number', Number(got))
  if (Object.hasOwn(words, got)) return leaf(reader, start, 'word', words[got])
  if (got === '') return readStray(reader)
  return /^[-+]?\.?\d/.test(got) ? readNumberLike(reader, got) : readWordLike(reader, got)
}

function readLengthLike(reader: Reader, got: string): Leaf {
  const start = reader.at
  reader.at += got.length
  fault(reader, 'job/bare-length', start, reader.at, { got, meant: JSON.stringify(got) })
  return leaf(reader, start, 'string', got)
}

function readNumberLike(reader: Reader, got: string): Leaf {
  const start = reader.at - got.length
  const meant = got
    .replace(/^\+/, '')
    .replace(/^(-?)0+(?=\d)/, '$1')
    .replace(/^(-?)\./, '$10.')
    .replace(/\.(?=e|E|$)/, '')
  if (!number.test(meant)) {
    fault(reader, 'job/no-number', start, reader.at, { got: short(got) })
    return nothing(reader)
  }
  fault(reader, 'job/number-form', start, reader.at, { got: short(got), meant: short(meant) })
  return leaf(reader, start, 'number', Number(meant))
}

function readWordLike(reader: Reader, first: string): Leaf {
  const start = reader.at - first.length
  for (let more = take(reader, phrase); more !== ''; more = take(reader, phrase));
  const got = reader.text.slice(start, reader.at)
  const meant = lookalikes[got.toLowerCase()]
  fault(reader, meant ? 'job/word-near' : 'job/bare-word', start, reader.at, {
    got: short(got),
    meant: meant ?? short(JSON.stringify(got)),
  })
  return leaf(reader, start, meant ? 'word' : 'string', meant ? words[meant] : got)
}

/** The name of a member that stands without quotes. */
export function readName(reader: Reader): Leaf {
  const start = reader.at
  const got = take(reader, word)
  if (got === '') return readStray(reader)
  fault(reader, 'job/bare-name', start, reader.at, { got: short(got), meant: short(JSON.stringify(got)) })
  return leaf(reader, start, 'string', got)
}

/** Whether the character here can't begin anything. */
export const isStray = (reader: Reader): boolean =>
  !isQuote(here(reader)) && !'{}[],:'.includes(here(reader)) && see(reader, word) === ''

/** Passes over a character that can't begin anything, so that reading comes to an end. */
export function readStray(reader: Reader): Leaf {
  const got = here(reader)
  fault(reader, 'job/stray', reader.at, reader.at + got.length, { got })
  reader.at += got.length
  return nothing(reader)
}
