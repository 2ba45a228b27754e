import type { Place, PlacedWindow } from '@evenhem/job'

export type View = 'drawing' | 'marks' | 'hooks' | 'level' | 'hem' | 'loads' | 'photos' | 'ladder'
const views: readonly View[] = ['drawing', 'marks', 'hooks', 'level', 'hem', 'loads', 'photos', 'ladder']
/** What lies over the sheet: the list of findings or of stages, a number's working with the numbers that led to it, the last one shown, the pad for a place, with how many steps lie behind it, a photo, or a point to mend. */
export type Over =
  | { readonly is: 'nothing' }
  | { readonly is: 'findings' }
  | { readonly is: 'stages' }
  | { readonly is: 'photo'; readonly hash: string }
  | { readonly is: 'point'; readonly id: string }
  | { readonly is: 'working'; readonly trail: readonly string[] }
  | { readonly is: 'pad'; readonly at: Place; readonly behind: number }
/** Whether it takes the whole page, and answers to keys by itself. */
export const isWhole = ({ is }: Over): boolean => is === 'pad' || is === 'photo' || is === 'point'
/** Where on a window's sheet somebody is. */
export interface Way {
  readonly view: View
  readonly over: Over
}

export const start: Way = { view: 'drawing', over: { is: 'nothing' } }

/** How many steps back it is to the bare sheet. */
export const depth = ({ over }: Way): number => {
  if (over.is === 'pad') return over.behind + 1
  return over.is === 'nothing' ? 0 : over.is === 'working' ? over.trail.length : 1
}

/** The pad for a place opens over whatever is open. */
export const toPad = (way: Way, at: Place): Way => ({ ...way, over: { is: 'pad', at, behind: depth(way) } })

/** A number touched: from the sheet its working opens; from a working one goes deeper. The same number again changes nothing. */
export function deeper(way: Way, of: string): Way {
  const trail = way.over.is === 'working' ? way.over.trail : []
  return trail.at(-1) === of ? way : { ...way, over: { is: 'working', trail: [...trail, of] } }
}

/** What an address leads to. */
export type Address =
  | { readonly is: 'start' }
  | { readonly is: 'house' }
  | { readonly is: 'window'; readonly room: string; readonly window: string; readonly view: View }
  /** This tablet joins, with the code that a picture of squares led to, or one to be typed. */
  | { readonly is: 'pair'; readonly code: string }
  /** At the desk: which tablets there are. */
  | { readonly is: 'tablets' }
  /** The whole house is handed over. */
  | { readonly is: 'hand-over' }

/** The house's own address. */
export const houseAddress = '#/'
/** Where the desk lets tablets in. No room can be called so: its address has a slash. */
export const tabletsAddress = '#tablets'
export const handOverAddress = '#hand-over'
/** The address of a window's sheet, by the ids of room and window: `#/garden-room/w1/marks`. */
export const addressOf = ({ room, window }: PlacedWindow, view: View = 'drawing'): string =>
  ['#', encodeURIComponent(room.id), encodeURIComponent(window.id), ...(view === 'drawing' ? [] : [view])].join('/')

const decoded = (part: string): string => {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}

/** Reads what stands in the address bar behind the page's own name. */
export function readAddress(hash: string): Address {
  if (hash === tabletsAddress) return { is: 'tablets' }
  if (hash === handOverAddress) return { is: 'hand-over' }
  if (hash.startsWith('#pair=')) return { is: 'pair', code: decoded(hash.slice('#pair='.length)) }
  const [room, window, view] = hash.replace(/^#\/?/, '').split('/').map(decoded)
  if (room && window) return { is: 'window', room, window, view: views.find((each) => each === view) ?? 'drawing' }
  return { is: hash === '' || hash === '#' ? 'start' : 'house' }
}

// The browser's own history holds the way, so that a tablet's back key goes one step back here too; a link is an address alone.
interface Kept {
  readonly evenhem: Way
  /** How many steps lie behind it on this sheet. */
  readonly steps: number
}
const kept = (): Kept | undefined => {
  const state = history.state as Partial<Kept> | null
  return state?.evenhem ? { evenhem: state.evenhem, steps: state.steps ?? 0 } : undefined
}
const keep = (way: Way, steps: number): Kept => ({ evenhem: way, steps })

/** The way that the page's history holds, else what its address says. */
export function wayNow(): Way {
  const address = readAddress(location.hash)
  return kept()?.evenhem ?? (address.is === 'window' ? { ...start, view: address.view } : start)
}
export const goTo = (way: Way, address: string): void => history.pushState(keep(way, (kept()?.steps ?? 0) + 1), '', address)
/** Goes so many steps back. Resolves when the page is there; with false when there are not as many on this sheet, or the history is shorter, as in a tab that was copied. */
export function goBack(steps: number): Promise<boolean> {
  if ((kept()?.steps ?? 0) < steps) return Promise.resolve(false)
  return new Promise((resolve) => {
    addEventListener('popstate', () => resolve(true), { once: true })
    setTimeout(() => resolve(false), 400)
    history.go(-steps)
  })
}
/** Puts another way in the place of the one that is shown. */
export const stay = (way: Way, address?: string): void => history.replaceState(keep(way, kept()?.steps ?? 0), '', address)
