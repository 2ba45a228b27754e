import { lists } from './lists.generated.ts'
import { type Place, tokens } from './places.ts'
import type { Job, Reading } from './types.generated.ts'

/** Readings by the place that they are a reading of. Their values are typed: a length is a `Length`. */
export type Readings = Readonly<Record<Place, Reading>>
/** The job as found, and the places of readings that have nowhere to go: a panel that is no longer in the order. */
export interface Laid {
  readonly job: Job
  readonly lost: readonly Place[]
}

const isList = new Set(lists)
const nowhere = Symbol('nowhere')
type Value = Readonly<Record<string, unknown>>

// What the order left out may still be read, so a missing object is made on the way. A missing list is not, nor a missing item of one:
// nobody can say what else it would hold. What belongs to an entry of hardware only its plugin knows.
const canBeMade = (pattern: string): boolean => !isList.has(pattern) && !pattern.startsWith('/hardware')

const isObject = (value: unknown): value is Value => value !== null && typeof value === 'object'

/** The same value with another one put below it; the value itself when that changes nothing. */
function put(value: unknown, path: readonly string[], pattern: string, reading: unknown): unknown {
  const [token, ...rest] = path
  if (token === undefined) return reading
  if (Array.isArray(value)) return putInList(value, token, rest, pattern, reading)
  if (value === undefined ? !canBeMade(pattern) : !isObject(value)) return nowhere
  const holder = (value ?? {}) as Value
  const before = Object.hasOwn(holder, token) ? holder[token] : undefined
  const after = put(before, rest, `${pattern}/${token}`, reading)
  if (after === nowhere) return nowhere
  return after === before ? value : { ...holder, [token]: after }
}

function putInList(list: readonly unknown[], id: string, rest: readonly string[], pattern: string, reading: unknown): unknown {
  const index = list.findIndex((item) => isObject(item) && item.id === id)
  if (index < 0) return nowhere
  const after = put(list[index], rest, `${pattern}/*`, reading)
  return after === nowhere || after === list[index] ? (after === nowhere ? nowhere : list) : list.with(index, after)
}

/**
 * Lays readings over an order: the job as found. Only the path to each reading is copied; everything else is the same object as before,
 * and without readings the job is the same object. A list item is found by its id. A reading without a value is nothing.
 */
export function lay(ordered: Job, found: Readings): Laid {
  let job: unknown = ordered
  const lost: Place[] = []
  for (const [place, reading] of Object.entries(found)) {
    if (reading?.value === undefined) continue
    const after = place.startsWith('/') ? put(job, tokens(place), '', reading.value) : nowhere
    if (after === nowhere) lost.push(place)
    else job = after
  }
  return { job: job as Job, lost }
}
