import type { Known, Length, LengthReckoning, Reckoning } from '@evenhem/length'
import type { Fact, JsonSchema } from '@evenhem/plugin'
import type { Corner } from './arithmetic/corner.ts'
import type { Hook } from './arithmetic/panel.ts'
import type { Follows } from './arithmetic/transfer.ts'
import type { Brackets, PlateTops } from './hardware/brackets.ts'

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

/** The ceiling over a window, as points from left to right; at least one. Between points straight, beyond the ends level. */
export const ceiling = one<Floor, 'window'>(
  'drapery/ceiling@1',
  'window',
  object({ points: array(object({ x: known, y: known })) }),
)

/** The casings that a drapery covers: x from the left edge of the first casing of the window. */
export interface Frame {
  /** Undefined: right there. */
  readonly left?: Known<Length> | undefined
  readonly right: Known<Length>
  readonly width: Known<Length>
  /** The highest top of these casings above the level line; undefined while one is not known. */
  readonly top?: Known<Length> | undefined
}
export const frame = one<Frame, 'treatment'>(
  'drapery/frame@1',
  'treatment',
  object({ left: known, right: known, width: known, top: known }, ['right', 'width']),
)

/** How a treatment opens, in what the arithmetic needs: where each panel has its ends when it is drawn. x from the left edge of the first casing. */
export interface Share {
  readonly panel: string
  readonly outer: Side
  /** Where its outer end is: at the end of the rod, or where a stationary panel hangs. */
  readonly end: LengthReckoning
  /** Where its leading edge is meant to be when it is drawn. */
  readonly leading: LengthReckoning
  readonly width: LengthReckoning
}
/** Where the closed drapery begins, ends and meets. */
export interface Coverage {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly width: Known<Length>
  /** Where the two panels of a pair meet; undefined for other draws. */
  readonly meets?: LengthReckoning | undefined
  /** The side at which a one-way draw ends when it is drawn; undefined for other draws. */
  readonly leadingEnd?: Side | undefined
  /** What each panel covers, from left to right. */
  readonly shares: readonly Share[]
  /** The corners inside what is covered, from left to right; undefined: it stays on one wall. */
  readonly corners?: readonly Corner[] | undefined
}
export const coverage = one<Coverage, 'treatment'>(
  'drapery/coverage@1',
  'treatment',
  object(
    {
      left: reckoning,
      right: reckoning,
      width: known,
      meets: reckoning,
      leadingEnd: side,
      shares: array(object({ panel: text, outer: side, end: reckoning, leading: reckoning, width: reckoning })),
      corners: array(object({ wall: text, next: text, x: known, degrees: { type: 'number' }, back: reckoning })),
    },
    ['left', 'right', 'width', 'shares'],
  ),
)

/** Where the closed cloth really ends, when hardware keeps it from the ends that are meant. Given by hardware. */
export interface DrawnEnds {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
}
export const drawnEnds = one<DrawnEnds, 'treatment'>(
  'drapery/drawn-ends@1',
  'treatment',
  object({ left: reckoning, right: reckoning }),
)

export type { Corner } from './arithmetic/corner.ts'
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
  /** 0 without a return. */
  readonly return: Known<Length>
  /** Last pleat to the outer edge; undefined with a return. */
  readonly outerFlat?: Known<Length> | undefined
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
      object(
        {
          panel: text,
          outer: side,
          pleats: count,
          hooks: array(hook),
          space: reckoning,
          finishedWidth: reckoning,
          leadingFlat: known,
          firstToLast: known,
          return: known,
          outerFlat: known,
          finishedLength: known,
          pin: known,
        },
        [
          'panel',
          'outer',
          'pleats',
          'hooks',
          'space',
          'finishedWidth',
          'leadingFlat',
          'firstToLast',
          'return',
          'finishedLength',
          'pin',
        ],
      ),
    ),
  }),
)

/** Heights above the level line that follow from the panels alone. `hangLine`: where the hooks bear. */
export interface HangLine {
  /** What the hem is measured from. */
  readonly hemAt: 'floor' | 'sill' | 'apron'
  readonly highestFloor: LengthReckoning
  readonly hem: LengthReckoning
  readonly top: LengthReckoning
  readonly hangLine: LengthReckoning
  /** The panel that needs the highest hang line and so sets it. */
  readonly sets: string
  /** The hem of each panel above the level line, and how far it clears what it is measured from. */
  readonly panels: readonly { readonly panel: string; readonly hem: LengthReckoning; readonly clears: LengthReckoning }[]
  /** Fixed to a ceiling: how far the hems clear at the left, in the middle and at the right of what is covered. */
  readonly underCeiling?:
    | { readonly left: LengthReckoning; readonly middle: LengthReckoning; readonly right: LengthReckoning }
    | undefined
}
export const hangLine = one<HangLine, 'treatment'>(
  'drapery/hang-line@1',
  'treatment',
  object(
    {
      hemAt: { enum: ['floor', 'sill', 'apron'] },
      highestFloor: reckoning,
      hem: reckoning,
      top: reckoning,
      hangLine: reckoning,
      sets: text,
      panels: array(object({ panel: text, hem: reckoning, clears: reckoning })),
      underCeiling: object({ left: reckoning, middle: reckoning, right: reckoning }),
    },
    ['hemAt', 'highestFloor', 'hem', 'top', 'hangLine', 'sets', 'panels'],
  ),
)

