import type { Glyphs } from './figure.ts'
import type { Figure, Height, Layer, NumberState, Role, Segment } from './marks.ts'
import type { At, Box } from './space.ts'
import type { Weight } from './text.ts'

/** Straight strokes, each from end to end. */
export type Stroke = readonly At[]
/** Words in a scene. `box` is where they are drawn. */
export interface Words {
  readonly text: string
  readonly at: At
  readonly anchor: 'start' | 'middle' | 'end'
  readonly size: number
  readonly weight: Weight
  readonly box: Box
}

/** A number in the dress of its state; places are from the middle of its block. */
export interface Tag {
  readonly state: NumberState
  /** Around all that is drawn. */
  readonly box: Box
  /** What lies on the dimension's line, which is broken there. */
  readonly block: Box
  readonly hook?: Box
  readonly number?: { readonly glyphs: Glyphs; readonly at: At }
  /** Beside the block: what is off, the number set aside, or what is allowed at most. */
  readonly beside?: { readonly glyphs: Glyphs; readonly at: At; readonly what: 'off' | 'aside' | 'most' }
}

/** A figure with its label's place. Nothing overlaps `box`; a touch inside `touch` means this figure. */
export interface Label {
  readonly figure: Figure
  readonly role: 'dimension' | 'mark'
  readonly tag: Tag
  /** Middle of the tag's block. */
  readonly at: At
  readonly captions: readonly Words[]
  readonly box: Box
  readonly touch: Box
  readonly touched: boolean
  /** The box of what is to be pencilled, with a cross in it. */
  readonly frame?: Box
  /** For who cannot see it. */
  readonly words: string
}

interface InScene {
  /** Drawn only inside this box. */ readonly clip?: Box
}
export interface PlacedLine extends InScene {
  readonly kind: 'line'
  readonly role: Role
  readonly from: At
  readonly to: At
}
export interface PlacedPath extends InScene {
  readonly kind: 'path'
  readonly role: Role
  readonly d: readonly Segment[] /** Only its outline. */
  readonly isEdge?: boolean
}
export interface PlacedRect extends InScene {
  readonly kind: 'rect'
  readonly role: Role
  readonly box: Box
  readonly radius: number
}
export interface PlacedCircle extends InScene {
  readonly kind: 'circle'
  readonly role: Role
  readonly at: At
  readonly radius: number
}
export interface PlacedHatch extends InScene {
  readonly kind: 'hatch'
  readonly role: 'hatch'
  readonly strokes: readonly Stroke[]
}
export interface PlacedCaption extends InScene {
  readonly kind: 'caption'
  readonly role: Role
  readonly words: Words
}
export interface PlacedCross extends InScene {
  readonly kind: 'cross'
  readonly role: 'mark'
  readonly at: At
  readonly arm: number
  readonly of: string
}
export interface PlacedDimension extends InScene {
  readonly kind: 'dimension'
  readonly role: 'dimension' | 'mark'
  /** The ends on the dimension's line: their distance is the figure's value, to scale, unless `broken`. */
  readonly from: At
  readonly to: At
  readonly line: readonly Stroke[]
  readonly extensions: readonly Stroke[]
  readonly ticks: readonly Stroke[]
  /** One end lies outside of what is drawn; a break mark stands there. */
  readonly broken: boolean
  /** An arrow, however long. */
  readonly isLoad?: true
  readonly label: Label
}
export interface PlacedHeight extends InScene {
  readonly kind: 'height'
  readonly role: 'dimension' | 'mark'
  /** The thing; the foot and the reading on the blade, whose distance is the figure's value, to scale. */
  readonly at: At
  readonly foot: At
  readonly reading: At
  readonly leader: Stroke
  /** From the blade to the thing to be marked. */
  readonly dotted?: Stroke
  readonly label: Label
}
export interface PlacedTape extends InScene {
  readonly kind: 'tape'
  /** Of the wall. */
  readonly side: NonNullable<Height['side']>
  readonly box: Box /** y where the blade begins to count. */
  readonly foot: number
  readonly ticks: readonly Stroke[]
  readonly numbers: readonly Words[]
}
export interface PlacedFinding extends InScene {
  readonly kind: 'finding'
  readonly verdict: 'pass' | 'warn' | 'fail' | 'unknown'
  readonly at: At
  readonly radius: number
  readonly code: string
  readonly words: string
}
export interface PlacedDetail extends InScene {
  readonly kind: 'detail'
  readonly letter: string
  readonly factor: number
  /** What is enlarged, its sign, the line from it, broken where a number stands, and where the enlargement stands. */
  readonly source: Box
  readonly sign: Box
  readonly leader: readonly Stroke[]
  readonly panel: Box
  readonly head: Box
  readonly title?: Words
  /** Of the panel's corners. */
  readonly radius: number
}
/** The frame around an enlargement, over its marks. */
export interface PlacedEdge extends InScene {
  readonly kind: 'edge'
  readonly box: Box
  readonly radius: number
}

export type Placed =
  | PlacedLine
  | PlacedPath
  | PlacedRect
  | PlacedCircle
  | PlacedHatch
  | PlacedCaption
  | PlacedCross
  | PlacedDimension
  | PlacedHeight
  | PlacedTape
  | PlacedFinding
  | PlacedDetail
  | PlacedEdge

/** A number or a caption that found no room, or a mark that cannot be drawn. It is in `words` all the same. */
export interface LeftOut {
  readonly what: string
  readonly of?: string
  readonly why: 'crowded' | 'not a place' | 'around a corner'
}

/** A drawing as data, ready to be written as SVG: in scene units, y down. */
export interface Scene {
  readonly view: Layer['view']
  readonly unit: 'px' | 'mm'
  readonly width: number
  readonly height: number
  /** Scene units for a mm of wall. */
  readonly scale: number
  /** Heights are drawn so many times as steep as widths. Absent: alike. */
  readonly stretch?: number
  /** From back to front. */
  readonly items: readonly Placed[]
  /** Every box that words or a figure takes; no two overlap. */
  readonly labels: readonly { readonly text: string; readonly box: Box }[]
  /** Sentences for a screen reader, in reading order. */
  readonly words: readonly string[]
  readonly leftOut: readonly LeftOut[]
}

type FigureItem = PlacedDimension | PlacedHeight
const isFigure = (item: Placed): item is FigureItem => item.kind === 'dimension' || item.kind === 'height'
/** The figures of a scene, in reading order: top to bottom, left to right. */
export const figuresOf = (scene: Scene): readonly Label[] => scene.items.filter(isFigure).map((item) => item.label)
/** The figure that a touch at a point means; undefined when it means none. */
export const figureAt = (scene: Scene, [x, y]: At): Label | undefined =>
  figuresOf(scene).findLast(
    ({ touch }) => x >= touch.x && x <= touch.x + touch.width && y >= touch.y && y <= touch.y + touch.height,
  )
