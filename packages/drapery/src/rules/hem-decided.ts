import type { Treatment } from '@evenhem/job'
import { type Length, readLength } from '@evenhem/length'
import { exactly } from '../decisions.ts'

/** Readings of one panel by the number of the hook. */
export type ByHook = Readonly<Record<string, Length>>

/**
 * What was decided about a panel's hem, as it stands under `decided/hem-<panel>`: `pins; read 1: 12.7 mm, 7: 15.875 mm; meant 1: 12.7 mm, 7: 12.7 mm`.
 *
 * A reading says nothing of the pins that it was read with, and a rule knows no time. So whoever takes a way out also writes down the readings that
 * it was worked out from and what it should make of them. While those readings stand as they were, the hem is to be read again; a reading that was put
 * over one of them is of the hem as it hangs now, with the pins as they stand now. What is read the same again is said by taking `read again`.
 */
export interface HemDecided {
  readonly how: string
  readonly read: ByHook
  readonly meant: ByHook
}
const written = (lengths: ByHook): string =>
  Object.entries(lengths)
    .map(([n, length]) => `${n}: ${exactly(length)}`)
    .join(', ')
export const decidedText = ({ how, read, meant }: HemDecided): string => `${how}; read ${written(read)}; meant ${written(meant)}`

const lengthIn = (text: string): Length | undefined => {
  const found = readLength(text, 'mm')
  return found.ok ? found.value : undefined
}
function lengthsIn(text: string): ByHook {
  const pairs = text.split(', ').flatMap((one) => {
    const [n, length] = one.split(': ')
    const value = lengthIn(length ?? '')
    return n && value !== undefined ? [[n, value] as const] : []
  })
  return Object.fromEntries(pairs)
}
/** What a decision says; of words that somebody else wrote nothing but `how`. */
export function hemDecided(text: string): HemDecided {
  const [how = '', read = '', meant = ''] = text.split('; ')
  return { how, read: lengthsIn(read.replace(/^read /, '')), meant: lengthsIn(meant.replace(/^meant /, '')) }
}
/** What was decided about the hem of a panel. */
export function decisionOn(it: Treatment, panel: string): HemDecided | undefined {
  const text = it.found?.decided?.[`hem-${panel}`]
  return text === undefined ? undefined : hemDecided(text)
}
/** True while what was decided has not been read again: no reading has changed, or one still stands that should have. */
export function isToRead({ read, meant }: HemDecided, readings: ByHook): boolean {
  const hooks = Object.keys(read)
  const stands = (n: string): boolean => readings[n] === read[n]
  return hooks.length > 0 && (hooks.every(stands) || hooks.some((n) => stands(n) && meant[n] !== read[n]))
}

/** How a bracket moves, as it stands under `decided/bracket-<side>`: `up 9.525 mm, to 2295.525 mm`; the second is its top hole above the floor. */
export const moveText = (by: Length, to: Length): string =>
  `${by > 0 ? 'up' : 'down'} ${exactly(Math.abs(by) as Length)}, to ${exactly(to)}`
export function moveIn(text: string): { readonly by: Length; readonly to: Length } | undefined {
  const [, way, by = '', to = ''] = /^(up|down) ([^,]+), to (.+)$/.exec(text) ?? []
  const [far, mark] = [lengthIn(by), lengthIn(to)]
  return way && far !== undefined && mark !== undefined ? { by: (way === 'up' ? far : -far) as Length, to: mark } : undefined
}
