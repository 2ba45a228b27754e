import { below, type Opening, type Place, type Treatment, type Wall, type Window } from '@evenhem/job'
import type { Known } from '@evenhem/length'
import type { Ask, Check, Quantity, Values, Verdict } from '@evenhem/plugin'

/** A member of the job that may not be filled yet, with its place. */
export interface Member<T extends number = number> {
  readonly value: T | undefined
  readonly from: Place
}
type Filled<M> = { readonly [K in keyof M]: M[K] extends Member<infer T> ? Known<T> : never }

/** A member below a place. */
export const member = <T extends number>(at: Place, tokens: readonly string[], value: T | undefined): Member<T> => ({
  value,
  from: below(at, ...tokens),
})
/** A member that the job may leave out, as a value that knows its place. */
export const perhaps = <T extends number>({ value, from }: Member<T>): Known<T> | undefined =>
  value === undefined ? undefined : { value, from }

/** Runs when all members are filled; otherwise asks for those that are not. */
export function filled<const M extends Readonly<Record<string, Member>>, R extends object>(
  members: M,
  run: (members: Filled<M>) => R,
): R | Ask {
  const empty = Object.values(members).filter((each) => each.value === undefined)
  return empty.length > 0 ? { ask: empty.map((each) => each.from) } : run(members as unknown as Filled<M>)
}

/** The opening that a treatment is judged by, with its place: so far the first of the first wall. */
export function openingOf(
  window: Window,
  windowAt: Place,
): { readonly wall: Wall; readonly opening: Opening; readonly wallAt: Place; readonly openingAt: Place } {
  const wall = window.walls[0] as Wall
  const opening = wall.openings[0] as Opening
  const wallAt = below(windowAt, 'walls', wall.id)
  return { wall, opening, wallAt, openingAt: below(wallAt, 'openings', opening.id) }
}
/** The place of the window that a treatment hangs at. */
export const windowOf = (treatmentAt: Place): Place => treatmentAt.slice(0, treatmentAt.lastIndexOf('/treatments/'))

/** The place of a panel. */
export const panelAt = (treatmentAt: Place, panel: string): Place => below(treatmentAt, 'panels', panel)
/** On which side a panel has its outer edge: of a pair, the first hangs on the left. */
export const outerSide = (treatment: Treatment, panel: string): 'left' | 'right' =>
  treatment.panels[0]?.id === panel ? 'left' : 'right'

/** A check whose sentence depends on its verdict: `code` when it passes, else `code.fail`, `code.warn`, `code.unknown`. */
export const check = (code: string, verdict: Verdict, at: Place, values: Values, stops?: Check['stops']): Check => ({
  code,
  ...(verdict === 'pass' ? {} : { says: `${code}.${verdict}` }),
  verdict,
  at,
  values,
  ...(stops && verdict === 'fail' ? { stops } : {}),
})
/** A known length as a value for a sentence. */
export const long = (known: { readonly value: number }): Quantity => ({ length: known.value as never })
/** A length without its sign. */
export const magnitude = (known: { readonly value: number }): Quantity => ({ length: Math.abs(known.value) as never })
