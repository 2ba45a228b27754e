import type { Disk, OpenFile } from '@evenhem/disk'
import type { Held, Lock } from '../src/folder/index.ts'

// A disk in memory that may fail or lose its power at any call. What is written lies in a cache until its file is synced, names lie there until
// their folder is; when the power goes, anything of that may be on the disk or not. A sync that failed leaves what it was for in the cache, as
// written, where no later sync finds it: systems do so (known of Linux since 2018; from memory). Names survive a failed sync of their folder in
// the cache, since file systems keep those in a journal that stops the whole system when it fails.

/** What happens at a call instead of the ordinary. */
export type Mishap =
  | { readonly is: 'crash'; readonly when: 'before' | 'middle' | 'after' }
  | {
      readonly is: 'fails'
      readonly code: string /** How much of a write or a sync is done all the same. */
      readonly half?: true
    }
  | { readonly is: 'short' }
export interface Call {
  readonly number: number
  readonly does: 'list' | 'size' | 'real' | 'read' | 'makeFolder' | 'open' | 'rename' | 'remove' | 'write' | 'sync' | 'close'
  readonly path: string
}
/** What is left after a crash: `kill`, all, since only the process died; else the power went, and nothing, everything or some of the cache is left. */
export type Left = 'kill' | 'nothing' | 'everything' | 'data' | 'names' | number

export class Crash extends Error {}

interface Parts {
  readonly half?: () => void
  readonly undone?: () => void
}

interface File {
  bytes: Uint8Array
  /** What is on the disk. */
  solid: Uint8Array
  /** Written since the last sync: from, to. */
  dirty: (readonly [number, number])[]
}
type Node = File | Folder
interface Change {
  readonly drops?: string
  readonly puts?: string
  readonly node: Node
}
interface Process {
  readonly disk: Disk
  readonly lock: Lock
  isDead: boolean
}
class Folder {
  names = new Map<string, Node>()
  solid = new Map<string, Node>()
  changes: Change[] = []
}

const applied = (names: Map<string, Node>, { drops, puts, node }: Change): void => {
  if (drops !== undefined) names.delete(drops)
  if (puts !== undefined) names.set(puts, node)
}
function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length + b.length)
  both.set(a)
  both.set(b, a.length)
  return both
}
const fails = (code: string, path: string) => Object.assign(new Error(`${code}: ${path}`), { code })

