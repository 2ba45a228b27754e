import { below, type Readings, type Signature } from '@evenhem/job'
import { type Entry, sealed, signaturesAt } from '@evenhem/site-log'
import type { Entered } from './site.ts'

export type Role = Signature['role']
export type Acceptance = NonNullable<Signature['accepts']>
/** A signature before it is sealed: who signs what, and how it was drawn. */
export type Signing = Omit<Signature, 'seal'>
/** A signature as it stands, and when it was put. */
export interface Signed extends Signature {
  readonly when?: string
}

/** The signatures that stand, the earliest first. */
export const signaturesIn = (readings: Readings): readonly Signed[] =>
  Object.entries(readings)
    .filter(([place]) => place.startsWith(`${signaturesAt}/`))
    .map(([, { value, when }]) => ({ ...(value as Signature), ...(when ? { when } : {}) }))
    .sort((a, b) => Date.parse(a.when ?? '') - Date.parse(b.when ?? ''))

/** A signature over the order and everything that was entered until now, under a name that no other tablet gives. */
export function signed(signing: Signing, job: string, entries: readonly Entry[]): Entered {
  const id = `s${[...crypto.getRandomValues(new Uint8Array(6))].map((byte) => (byte % 36).toString(36)).join('')}`
  const value = sealed(signing, job, entries)
  return { place: below(signaturesAt, id), value, read: value }
}
