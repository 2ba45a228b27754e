import { type Node, nodesOf } from './tree.ts'

/** How a text is laid out. */
export interface Layout {
  /** Whether the parts of an object stand on lines of their own. */
  readonly isSpread: boolean
  readonly lineEnd: string
  /** What one level of indentation is. */
  readonly unit: string
  /** What stands between a name and its value, and after a comma on one line. */
  readonly colon: string
  readonly space: string
  /** What the line of an offset begins with. */
  readonly indentAt: (text: string, offset: number) => string
}

/** What the line of an offset begins with. */
function indentAt(text: string, offset: number): string {
  const start = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1
  return /^[ \t]*/.exec(text.slice(start, offset))?.[0] ?? ''
}

/** The layout of a text, read from its first line end, its first indentation and its first member. */
export function layoutOf(text: string, root: Node): Layout {
  const member = [...nodesOf(root)].flatMap((node) => (node.is === 'object' ? node.members.slice(0, 1) : [])).at(0)
  const between = member ? text.slice(member.end, member.value.start) : ': '
  const colon = /[\r\n]/.test(between) ? ': ' : between
  return {
    isSpread: /[\r\n]/.test(text.slice(root.start, root.end)),
    lineEnd: /\r\n|\n|\r/.exec(text)?.[0] ?? '\n',
    unit: /[\r\n]([ \t]+)/.exec(text)?.[1] ?? '  ',
    colon,
    space: colon.endsWith(':') ? '' : ' ',
    indentAt,
  }
}

/** A value as text in this layout, to stand at an offset. */
export function written(
  text: string,
  offset: number,
  value: unknown,
  layout: Layout,
  indent = layout.indentAt(text, offset),
): string {
  // A line end in the text that JSON.stringify makes is always layout: inside quotes it is an escape.
  if (layout.isSpread) return JSON.stringify(value, null, layout.unit).replaceAll('\n', layout.lineEnd + indent)
  return layout.space === '' ? JSON.stringify(value) : JSON.stringify(value, null, 1).replaceAll(/\n */g, ' ')
}
