import type { Forces } from './combined.ts'
import { aboveZero, type Found, found, notBelowZero, type Refusal, refused } from './found.ts'

/**
 * What a fastener's own listing says of it, N, in the wall it is used in. No anchor has a value in this package: none is published that holds for all of a kind,
 * and none is guessed.
 */
export interface Listing {
  /** Out of the wall; undefined: not listed. */
  readonly pull?: number
  /** Along the wall; undefined: not listed. */
  readonly shear?: number
  /** What it may be loaded with, or what broke it in a test. */
  readonly is: 'allowable' | 'ultimate'
  /** What an ultimate value is divided by, 1 or more; its listing says it. Not used for allowable values. */
  readonly margin?: number
}
/** What a fastener may be loaded with, N, each direction as far as it is listed. */
export type Allowed = { readonly ok: true; readonly pull: number | undefined; readonly shear: number | undefined } | Refusal

/** Allowable values as they are, ultimate ones over their margin; an ultimate value without a margin is refused. Values that are not above 0 and margins below 1 throw. */
export function allowedBy({ pull, shear, is, margin }: Listing): Allowed {
  for (const [name, value] of Object.entries({ pull, shear })) if (value !== undefined) aboveZero({ [name]: value })
  if (is === 'allowable') return { ok: true, pull, shear }
  if (margin === undefined) return refused('margin')
  if (!(margin >= 1 && Number.isFinite(margin)))
    throw new RangeError(`Unexpected margin ${margin}, expected 1 or more; give what the ultimate load is divided by.`)
  const over = (value: number | undefined) => (value === undefined ? undefined : value / margin)
  return { ok: true, pull: over(pull), shear: over(shear) }
}

/**
 * Which part of what a listing allows a load uses: pull over allowed pull plus shear over allowed shear; 1 is all. This straight-line sum is a cautious choice
 * of ours for both at once, where the listing says nothing else. Refused: no margin, or a load in a direction that is not listed. A load below 0 throws.
 */
export function shareOf(load: Forces, listing: Listing): Found {
  notBelowZero({ pull: load.pull, shear: load.shear })
  const allowed = allowedBy(listing)
  if (!allowed.ok) return allowed
  const parts = [part(load.pull, allowed.pull), part(load.shear, allowed.shear)]
  const sum = parts.reduce<number | undefined>(
    (all, each) => (all === undefined || each === undefined ? undefined : all + each),
    0,
  )
  return sum === undefined ? refused('not-listed') : found(sum)
}

const part = (load: number, allowed: number | undefined): number | undefined =>
  load === 0 ? 0 : allowed === undefined ? undefined : load / allowed
