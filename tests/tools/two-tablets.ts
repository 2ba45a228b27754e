import { cp, mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readJob } from '@evenhem/job/read'
import { buildServer, readSite } from '@evenhem/server'
import { type Entry, eventId, fold, inOrder, type Site } from '@evenhem/site-log'
import { inMemory, type Keeper } from '../../viewer/src/data/keeper.ts'
import { type JobServer, Refused, type SentAnswer } from '../../viewer/src/data/served.ts'
import { type SentEntry, SiteStore } from '../../viewer/src/data/site.ts'
import { extensions } from './examples.ts'
import { random } from './jobs.ts'

// The day of the house at Heron Point on two tablets, entered into the stores of the viewer, with a network between them and the server that loses requests, loses
// answers, sends twice or is gone, and a server and tablets that are switched off at any time.

const example = fileURLToPath(new URL('../../schema/examples/heron-point-day/', import.meta.url))
const headers = { origin: 'http://localhost', 'content-type': 'application/json' }

/** What went wrong on the way, counted. */
export interface Mishaps {
  cut: number
  lostRequests: number
  lostAnswers: number
  sentTwice: number
  serverRestarts: number
  tabletRestarts: number
}

/** The server of a folder, which can be stopped and started again. */
class Desk {
  private readonly folder: string
  private server: ReturnType<typeof buildServer> | undefined
  constructor(folder: string) {
    this.folder = folder
  }
  async ask(
    method: 'GET' | 'POST',
    payload?: string,
  ): Promise<{ readonly status: number; readonly body: Record<string, unknown> }> {
    this.server ??= buildServer({ job: this.folder })
    const answer = await this.server.inject({ method, url: '/log', headers, ...(payload === undefined ? {} : { payload }) })
    return { status: answer.statusCode, body: answer.json() }
  }
  async stop(): Promise<void> {
    await this.server?.close()
    this.server = undefined
  }
}

/** A tablet: its store, what it keeps, and the network that it has or has not. */
class Tablet {
  isCut = false
  private store: SiteStore
  private readonly keeper: Keeper
  private readonly way: JobServer
  constructor(device: string, desk: Desk, next: () => number, mishaps: Mishaps) {
    this.keeper = inMemory(device)
    const through = async <T>(work: () => Promise<T>): Promise<T> => {
      const luck = next()
      if (this.isCut || luck < 0.1) {
        mishaps.lostRequests++
        throw new Error('the network is gone')
      }
      const answer = await work()
      if (luck < 0.2) {
        mishaps.lostAnswers++
        throw new Error('the answer was lost')
      }
      if (luck > 0.9) {
        mishaps.sentTwice++
        return work()
      }
      return answer
    }
    this.way = {
      base: '/',
      job: () => Promise.reject(new Error('not asked here')),
      log: () => through(async () => (await desk.ask('GET')).body.entries as readonly SentEntry[]),
      send: (lines) => through(() => sent(desk, lines)),
    }
    this.store = new SiteStore('day', this.keeper, this.way)
  }
  knows(id: string): boolean {
    return this.store.entries.some(({ event }) => eventId(event) === id)
  }
  async put({ event: { place, value, who }, read }: Entry): Promise<void> {
    await this.store.put([{ place, ...(value === undefined ? {} : { value, read }) }], who)
  }
  /** As after an empty battery: only what it keeps is left. */
  async restart(): Promise<void> {
    this.store.stop()
    this.store = new SiteStore('day', this.keeper, this.way)
    await this.store.start()
  }
  refresh(): Promise<void> {
    return this.store.refresh()
  }
  /** How it stands, for whoever looks into a failure. */
  told(): string {
    const { entries, contact } = this.store
    return `${entries.length} entries, ${contact.waiting} waiting, ${contact.trouble ?? 'in contact'}`
  }
  get waiting(): number {
    return this.store.contact.waiting
  }
  get entries(): number {
    return this.store.entries.length
  }
  get site(): Site {
    return this.store.site
  }
  stop(): void {
    this.store.stop()
  }
}

async function sent(desk: Desk, lines: readonly string[]): Promise<SentAnswer> {
  const { status, body } = await desk.ask('POST', JSON.stringify({ lines }))
  if (status === 200) return { is: 'kept', entries: body.entries as readonly SentEntry[] }
  if (status !== 409) throw new Refused(String(body.code), String(body.message))
  const last = body.last as Extract<SentAnswer, { is: 'behind' }>['last']
  return { is: 'behind', code: String(body.code), message: String(body.message), ...(last ? { last } : {}) }
}

