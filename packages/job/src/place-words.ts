import { sides, spanish, spanishItems } from './place-words-es.ts'
import { below, type Place, tokens, valueAt } from './places.ts'
import type { Job } from './types.generated.ts'

const apart = (name: string): string => name.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
const single = (list: string): string => apart(list).replace(/s$/, '')

// What only holds other things together says nothing in a place's name.
const silent = new Set(['with', 'found', 'came'])

/** How members of a job are named in a language: as part of a place, and one item of a list. */
interface Naming {
  readonly member: (name: string) => string
  readonly item: (list: string) => string
}
const namings: Readonly<Record<string, Naming>> = {
  en: { member: apart, item: single },
  es: { member: (name) => spanish[name] ?? apart(name), item: (list) => spanishItems[list] ?? single(list) },
}

/**
 * A place in words, from below `within` on: “Garden room, Window 1, panel left, finished length”. A list item goes by its name where it has one,
 * an only one by what it is. Members of plugins that a language has no word for go by their own name.
 */
export function placeInWords(job: Job, place: Place, within: Place = '', language = 'en'): string {
  const { member, item: named } = namings[language] ?? (namings.en as Naming)
  const all = tokens(place)
  const skipped = place.startsWith(`${within}/`) ? tokens(within).length : 0
  const upTo = (count: number): unknown => valueAt(job, below('', ...all.slice(0, count)))
  const words = all.map((token, n) => {
    if (!Array.isArray(upTo(n))) return silent.has(token) || Array.isArray(upTo(n + 1)) ? '' : member(token)
    const [list, item] = [upTo(n) as readonly unknown[], upTo(n + 1) as { readonly name?: string } | undefined]
    return item?.name ?? [named(all[n - 1] ?? ''), ...(list.length > 1 ? [spanishSide(token, language)] : [])].join(' ')
  })
  return words
    .slice(skipped)
    .filter((word) => word !== '')
    .join(', ')
}
/** Ids that say a side are said in the reader's words; any other id is a name. */
const spanishSide = (id: string, language: string): string => (language === 'es' ? (sides[id] ?? id) : id)
