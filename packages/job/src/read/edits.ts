import { withoutMark } from './bytes.ts'
import { type Layout, layoutOf, written } from './layout.ts'
import { parse } from './parse.ts'
import { type Pointer, tokensOf } from './pointers.ts'
import type { ArrayNode, Member, Node, ObjectNode } from './tree.ts'

type Holder = ObjectNode | ArrayNode
type Held = { readonly item: Node; readonly index: number } | 'none' | 'twice'
const isHolder = (node: Node): node is Holder => node.is === 'object' || node.is === 'array'

/**
 * The same text with a value set at a pointer, put in, or, when the value is undefined, taken out. Every other byte stays: spaces, line ends,
 * order, numbers as written. What is put in follows the layout around it; members on the way that are missing are made, and `-` or the
 * length of a list puts an item at its end. Undefined when that can't be: the text is not JSON, what should hold the value is no object or
 * list, or a name on the way stands twice.
 */
export function editAt(text: string, pointer: Pointer, value: unknown): string | undefined {
  const { root, faults } = parse(withoutMark(text))
  if (faults.length > 0 || (pointer !== '' && !pointer.startsWith('/'))) return undefined
  const tokens = tokensOf(pointer)
  return value === undefined ? takeOut(text, root, tokens) : putIn(text, root, tokens, value, layoutOf(text, root))
}

const replace = (text: string, from: number, to: number, by: string): string => text.slice(0, from) + by + text.slice(to)

/** What an object or a list holds under a name or number. */
function held(holder: Holder, token: string): Held {
  if (holder.is === 'array') {
    const item = /^(0|[1-9]\d*)$/.test(token) ? holder.items[Number(token)] : undefined
    return item ? { item, index: Number(token) } : 'none'
  }
  const [first, second] = holder.members.flatMap(({ name, value }, index) => (name === token ? [{ item: value, index }] : []))
  return second ? 'twice' : (first ?? 'none')
}

/** Whether the parts of an object or a list stand on lines of their own; without parts, as what holds it. */
const isSpread = (text: string, holder: Holder, around: Layout): boolean => {
  const [first] = spansOf(holder)
  return first ? /[\r\n]/.test(text.slice(holder.start, first.start)) : around.isSpread
}

function putIn(text: string, node: Node, tokens: readonly string[], value: unknown, layout: Layout): string | undefined {
  const [token, ...rest] = tokens
  if (token === undefined) return replace(text, node.start, node.end, written(text, node.start, value, layout))
  if (!isHolder(node)) return undefined
  const found = held(node, token)
  if (found === 'twice') return undefined
  const inside = { ...layout, isSpread: isSpread(text, node, layout) }
  if (found !== 'none') return putIn(text, found.item, rest, value, inside)
  if (node.is === 'array' && token !== '-' && token !== String(node.items.length)) return undefined
  return append(text, node, token, rest.reduceRight<unknown>(holding, value), inside)
}

// A computed name makes a member of every name, also of __proto__.
const holding = (inner: unknown, name: string): unknown => ({ [name]: inner })

function takeOut(text: string, node: Node, tokens: readonly string[]): string | undefined {
  const [token, ...rest] = tokens
  if (token === undefined) return undefined
  const found = isHolder(node) ? held(node, token) : 'none'
  if (found === 'twice') return undefined
  if (found === 'none') return text
  return rest.length > 0 ? takeOut(text, found.item, rest) : remove(text, node as Holder, found.index)
}

/** Where the members or items of an object or list begin and end. */
const spansOf = (holder: Holder): readonly { readonly start: number; readonly end: number }[] =>
  holder.is === 'array' ? holder.items : holder.members.map(({ start, value }: Member) => ({ start, end: value.end }))

/** Takes a part out, with the comma and the space that set it apart from its neighbour. */
function remove(text: string, holder: Holder, index: number): string {
  const parts = spansOf(holder)
  const [before, part, after] = [parts[index - 1], parts[index], parts[index + 1]]
  if (before && part) return replace(text, before.end, part.end, '')
  if (after && part) return replace(text, part.start, after.start, '')
  return replace(text, holder.start + 1, holder.end - 1, '')
}

/** Puts a part at the end of an object or a list, set apart as the others are. */
function append(text: string, holder: Holder, name: string, value: unknown, layout: Layout): string {
  const last = spansOf(holder).at(-1)
  const outer = layout.indentAt(text, holder.start)
  const indent = last ? layout.indentAt(text, last.start) : outer + layout.unit
  const label = holder.is === 'object' ? JSON.stringify(name) + layout.colon : ''
  const apart = layout.isSpread ? layout.lineEnd + indent : ''
  const part = label + written(text, holder.start, value, layout, indent)
  if (last) return replace(text, last.end, last.end, `,${apart || layout.space}${part}`)
  return replace(text, holder.start + 1, holder.end - 1, apart + part + (layout.isSpread ? layout.lineEnd + outer : ''))
}
