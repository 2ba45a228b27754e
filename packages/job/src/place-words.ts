import { sides, spanish, spanishItems } from './place-words-es.ts'
import { below, type Place, tokens, valueAt } from './places.ts'
import type { Job } from './types.generated.ts'

const apart = (name: string): string => name.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
const single = (list: string): string => apart(list).replace(/s$/, '')

// What only holds other things together says nothing in a place's name.
const silent = new Set(['with', 'found', 'came', 'shown', 'punch-list'])
/** What names lie under in maps of what was found, and the list that each is one of: `found/brackets/left` is a bracket. */
const maps: Readonly<Record<string, string>> = {
  brackets: 'brackets',
  hems: 'hems',
  hemsRead: 'hems',
  stacks: 'stacks',
  pins: 'pins',
  signatures: 'signatures',
}
/** Members whose own names say too little. */
const english: Readonly<Record<string, string>> = {
  x: 'place along the wall',
  y: 'height',
  floorToHead: 'floor to frame head',
  floorToLevel: 'floor to level line',
}

/** How members of a job are named in a language: as part of a place, and one item of a list. */
interface Naming {
  readonly member: (name: string) => string
  readonly item: (list: string) => string
}
const namings: Readonly<Record<string, Naming>> = {
  en: { member: (name) => english[name] ?? apart(name), item: single },
  es: { member: (name) => spanish[name] ?? apart(name), item: (list) => spanishItems[list] ?? single(list) },
}

type Tokens = readonly string[]
const listAt = (all: Tokens, n: number): string | undefined => (all[n - 1] === 'found' ? maps[all[n] ?? ''] : undefined)

/** A token of what was found in words: empty where the next one says it; undefined where it is a member like any other. */
function foundInWords(all: Tokens, n: number, { item }: Naming, language: string, sayCode: SayCode): string | undefined {
  const token = all[n] ?? ''
  if (listAt(all, n)) return ''
  if (all[n - 1] === 'punch-list') return ''
  if (all[n - 2] === 'punch-list') return `${item('points')} ${/^p0*(\d+)/.exec(token)?.[1] ?? token}`
  const list = listAt(all, n - 1)
  if (list) return `${item(list)} ${spanishSide(token, language)}`
  if (listAt(all, n - 2) && /^\d+$/.test(token)) return `${item('hooks')} ${token}`
  return all[n - 1] === 'came' ? sayCode(token) : undefined
}
/** Says what is named by a code of a plugin: a part that came. */
type SayCode = (code: string) => string

/**
 * A place in words, from below `within` on: “Garden room, Window 1, panel left, finished length”. A list item goes by its name where it has one,
 * an only one by what it is. Members of plugins that a language has no word for go by their own name.
 */
export function placeInWords(
  job: Job,
  place: Place,
  within: Place = '',
  language = 'en',
  sayCode: SayCode = (code) => code,
): string {
  const naming = namings[language] ?? (namings.en as Naming)
  const { member, item: named } = naming
  const all = tokens(place)
  const skipped = place.startsWith(`${within}/`) ? tokens(within).length : 0
  const upTo = (count: number): unknown => valueAt(job, below('', ...all.slice(0, count)))
  const words = all.map((token, n) => {
    const found = foundInWords(all, n, naming, language, sayCode)
    if (found !== undefined) return found
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