/** For each entry over which the next one at its place was written unseen, that next one: the tablets were apart from one to the other. */
function unseenBy(entries: readonly Entry[]): ReadonlyMap<number, number> {
  const unseen = new Map<number, number>()
  for (const [i, { event }] of entries.entries()) {
    const j = entries.slice(0, i).findLastIndex((each) => each.event.place === event.place)
    const before = entries[j]?.event
    if (before && before.by !== event.by && !event.over?.includes(eventId(before))) unseen.set(j, i)
  }
  return unseen
}

/** What stands at the end: as on one tablet, in the folder, and on each of the tablets; and what happened on the way. */
export interface Apart {
  readonly asOnOne: Site
  readonly folder: Site
  readonly tablets: readonly Site[]
  readonly entries: number
  readonly mishaps: Mishaps
}
const jobIn = (bytes: Uint8Array) => {
  const { job } = readJob(bytes, extensions)
  if (!job) throw new Error('Unexpected errors in the order of the day, expected none')
  return job
}

/** The day, or so many entries of it, on two tablets that are apart at random. Throws when they do not come together. */
export async function replayApart(seed: number, most = Number.POSITIVE_INFINITY): Promise<Apart> {
  const next = random(seed)
  const mishaps: Mishaps = { cut: 0, lostRequests: 0, lostAnswers: 0, sentTwice: 0, serverRestarts: 0, tabletRestarts: 0 }
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-day-'))
  const desk = new Desk(folder)
  const tablets = new Map(['tablet-1', 'tablet-2'].map((device) => [device, new Tablet(device, desk, next, mishaps)]))
  const all = [...tablets.values()]
  try {
    await cp(`${example}job.json`, `${folder}/job.json`)
    const job = jobIn(await readFile(`${folder}/job.json`))
    const whole = await readSite(`${example}job.json`, job, extensions)
    const entries = [...whole.entries].sort((a, b) => inOrder(a.event, b.event)).slice(0, most)
    const site = fold(entries)
    await enter(entries)
    await until(() => all.every((each) => each.waiting === 0 && each.entries === entries.length), all, entries.length)
    const found = await readSite(`${folder}/job.json`, job, extensions)
    if (found.wrong.length > 0) throw new Error(`Unexpected wrong lines, expected none: ${JSON.stringify(found.wrong)}`)
    return { asOnOne: site, folder: found.site, tablets: all.map((each) => each.site), entries: found.entries.length, mishaps }
  } finally {
    for (const tablet of all) tablet.stop()
    await desk.stop()
    await rm(folder, { recursive: true, maxRetries: 5 })
  }

  async function enter(entries: readonly Entry[]): Promise<void> {
    const unseen = unseenBy(entries)
    let apartUntil = -1
    for (const [i, entry] of entries.entries()) {
      const { by, over = [] } = entry.event
      const tablet = tablets.get(by) as Tablet
      await chance(tablet, i > apartUntil)
      // What was written over the other's entry had been seen.
      const seen = over.filter((id) => !id.startsWith(`${by}:`))
      if (!seen.every((id) => tablet.knows(id))) await until(() => seen.every((id) => tablet.knows(id)), [...all, ...all], i)
      const next = unseen.get(i)
      if (next !== undefined) for (const each of all) each.isCut = true
      apartUntil = Math.max(apartUntil, next ?? -1)
      await tablet.put(entry)
    }
  }
  async function chance(tablet: Tablet, mayMeet: boolean): Promise<void> {
    if (mayMeet && next() < 0.05) {
      tablet.isCut = !tablet.isCut
      mishaps.cut++
    }
    if (next() < 0.01) {
      await desk.stop()
      mishaps.serverRestarts++
    }
    if (next() < 0.01) {
      await tablet.restart()
      mishaps.tabletRestarts++
    }
  }
}

/** Gives everybody the network, bad as it is, until something is so. */
async function until(isSo: () => boolean, tablets: readonly Tablet[], at: number): Promise<void> {
  for (let tries = 0; !isSo(); tries++) {
    if (tries > 200)
      throw new Error(
        `Unexpected tablets that stay apart at entry ${at}, expected them to come together: ${tablets.map((each) => each.told()).join('; ')}`,
      )
    for (const tablet of tablets) {
      tablet.isCut = false
      await tablet.refresh()
    }
  }
}
