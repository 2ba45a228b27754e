import type { Spot } from './finding.ts'
import { type Pointer, tokensOf } from './pointers.ts'
import { child, type Member, type Node } from './tree.ts'

export interface Position {
  readonly line: number
  readonly column: number
}
export type Offsets = readonly [from: number, to: number]

/** Lines and columns of offsets, from 1; a column counts UTF-16 code units, as editors do. A byte order mark is in no column. */
export function liner(text: string): (offset: number) => Position {
  const starts = [text.startsWith('\uFEFF') ? 1 : 0, ...[...text.matchAll(/\r\n|\n|\r/g)].map((end) => end.index + end[0].length)]
  return (offset) => {
    let low = 0
    for (let high = starts.length; high - low > 1; ) {
      const middle = (low + high) >> 1
      if ((starts[middle] ?? 0) <= offset) low = middle
      else high = middle
    }
    return { line: low + 1, column: Math.max(0, offset - (starts[low] ?? 0)) + 1 }
  }
}

/** Where a spot is in the text. What the text does not have stands at what would hold it. */
export function locate(text: string, root: Node, spot: Spot): Offsets {
  if ('from' in spot) return [spot.from, spot.to]
  if ('name' in spot) {
    const { node, member, whole } = walk(root, spot.name)
    return whole && member ? [member.start, member.end] : head(node, member)
  }
  const { node, member, whole } = walk(root, spot.value)
  if (!whole || node.is === 'object' || node.is === 'array' || node.is === 'nothing') return head(node, member)
  return spot.part ? within(text, node, spot.part) : [node.start, node.end]
}

/** Of what goes over many lines, its name and else its bracket. */
const head = (node: Node, member: Member | undefined): Offsets =>
  member ? [member.start, member.end] : [node.start, node.start + 1]

function walk(root: Node, pointer: Pointer): { readonly node: Node; readonly member?: Member; readonly whole: boolean } {
  let node = root
  let member: Member | undefined
  for (const token of tokensOf(pointer)) {
    const next = child(node, token)
    if (!next) return { node, member, whole: false }
    node = next.node
    member = next.member
  }
  return { node, member, whole: true }
}

/** A part of a value, counted in the text that it stands for: between quotes an escape is one character. */
function within(text: string, { start, end, is }: Node, [from, to]: readonly [number, number]): Offsets {
  if (is !== 'string') return [start + from, Math.max(start + to, start + from + 1)]
  const offsets: number[] = []
  for (let at = start + 1; at < end; ) {
    offsets.push(at)
    at += text[at] !== '\\' ? 1 : text[at + 1] === 'u' ? 6 : 2
  }
  const last = offsets.at(-1) ?? start
  return [offsets[from] ?? last, offsets[to] ?? last]
}
