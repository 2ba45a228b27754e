/** Papers that a report prints on. */
export type Paper = 'a4' | 'letter'

/** Sizes in mm. Both papers share one grid of 176 mm; the shorter one takes its 18 mm from the drawing, never from type. */
export interface PaperSizes {
  /** The name that style sheets have for it. */
  readonly name: string
  readonly width: number
  readonly height: number
  readonly side: number
  readonly drawing: { readonly width: number; readonly height: number }
}
export const grid = 176
/** The drawing on a telephone. */
export const narrow = { width: 92, height: 100 }
export const papers: Readonly<Record<Paper, PaperSizes>> = {
  a4: { name: 'A4', width: 210, height: 297, side: 17, drawing: { width: 121, height: 116 } },
  letter: { name: 'letter', width: 215.9, height: 279.4, side: 19.95, drawing: { width: 121, height: 98 } },
}
