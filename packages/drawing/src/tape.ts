import type { ReadingUnit } from '@evenhem/length'
import type { HeightSide } from './heights.ts'
import type { PlacedTape, Stroke, Words } from './scene.ts'
import type { Sizes } from './sizes.ts'
import { type Box, holds } from './space.ts'
import { textWidth } from './text.ts'
import { wordsAt } from './words.ts'

/** Ticks of a tape from fine to coarse: distance in mm, length as a part of the blade's width. The last one carries numbers. */
interface Graduation {
  readonly ticks: readonly { readonly every: number; readonly length: number }[]
  readonly numbered: (mm: number) => string
}

const inches: Graduation = {
  ticks: [
    { every: 25.4, length: 0.2 },
    { every: 76.2, length: 0.3 },
    { every: 152.4, length: 0.42 },
    { every: 304.8, length: 0.5 },
  ],
  numbered: (mm) => `${Math.round(mm / 25.4)}`,
}
const metric = (numbered: Graduation['numbered']): Graduation => ({
  ticks: [
    { every: 10, length: 0.14 },
    { every: 50, length: 0.2 },
    { every: 250, length: 0.38 },
  ],
  numbered,
})
const graduations: Readonly<Record<ReadingUnit, Graduation>> = {
  in: inches,
  'ft-in': { ...inches, numbered: (mm) => `${Math.round(mm / 304.8)} ft` },
  mm: metric((mm) => `${Math.round(mm)}`),
  cm: metric((mm) => `${Math.round(mm / 10)}`),
}

/** Ticks nearer than a third of a caption are one grey. */
const apart = 0.3
/** A blade never has more strokes than this, whatever the scale. */
const most = 2000

/** Every multiple of `every` mm up to `top`. */
const multiples = (every: number, top: number): readonly number[] =>
  Array.from({ length: Math.min(most, Math.max(0, Math.floor(top / every + 1e-9))) }, (_, n) => (n + 1) * every)

/** Where a blade stands: its edge at the wall is at x `edge`, it stands on the floor at y `foot` and reaches y `top`, all in the scene. */
export interface Stand {
  readonly side: HeightSide
  readonly edge: number
  readonly foot: number
  readonly top: number
}

/** A tape's blade, true to the drawing's scale; its ticks are at the wall. */
export function tape({ side, edge, foot, top }: Stand, scale: number, unit: ReadingUnit, sizes: Sizes): PlacedTape {
  const outward = side === 'left' ? -1 : 1
  const x = side === 'left' ? edge - sizes.blade : edge
  const box: Box = { x, y: Math.min(top, foot), width: sizes.blade, height: Math.abs(foot - top) }
  const { ticks, numbered } = graduations[unit]
  const shown = ticks.filter(({ every }, n) => n === ticks.length - 1 || every * scale >= apart * sizes.caption.size)
  const coarsest = ticks.at(-1) as (typeof ticks)[number]
  const yOf = (mm: number): number => foot - mm * scale
  const reach = box.height / scale
  const numbers = multiples(coarsest.every, reach)
    .map((mm) => numberAt(numbered(mm), side, box, yOf(mm), sizes))
    .filter((words) => words !== undefined)
  const free = sizes.blade - Math.max(0, ...numbers.map((words) => words.box.width)) - 0.4 * sizes.tapeNumber.size
  const strokes = shown.flatMap(({ every, length }, n): readonly Stroke[] =>
    multiples(every, reach)
      .filter((mm) => shown.slice(n + 1).every((coarser) => !isMultiple(mm, coarser.every)))
      .map((mm) => [
        [edge, yOf(mm)],
        [edge + outward * Math.min(length * sizes.blade, every === coarsest.every ? free : Infinity), yOf(mm)],
      ]),
  )
  return { kind: 'tape', side, box, foot, ticks: strokes, numbers: thinned(numbers) }
}

const isMultiple = (mm: number, every: number): boolean => Math.abs(mm / every - Math.round(mm / every)) < 1e-6

/** A number beside its tick, at the edge away from the wall, when all of it lies on the blade. */
function numberAt(text: string, side: HeightSide, box: Box, y: number, { tapeNumber: type, blade }: Sizes): Words | undefined {
  const inset = Math.min(0.12 * blade, (blade - textWidth(text, type)) / 2)
  const baseline = y + 0.335 * type.size
  const words =
    side === 'left'
      ? wordsAt(text, [box.x + inset, baseline], type)
      : wordsAt(text, [box.x + blade - inset, baseline], type, 'end')
  return holds(box, words.box) ? words : undefined
}

/** Every number, or every second, fourth … where they would touch. */
function thinned(numbers: readonly Words[]): readonly Words[] {
  const [first, second] = numbers
  if (!first || !second || Math.abs(first.at[1] - second.at[1]) >= first.box.height) return numbers
  return thinned(numbers.filter((_, n) => n % 2 === 1))
}
