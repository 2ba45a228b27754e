import type { Place } from '@evenhem/job'
import { tokens } from '@evenhem/job'
import type { Item } from './item.ts'
import type { Asked } from './plan.ts'
import { byText } from './plan.ts'

/** The places that rules on these items wait for, each with how many wait, directly or for somebody who waits. */
export function asksOf(items: readonly Item[]): readonly Asked[] {
  const holds = new Map<Place, number>()
  for (const { outcomes } of items)
    for (const outcome of outcomes) for (const place of outcome?.held?.asks ?? []) holds.set(place, (holds.get(place) ?? 0) + 1)
  return [...holds].map(([at, count]) => ({ at, holds: count }))
}
/** The same place asked for in several windows is one ask. */
export function mergedAsks(lists: readonly (readonly Asked[])[]): readonly Asked[] {
  const holds = new Map<Place, number>()
  for (const { at, holds: count } of lists.flat()) holds.set(at, (holds.get(at) ?? 0) + count)
  return [...holds].map(([at, count]) => ({ at, holds: count }))
}

/** Compares places by where they stand in a job: lists and members in their own order, members not there yet after them by name. */
export function walkingOrder(job: unknown): (a: Place, b: Place) => number {
  const ranks = new Map<Place, readonly (number | string)[]>()
  const numbers = new WeakMap<object, ReadonlyMap<string, number>>()
  const rank = (place: Place): readonly (number | string)[] => {
    const known = ranks.get(place) ?? rankOf(job, place, numbers)
    ranks.set(place, known)
    return known
  }
  return (a, b) => compare(rank(a), rank(b)) || byText(a, b)
}

function rankOf(job: unknown, place: Place, numbers: WeakMap<object, ReadonlyMap<string, number>>): readonly (number | string)[] {
  let value = job
  return tokens(place).map((token) => {
    if (typeof value !== 'object' || value === null) return token
    const list = value as Readonly<Record<string, unknown>> | readonly { readonly id: string }[]
    const order =
      numbers.get(list) ??
      new Map((Array.isArray(list) ? list.map((item) => item?.id) : Object.keys(list)).map((name, number) => [name, number]))
    numbers.set(list, order)
    const number = order.get(token)
    value =
      number === undefined ? undefined : Array.isArray(list) ? list[number] : (list as Readonly<Record<string, unknown>>)[token]
    return number ?? token
  })
}
function compare(a: readonly (number | string)[], b: readonly (number | string)[]): number {
  const at = a.findIndex((step, index) => step !== b[index])
  const [x, y] = [a[at], b[at]]
  if (at < 0 || y === undefined) return a.length - b.length
  if (typeof x === 'number' && typeof y === 'number') return x - y
  return typeof x === 'number' ? -1 : typeof y === 'number' ? 1 : byText(String(x), y)
}
