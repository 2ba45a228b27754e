import { below, type Place } from '@evenhem/job'
import { type Length, millimetre } from '@evenhem/length'

/** A treatment, or a window for what its openings measure. */
export interface HasDecisions {
  readonly found?: { readonly decided?: Readonly<Record<string, string>> }
}

/** What may be decided about a difference. The words stand in the log as they are. */
export type Choice = 'go on' | 'reset pins' | 'move the brackets' | 'call the workroom'

/** A length in words that are exact and the same for every reader. */
export const exactly = (length: Length): string => `${length / millimetre} mm`
/** What a difference is: a decision says it, and holds while it is this one. */
export const differenceOf = (measured: Length, ordered: Length): string => `${exactly(measured)} for ${exactly(ordered)}`

/** What stands where once something is decided about the difference that `key` names. */
export const deciding = (at: Place, key: string, choice: Choice, difference: string) => ({
  at: below(at, 'found', 'decided', key),
  value: `${choice}: ${difference}`,
})

/** What was decided about this difference; undefined when nothing was, or when it was about another one. */
export function decided({ found }: HasDecisions, key: string, difference: string): Choice | undefined {
  const own = found?.decided?.[key]
  const choices: readonly Choice[] = ['go on', 'reset pins', 'move the brackets', 'call the workroom']
  return choices.find((choice) => own === `${choice}: ${difference}`)
}
