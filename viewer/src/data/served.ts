import type { Job, Place } from '@evenhem/job'
import type { Last } from '@evenhem/site-log'
import type { Language } from '../words.ts'
import type { SentEntry } from './site.ts'

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
  /** SHA-256 of the job file's bytes, in hexadecimal: what a signature is put under. */
  readonly hash?: string
}

/** The same, with the tag of its content. */
export interface ServedCopy {
  readonly served: Served
  readonly tag: string
}

/** The server answered, and it said no: `unpaired`, `many-jobs`, … */
export class Refused extends Error {
  readonly code: string
  constructor(code: string, message: string) {
    super(message)
    this.code = code
  }
}

/** What became of lines that were sent: kept, with the entries they were read as, or refused, with the last line that the server has of this device. */
export type SentAnswer =
  | { readonly is: 'kept'; readonly entries: readonly SentEntry[] }
  | { readonly is: 'behind'; readonly code: string; readonly last?: Last; readonly message: string }

/** The server of one job, as a tablet asks it. All of it throws when no answer came, and `Refused` when the answer was no. */
export interface JobServer {
  /** Where its routes begin: `/`, or `/jobs/heron-point/` where many jobs are served. */
  readonly base: string
  readonly job: () => Promise<ServedCopy>
  readonly log: () => Promise<readonly SentEntry[]>
  readonly send: (lines: readonly string[]) => Promise<SentAnswer>
}

// A network that is dying lets requests hang; what is sent is sent again, so giving up loses nothing.
const patienceMs = 15_000
const patienceForJobMs = 60_000

type Body = Readonly<Record<string, unknown>> & { readonly code?: string; readonly message?: string }
/** What a path of this server answers, as JSON, and whether it is a yes. */
export async function ask(
  path: string,
  init: RequestInit = {},
  waitMs = patienceMs,
): Promise<{ readonly ok: boolean; readonly status: number; readonly tag: string; readonly body: Body }> {
  const type = typeof init.body === 'string' ? 'application/json' : 'application/octet-stream'
  const headers = { accept: 'application/json', ...(init.body ? { 'content-type': type } : {}) }
  const answer = await fetch(path, { ...init, headers, signal: AbortSignal.timeout(waitMs) })
  const body: unknown = await answer.json().catch(() => undefined)
  if (typeof body !== 'object' || body === null) throw new Error(`${path} answered ${answer.status}`)
  return { ok: answer.ok, status: answer.status, tag: answer.headers.get('etag') ?? '', body: body as Body }
}
/** The same, where only a yes will do. */
export async function asked<T>(path: string, init?: RequestInit, waitMs?: number): Promise<T> {
  const { ok, status, body } = await ask(path, init, waitMs)
  if (!ok) throw refusedBy(path, status, body)
  return body as T
}
const refusedBy = (path: string, status: number, { code, message }: Body): Refused =>
  new Refused(code ?? 'refused', message ?? `${path} answered ${status}`)

export const post = (content: object): RequestInit => ({ method: 'POST', body: JSON.stringify(content) })

/** The server whose page stands at an address. */
export const jobServer = (base: string): JobServer => ({
  base,
  job: async () => {
    const { ok, status, tag, body } = await ask(`${base}job`, {}, patienceForJobMs)
    if (!ok) throw refusedBy('job', status, body)
    return { served: body as unknown as Served, tag }
  },
  log: async () => (await asked<{ readonly entries: readonly SentEntry[] }>(`${base}log`)).entries,
  send: async (lines) => {
    const { ok, status, body } = await ask(`${base}log`, post({ lines }))
    if (ok) return { is: 'kept', entries: (body.entries ?? []) as readonly SentEntry[] }
    if (status !== 409 || body.code === undefined) throw refusedBy('log', status, body)
    const last = (body.last ?? undefined) as Last | undefined
    return { is: 'behind', code: body.code, message: body.message ?? '', ...(last ? { last } : {}) }
  },
})

/** How far a photo has come to the server. */
export interface PhotoState {
  /** Bytes that it has. */
  readonly have: number
  /** It has all of it, and took it in. */
  readonly done: boolean
  readonly refused?: { readonly says: Readonly<Record<string, string>> }
}
/** What the server does about photos, each named by the SHA-256 of its bytes. */
export interface PhotoServer {
  readonly state: (hash: string) => Promise<PhotoState>
  /** Sends bytes that begin `from` there; where the server has other than that many, it says how many. */
  readonly send: (hash: string, bytes: ArrayBuffer, from: number, size: number) => Promise<PhotoState>
  /** Where a copy of it lies, so many pixels long. */
  readonly address: (hash: string, long: 320 | 1600) => string
}
export const photoServer = (base: string): PhotoServer => ({
  state: async (hash) => photoState(await ask(`${base}photos/${hash}`)),
  send: async (hash, bytes, from, size) =>
    photoState(await ask(`${base}photos/${hash}?from=${from}&size=${size}`, { method: 'PUT', body: bytes }, patienceForJobMs)),
  address: (hash, long) => `${base}photos/${hash}/${long}`,
})
function photoState({ ok, status, body }: Awaited<ReturnType<typeof ask>>): PhotoState {
  if (!ok && typeof body.have !== 'number') throw refusedBy('photos', status, body)
  const { have, done, refused } = body as unknown as PhotoState
  return { have: Number(have), done: done === true, ...(refused ? { refused } : {}) }
}

/** Where the routes of this page's job begin: its own folder. */
export const baseNow = (): string => location.pathname.slice(0, location.pathname.lastIndexOf('/') + 1)
