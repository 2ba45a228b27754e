import type { Type } from './text.ts'

/** Sizes of everything that does not grow with the wall, in scene units. */
export interface Sizes {
  readonly unit: 'px' | 'mm'
  /** A dimension on a row; on a line inside the drawing; in the column of heights; what is to be pencilled. */
  readonly row: Type
  readonly inside: Type
  readonly height: Type
  readonly mark: Type
  readonly caption: Type
  readonly tapeNumber: Type
  /** Two heights' labels, from middle to middle, at least. */
  readonly apart: number
  /** Marks nearer than this call for a detail. */
  readonly crowd: number
  /** What a finger needs: a label's box is grown to this. */
  readonly touch: readonly [width: number, height: number]
  readonly edge: number
  /** From the drawing to the nearest row. */
  readonly gap: number
  /** Half a tick, half a cross, half a finding. */
  readonly tick: number
  readonly cross: number
  readonly finding: number
  /** Widths of the blade and of the ground on which heights fan out. */
  readonly blade: number
  readonly fan: number
  /** The least and the most width of the column of heights. */
  readonly column: readonly [least: number, most: number]
  /** One line of a caption. */
  readonly line: number
  /** Between hatch strokes. */
  readonly hatch: number
  /** The scale is a whole multiple of this: scene units for a mm. */
  readonly step?: number
}

/** A quarter of a pixel for an inch: a foot is a whole number of 3 px, and a drawing keeps its scale while its margins give way. */
const quarterPixel = 0.25 / 25.4

/** A tablet's or a desk's drawing of about 820 × 726 px. */
export const screen: Sizes = {
  unit: 'px',
  row: { size: 17, weight: 500 },
  inside: { size: 19, weight: 500 },
  height: { size: 20, weight: 500 },
  mark: { size: 25, weight: 700 },
  caption: { size: 13.5, weight: 400 },
  tapeNumber: { size: 11.5, weight: 600 },
  apart: 43,
  crowd: 44,
  touch: [48, 44],
  edge: 6,
  gap: 22,
  tick: 5,
  cross: 8.5,
  finding: 11,
  blade: 32,
  fan: 34,
  column: [110, 170],
  line: 17,
  hatch: 6.5,
  step: quarterPixel,
}

/** A phone's drawing of about 390 × 380 px. */
export const phone: Sizes = {
  ...screen,
  row: { size: 14, weight: 500 },
  inside: { size: 15, weight: 500 },
  height: { size: 15, weight: 500 },
  mark: { size: 18.5, weight: 700 },
  caption: { size: 11.5, weight: 400 },
  tapeNumber: { size: 10.5, weight: 600 },
  gap: 18,
  cross: 7,
  finding: 9.5,
  blade: 27,
  fan: 18,
  column: [62, 136],
  line: 14,
  hatch: 5,
}

/** Paper, in mm: captions 9 pt, numbers larger. */
export const paper: Sizes = {
  unit: 'mm',
  row: { size: 3.6, weight: 500 },
  inside: { size: 3.6, weight: 500 },
  height: { size: 3.8, weight: 500 },
  mark: { size: 4.8, weight: 700 },
  caption: { size: 3.175, weight: 400 },
  tapeNumber: { size: 2.4, weight: 600 },
  apart: 9.2,
  crowd: 8,
  touch: [0, 0],
  edge: 0.5,
  gap: 5.5,
  tick: 1.3,
  cross: 1.9,
  finding: 2.2,
  blade: 6.4,
  fan: 6.6,
  column: [18, 36],
  line: 4,
  hatch: 1.45,
}
