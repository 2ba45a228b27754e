import type { At, Box } from './space.ts'

const named: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** What XML has no place for at all: control characters, halves of surrogate pairs (XML 1.0, production 2). */
const unwritable = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu

/** Text as text: nothing in it becomes markup. */
export const escaped = (text: string): string =>
  text.replace(unwritable, '\ufffd').replace(/[&<>"']/g, (one) => named[one] as string)

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
export const strokeData = (strokes: readonly (readonly At[])[]): string =>
  strokes
    .filter((stroke) => stroke.length > 0)
    .map((stroke) => `M${stroke.map(point).join('L')}`)
    .join('')
export const rectOf = (box: Box, more: Attributes = {}): string =>
  element('rect', { x: box.x, y: box.y, width: Math.max(0, box.width), height: Math.max(0, box.height), ...more })
