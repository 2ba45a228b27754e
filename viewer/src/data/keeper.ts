import type { Place } from '@evenhem/job'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { ServedCopy } from './served.ts'
import type { SentEntry } from './site.ts'

/** A line that this tablet wrote: it stays here also after it was sent, so that a server that lost it gets it again. */
export interface KeptLine {
  readonly job: string
  readonly by: string
  readonly n: number
  readonly text: string
  /** The value as it was read here; absent: withdrawn. */
  readonly read?: unknown
  readonly place: Place
  readonly sent: boolean
}
/** An entry of any device, as the server sent it. */
export interface KeptEntry {
  readonly job: string
  /** Its event's id. */
  readonly id: string
  readonly entry: SentEntry
}
/** A photo that was taken on this tablet. Its bytes are kept apart, until the server has them. */
export interface KeptPhoto {
  readonly job: string
  /** SHA-256 of its bytes, in hexadecimal. */
  readonly hash: string
  readonly size: number
  readonly type: string
  readonly sent: boolean
  /** A small JPEG of it, where this browser can read the picture. */
  readonly small?: ArrayBuffer
  /** Why the server did not take it, in every language. */
  readonly refused?: Readonly<Record<string, string>>
}
/** Where this tablet keeps a job: the order as it was served, its own lines until they arrive and after, and what others wrote. */
export interface Keeper {
  /** Whether what is kept outlasts the page. */
  readonly lasts: boolean
  readonly device: () => Promise<string>
  /** From now on this tablet writes under a new name. */
  readonly rename: () => Promise<string>
  /** The job as it was last served at an address. */
  readonly served: (base: string) => Promise<ServedCopy | undefined>
  readonly keepServed: (base: string, served: ServedCopy) => Promise<void>
  readonly entries: (job: string) => Promise<readonly KeptEntry[]>
  /** Keeps entries in the place of those with the same ids, and forgets others. */
  readonly keepEntries: (keep: readonly KeptEntry[], forget?: readonly KeptEntry[]) => Promise<void>
  readonly lines: (job: string) => Promise<readonly KeptLine[]>
  /** Keeps lines that are made from those that are kept already; nobody else writes meanwhile. Throws when there is no room. */
  readonly add: (
    job: string,
    make: (device: string, kept: readonly KeptLine[]) => readonly KeptLine[],
  ) => Promise<readonly KeptLine[]>
  readonly replace: (job: string, gone: readonly KeptLine[], instead: readonly KeptLine[]) => Promise<void>
  readonly photos: (job: string) => Promise<readonly KeptPhoto[]>
  /** Keeps a photo with its bytes; without bytes those that are kept are forgotten. Throws when there is no room. */
  readonly keepPhoto: (photo: KeptPhoto, bytes?: ArrayBuffer) => Promise<void>
  readonly bytesOf: (hash: string) => Promise<ArrayBuffer | undefined>
}

interface Stores extends DBSchema {
  lines: { key: [string, string, number]; value: KeptLine; indexes: { job: string } }
  device: { key: string; value: string }
  served: { key: string; value: ServedCopy }
  entries: { key: [string, string]; value: KeptEntry; indexes: { job: string } }
  photos: { key: [string, string]; value: KeptPhoto; indexes: { job: string } }
  photoBytes: { key: string; value: ArrayBuffer }
}
type Database = IDBPDatabase<Stores>

/** Letters and digits that are not taken for one another when they are read aloud. */
const letters = 'abcdefghjkmnpqrstuvwxyz23456789'
/** A name that no other tablet has. `crypto.randomUUID` is missing where a page is served without encryption. */
const newName = (): string =>
  `tablet-${[...crypto.getRandomValues(new Uint8Array(8))].map((byte) => letters[byte % letters.length]).join('')}`

/** The browser's own database; where it refuses one, memory, which does not outlast the page. `waits`: another tab holds an older one open. */
export async function openKeeper(waits: () => void = () => {}): Promise<Keeper> {
  try {
    return inDatabase(await connected(() => open(waits)))
  } catch {
    return inMemory()
  }
}

/** Version 1 had only lines and the device, version 2 no photos: what waits from then is taken over as it is. */
const open = (waits: () => void): Promise<Database> =>
  openDB<Stores>('evenhem', 3, {
    upgrade(db, before) {
      if (before < 1) {
        db.createObjectStore('lines', { keyPath: ['job', 'by', 'n'] }).createIndex('job', 'job')
        db.createObjectStore('device')
      }
      if (before < 2) {
        db.createObjectStore('served')
        db.createObjectStore('entries', { keyPath: ['job', 'id'] }).createIndex('job', 'job')
      }
      db.createObjectStore('photos', { keyPath: ['job', 'hash'] }).createIndex('job', 'job')
      db.createObjectStore('photoBytes')
    },
    blocked: waits,
    // A newer page in another tab goes before this one, which opens the database again when it next needs it.
    blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
  })

