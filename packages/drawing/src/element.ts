import type { At, Box } from './space.ts'

const named: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** Control characters and halves of surrogate pairs may not stand in XML at all; written as escapes, since they may not stand in this file either. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go
const unwritable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g

/** Text as text: nothing in it becomes markup. */
export const escaped = (text: string): string => text.replace(unwritable, '\ufffd').replace(/[&<>"']/g, (one) => named[one] as string)

/** Two decimals: a hundredth of a px, or of a mm on paper. */
export const short = (value: number): string => `${Math.round(value * 100) / 100 + 0}`

type Attributes = Readonly<Record<string, string | number | undefined>>
const attribute = ([name, value]: [string, string | number | undefined]): string =>
  value === undefined || value === '' ? '' : ` ${name}="${typeof value === 'number' ? short(value) : escaped(value)}"`

/** An element with its attributes; children are markup that is already escaped. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const start = `<${name}${Object.entries(attributes).map(attribute).join('')}`
  const inside = children.join('')
  return inside === '' ? `${start}/>` : `${start}>${inside}</${name}>`
}

export const point = ([x, y]: At): string => `${short(x)} ${short(y)}`
/** Path data of straight strokes. */
export const strokeData = (strokes: readonly (readonly At[])[]): string => strokes.filter((stroke) => stroke.length > 0).map((stroke) => `M${stroke.map(point).join('L')}`).join('')
export const rectOf = (box: Box, more: Attributes = {}): string =>
  element('rect', { x: box.x, y: box.y, width: Math.max(0, box.width), height: Math.max(0, box.height), ...more })
