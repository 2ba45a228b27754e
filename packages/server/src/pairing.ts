import { createHash, timingSafeEqual } from 'node:crypto'
import { randomText } from './chance.ts'

/** A code that lets one device in, as people read it: `k7mp-4wzx`. */
export interface Code {
  readonly code: string
  readonly until: Date
}
/** What became of a code that was tried. `none`: there is none any more; `void`: it was tried wrongly too often. */
export type Tried = 'right' | 'none' | 'void' | { readonly left: number }

export interface Pairing {
  /** A new code; the one before counts no more. */
  readonly newCode: () => Code
  /** A code that is right counts no more. */
  readonly use: (written: string) => Tried
}

const validMs = 600_000
const mostTries = 5
const length = 8

/** People write codes with and without hyphens and spaces, in small letters and large ones. */
const digest = (written: string): Buffer =>
  createHash('sha256')
    .update(written.toLowerCase().replaceAll(/[\s\p{Dash_Punctuation}]/gu, ''))
    .digest()

export function pairing(now: () => number): Pairing {
  let current: { readonly digest: Buffer; readonly until: number; readonly left: number } | undefined
  return {
    newCode: () => {
      const text = randomText(length)
      const until = now() + validMs
      current = { digest: digest(text), until, left: mostTries }
      return { code: `${text.slice(0, length / 2)}-${text.slice(length / 2)}`, until: new Date(until) }
    },
    use: (written) => {
      if (!current || now() >= current.until) return 'none'
      if (current.left === 0) return 'void'
      if (timingSafeEqual(current.digest, digest(written))) {
        current = undefined
        return 'right'
      }
      current = { ...current, left: current.left - 1 }
      return current.left === 0 ? 'void' : { left: current.left }
    },
  }
}
