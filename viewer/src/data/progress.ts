import type { Place } from '@evenhem/job'

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
