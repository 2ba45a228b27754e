import type { Place } from '@evenhem/job'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

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
/** Where the lines of this tablet are kept until they arrive, and after. */
export interface Keeper {
  /** Whether what is kept outlasts the page. */
  readonly lasts: boolean
  readonly device: () => Promise<string>
  /** From now on this tablet writes under a new name. */
  readonly rename: () => Promise<string>
  readonly lines: (job: string) => Promise<readonly KeptLine[]>
  /** Keeps lines that are made from those that are kept already; nobody else writes meanwhile. */
  readonly add: (
    job: string,
    make: (device: string, kept: readonly KeptLine[]) => readonly KeptLine[],
  ) => Promise<readonly KeptLine[]>
  readonly replace: (job: string, gone: readonly KeptLine[], instead: readonly KeptLine[]) => Promise<void>
}

interface Stores extends DBSchema {
  lines: { key: [string, string, number]; value: KeptLine; indexes: { job: string } }
  device: { key: string; value: string }
}

/** Letters and digits that are not taken for one another when they are read aloud. */
const letters = 'abcdefghjkmnpqrstuvwxyz23456789'
/** A name that no other tablet has. `crypto.randomUUID` is missing where a page is served without encryption. */
const newName = (): string =>
  `tablet-${[...crypto.getRandomValues(new Uint8Array(8))].map((byte) => letters[byte % letters.length]).join('')}`

/** The browser's own database; where it refuses one, memory, which does not outlast the page. */
export async function openKeeper(): Promise<Keeper> {
  try {
    return inDatabase(
      await openDB<Stores>('evenhem', 1, {
        upgrade(db) {
          db.createObjectStore('lines', { keyPath: ['job', 'by', 'n'] }).createIndex('job', 'job')
          db.createObjectStore('device')
        },
      }),
    )
  } catch {
    return inMemory()
  }
}

function inDatabase(db: IDBPDatabase<Stores>): Keeper {
  const byNumber = (a: KeptLine, b: KeptLine): number => (a.by < b.by ? -1 : a.by > b.by ? 1 : a.n - b.n)
  const named = async (make: boolean): Promise<string> => {
    const tx = db.transaction('device', 'readwrite')
    const name = (make ? undefined : await tx.store.get('me')) ?? newName()
    await tx.store.put(name, 'me')
    await tx.done
    return name
  }
  return {
    lasts: true,
    device: () => named(false),
    rename: () => named(true),
    lines: async (job) => (await db.getAllFromIndex('lines', 'job', job)).sort(byNumber),
    add: async (job, make) => {
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
    },
    replace: async (_job, gone, instead) => {
      const tx = db.transaction('lines', 'readwrite', { durability: 'strict' })
      for (const { job, by, n } of gone) await tx.store.delete([job, by, n])
      for (const line of instead) await tx.store.put(line)
      await tx.done
    },
  }
}

function inMemory(): Keeper {
  let [name, kept]: [string, readonly KeptLine[]] = [newName(), []]
  const isOf = (job: string) => (line: KeptLine) => line.job === job
  return {
    lasts: false,
    device: async () => name,
    rename: async () => {
      name = newName()
      return name
    },
    lines: async (job) => kept.filter(isOf(job)),
    add: async (job, make) => {
      const made = make(name, kept.filter(isOf(job)))
      kept = [...kept, ...made]
      return made
    },
    replace: async (_job, gone, instead) => {
      const isGone = (line: KeptLine) =>
        [...gone, ...instead].some(({ by, n, job }) => by === line.by && n === line.n && job === line.job)
      kept = [...kept.filter((line) => !isGone(line)), ...instead]
    },
  }
}
