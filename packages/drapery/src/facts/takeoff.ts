import type { Fabric } from '@evenhem/job'
import type { Known, Length, LengthReckoning, Reckoning } from '@evenhem/length'
import type { JsonSchema } from '@evenhem/plugin'
import { array, object as closed, known, one, reckoning, text } from './shapes.ts'

const object = (required: Readonly<Record<string, JsonSchema>>, optional: Readonly<Record<string, JsonSchema>> = {}) =>
  closed({ ...required, ...optional }, Object.keys(required))

/** The fabrics of a job whose width is known, by which the cloth of its treatments is counted. */
export const cloths = one<readonly Fabric[], 'job'>(
  'drapery/cloths@1',
  'job',
  array({ type: 'object', required: ['id', 'width'] }),
)

export type ClothUse = 'face' | 'lining' | 'interlining'

/** How one cloth of a treatment is cut. Widths are ratios, since a width may be halved. */
export interface ClothTakeoff {
  readonly as: ClothUse
  /** The id of its entry under `fabrics`. */
  readonly fabric: string
  /** For each panel how wide it is cut, and the widths for it; with widths rounded for all panels together, those are not rounded. */
  readonly panels: readonly { readonly panel: string; readonly cutWidth: LengthReckoning; readonly widths: Reckoning }[]
  readonly widths: Reckoning
  readonly cuts: Reckoning
  /** What must be in a cut. */
  readonly needed: LengthReckoning
  /** What is cut: whole repeats, where the cloth has a repeat. */
  readonly cut: LengthReckoning
  /** What a cut is longer than needed; left out where the cloth has no repeat. */
  readonly rest?: LengthReckoning | undefined
  readonly halfDrop?: LengthReckoning | undefined
  /** All cuts together, and what a half drop adds. */
  readonly cloth: LengthReckoning
}

/** The sizes of a panel that its cloths are cut from. */
export interface PanelTakeoff {
  readonly panel: string
  readonly outer: 'left' | 'right'
  readonly finishedWidth: Known<Length>
  /** What its fullness asks for; without one its flat width in the order. */
  readonly flat: Known<Length>
  /** The flat width in the order, where there is a fullness too. */
  readonly ordered?: Known<Length> | undefined
  /** Of all its cloths; left out where one has no weight. */
  readonly weight?: Reckoning | undefined
}

/** The cloth of one treatment. Without `cloths`, `lacks` are the places that must be filled first. */
export interface Takeoff {
  readonly lacks: readonly string[]
  readonly panels: readonly PanelTakeoff[]
  readonly cloths: readonly ClothTakeoff[]
}
const cloth = object(
  {
    as: { enum: ['face', 'lining', 'interlining'] },
    fabric: text,
    panels: array(object({ panel: text, cutWidth: reckoning, widths: reckoning })),
    widths: reckoning,
    cuts: reckoning,
    needed: reckoning,
    cut: reckoning,
    cloth: reckoning,
  },
  { rest: reckoning, halfDrop: reckoning },
)
const panel = object(
  { panel: text, outer: { enum: ['left', 'right'] }, finishedWidth: known, flat: known },
  { ordered: known, weight: reckoning },
)
export const takeoff = one<Takeoff, 'treatment'>(
  'drapery/takeoff@1',
  'treatment',
  object({ lacks: array(text), panels: array(panel), cloths: array(cloth) }),
)

/** What the whole job takes of each fabric. */
export interface FabricSum {
  readonly fabric: string
  readonly needed: LengthReckoning
  readonly placing?: LengthReckoning | undefined
  readonly order: LengthReckoning
}
export const fabricSums = one<readonly FabricSum[], 'job'>(
  'drapery/fabric-sums@1',
  'job',
  array(object({ fabric: text, needed: reckoning, order: reckoning }, { placing: reckoning })),
)
