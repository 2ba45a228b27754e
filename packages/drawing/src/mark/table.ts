import type { Placed } from '../scene.ts'
import type { ComposeOptions } from '../setting.ts'
import type { Bounds, Box, Frame } from '../space.ts'

/** With what a mark is placed: how the wall lies in the scene, what is drawn at most, and `spot`, which label placing has found. */
export interface Pencil<Spot = undefined> {
  readonly frame: Frame
  readonly within: Box
  readonly options: ComposeOptions
  readonly spot: Spot
}

/** With what a scene is written. */
export interface Ink {
  readonly interactive: boolean
}

/** All that the drawing knows of a mark. */
export interface MarkTable<M, P extends Placed, Spot = undefined> {
  /** What it takes of the wall, in mm; undefined when the drawing need not be larger for it. */
  readonly bounds: (mark: M) => Bounds | undefined
  readonly place: (mark: M, pencil: Pencil<Spot>) => P
  readonly svg: (placed: P, ink: Ink) => string
  /** For who cannot see it; none when it says nothing by itself. */
  readonly words: (mark: M, options: ComposeOptions) => readonly string[]
}

export const silent = (): readonly string[] => []