/** Numbers from a seed, from 0 to 1. */
export function chances(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Puts some of what is dirty onto the disk; what is passed over is zeros where something behind it is there. */
function harden(file: File, keeps: (at: number) => boolean): void {
  const kept = file.dirty.flatMap(([from, to]) => Array.from({ length: to - from }, (_, i) => from + i).filter(keeps))
  const more = Math.max(0, ...kept.map((at) => at + 1 - file.solid.length))
  if (more > 0) file.solid = joined(file.solid, new Uint8Array(more))
  for (const at of kept) file.solid[at] = file.bytes[at] as number
}
const sector = 64

function keepsOf(left: Left, file: File): (at: number) => boolean {
  if (typeof left !== 'number') return () => left === 'everything' || left === 'data'
  const chance = chances(left + file.bytes.length)
  if (chance() < 0.5) {
    const end = file.solid.length + Math.floor(chance() * (file.bytes.length - file.solid.length + 1))
    return (at) => at < end
  }
  const sectors = Array.from({ length: Math.ceil(file.bytes.length / sector) }, () => chance() < 0.5)
  return (at) => sectors[Math.floor(at / sector)] === true
}

export class SimulatedDisk {
  #root = new Folder()
  #calls = 0
  #running: Process
  #locks = new Map<string, { readonly of: Process; readonly freed: Promise<void> }>()
  /** Everything that was called, for tests that choose where to strike. */
  readonly calls: Call[] = []
  mishap: (call: Call) => Mishap | undefined = () => undefined
  /** Bytes that fit on it. */
  room = Number.POSITIVE_INFINITY
  /** Whether a failed sync leaves what was written in the cache, or the cache forgets it. */
  forgets = false

  constructor(...folders: readonly string[]) {
    for (const path of folders) {
      this.#change(path, { puts: this.#name(path), node: new Folder() })
      this.#sync(this.#folder(this.#up(path)))
    }
    this.#running = this.process()
  }

  /** The disk and the lock as the running process has them. */
  get disk(): Disk {
    return this.#running.disk
  }
  get lock(): Lock {
    return this.#running.lock
  }

  /** The running process is gone and another one runs; with anything but `kill` the power was gone too. */
  reboot(left: Left): void {
    this.#running.isDead = true
    this.#running = this.process()
    if (left !== 'kill') this.#lose(this.#root, left)
  }

  #lose(folder: Folder, left: Left): void {
    const chance = chances(typeof left === 'number' ? left : 0)
    const keeps = () => (typeof left === 'number' ? chance() < 0.5 : left === 'everything' || left === 'names')
    const isPrefix = typeof left === 'number' && chance() < 0.5
    let isGoing = true
    for (const change of folder.changes) {
      const kept = keeps()
      if (isPrefix) isGoing &&= kept
      if (isPrefix ? isGoing : kept) applied(folder.solid, change)
    }
    folder.names = new Map(folder.solid)
    folder.changes = []
    for (const node of folder.names.values()) {
      if (node instanceof Folder) this.#lose(node, left)
      else this.#loseFile(node, left)
    }
  }
  #loseFile(file: File, left: Left): void {
    harden(file, keepsOf(left, file))
    file.bytes = file.solid.slice()
    file.dirty = []
  }

  #up = (path: string): string => path.slice(0, path.lastIndexOf('/'))
  #name = (path: string): string => path.slice(path.lastIndexOf('/') + 1)
  #node(path: string): Node | undefined {
    let at: Node | undefined = this.#root
    for (const name of path.split('/').slice(1)) at = at instanceof Folder ? at.names.get(name) : undefined
    return at
  }
  #folder(path: string): Folder {
    const node = path === '' ? this.#root : this.#node(path)
    if (!(node instanceof Folder)) throw fails(node ? 'ENOTDIR' : 'ENOENT', path)
    return node
  }
  #file(path: string): File {
    const node = this.#node(path)
    if (!node) throw fails('ENOENT', path)
    if (node instanceof Folder) throw fails('EISDIR', path)
    return node
  }
  #change(path: string, change: Change): void {
    const folder = this.#folder(this.#up(path))
    applied(folder.names, change)
    folder.changes.push(change)
  }
  #used(folder = this.#root): number {
    return [...folder.names.values()].reduce(
      (sum, node) => sum + (node instanceof Folder ? this.#used(node) : node.bytes.length),
      0,
    )
  }

  /** One call: what may go wrong goes wrong here. `half` does a part of it, `undone` is what a failure leaves, half done or not. */
  async #call<T>(by: Process, does: Call['does'], path: string, act: () => T, { half, undone }: Parts = {}): Promise<T> {
    if (by.isDead) throw new Crash('dead')
    const call = { number: ++this.#calls, does, path }
    this.calls.push(call)
    const mishap = this.mishap(call)
    if (mishap?.is === 'fails') {
      if (mishap.half) half?.()
      undone?.()
      throw fails(mishap.code, path)
    }
    if (mishap?.is !== 'crash') return act()
    if (mishap.when === 'middle') half?.()
    if (mishap.when === 'after') act()
    by.isDead = true
    throw new Crash(`${mishap.when} ${does} ${path}`)
  }

  #write(file: File, bytes: Uint8Array): number {
    const fits = Math.min(bytes.length, this.room - this.#used())
    if (fits <= 0 && bytes.length > 0) throw fails('ENOSPC', 'write')
    const from = file.bytes.length
    file.bytes = joined(file.bytes, bytes.subarray(0, fits))
    file.dirty.push([from, from + fits])
    return fits
  }
  #sync(node: Node): void {
    if (node instanceof Folder) {
      for (const change of node.changes) applied(node.solid, change)
      node.changes = []
    } else {
      harden(node, () => true)
      node.dirty = []
    }
  }
  #syncHalf(node: Node): void {
    if (node instanceof Folder) for (const change of node.changes.slice(0, node.changes.length >> 1)) applied(node.solid, change)
    else harden(node, (at) => at % (2 * sector) < sector)
  }
  /** After a failed sync nobody writes what was dirty any more. */
  #forget(node: Node): void {
    if (node instanceof Folder) return
    node.dirty = []
    if (this.forgets) node.bytes = node.solid.slice()
  }

  #opened(by: Process, path: string, node: Node): OpenFile {
    return {
      write: (bytes) => {
        const isShort = this.mishap({ number: this.#calls + 1, does: 'write', path })?.is === 'short' && bytes.length > 1
        const some = isShort ? bytes.subarray(0, bytes.length >> 1) : bytes
        const half = () => this.#write(node as File, bytes.subarray(0, bytes.length >> 1))
        return this.#call(by, 'write', path, () => this.#write(node as File, some), { half })
      },
      sync: () =>
        this.#call(by, 'sync', path, () => this.#sync(node), {
          half: () => this.#syncHalf(node),
          undone: () => this.#forget(node),
        }),
      close: () => this.#call(by, 'close', path, () => undefined),
    }
  }

  #open(by: Process, path: string, flags: 'a' | 'wx' | 'r'): OpenFile {
    const node = this.#node(path)
    if (node) {
      if (flags === 'wx') throw fails('EEXIST', path)
      if (flags === 'a') this.#file(path)
      return this.#opened(by, path, node)
    }
    if (flags === 'r') throw fails('ENOENT', path)
    const file: File = { bytes: new Uint8Array(), solid: new Uint8Array(), dirty: [] }
    this.#change(path, { puts: this.#name(path), node: file })
    return this.#opened(by, path, file)
  }

  /** One more process on this disk. When it crashes the others live on. */
  process(): Process {
    const by: Process = { isDead: false, disk: this.#disk(() => by), lock: (path) => this.#lock(by, path) }
    return by
  }

  #disk(of: () => Process): Disk {
    return {
      list: (path) => this.#call(of(), 'list', path, () => (this.#node(path) ? [...this.#folder(path).names.keys()] : [])),
      size: (path) =>
        this.#call(of(), 'size', path, () => {
          const node = this.#node(path)
          return node instanceof Folder ? 0 : node?.bytes.length
        }),
      // There are no links on it.
      real: (path) => this.#call(of(), 'real', path, () => path),
      read: (path) => this.#call(of(), 'read', path, () => this.#file(path).bytes.slice()),
      makeFolder: (path) =>
        this.#call(of(), 'makeFolder', path, () => {
          if (!this.#node(path)) this.#change(path, { puts: this.#name(path), node: new Folder() })
        }),
      open: (path, flags) => this.#call(of(), 'open', path, () => this.#open(of(), path, flags)),
      rename: (from, to) =>
        this.#call(of(), 'rename', from, () =>
          this.#change(to, { drops: this.#name(from), puts: this.#name(to), node: this.#file(from) }),
        ),
      remove: (path) =>
        this.#call(of(), 'remove', path, () => this.#change(path, { drops: this.#name(path), node: this.#file(path) })),
    }
  }

  /** A lock among the processes of this disk; one that a dead process left behind counts no more. */
  async #lock(of: Process, path: string): Promise<Held> {
    for (let other = this.#locks.get(path); other && !other.of.isDead; other = this.#locks.get(path)) await other.freed
    let isFree: () => void = () => undefined
    const freed = new Promise<void>((resolve) => {
      isFree = resolve
    })
    this.#locks.set(path, { of, freed })
    return {
      sure: () => undefined,
      free: async () => {
        if (this.#locks.get(path)?.of === of) this.#locks.delete(path)
        isFree()
      },
    }
  }
}
