import type { Job, Place } from '@evenhem/job'
import type { Language } from '../words.ts'

/** A value read at the window, by the place that it is a reading of. */
export interface Reading {
  readonly value: unknown
  readonly by?: string
  readonly when?: string
}
/** What the server says about reading the job file. */
export interface Diagnostic {
  readonly severity: 'error' | 'warning' | 'info'
  readonly code: string
  /** The sentence, and what else helps; made where the job was read. Without it the code has to do. */
  readonly says?: string
  readonly help?: string
  readonly line?: number
  readonly column?: number
}
/** A job as the server read it. Without `ordered` it could not be read. */
export interface Served {
  readonly ordered?: Job
  readonly readings: Readonly<Record<Place, Reading>>
  readonly diagnostics: Readonly<Record<Language, readonly Diagnostic[]>>
}

/** Fetches the job, once: from then on the tablet needs no network. Throws when nothing came. */
export async function fetchJob(): Promise<Served> {
  const answer = await fetch('/job', { headers: { accept: 'application/json' } })
  const body = await answer.json().catch(() => undefined)
  if (!answer.ok || !body) throw new Error(body?.message ?? `/job answered ${answer.status}`)
  return body
}
