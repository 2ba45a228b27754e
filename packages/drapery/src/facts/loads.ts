import type { Fabric, Fastener, Job } from '@evenhem/job'
import type { Known, Length, LengthReckoning, Reckoning } from '@evenhem/length'
import { array, known, length, object, one, reckoning, text } from './shapes.ts'

const number = { type: 'number' }
const mass = { type: 'object', required: ['value'], properties: { value: number } }

/** A rod as a beam. Given by hardware. */
export interface RodBody {
  /** E·I in N·m² from a place along the wall to the next one's, from left to right; empty while it is not known. */
  readonly stiffness: readonly { readonly from: Length; readonly ei: number }[]
  /** The whole rod, kg; left out while it is not known. */
  readonly weight?: Reckoning | undefined
  /** How many times as far it hangs after years as at first. */
  readonly creep: number
  /** Whether a splice can turn. */
  readonly turns: boolean
  /** One ring or carrier, and one finial, kg; left out where the order does not say. */
  readonly bearer?: Known<number> | undefined
  readonly finial?: Known<number> | undefined
  /** Places that say nothing, without which stiffness or weight is not known. */
  readonly lacks: readonly string[]
  /** Codes of what is taken for granted. */
  readonly assumes: readonly string[]
}
export const rodBody = one<RodBody, 'treatment'>(
  'drapery/rod-body@1',
  'treatment',
  object(
    {
      stiffness: array(object({ from: length, ei: number })),
      weight: reckoning,
      creep: number,
      turns: { type: 'boolean' },
      bearer: mass,
      finial: mass,
      lacks: array(text),
      assumes: array(text),
    },
    ['stiffness', 'creep', 'turns', 'lacks', 'assumes'],
  ),
)

/** What a bracket or a support is held by. `down`: from the top of its plate; on a ceiling there are holes only. */
export interface Fixing {
  readonly part: 'bracket' | 'support'
  readonly on: 'wall' | 'ceiling'
  /** From what it is screwed to, to the middle of what hangs on it; left out on a ceiling. */
  readonly projection?: Known<Length> | undefined
  readonly height?: Known<Length> | undefined
  readonly thickness?: Known<Length> | undefined
  readonly holes: readonly Known<Length>[]
  /** What its maker allows, kg. */
  readonly rated?: Known<number> | undefined
  readonly holdsDown: boolean
  /** The screw that its maker asks for. */
  readonly screw?: string | undefined
  /** Of a double bracket: from what it is screwed to, to the second rod. */
  readonly inner?: Known<Length> | undefined
}
/** How the brackets of a treatment are held. Given by hardware. */
export const fixings = one<readonly Fixing[], 'treatment'>(
  'drapery/fixings@1',
  'treatment',
  array(
    object(
      {
        part: { enum: ['bracket', 'support'] },
        on: { enum: ['wall', 'ceiling'] },
        projection: known,
        height: known,
        thickness: known,
        holes: array(known),
        rated: mass,
        holdsDown: { type: 'boolean' },
        screw: text,
        inner: known,
      },
      ['part', 'on', 'holes', 'holdsDown'],
    ),
  ),
)

/** What each panel weighs, kg, of which it is known: as it is carried up the ladder. */
export const panelWeights = one<readonly { readonly panel: string; readonly weight: Known<number> }[], 'treatment'>(
  'drapery/panel-weights@1',
  'treatment',
  array(object({ panel: text, weight: mass })),
)
/** The fabrics of the job. */
export const fabrics = one<readonly Fabric[], 'job'>('drapery/fabrics@1', 'job', array({ type: 'object', required: ['id'] }))

/** What each panel weighs with the rings or carriers that it hangs on. Not there while one is not known. */
export const panelLoads = one<readonly { readonly panel: string; readonly weight: Reckoning }[], 'treatment'>(
  'drapery/panel-loads@1',
  'treatment',
  array(object({ panel: text, weight: reckoning })),
)

