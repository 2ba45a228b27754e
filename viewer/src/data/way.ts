export type View = 'drawing' | 'marks' | 'hooks'
/** What lies over the sheet: the list of findings, or a number's working with the numbers that led to it, the last one shown. */
export type Over =
  | { readonly is: 'nothing' }
  | { readonly is: 'findings' }
  | { readonly is: 'working'; readonly trail: readonly string[] }
/** Where on a window's sheet somebody is. */
export interface Way {
  readonly view: View
  readonly over: Over
}

export const start: Way = { view: 'drawing', over: { is: 'nothing' } }

/** How many steps back it is to the bare sheet. */
export const depth = ({ over }: Way): number => (over.is === 'nothing' ? 0 : over.is === 'findings' ? 1 : over.trail.length)

/** A number touched: from the sheet its working opens; from a working one goes deeper. The same number again changes nothing. */
export function deeper(way: Way, of: string): Way {
  const trail = way.over.is === 'working' ? way.over.trail : []
  return trail.at(-1) === of ? way : { ...way, over: { is: 'working', trail: [...trail, of] } }
}

// The browser's own history holds the way, so that a tablet's back key goes one step back here too.
interface Kept {
  readonly evenhem: Way
}

/** The way that the page's history holds. */
export const wayNow = (): Way => (history.state as Kept | null)?.evenhem ?? start
export const goTo = (way: Way): void => history.pushState({ evenhem: way } satisfies Kept, '')
/** Goes so many steps back. Resolves when the page is there; with false when the history is not that long, as in a tab that was copied. */
export function goBack(steps: number): Promise<boolean> {
  return new Promise((resolve) => {
    addEventListener('popstate', () => resolve(true), { once: true })
    setTimeout(() => resolve(false), 400)
    history.go(-steps)
  })
}
export const stay = (way: Way): void => history.replaceState({ evenhem: way } satisfies Kept, '')
