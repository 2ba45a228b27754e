import type { Known, Length, LengthReckoning, Reckoning } from '@evenhem/length'
import type { Fact, JsonSchema } from '@evenhem/plugin'
import type { Hook } from './arithmetic/panel.ts'

const one = <T, L extends 'window' | 'treatment'>(id: `drapery/${string}@1`, of: L, schema: JsonSchema) =>
  ({ id, of, many: false, schema }) as const as Fact<T, L> & { readonly many: false }
const list = <T, L extends 'window' | 'treatment'>(id: `drapery/${string}@1`, of: L, schema: JsonSchema) =>
  ({ id, of, many: true, schema }) as const as Fact<T, L> & { readonly many: true }

const length = { type: 'integer' }
const text = { type: 'string' }
const count = { type: 'integer', minimum: 0 }
const reckoning = {
  type: 'object',
  required: ['name', 'what', 'value', 'unit', 'how', 'terms'],
  properties: { name: text, value: { type: 'number' }, terms: { type: 'array' } },
}
const known = { type: 'object', required: ['value'], properties: { value: length } }
const object = (properties: Readonly<Record<string, JsonSchema>>, required = Object.keys(properties)): JsonSchema => ({
  type: 'object',
  properties,
  required,
  additionalProperties: false,
})
const array = (items: JsonSchema): JsonSchema => ({ type: 'array', items })

export type Side = 'left' | 'right'
const side = { enum: ['left', 'right'] }

/** The floor under a window as points from left to right, heights from the level line. Between points straight, beyond the ends level. */
export interface Floor {
  readonly points: readonly { readonly x: Known<Length>; readonly y: Known<Length> }[]
}
export const floor = one<Floor, 'window'>('drapery/floor@1', 'window', object({ points: array(object({ x: known, y: known })) }))

/** Where the closed drapery begins, ends and meets. x from the left edge of the casing. */
export interface Coverage {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  /** Where the two panels of a pair meet. */
  readonly meets: LengthReckoning
  /** What each panel covers, from left to right. */
  readonly shares: readonly { readonly panel: string; readonly width: LengthReckoning; readonly outer: Side }[]
}
export const coverage = one<Coverage, 'treatment'>(
  'drapery/coverage@1',
  'treatment',
  object({
    left: reckoning,
    right: reckoning,
    meets: reckoning,
    shares: array(object({ panel: text, width: reckoning, outer: side })),
  }),
)

export type { Hook } from './arithmetic/panel.ts'
/** How a panel is made: its hooks from the leading edge outward, and the sizes that follow. */
export interface PanelMakeUp {
  readonly panel: string
  readonly outer: Side
  readonly pleats: number
  readonly hooks: readonly Hook[]
  readonly space: LengthReckoning
  readonly finishedWidth: LengthReckoning
  readonly leadingFlat: Known<Length>
  readonly firstToLast: Known<Length>
  readonly return: Known<Length>
  readonly finishedLength: Known<Length>
  readonly pin: Known<Length>
}
export interface MakeUp {
  readonly panels: readonly PanelMakeUp[]
}
const hook = object({ n: count, on: { enum: ['leading-edge', 'pleat', 'outer-edge'] }, pleat: count, across: length }, [
  'n',
  'on',
  'across',
])
export const makeUp = one<MakeUp, 'treatment'>(
  'drapery/make-up@1',
  'treatment',
  object({
    panels: array(
      object({
        panel: text,
        outer: side,
        pleats: count,
        hooks: array(hook),
        space: reckoning,
        finishedWidth: reckoning,
        leadingFlat: known,
        firstToLast: known,
        return: known,
        finishedLength: known,
        pin: known,
      }),
    ),
  }),
)

/** Heights above the level line that follow from the panels alone. `hangLine`: where the hooks bear. */
export interface HangLine {
  readonly highestFloor: LengthReckoning
  readonly hem: LengthReckoning
  readonly top: LengthReckoning
  readonly hangLine: LengthReckoning
  /** The panel that needs the highest hang line and so sets it. */
  readonly sets: string
  /** The hem of each panel above the level line, and how far it clears the highest floor. */
  readonly panels: readonly { readonly panel: string; readonly hem: LengthReckoning; readonly clears: LengthReckoning }[]
}
export const hangLine = one<HangLine, 'treatment'>(
  'drapery/hang-line@1',
  'treatment',
  object({
    highestFloor: reckoning,
    hem: reckoning,
    top: reckoning,
    hangLine: reckoning,
    sets: text,
    panels: array(object({ panel: text, hem: reckoning, clears: reckoning })),
  }),
)

/** From the wall to where the hooks bear. Given by hardware. */
export const projection = one<Known<Length>, 'treatment'>('drapery/projection@1', 'treatment', known)
/** From the top of the rod down to where the hooks bear. Given by hardware. */
export const bearingDrop = one<Known<Length>, 'treatment'>('drapery/bearing-drop@1', 'treatment', known)
/** The top of the rod above the level line. Given by hardware. */
export const topOfRod = one<LengthReckoning, 'treatment'>('drapery/top-of-rod@1', 'treatment', reckoning)

/** A hole to drill. `fromFloor` is from the floor right below it; `fromCasing` outward from the nearer edge of the casing, negative inside it. */
export interface Hole {
  readonly id: string
  readonly on: 'bracket' | 'return'
  readonly what: string
  readonly side: Side
  readonly x: LengthReckoning
  readonly height: LengthReckoning
  readonly fromFloor: LengthReckoning
  readonly fromCasing: LengthReckoning
}
export const holes = list<Hole, 'treatment'>(
  'drapery/holes@1',
  'treatment',
  object({
    id: text,
    on: { enum: ['bracket', 'return'] },
    what: text,
    side,
    x: reckoning,
    height: reckoning,
    fromFloor: reckoning,
    fromCasing: reckoning,
  }),
)

/** An outer edge that is held at the wall: its last hook needs no ring or carrier. */
export interface HeldAtWall {
  readonly side: Side
  readonly by: string
}
export const heldAtWall = list<HeldAtWall, 'treatment'>('drapery/held-at-wall@1', 'treatment', object({ side, by: text }))

/** Where a hook goes. `to` is a code of words; `number` counts from the leading edge; x when drawn and when stacked. */
export interface HookPlace {
  readonly panel: string
  readonly hook: Hook
  readonly to: string
  readonly number?: number
  readonly note?: string
  readonly drawn: Length
  readonly stacked: Length
}
export interface HookMap {
  readonly places: readonly HookPlace[]
  /** How many movable bearers (rings, carriers) the map takes. */
  readonly bearers: Reckoning
  /** The order in which they go on the rod, from left to right: codes and counts. */
  readonly threading: readonly { readonly what: string; readonly count: number }[]
}
export const hookMap = one<HookMap, 'treatment'>(
  'drapery/hook-map@1',
  'treatment',
  object({
    places: array(
      object({ panel: text, hook, to: text, number: count, note: text, drawn: length, stacked: length }, [
        'panel',
        'hook',
        'to',
        'drawn',
        'stacked',
      ]),
    ),
    bearers: reckoning,
    threading: array(object({ what: text, count })),
  }),
)

/** How far the hardware reaches along the wall, finials included. Given by hardware. */
export interface Reach {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
}
export const reach = one<Reach, 'treatment'>('drapery/reach@1', 'treatment', object({ left: reckoning, right: reckoning }))