/** What a bracket or support carries, however the panels are drawn. `least` is below 0 where the rod would lift. */
export interface CarriedLoad {
  /** `left`, `right` or the id of a support. */
  readonly bracket: string
  readonly part: 'bracket' | 'support'
  readonly x: LengthReckoning
  /** N. */
  readonly most: Reckoning
  readonly least: Reckoning
  /** A code that says how panels are drawn when it carries the most. */
  readonly when: string
}
/** The lowest place of a rod between two brackets. */
export interface RodSag {
  readonly from: string
  readonly to: string
  readonly x: LengthReckoning
  readonly sag: LengthReckoning
  readonly most: LengthReckoning
  readonly when: string
}
/** A rod under its load. */
export interface RodLoads {
  /** From left to right. */
  readonly carried: readonly CarriedLoad[]
  /** Of each way between two brackets; empty while the stiffness is not known. */
  readonly sags: readonly RodSag[]
  /** How far down the rod is at places along it, at its lowest: to be drawn. Empty while the stiffness is not known. */
  readonly line: readonly { readonly x: Length; readonly down: Length }[]
  /** Codes of what was taken for granted. */
  readonly assumes: readonly string[]
}
export const rodLoads = one<RodLoads, 'treatment'>(
  'drapery/rod-loads@1',
  'treatment',
  object({
    carried: array(
      object({
        bracket: text,
        part: { enum: ['bracket', 'support'] },
        x: reckoning,
        most: reckoning,
        least: reckoning,
        when: text,
      }),
    ),
    sags: array(object({ from: text, to: text, x: reckoning, sag: reckoning, most: reckoning, when: text })),
    line: array(object({ x: length, down: length })),
    assumes: array(text),
  }),
)

/** The rods of a window, for one that lies in the double brackets of another. */
export const rodsHere = one<readonly { readonly treatment: string; readonly carried: readonly CarriedLoad[] }[], 'window'>(
  'drapery/rods-here@1',
  'window',
  array(object({ treatment: text, carried: array({ type: 'object' }) })),
)

/** What the fasteners of one bracket must hold, and what they can. */
export interface Held {
  readonly bracket: string
  readonly part: 'bracket' | 'support'
  readonly x: LengthReckoning
  /** All that hangs on it, N. */
  readonly load: Reckoning
  /** The most loaded screw, N; left out where the holes of its plate are not known. */
  readonly pull?: Reckoning | undefined
  readonly shear?: Reckoning | undefined
  /** What it is held in. */
  readonly behind: string
  /** The name of what it is fixed with. */
  readonly fastener?: string | undefined
  /** It stands on a casing or a crown, whose wood is all there is. */
  readonly isThin?: true | undefined
  /** Which part of what its fasteners hold is used, and of what its maker allows; left out while not known. */
  readonly used?: Reckoning | undefined
  readonly ofRated?: Reckoning | undefined
  /** The same with the top screw alone. */
  readonly byOne?: Reckoning | undefined
  /** Why what its fasteners hold is not known: a code. */
  readonly lacks?: string | undefined
}
export const held = one<readonly Held[], 'treatment'>(
  'drapery/held@1',
  'treatment',
  array(
    object(
      {
        bracket: text,
        part: { enum: ['bracket', 'support'] },
        isThin: { const: true },
        x: reckoning,
        load: reckoning,
        pull: reckoning,
        shear: reckoning,
        behind: text,
        fastener: text,
        used: reckoning,
        ofRated: reckoning,
        byOne: reckoning,
        lacks: text,
      },
      ['bracket', 'part', 'x', 'load', 'behind'],
    ),
  ),
)

/** Where a support between the end brackets lets rings or carriers travel: stretches along the wall, from left to right. Given by hardware whose bearers cannot pass every support. */
export const supportPlaces = one<readonly { readonly from: Length; readonly to: Length }[], 'treatment'>(
  'drapery/support-places@1',
  'treatment',
  array(object({ from: length, to: length })),
)

/** In what the lengths of the job are written. */
export const units = one<Job['units'], 'job'>('drapery/units@1', 'job', { enum: ['in', 'mm', 'cm'] })
/** The fasteners of the job. */
export const fasteners = one<readonly Fastener[], 'job'>(
  'drapery/fasteners@1',
  'job',
  array({ type: 'object', required: ['id'] }),
)
