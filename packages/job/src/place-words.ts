import { below, type Place, tokens, valueAt } from './places.ts'
import type { Job } from './types.generated.ts'

const apart = (name: string): string => name.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
const single = (list: string): string => apart(list).replace(/s$/, '')

/** A place in words, from below `within` on: “Garden room, Window 1, panel left, finished length”. A list item goes by its name where it has one, an only one by what it is. */
export function placeInWords(job: Job, place: Place, within: Place = ''): string {
  const all = tokens(place)
  const skipped = place.startsWith(`${within}/`) ? tokens(within).length : 0
  const upTo = (count: number): unknown => valueAt(job, below('', ...all.slice(0, count)))
  const words = all.map((token, n) => {
    if (!Array.isArray(upTo(n))) return token === 'with' || Array.isArray(upTo(n + 1)) ? '' : apart(token)
    const [list, item] = [upTo(n) as readonly unknown[], upTo(n + 1) as { readonly name?: string } | undefined]
    return item?.name ?? [single(all[n - 1] ?? ''), ...(list.length > 1 ? [token] : [])].join(' ')
  })
  return words
    .slice(skipped)
    .filter((word) => word !== '')
    .join(', ')
}
