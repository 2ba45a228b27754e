import { type Job, type Place, tokens, valueAt } from '@evenhem/job'
import type { From, Reckoning, Term, Unit } from '@evenhem/length'
import type { Reading } from './served.ts'

/** Where a number comes from. A reading wins over the order that it is a reading of. */
export type Origin =
  | { readonly kind: 'sum'; readonly name: string }
  | { readonly kind: 'reading'; readonly place: Place; readonly reading: Reading }
  | { readonly kind: 'hardware'; readonly place: Place; readonly entry: string }
  | { readonly kind: 'order'; readonly place: Place }
  | { readonly kind: 'trade'; readonly name: string }

/** What a working is looked up in. */
export interface Ground {
  readonly ordered: Job
  readonly readings: Readonly<Record<Place, Reading>>
  readonly reckonings: ReadonlyMap<string, Reckoning>
}

/** A reckoning that only takes one number over stands for that number: nobody needs to open it. */
function settle(from: From, ground: Ground): From {
  const found = ground.reckonings.get(from)
  const only = found?.how === 'given' ? found.terms[0] : undefined
  return only ? settle(only.from, ground) : from
}

/** Where the number at `from` comes from. */
export function originOf(from: From, ground: Ground): Origin {
  const place = settle(from, ground)
  if (ground.reckonings.has(place)) return { kind: 'sum', name: place }
  if (place.startsWith('trade:')) return { kind: 'trade', name: place.slice('trade:'.length) }
  const reading = ground.readings[place]
  if (reading) return { kind: 'reading', place, reading }
  const [list, id = ''] = tokens(place)
  const entry = list === 'hardware' ? (valueAt(ground.ordered, `/hardware/${id}`) as { name?: string } | undefined) : undefined
  return entry ? { kind: 'hardware', place, entry: entry.name ?? id } : { kind: 'order', place }
}

/** One line of a ledger. `of` is what a touch on it opens: a reckoning's name or a place. */
export interface Line {
  readonly kind: 'term' | 'subtotal' | 'total'
  /** How it enters: nothing for the first, then `+`, `−`, `×`; `=` before what the lines above come to. */
  readonly sign: '' | '+' | '−' | '×' | '='
  readonly what: string
  readonly value: number
  readonly unit: Unit
  readonly of: From
  readonly origin: Origin
}

const isRunning = (reckoning: Reckoning) => reckoning.how === 'sum' && reckoning.unit === 'length'

const signOf = (reckoning: Reckoning, term: Term, n: number): Line['sign'] => {
  if (term.sign === -1) return '−'
  if (n === 0 || reckoning.how === 'least' || reckoning.how === 'most' || reckoning.how === 'formula') return ''
  return reckoning.how === 'times' ? '×' : '+'
}

/** A term counts what its own reckoning counts. A leaf of a sum has the sum's unit; in a product only lengths and counts stand, told apart by size. */
function unitOf(term: Term, of: Reckoning, ground: Ground): Unit {
  const own = ground.reckonings.get(term.from)?.unit
  if (own) return own
  if (of.how !== 'times' && of.how !== 'formula') return of.unit
  return Math.abs(term.value) < 10_000 ? 'count' : 'length'
}

const lineOf = (reckoning: Reckoning, term: Term, n: number, ground: Ground): Line => ({
  kind: 'term', sign: signOf(reckoning, term, n), what: term.what, value: term.value, unit: unitOf(term, reckoning, ground),
  of: settle(term.from, ground), origin: originOf(term.from, ground),
})

const closing = (kind: 'subtotal' | 'total', reckoning: Reckoning): Line => ({
  kind, sign: '=', what: reckoning.what, value: reckoning.value, unit: reckoning.unit, of: reckoning.name, origin: { kind: 'sum', name: reckoning.name },
})

/** The terms of a reckoning. A sum that goes on from another sum begins with that one's lines and its subtotal, as one would add up on paper. */
function terms(reckoning: Reckoning, ground: Ground): readonly Line[] {
  const [first, ...rest] = reckoning.terms
  const before = first?.sign === 1 && isRunning(reckoning) ? ground.reckonings.get(settle(first.from, ground)) : undefined
  if (!first || !before || !isRunning(before)) return reckoning.terms.map((term, n) => lineOf(reckoning, term, n, ground))
  return [...terms(before, ground), closing('subtotal', before), ...rest.map((term, n) => lineOf(reckoning, term, n + 1, ground))]
}

/** The whole working of a number, ready to be read from top to bottom. */
export const ledger = (reckoning: Reckoning, ground: Ground): readonly Line[] => [...terms(reckoning, ground), closing('total', reckoning)]

const words = (token: string) => token.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()

/** A place in words, by the names that the job gives: “Garden room, Window 1, over, left panel, finished length”. */
export function placeInWords(job: Job, place: Place): string {
  const steps = tokens(place)
  const named = steps.map((token, n) => {
    const item = valueAt(job, `/${steps.slice(0, n + 1).join('/')}`)
    const holder = n === 0 ? job : valueAt(job, `/${steps.slice(0, n).join('/')}`)
    const isItem = Array.isArray(holder)
    const name = (item as { name?: string } | null | undefined)?.name
    const after = Array.isArray(item) || token === 'with' ? '' : words(token)
    return isItem ? (name ?? `${words(steps[n - 1] ?? '').replace(/s$/, '')} ${words(token)}`) : after
  })
  return named.filter(Boolean).join(', ')
}
