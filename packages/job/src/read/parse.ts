import type { Finding, Spot, Values } from './finding.ts'
import { isQuote, isStray, nothing, readBare, readName, readStray, readText } from './leaves.ts'
import { fault, here, type Reader, skip } from './reader.ts'
import { deepest } from './scan.ts'
import type { Member, Node } from './tree.ts'

/** What a text holds as far as it can be told, and every fault of its syntax. Without faults the text is JSON (RFC 8259). */
export interface Parsed {
  readonly root: Node
  readonly faults: readonly Finding[]
}

/**
 * Reads a text for its tree, going on after each fault where a person would: a forgotten comma, a comma too many, comments, wrong quotes,
 * a bracket that does not close. Made for when something is wrong: JSON.parse is the judge, and far quicker.
 */
export function parse(text: string): Parsed {
  const reader: Reader = { text, at: 0, faults: [], open: [] }
  skip(reader)
  if (here(reader) === '') fault(reader, 'job/empty', 0, 0)
  const root = here(reader) === '' ? nothing(reader) : readValue(reader)
  skip(reader)
  if (reader.at < text.length) fault(reader, 'job/after-end', reader.at, reader.at + here(reader).length, { got: here(reader) })
  return { root, faults: reader.faults }
}

function readValue(reader: Reader): Node {
  const character = here(reader)
  if (character === '{') return readObject(reader)
  if (character === '[') return readArray(reader)
  if (isQuote(character)) return readText(reader)
  if (character === '') fault(reader, 'job/ends-early', ...atEnd(reader))
  else if (!',:}]'.includes(character)) return readBare(reader)
  else fault(reader, 'job/missing-value', reader.at, reader.at + 1, { got: character })
  return nothing(reader)
}

function readObject(reader: Reader): Node {
  const start = reader.at
  const members: Member[] = []
  readList(reader, '}', () => {
    const member = readMember(reader)
    if (member) members.push(member)
  })
  return { is: 'object', start, end: reader.at, members }
}

/** Where the text ends, before the spaces that end it. */
const atEnd = ({ text }: Reader): [number, number] => [text.trimEnd().length, text.trimEnd().length + 1]

function readArray(reader: Reader): Node {
  const start = reader.at
  const items: Node[] = []
  readList(reader, ']', () => {
    const item = readValue(reader)
    if (item.is !== 'nothing') items.push(item)
  })
  return { is: 'array', start, end: reader.at, items }
}

/** Items with commas between them up to the closing bracket, which is moved over. */
function readList(reader: Reader, closes: string, readItem: () => void): void {
  const start = reader.at++
  if (reader.open.length >= deepest) {
    tooDeep(reader, start)
    return
  }
  reader.open.push({ start, closes })
  for (let after: 'start' | 'comma' | 'item' = 'start', end = start, comma = start; ; ) {
    skip(reader)
    const character = here(reader)
    if (character === closes) {
      if (after === 'comma') fault(reader, 'job/trailing-comma', comma, comma + 1, { closes })
      reader.at++
      break
    }
    if (character === ',') {
      if (after !== 'item') fault(reader, 'job/extra-comma', reader.at, reader.at + 1)
      else comma = reader.at
      after = after === 'item' ? 'comma' : 'start'
      reader.at++
    } else if (character === '' || '}]'.includes(character)) {
      if (leaves(reader, start, closes, character)) break
    } else if (character === ':' && closes === ']') {
      fault(reader, 'job/unexpected', reader.at, ++reader.at, { got: ':', expected: after === 'item' ? ',' : closes })
      after = 'start'
    } else if (isStray(reader)) readStray(reader)
    else {
      if (after === 'item') fault(reader, 'job/missing-comma', end, end + 1)
      readItem()
      after = 'item'
      end = reader.at
    }
  }
  reader.open.pop()
}

/** At the end, or at a bracket that does not belong here: whether the list is left, since something around it closes there. */
function leaves(reader: Reader, start: number, closes: string, got: string): boolean {
  const values = { opens: closes === '}' ? '{' : '[', closes, got }
  const opening = { from: start, to: start + 1 }
  if (got === '') unclosedAtEnd(reader, values, opening)
  else if (reader.open.slice(0, -1).some((open) => open.closes === got))
    fault(reader, 'job/unclosed', reader.at, reader.at + 1, values, opening)
  else {
    fault(reader, 'job/unexpected', reader.at, ++reader.at, { got, expected: closes })
    return false
  }
  return true
}

/** What is still open around it is open for the same reason and is not named. */
function unclosedAtEnd(reader: Reader, values: Values, opening: Spot): void {
  if (reader.faults.at(-1)?.code !== 'job/unclosed-at-end')
    fault(reader, 'job/unclosed-at-end', ...atEnd(reader), values, opening)
}

function tooDeep(reader: Reader, from: number): void {
  fault(reader, 'job/too-deep', from, from + 1, { most: deepest })
  reader.at = reader.text.length
}

function readMember(reader: Reader): Member | undefined {
  const start = reader.at
  if (':{['.includes(here(reader))) return readNameless(reader)
  const name = isQuote(here(reader)) ? readText(reader) : readName(reader)
  return { name: String(name.value), start, end: name.end, value: readAfterName(reader) }
}

function readNameless(reader: Reader): undefined {
  fault(reader, 'job/missing-name', reader.at, reader.at + 1, { got: here(reader) })
  if (here(reader) === ':') reader.at++
  skip(reader)
  readValue(reader)
}

function readAfterName(reader: Reader): Node {
  const end = reader.at
  skip(reader)
  const found = here(reader)
  if (found === ':' || found === '=') reader.at++
  if (found !== ':') fault(reader, 'job/missing-colon', found === '=' ? reader.at - 1 : end, found === '=' ? reader.at : end + 1)
  skip(reader)
  return found !== ':' && ',}]'.includes(here(reader)) ? nothing(reader) : readValue(reader)
}
