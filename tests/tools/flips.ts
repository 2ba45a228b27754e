import { parseAst } from 'vitest/node'

/** One change of a source text: a sign, a least or most, a comparison or a boolean operator turned over. */
export interface Flip {
  /** Where the changed piece stands, as offsets into the text; its line counts from 1. */
  readonly start: number
  readonly end: number
  readonly line: number
  readonly was: string
  readonly is: string
  /** What the changed text must import for it. */
  readonly needs?: string
}

/** A node of the syntax tree: what each kind holds is looked up by name. */
interface Node {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [member: string]: unknown
}

// Of a comparison both are turned: its edge, which decides what just as much counts for, and its direction.
const operators: Readonly<Record<string, readonly string[]>> = {
  '+': ['-'],
  '-': ['+'],
  '+=': ['-='],
  '-=': ['+='],
  '++': ['--'],
  '--': ['++'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '==': ['!='],
  '!=': ['=='],
  '&&': ['||'],
  '||': ['&&'],
}
const counterparts = (...pairs: readonly (readonly [string, string])[]): ReadonlyMap<string, string> =>
  new Map(pairs.flatMap(([a, b]) => [[a, b] as const, [b, a] as const]))
const functions = counterparts(['plus', 'minus'], ['most', 'least'], ['atMost', 'atLeast'])
const ofMath = counterparts(['min', 'max'])

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value
const children = (node: Node): readonly Node[] => Object.values(node).flat().filter(isNode)
const all = (node: Node): readonly Node[] => [node, ...children(node).flatMap(all)]
const isText = (node: Node): boolean =>
  node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node.value === 'string')

/** Where an operator stands: the first place behind `from` that is not in a comment. */
const operatorAt = (text: string, from: number, to: number, operator: string): number =>
  from +
  text
    .slice(from, to)
    .replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, (comment) => ' '.repeat(comment.length))
    .indexOf(operator)

type Change = Omit<Flip, 'line'>

function ofOperator(text: string, node: Node): readonly Change[] {
  const [left, right] = [node.left as Node, node.right as Node]
  const was = node.operator as string
  // Text joined to text has no sign.
  if (was === '+' && (isText(left) || isText(right))) return []
  const start = operatorAt(text, left.end, right.start, was)
  return (operators[was] ?? []).map((is) => ({ start, end: start + was.length, was, is }))
}

function ofUnary(node: Node): readonly Change[] {
  const was = node.operator as string
  const is = { '-': '+', '+': '-', '!': '' }[was]
  return is === undefined ? [] : [{ start: node.start, end: node.start + 1, was, is }]
}

function ofUpdate(node: Node): readonly Change[] {
  const was = node.operator as string
  const start = node.prefix ? node.start : node.end - was.length
  return (operators[was] ?? []).map((is) => ({ start, end: start + was.length, was, is }))
}

function ofMember(node: Node): readonly Change[] {
  const [object, property] = [node.object as Node, node.property as Node]
  const is = !node.computed && object.name === 'Math' && ofMath.get(property.name as string)
  return is ? [{ start: property.start, end: property.end, was: property.name as string, is }] : []
}

/** Names that are imported and have a counterpart, as they are called here: `plus`, or `most` under another name. */
function counterpartsIn(program: Node): ReadonlyMap<string, { readonly is: string; readonly source: string }> {
  const imports = children(program).filter((node) => node.type === 'ImportDeclaration')
  return new Map(
    imports.flatMap((declaration) =>
      (declaration.specifiers as readonly Node[]).flatMap((specifier) => {
        const is = functions.get((specifier.imported as Node | undefined)?.name as string)
        const source = (declaration.source as Node).raw as string
        return is ? [[(specifier.local as Node).name as string, { is, source }] as const] : []
      }),
    ),
  )
}

/** Every use of an imported function that has a counterpart, called or handed on; `{ plus }` becomes `{ plus: minus }`. */
function ofNames(program: Node): readonly Change[] {
  const known = counterpartsIn(program)
  const body = children(program).filter((node) => node.type !== 'ImportDeclaration')
  const nodes = body.flatMap(all)
  const names = new Set(nodes.flatMap((node) => (isNameOnly(node) ? [(node.key ?? node.property) as Node] : [])))
  const short = new Set(nodes.filter((node) => node.type === 'Property' && node.shorthand).map((node) => node.start))
  return nodes
    .filter((node) => node.type === 'Identifier' && !names.has(node))
    .flatMap(({ name, start, end }) => {
      const other = known.get(name as string)
      if (!other) return []
      const needs = `import { ${other.is} as flipped } from ${other.source};`
      return [{ start, end, was: name as string, is: short.has(start) ? `${name}: flipped` : 'flipped', needs }]
    })
}
const isNameOnly = (node: Node): boolean =>
  !node.computed && ['Property', 'PropertyDefinition', 'MemberExpression'].includes(node.type)

const ofNode = (text: string, node: Node): readonly Change[] => {
  switch (node.type) {
    case 'BinaryExpression':
    case 'LogicalExpression':
    case 'AssignmentExpression':
      return ofOperator(text, node)
    case 'UnaryExpression':
      return ofUnary(node)
    case 'UpdateExpression':
      return ofUpdate(node)
    case 'MemberExpression':
      return ofMember(node)
    default:
      return []
  }
}

/** Every flip of a TypeScript text, one thing at a time, in the order of the text. */
export function flipsOf(text: string): readonly Flip[] {
  const program = parseAst(text, { lang: 'ts' }) as unknown as Node
  return [...all(program).flatMap((node) => ofNode(text, node)), ...ofNames(program)]
    .sort((a, b) => a.start - b.start)
    .map((change) => ({ ...change, line: text.slice(0, change.start).split('\n').length }))
}

/** The text with one thing changed. Lines keep their numbers. */
export const flipped = (text: string, { start, end, is, needs = '' }: Flip): string =>
  needs + text.slice(0, start) + is + text.slice(end)

/** The line of a flip with the change in it: `Math.⟨max → min⟩(1, n)`. It names the flip as long as that line stays as it is. */
export function shown(text: string, { start, end, was, is, needs }: Flip): string {
  const from = text.lastIndexOf('\n', start - 1) + 1
  const to = text.indexOf('\n', end)
  const other = needs ? is.replace('flipped', /\{ (\w+) as/.exec(needs)?.[1] ?? is) : is
  return `${text.slice(from, start)}⟨${was} → ${other || 'nothing'}⟩${text.slice(end, to < 0 ? undefined : to)}`.trim()
}
