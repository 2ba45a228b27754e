import type { Known, Length, LengthReckoning } from '@evenhem/length'
import { array, known, length, object, one, reckoning, side, text } from './shapes.ts'

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
const stated = { ...known, required: ['value', 'from'] }
const hook = object(
  {
    n: { type: 'integer', minimum: 1 },
    drawn: reckoning,
    stacked: length,
    now: reckoning,
    pin: stated,
    lift: length,
    set: reckoning,
    after: reckoning,
  },
  ['n', 'drawn', 'stacked', 'now', 'pin', 'lift', 'set'],
)
const panel = object({
  panel: text,
  outer: side,
  state: { enum: ['read', 'again', 'back'] },
  back: { type: 'boolean' },
  readings: array({}),
  hooks: array(hook),
})
export const trueUp = one<TrueUp, 'treatment'>(
  'drapery/true-up@1',
  'treatment',
  object({
    clearance: stated,
    tolerance: stated,
    panels: array(panel),
    range: object({ least: reckoning, most: length, step: length }),
    unread: array(text),
  }),
)
