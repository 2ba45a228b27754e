import { textWidth } from '@evenhem/drawing'
import { friezeGaps, type SmallWall } from '../frieze.ts'
import type { Frieze } from '../house.ts'
import { html, type Markup, raw } from '../markup.ts'
import { colours } from './picture.ts'

type Room = Frieze['rooms'][0]
interface At {
  readonly x: number
  readonly wall: SmallWall
}
/** Walls that stand side by side, `names` below them at their places. */
interface Shelf {
  readonly walls: At[]
  readonly names: { readonly x: number; readonly width: number; readonly text: string }[]
  right: number
}

/** Rooms one after the other. One that has no place left begins the next shelf, and one wider than the paper takes several. */
function shelvesOf(rooms: readonly Room[], scale: number, width: number): readonly Shelf[] {
  const shelves: Shelf[] = [{ walls: [], names: [], right: 0 }]
  const last = (): Shelf => shelves.at(-1) as Shelf
  const begin = (): number => shelves.push({ walls: [], names: [], right: 0 })
  for (const { name, walls } of rooms) {
    const wide = walls.reduce((sum, { wall }) => sum + wall.width * scale, 0)
    if (last().right > 0 && last().right + friezeGaps.room + wide > width) begin()
    const from = last().right > 0 ? last().right + friezeGaps.room : 0
    last().right = from
    for (const { wall } of walls) {
      if (last().right > 0 && last().right + wall.width * scale > width + 0.01) begin()
      last().walls.push({ x: last().right, wall })
      last().right += Math.min(wall.width * scale, width)
    }
    const x = wide > width ? 0 : from
    last().names.push({ x, width: Math.max(0, last().right - x), text: name })
  }
  return shelves
}

const fills: Readonly<Record<string, string>> = {
  'wall-face': 'sheet',
  casing: 'casing',
  glass: 'glass',
  rod: 'rod',
  fabric: 'fabric',
}
const strokes: Readonly<Record<string, string>> = { 'wall-face': 'ink', rod: 'rodline', fabric: 'fedge' }
const line = 0.2
const caption = { size: 3.175, weight: 400 } as const
/** A room's name as far as there is a place for it. */
function fitting(text: string, width: number): string {
  if (textWidth(text, caption) <= width) return text
  const kept = [...text]
  while (kept.length > 0 && textWidth(`${kept.join('')}…`, caption) > width) kept.pop()
  return kept.length > 0 ? `${kept.join('').trimEnd()}…` : ''
}

function wallAt({ x, wall }: At, floor: number, scale: number, most: number): Markup {
  const wide = Math.min(scale, most / wall.width)
  const pieces = wall.pieces.map(
    ({ role, d }) =>
      html`<path fill="${colours[fills[role] ?? 'sheet']}" stroke="${colours[strokes[role] ?? 'frame']}" d="${d}"/>`,
  )
  const question = html`<text x="${wall.left + wall.width / 2}" y="${wall.top + wall.height / 2 + 210}" font-size="600" font-weight="700" text-anchor="middle" fill="${colours.ink}">?</text>`
  return html`<g transform="translate(${x} ${floor - wall.height * scale}) scale(${wide} ${scale}) translate(${-wall.left} ${-wall.top})" stroke-width="${line / scale}">${pieces}${wall.isKnown ? undefined : question}</g>`
}

function shelfAt({ walls, names, right }: Shelf, floor: number, scale: number, most: number): Markup {
  const words = names.map(
    ({ x, width, text }) =>
      html`<text x="${x}" y="${floor + 4.6}" font-size="${caption.size}" fill="${colours.ink2}">${fitting(text, width)}</text>`,
  )
  const ground = html`<path d="M0 ${floor}H${right}" stroke="${colours.ink}" stroke-width=".7"/>`
  return html`${walls.map((one) => wallAt(one, floor, scale, most))}${ground}${words}`
}

/** Every wall of a house as one picture, to one scale, with the names of the rooms below them. Sizes in mm of paper. */
export function friezeFile(
  { rooms, scale }: Frieze,
  width: number,
): { readonly svg: string; readonly width: number; readonly height: number } {
  let floor = 0
  const shelves = shelvesOf(rooms, scale, width).map((shelf) => {
    floor += Math.max(0, ...shelf.walls.map(({ wall }) => wall.height * scale))
    const drawn = shelfAt(shelf, floor, scale, width)
    floor += friezeGaps.row
    return drawn
  })
  const size = html`width="${width}mm" height="${floor}mm" viewBox="0 0 ${width} ${floor}"`
  const { markup } =
    html`<svg xmlns="http://www.w3.org/2000/svg" ${raw(size.markup)} font-family="Source Sans 3">${shelves}</svg>`
  return { svg: markup, width, height: floor }
}
