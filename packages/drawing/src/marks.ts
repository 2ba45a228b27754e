import type { Length } from '@evenhem/length'

/** Millimetres in the window's frame: x to the right from the left edge of the (first) casing, y up from the window's level line. */
export type Point = readonly [x: number, y: number]

/** What a mark is, never how it is coloured. */
export type Role =
  | 'wall'
  | 'hatch'
  | 'wall-face'
  | 'baseboard'
  | 'casing'
  | 'frame'
  | 'glass'
  | 'obstacle'
  | 'rod'
  | 'ring'
  | 'bracket'
  | 'finial'
  | 'fabric'
  | 'fabric-shade'
  /** The line of cloth that is cut and seen from above. */
  | 'cloth'
  | 'fold'
  | 'pleat'
  | 'mark'
  | 'centre'
  | 'hidden'
  | 'level'
  | 'dimension'

/** How the number on a dimension is known. Shown by shape before colour. */
export type NumberState = 'ordered' | 'computed' | 'measured' | 'off' | 'unknown' | 'decided'

/** A number on a drawing: the exact length and where it stands, so that a tap leads there. */
export interface Figure {
  /** Absent: not known yet, or no length. */
  readonly value?: Length
  /** In place of a length: what weighs as much as a load, in kilograms. */
  readonly mass?: number
  /** The place or the reckoning that holds `value`. */
  readonly of: string
  /** Code of the caption. */
  readonly what: string
  readonly state: NumberState
  /** With state `off`: measured less expected. With `decided`: decided less the number set aside. */
  readonly off?: Length
  /** The most that it may be: shown beside it. */
  readonly most?: Length
  /** Code of the layer of drapery that it is about, where several hang one before the other. Put there when layers are composed. */
  readonly layer?: string
}

export interface Line {
  readonly kind: 'line'
  readonly role: Role
  readonly from: Point
  readonly to: Point
}
/** `M x y`, `L x y`, `C x y x y x y`, `Z` as tuples, so that a path is data. */
export type Segment =
  | readonly ['M' | 'L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z']
export interface Path {
  readonly kind: 'path'
  readonly role: Role
  readonly d: readonly Segment[]
}
export interface Rect {
  readonly kind: 'rect'
  readonly role: Role
  readonly at: Point
  readonly width: number
  readonly height: number
  readonly radius?: number
}
export interface Circle {
  readonly kind: 'circle'
  readonly role: Role
  readonly at: Point
  readonly radius: number
}
/** Strokes at 45° inside an area: cut walls, floor, ceiling. `of` is a closed outline. */
export interface Hatch {
  readonly kind: 'hatch'
  readonly role: 'hatch'
  readonly of: readonly Point[]
}
/** A caption at a point. Words come from the host by `code`; `text` is for names from the job. */
export interface Caption {
  readonly kind: 'caption'
  readonly role: Role
  readonly at: Point
  readonly code?: string
  readonly text?: string
  readonly anchor?: 'start' | 'middle' | 'end'
}
/** A cross to pencil on the wall. */
export interface Cross {
  readonly kind: 'cross'
  readonly role: 'mark'
  readonly at: Point
  readonly of: string
}
/** A dimension between two points, along one axis. `side` says on which row of the sheet it goes; `inside` leaves it where it is drawn. */
export interface Dimension {
  readonly kind: 'dimension'
  readonly role: 'dimension' | 'mark'
  readonly from: Point
  readonly to: Point
  readonly side: 'above' | 'below' | 'left' | 'right' | 'inside'
  readonly figure: Figure
  /** Its line is broken: it is drawn shorter or longer than its number says. */
  readonly broken?: boolean
  /** Where it is too short for its number, that stands over it before under it. */
  readonly isOver?: boolean
  /** An arrow to its end: a load, however long it is drawn. */
  readonly isLoad?: boolean
}
/** A height above the floor at a point, read off a tape: the one that stands left of every elevation, or one of its own on the right. */
export interface Height {
  readonly kind: 'height'
  readonly role: 'dimension' | 'mark' /** Of the drawing, where its label goes: left when absent. */
  readonly side?: 'left' | 'right'
  /** Code of what it belongs to, said after its caption: a support between the brackets. */
  readonly owner?: string
  readonly at: Point /** y of what it is measured from; the level line when absent. */
  readonly base?: number
  readonly figure: Figure
}
/** A finding shown where it matters. */
export interface Finding {
  readonly kind: 'finding'
  readonly verdict: 'pass' | 'warn' | 'fail' | 'unknown'
  readonly at: Point
  readonly code: string
}
/** Marks that belong together. `words`: code of a sentence for who cannot see them. */
export interface Group {
  readonly kind: 'group'
  readonly id: string
  readonly words?: string
  readonly marks: readonly Mark[]
}
/**
 * A place to enlarge when marks crowd there: `from` and `to` are corners of what is shown, `code` the title.
 * The enlargement shows the drawing's own walls, frame, hardware and crosses, and `marks`, which stand nowhere else.
 */
export interface Detail {
  readonly kind: 'detail'
  readonly id: string
  readonly code: string
  readonly from: Point
  readonly to: Point
  readonly marks: readonly Mark[]
  /** As of a figure. */
  readonly layer?: string
}

export type Mark = Line | Path | Rect | Circle | Hatch | Caption | Cross | Dimension | Height | Finding | Group | Detail

/** A corner of walls that are drawn unfolded: where it is along them, and its angle seen from the room (90 inside, 270 outside). */
export interface Bend {
  readonly x: number
  readonly degrees: number
}

/** What a rule adds to a drawing. The host composes the layers of a window and only then places labels. */
export interface Layer {
  readonly view: 'elevation' | 'plan' | 'marks' | 'hooks' | 'level' | 'hem' | 'pins' | 'loads'
  /** Only with the drapery in this state; absent: in both. */
  readonly state?: 'drawn' | 'stacked'
  /** From back to front: wall 0, opening 10, inner treatment 20, outer treatment 30, hardware 40, marks 50. */
  readonly depth: number
  readonly marks: readonly Mark[]
  /** The place of what it is about; of those with nothing below them several are layers of drapery, from the glass outward. */
  readonly on?: string
  /** Of a plan: where the walls turn. All layers of the plan are folded there. */
  readonly bends?: readonly Bend[]
  /** How many times as steep as widths the heights of its marks are, which are given so. All layers of a view that have one have the same. */
  readonly stretch?: number
}
