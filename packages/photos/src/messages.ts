import type { Format } from './format.ts'
import type { Limits } from './limits.ts'
import type { Refused } from './refused.ts'

/** What the process of the decoders is asked. */
export interface Errand {
  readonly id: number
  readonly file: string
  readonly format: Format
  readonly limits: Pick<Limits, 'mostPixels' | 'mostMemory'>
  /** Nothing else is read meanwhile. */
  readonly isAlone: boolean
}
/** The cleaned copies of a photo, as JPEG. */
export interface Cleaned {
  /** At most 1600 pixels long. */
  readonly large: Uint8Array
  /** At most 320 pixels long. */
  readonly small: Uint8Array
}
/** What it answers: that it is ready, once, then what came of each photo; `heavy`, it is to be asked again with nothing else beside it. `peak`: the most bytes that it has held so far. */
export type Answer =
  | { readonly is: 'ready' }
  | { readonly is: 'done'; readonly id: number; readonly cleaned: Cleaned | Refused | 'heavy'; readonly peak: number }
