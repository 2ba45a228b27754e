/** A JSON text with offsets. Unlike the value read, it keeps every member: also one whose name stands twice. */
export type Node = ObjectNode | ArrayNode | Leaf
interface Span {
  readonly start: number
  readonly end: number
}
export interface ObjectNode extends Span {
  readonly is: 'object'
  readonly members: readonly Member[]
}
/** Items that are missing or can't be told are not among them. */
export interface ArrayNode extends Span {
  readonly is: 'array'
  readonly items: readonly Node[]
}
/** A string, a number, true, false or null; `nothing` where a value is missing or can't be told. */
export interface Leaf extends Span {
  readonly is: 'string' | 'number' | 'word' | 'nothing'
  readonly value: unknown
}
export interface Member {
  readonly name: string
  readonly start: number
  readonly end: number
  readonly value: Node
}

/** The value of a tree, as JSON.parse would give it: of a name that stands twice the last. What is missing is left out. */
export function toValue(node: Node): unknown {
  if (node.is === 'array') return node.items.map(toValue)
  if (node.is !== 'object') return node.value
  return Object.fromEntries(
    node.members.filter(({ value }) => value.is !== 'nothing').map(({ name, value }) => [name, toValue(value)]),
  )
}

const named = new WeakMap<ObjectNode, ReadonlyMap<string, Member>>()
/** The members of an object by name; made once, since a file may have thousands of readings and something to say about each. */
function membersOf(node: ObjectNode): ReadonlyMap<string, Member> {
  const members = named.get(node) ?? new Map(node.members.map((member) => [member.name, member]))
  named.set(node, members)
  return members
}

const isIndex = (token: string): boolean => /^(0|[1-9]\d*)$/.test(token)

/** The member or item of a node. Of a name that stands twice the last, as JSON.parse takes it. */
export function child(node: Node, token: string): { readonly node: Node; readonly member?: Member } | undefined {
  if (node.is === 'object') {
    const member = membersOf(node).get(token)
    return member && { node: member.value, member }
  }
  const item = node.is === 'array' && isIndex(token) ? node.items[Number(token)] : undefined
  return item && { node: item }
}

/** Every node of a tree, outer before inner. */
export function* nodesOf(node: Node): Generator<Node> {
  yield node
  if (node.is === 'object') for (const { value } of node.members) yield* nodesOf(value)
  if (node.is === 'array') for (const item of node.items) yield* nodesOf(item)
}