/** From the wall to where the hooks bear. Given by hardware. */
export const projection = one<Known<Length>, 'treatment'>('drapery/projection@1', 'treatment', known)
/** From the top of the rod down to where the hooks bear. Given by hardware. */
export const bearingDrop = one<Known<Length>, 'treatment'>('drapery/bearing-drop@1', 'treatment', known)
/** The top of the rod above the level line. Given by hardware. */
export const topOfRod = one<LengthReckoning, 'treatment'>('drapery/top-of-rod@1', 'treatment', reckoning)

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
  /** How wide each panel stacks: measured, or estimated and at least its bearers side by side. */
  readonly stacks?: readonly { readonly panel: string; readonly width: LengthReckoning }[] | undefined
  /** What they look like: rings around the rod, unless said otherwise, or carriers in it. */
  readonly drawnAs?: 'rings' | 'carriers' | undefined
  /** The order in which they go on the rod, from left to right: codes and counts. */
  readonly threading: readonly { readonly what: string; readonly count: number }[]
}
export const hookMap = one<HookMap, 'treatment'>(
  'drapery/hook-map@1',
  'treatment',
  object(
    {
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
      stacks: array(object({ panel: text, width: reckoning })),
      drawnAs: { enum: ['rings', 'carriers'] },
    },
    ['places', 'bearers', 'threading'],
  ),
)

/** The glass that is seen of all that a treatment covers: its edges and its width. Where nobody wants to know it is not there. */
export interface Glass {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
  readonly width: LengthReckoning
}
export const glass = one<Glass, 'treatment'>(
  'drapery/glass@1',
  'treatment',
  object({ left: reckoning, right: reckoning, width: reckoning }),
)
/** How wide each panel stacks by the rule that the workroom chose; empty where a third of the share holds. */
export const stackRules = one<readonly { readonly panel: string; readonly width: LengthReckoning }[], 'treatment'>(
  'drapery/stack-rules@1',
  'treatment',
  array(object({ panel: text, width: reckoning })),
)

/** How far the hardware reaches along the wall, finials included. Given by hardware. */
export interface Reach {
  readonly left: LengthReckoning
  readonly right: LengthReckoning
}
export const reach = one<Reach, 'treatment'>('drapery/reach@1', 'treatment', object({ left: reckoning, right: reckoning }))

/** Where the pattern of a fabric begins its repeat, above the level line. */
export const patternLine = one<{ readonly fabric: string; readonly line: LengthReckoning }, 'treatment'>(
  'drapery/pattern-line@1',
  'treatment',
  object({ fabric: text, line: reckoning }),
)

/** The label of a panel's bag, and where the order says it. */
export const bags = list<{ readonly bag: string; readonly at: string }, 'treatment'>(
  'drapery/bags@1',
  'treatment',
  object({ bag: text, at: text }),
)

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

/** From a ceiling down to where the hooks bear, of what is fixed to one. Given by hardware that can be. */
export const ceilingDrop = one<LengthReckoning, 'treatment'>('drapery/ceiling-drop@1', 'treatment', reckoning)

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
export * from './facts-check-in.ts'
export * from './facts-takeoff.ts'
export * from './facts-true-up.ts'

/** Whether the cloth of a treatment has neither lining nor interlining; not there while its fabric is not known. */
export const unlined = one<boolean, 'treatment'>('drapery/unlined@1', 'treatment', { type: 'boolean' })

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

/** The top hole of each bracket and support where a level rod has it, with its plate. Given by hardware that is screwed to the wall. */
export interface PlannedMark {
  /** `left`, `right` or the id of a support. */
  readonly bracket: string
  readonly x: LengthReckoning
  /** The top of its plate, and its highest hole, above the level line. */
  readonly plate: LengthReckoning
  readonly hole: LengthReckoning
}
export interface PlannedMarks {
  /** From left to right. */
  readonly marks: readonly PlannedMark[]
}
export const plannedMarks = one<PlannedMarks, 'treatment'>(
  'drapery/planned-marks@1',
  'treatment',
  object({ marks: array(object({ bracket: text, x: reckoning, plate: reckoning, hole: reckoning })) }),
)

/** A bracket as the rod hangs on it: where the hooks bear there, above the level line. */
export interface HungBracket {
  readonly bracket: string
  readonly x: LengthReckoning
  readonly height: LengthReckoning
  /** What put its holes elsewhere than a level rod has them. Undefined: they are where those are. */
  readonly by?: 'fixed' | 'read' | 'first' | 'in-line' | Follows | undefined
  /** How much higher its holes are than those of a level rod; its plate's top; the top of the rod there. With `by`. */
  readonly moved?: LengthReckoning | undefined
  /** Its mark from the floor right below it, where it was read or chosen. */
  readonly mark?: LengthReckoning | undefined
  readonly plate?: LengthReckoning | undefined
  readonly rod?: LengthReckoning | undefined
  /** The floor right below it above the level line, as its own readings tell it. */
  readonly floor?: LengthReckoning | undefined
}
/** The line through the brackets along which the hooks bear: straight from one to the next. From the moment a bracket is fixed it follows that bracket. */
export interface HungLine {
  /** From left to right, two or more. */
  readonly points: readonly HungBracket[]
  /** The bracket that the others are taken from. */
  readonly first: string
}
export const hungLine = one<HungLine, 'treatment'>(
  'drapery/hung-line@1',
  'treatment',
  object({
    points: array(
      object(
        {
          bracket: text,
          x: reckoning,
          height: reckoning,
          by: { enum: ['fixed', 'read', 'first', 'in-line', 'ceiling', 'head', 'level', 'floor', 'between'] },
          moved: reckoning,
          mark: reckoning,
          plate: reckoning,
          rod: reckoning,
          floor: reckoning,
        },
        ['bracket', 'x', 'height'],
      ),
    ),
    first: text,
  }),
)
