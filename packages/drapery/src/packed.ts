import { number } from '@evenhem/length'
import type { Part } from '@evenhem/plugin'
import type { Packed } from './facts/check-in.ts'

/** A part of the pull list as something to be counted when it comes. */
export const packedPart = ({ what, count, hardware }: Part): Packed => ({
  what,
  needed: number(count),
  ...(hardware === undefined ? {} : { hardware }),
})

/** A rod that came in pieces is counted piece by piece. */
export const packedRod = (part: Part, splices: number): Packed =>
  splices === 0 ? packedPart(part) : { ...packedPart(part), what: 'drapery/rod-piece', needed: number(splices + 1) }

/** The same thing given by several, once. */
export function packedOnce(all: readonly Packed[]): readonly Packed[] {
  const once = new Map<string, Packed>()
  for (const part of all) {
    const before = once.get(part.what)
    once.set(part.what, before ? { ...before, needed: number(before.needed.value + part.needed.value) } : part)
  }
  return [...once.values()]
}
