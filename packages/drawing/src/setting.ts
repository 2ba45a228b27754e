import type { Length, Written } from '@evenhem/length'
import type { Layer } from './marks.ts'
import type { Sizes } from './sizes.ts'
import type { Bounds } from './space.ts'

/** How a person reads: lengths as written, words by code. */
export interface Voice {
  readonly write: (length: Length) => Written
  readonly say: (code: string) => string
  /** A length as it is spoken, "93 and one eighth inches"; absent: as written, with its unit. */
  readonly speak?: (length: Length) => string
  /** What something weighs, "30 kg" or "66 lb"; absent: in whole kilograms. */
  readonly weigh?: (kilograms: number) => string
  /** Puts ≈ before each number that the tape rounds; absent: whoever shows the drawing says so once. */
  readonly tellsRounding?: boolean
}

/** What `compose` is asked for. */
export interface ComposeOptions extends Voice {
  readonly view: Layer['view']
  readonly state: 'drawn' | 'stacked'
  /** Of the drawing, in the units of `sizes`: px or mm of paper. */
  readonly width: number
  readonly height: number
  readonly sizes: Sizes
  /** `of` of the figure that is selected. */
  readonly touched?: string
  /** False: a wall that no heights are read at stands without a tape. Absent: a tape stands left of every wall. */
  readonly hasTape?: boolean
  /** The part of the wall to show, in mm. Absent: all that is drawn. */
  readonly bounds?: Bounds
}