/** As they were written: the last one of a device is the one that the next follows. */
const byNumber = (a: KeptLine, b: KeptLine): number => (a.by < b.by ? -1 : a.by > b.by ? 1 : a.n - b.n)

type Use = <T>(work: (db: Database) => Promise<T>) => Promise<T>
/** Works on a connection, and on a new one where the browser has closed it: another tab wanted it so, or the tablet slept. */
async function connected(open: () => Promise<Database>): Promise<Use> {
  let db = await open()
  return async (work) => {
    try {
      return await work(db)
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw error
      db = await open()
      return work(db)
    }
  }
}

function inDatabase(use: Use): Keeper {
  const named = (make: boolean): Promise<string> =>
    use(async (db) => {
      const tx = db.transaction('device', 'readwrite')
      const name = (make ? undefined : await tx.store.get('me')) ?? newName()
      await tx.store.put(name, 'me')
      await tx.done
      return name
    })
  return {
    lasts: true,
    device: () => named(false),
    rename: () => named(true),
    served: (base) => use((db) => db.get('served', base)),
    keepServed: (base, served) => use(async (db) => void (await db.put('served', served, base))),
    entries: (job) => use((db) => db.getAllFromIndex('entries', 'job', job)),
    keepEntries: (keep, forget = []) =>
      use(async (db) => {
        const tx = db.transaction('entries', 'readwrite')
        for (const { job, id } of forget) await tx.store.delete([job, id])
        for (const each of keep) await tx.store.put(each)
        await tx.done
      }),
    lines: (job) => use(async (db) => (await db.getAllFromIndex('lines', 'job', job)).sort(byNumber)),
    add: (job, make) =>
      use(async (db) => {
        const tx = db.transaction(['lines', 'device'], 'readwrite', { durability: 'strict' })
        const devices = tx.objectStore('device')
        const device = (await devices.get('me')) ?? newName()
        await devices.put(device, 'me')
        const store = tx.objectStore('lines')
        const kept = (await store.index('job').getAll(job)).sort(byNumber)
        const made = make(device, kept)
        for (const line of made) await store.add(line)
        await tx.done
        return made
      }),
    photos: (job) => use((db) => db.getAllFromIndex('photos', 'job', job)),
    keepPhoto: (photo, bytes) =>
      use(async (db) => {
        const tx = db.transaction(['photos', 'photoBytes'], 'readwrite', { durability: 'strict' })
        await tx.objectStore('photos').put(photo)
        if (bytes) await tx.objectStore('photoBytes').put(bytes, photo.hash)
        else await tx.objectStore('photoBytes').delete(photo.hash)
        await tx.done
      }),
    bytesOf: (hash) => use((db) => db.get('photoBytes', hash)),
    replace: (_job, gone, instead) =>
      use(async (db) => {
        const tx = db.transaction('lines', 'readwrite', { durability: 'strict' })
        for (const { job, by, n } of gone) await tx.store.delete([job, by, n])
        for (const line of instead) await tx.store.put(line)
        await tx.done
      }),
  }
}

/** Keeps as long as the page is open. */
export function inMemory(device = newName()): Keeper {
  let [name, kept]: [string, readonly KeptLine[]] = [device, []]
  const served = new Map<string, ServedCopy>()
  const entries = new Map<string, KeptEntry>()
  const photos = new Map<string, KeptPhoto>()
  const bytesOf = new Map<string, ArrayBuffer>()
  const linesOf = (job: string) => kept.filter((line) => line.job === job).sort(byNumber)
  return {
    lasts: false,
    device: async () => name,
    rename: async () => {
      name = newName()
      return name
    },
    served: async (base) => served.get(base),
    keepServed: async (base, now) => void served.set(base, now),
    entries: async (job) => [...entries.values()].filter((each) => each.job === job),
    keepEntries: async (keep, forget = []) => {
      for (const { job, id } of forget) entries.delete(`${job} ${id}`)
      for (const each of keep) entries.set(`${each.job} ${each.id}`, each)
    },
    lines: async (job) => linesOf(job),
    add: async (job, make) => {
      const made = make(name, linesOf(job))
      kept = [...kept, ...made]
      return made
    },
    photos: async (job) => [...photos.values()].filter((photo) => photo.job === job),
    keepPhoto: async (photo, bytes) => {
      photos.set(`${photo.job} ${photo.hash}`, photo)
      if (bytes) bytesOf.set(photo.hash, bytes)
      else bytesOf.delete(photo.hash)
    },
    bytesOf: async (hash) => bytesOf.get(hash),
    replace: async (_job, gone, instead) => {
      const isGone = (line: KeptLine) =>
        [...gone, ...instead].some(({ by, n, job }) => by === line.by && n === line.n && job === line.job)
      kept = [...kept.filter((line) => !isGone(line)), ...instead]
    },
  }
}
