import { type Job, type Place, tokens, valueAt } from '@evenhem/job'
import { type From, type How, type Reckoning, readQuantity, type Term, type Unit } from '@evenhem/length'
import { settle } from '@evenhem/planner'
import type { Reading } from './served.ts'

/** Where a number comes from. A reading wins over the order that it is a reading of. */
export type Origin =
  | { readonly kind: 'sum'; readonly name: string }
  | { readonly kind: 'reading'; readonly place: Place; readonly reading: Reading }
  | { readonly kind: 'hardware'; readonly place: Place; readonly entry: string }
  | { readonly kind: 'order'; readonly place: Place }
  | { readonly kind: 'trade'; readonly name: string }
  | { readonly kind: 'number' }

/** What a working is looked up in. */
export interface Ground {
  readonly ordered: Job
  readonly readings: Readonly<Record<Place, Reading>>
  readonly reckonings: ReadonlyMap<string, Reckoning>
}

/** Where the number at `from` comes from. */
export function originOf(from: From, ground: Ground): Origin {
  const place = settle(from, ground.reckonings)
  if (ground.reckonings.has(place)) return { kind: 'sum', name: place }
  if (place.startsWith('number:')) return { kind: 'number' }
  if (place.startsWith('trade:')) return { kind: 'trade', name: place.slice('trade:'.length) }
  const reading = ground.readings[place]
  if (reading) return { kind: 'reading', place, reading }
  const [list, id = ''] = tokens(place)
  const entry = list === 'hardware' ? (valueAt(ground.ordered, `/hardware/${id}`) as { name?: string } | undefined) : undefined
  return entry ? { kind: 'hardware', place, entry: entry.name ?? id } : { kind: 'order', place }
}

/** One line of a ledger. `of` is what a touch on it opens: a reckoning's name or a place. */
export interface Line {
  readonly kind: 'term' | 'total'
  /** How it enters: nothing for the first, then `+`, `−`, `×`, `÷`; `=` before what the lines above come to. */
  readonly sign: '' | '+' | '−' | '×' | '÷' | '='
  readonly what: string
  readonly value: number
  readonly unit: Unit
  readonly of: From
  readonly origin: Origin
  /** What all lines down to this one come to, where that has a name of its own. */
  readonly comesTo?: Reckoning
}

const isRunning = (reckoning: Reckoning) => reckoning.how === 'sum' && reckoning.unit === 'length'

const between: Readonly<Record<How, Line['sign']>> = {
  given: '',
  sum: '+',
  times: '×',
  divided: '÷',
  least: '',
  most: '',
  formula: '',
}
const signOf = (reckoning: Reckoning, term: Term, n: number): Line['sign'] => {
  if (term.sign === -1) return '−'
  return n === 0 ? '' : between[reckoning.how]
}

/** A term counts what its own reckoning counts, a plain number nothing, a weight on the order what it says; a number on the order that a formula takes is a length. Else it counts what the whole does, but the factors after the first. */
function unitOf(term: Term, n: number, of: Reckoning, ground: Ground): Unit {
  const own = ground.reckonings.get(term.from)?.unit
  if (own) return own
  if (term.from.startsWith('number:')) return 'count'
  const there = valueAt(ground.ordered, settle(term.from, ground.reckonings))
  if (typeof there === 'string' && readQuantity(there, 'mass').ok) return 'mass'
  if (typeof there === 'number' && of.how === 'formula' && of.unit !== 'count') return 'length'
  return of.unit === 'length' && (of.how === 'times' || of.how === 'divided') && n > 0 ? 'count' : of.unit
}

const lineOf = (reckoning: Reckoning, term: Term, n: number, ground: Ground): Line => ({
  kind: 'term',
  sign: signOf(reckoning, term, n),
  what: term.what,
  value: term.value,
  unit: unitOf(term, n, reckoning, ground),
  of: settle(term.from, ground.reckonings),
  origin: originOf(term.from, ground),
})

/** A reckoning's own terms, one line each. */
export const linesOf = (reckoning: Reckoning, ground: Ground): readonly Line[] =>
  reckoning.terms.map((term, n) => lineOf(reckoning, term, n, ground))

/** The terms of a reckoning. A sum that goes on from another sum begins with that one's lines, as one would add up on paper. */
function terms(reckoning: Reckoning, ground: Ground): readonly Line[] {
  const [first, ...rest] = reckoning.terms
  const before =
    first?.sign === 1 && isRunning(reckoning) ? ground.reckonings.get(settle(first.from, ground.reckonings)) : undefined
  if (!first || !before || !isRunning(before)) return linesOf(reckoning, ground)
  const lines = terms(before, ground)
  return [
    ...lines.slice(0, -1),
    ...lines.slice(-1).map((line) => ({ ...line, comesTo: before })),
    ...rest.map((term, n) => lineOf(reckoning, term, n + 1, ground)),
  ]
}

/** The whole working of a number, ready to be read from top to bottom. */
export const ledger = (reckoning: Reckoning, ground: Ground): readonly Line[] => [...terms(reckoning, ground), totalOf(reckoning)]

const totalOf = ({ what, value, unit, name }: Reckoning): Line => ({
  kind: 'total',
  sign: '=',
  what,
  value,
  unit,
  of: name,
  origin: { kind: 'sum', name },
})
