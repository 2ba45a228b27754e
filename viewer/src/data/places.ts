import { below, type Job, type Place, tokens, valueAt } from '@evenhem/job'

const apart = (name: string): string => name.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
const single = (list: string): string => apart(list).replace(/s$/, '')

/** A place in words, from below `within` on: “Garden room, Window 1, panel left, finished length”. A list item goes by its name where it has one, an only one by what it is. */
export function placeInWords(job: Job, place: Place, within: Place = ''): string {
  const all = tokens(place)
  const skipped = place.startsWith(`${within}/`) ? tokens(within).length : 0
  const upTo = (count: number): unknown => valueAt(job, below('', ...all.slice(0, count)))
  const words = all.map((token, n) => {
    const [holder, item] = [upTo(n), upTo(n + 1)]
    if (!Array.isArray(holder)) return token === 'with' || Array.isArray(item) ? '' : apart(token)
    return (
      (item as { readonly name?: string } | undefined)?.name ??
      [single(all[n - 1] ?? ''), ...(holder.length > 1 ? [token] : [])].join(' ')
    )
  })
  return words
    .slice(skipped)
    .filter((word) => word !== '')
    .join(', ')
}
