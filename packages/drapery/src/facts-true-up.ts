import type { Known, Length, LengthReckoning } from '@evenhem/length'
import type { Fact } from '@evenhem/plugin'

/** The hem below one hook of a drawn panel. */
export interface HemHook {
  readonly n: number
  /** Where it is along the wall, drawn and open. */
  readonly drawn: LengthReckoning
  readonly stacked: Length
  /** How far the hem clears what it is measured from, as it was read: straight between the hooks that it was read below. */
  readonly now: LengthReckoning
  /** Its pin as it is. */
  readonly pin: Known<Length>
  /** How far the hem still has to rise there, down negative. */
  readonly lift: Length
  /** The pin that it should have. */
  readonly set: LengthReckoning
  /** What the hem then clears; undefined while it has to be read again. */
  readonly after?: LengthReckoning | undefined
}
/** A panel whose hem was read. `again`: something was set after that, and it is to be read again. `back`: it goes back to the workroom. */
export interface HemPanel {
  readonly panel: string
  readonly outer: 'left' | 'right'
  readonly state: 'read' | 'again' | 'back'
  /** With a return its last hook hangs there, and takes the last pleat's pin. */
  readonly back: boolean
  readonly readings: readonly { readonly n: number; readonly value: Known<Length> }[]
  readonly hooks: readonly HemHook[]
}
/** The hem as it hangs against the order, hook by hook, and the pins that bring it there. */
export interface TrueUp {
  readonly clearance: Known<Length>
  readonly tolerance: Known<Length>
  readonly panels: readonly HemPanel[]
  /** The shallowest and the deepest pin, and the step in which pins are set. */
  readonly range: { readonly least: LengthReckoning; readonly most: Length; readonly step: Length }
  /** Panels that nobody has read below two hooks yet. */
  readonly unread: readonly string[]
}
const length = { type: 'integer' }
const reckoning = { type: 'object', required: ['name', 'value', 'terms'], properties: { value: length } }
const known = { type: 'object', required: ['value', 'from'], properties: { value: length } }
const hook = {
  type: 'object',
  required: ['n', 'drawn', 'stacked', 'now', 'pin', 'lift', 'set'],
  properties: {
    n: { type: 'integer', minimum: 1 },
    drawn: reckoning,
    stacked: length,
    now: reckoning,
    pin: known,
    lift: length,
    set: reckoning,
    after: reckoning,
  },
  additionalProperties: false,
}
const panel = {
  type: 'object',
  required: ['panel', 'outer', 'state', 'back', 'readings', 'hooks'],
  properties: {
    panel: { type: 'string' },
    outer: { enum: ['left', 'right'] },
    state: { enum: ['read', 'again', 'back'] },
    back: { type: 'boolean' },
    readings: { type: 'array' },
    hooks: { type: 'array', items: hook },
  },
  additionalProperties: false,
}
export const trueUp: Fact<TrueUp, 'treatment'> & { readonly many: false } = {
  id: 'drapery/true-up@1',
  of: 'treatment',
  many: false,
  schema: {
    type: 'object',
    required: ['clearance', 'tolerance', 'panels', 'range', 'unread'],
    properties: {
      clearance: known,
      tolerance: known,
      panels: { type: 'array', items: panel },
      range: {
        type: 'object',
        required: ['least', 'most', 'step'],
        properties: { least: reckoning, most: length, step: length },
      },
      unread: { type: 'array' },
    },
    additionalProperties: false,
  },
}
