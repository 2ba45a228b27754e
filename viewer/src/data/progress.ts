import type { Place } from '@evenhem/job'

// Not a record of the job: that is the site log's. This only keeps the place in the list of steps on this one tablet.
const key = (job: string, window: Place) => `evenhem/shown/${job}${window}`

/** Ids of the steps of a window that somebody went through on this tablet. */
export function readShown(job: string, window: Place): readonly string[] {
  try {
    const ids: unknown = JSON.parse(localStorage.getItem(key(job, window)) ?? '[]')
    return Array.isArray(ids) ? ids.filter((id) => typeof id === 'string') : []
  } catch {
    return []
  }
}

/** Keeps them; without storage they last as long as the page. */
export function writeShown(job: string, window: Place, ids: readonly string[]): void {
  try {
    localStorage.setItem(key(job, window), JSON.stringify(ids))
  } catch {}
}

const lastKey = (job: string) => `evenhem/last/${job}`
/** The window of a job that was open last on this tablet. */
export function readLast(job: string): Place | undefined {
  try {
    return localStorage.getItem(lastKey(job)) ?? undefined
  } catch {
    return undefined
  }
}
export function writeLast(job: string, window: Place): void {
  try {
    localStorage.setItem(lastKey(job), window)
  } catch {}
}
