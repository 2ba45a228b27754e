import type { Known, Length, LengthReckoning } from '@evenhem/length'
import type { Brackets, PlateTops } from '../hardware/brackets.ts'
import type { Side } from './ground.ts'
import { array, known, list, object, one, reckoning, side, text } from './shapes.ts'

/**
 * A hole to drill. `fromFloor` is from the floor right below it; `fromCasing` outward from the nearer edge of the casing, negative inside it.
 * A support between the ends has side `middle` and is named by `support`; its `fromCasing` runs to the right from the left edge of the casing.
 */
export interface Hole {
  readonly id: string
  readonly on: 'bracket' | 'support' | 'return'
  readonly what: string
  readonly side: Side | 'middle'
  readonly support?: string | undefined
  readonly x: LengthReckoning
  readonly height: LengthReckoning
  readonly fromFloor: LengthReckoning
  readonly fromCasing: LengthReckoning
  /** Where a corner is between it and its edge of the casing: from the nearer corner of the wall it is on. */
  readonly fromCorner?: LengthReckoning | undefined
  /** Of a hole in the ceiling: how far out from the wall it is. */
  readonly fromWall?: LengthReckoning | undefined
}
export const holes = list<Hole, 'treatment'>(
  'drapery/holes@1',
  'treatment',
  object(
    {
      id: text,
      on: { enum: ['bracket', 'support', 'return'] },
      what: text,
      side: { enum: ['left', 'middle', 'right'] },
      support: text,
      x: reckoning,
      height: reckoning,
      fromFloor: reckoning,
      fromCasing: reckoning,
      fromCorner: reckoning,
      fromWall: reckoning,
    },
    ['id', 'on', 'what', 'side', 'x', 'height', 'fromFloor', 'fromCasing'],
  ),
)

/** A plate on the wall: what is screwed on, as a rectangle. Given by hardware. */
export interface Plate {
  readonly id: string
  readonly side: Side | 'middle'
  readonly x: LengthReckoning
  readonly top: LengthReckoning
  readonly width: Known<Length>
  readonly height: Known<Length>
}
export const plates = list<Plate, 'treatment'>(
  'drapery/plates@1',
  'treatment',
  object({ id: text, side: { enum: ['left', 'middle', 'right'] }, x: reckoning, top: reckoning, width: known, height: known }),
)

/** The highest points of the hardware above the level line, and how much must be free above the rod to lift it in. Given by hardware. */
export interface Above {
  /** The middle of the rod, which finials surround. */
  readonly middle: LengthReckoning
  /** Half of the finial's greatest thickness; undefined without finials. */
  readonly finialRadius?: Known<Length> | undefined
}
export const above = one<Above, 'treatment'>(
  'drapery/above@1',
  'treatment',
  object({ middle: reckoning, finialRadius: known }, ['middle']),
)

/** An outer edge and what holds it. `takesHook`: its last hook goes there, and needs no ring or carrier. */
export interface HeldAtWall {
  readonly side: Side
  readonly by: string
  readonly takesHook: boolean
}
export const heldAtWall = list<HeldAtWall, 'treatment'>(
  'drapery/held-at-wall@1',
  'treatment',
  object({ side, by: text, takesHook: { type: 'boolean' } }),
)

/** How far the hardware reaches along the wall, finials included. Given by hardware. */
export interface Reach {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
}
export const reach = one<Reach, 'treatment'>('drapery/reach@1', 'treatment', object({ left: reckoning, right: reckoning }))

/** The rod along the wall: its ends without finials, where it is held, from left to right, and the largest distance between those that its maker allows. Given by hardware. */
export interface Rod {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly held: readonly LengthReckoning[]
  readonly span?: Known<Length> | undefined
}
export const rod = one<Rod, 'treatment'>(
  'drapery/rod@1',
  'treatment',
  object({ left: reckoning, right: reckoning, held: array(reckoning), span: known }, ['left', 'right', 'held']),
)

/** How far the leading edges of a pair lie over one another on this hardware, when drawn; 0 where nothing carries one past the other. Given by hardware. */
export const overlap = one<Known<Length>, 'treatment'>('drapery/overlap@1', 'treatment', known)

/** Where brackets and supports stand along the wall, x to their middles. Given by hardware. */
export const stand = one<Brackets, 'treatment'>(
  'drapery/stand@1',
  'treatment',
  object({ left: reckoning, right: reckoning, supports: array(object({ id: text, x: reckoning })) }),
)

/** The tops of the plates on the wall above the level line. Given by hardware that is screwed to the wall. */
export const plateTops = one<PlateTops, 'treatment'>(
  'drapery/plate-tops@1',
  'treatment',
  object({ bracket: reckoning, support: reckoning }, ['bracket']),
)

/** Where the brackets of a treatment carry a second rod behind its own, for another one: its top against this rod's, and how far out its hooks bear. */
export interface SecondRod {
  readonly top: Known<Length>
  readonly projection: Known<Length>
}
export const secondRod = one<SecondRod, 'treatment'>(
  'drapery/second-rod@1',
  'treatment',
  object({ top: known, projection: known }),
)
