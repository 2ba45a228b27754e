import { createHash } from 'node:crypto'
import { stat } from 'node:fs/promises'
import { join } from 'node:path'
import { type Disk, disk, makeSure, noneThere, syncFolder, writeSynced } from '@evenhem/disk'
import type { PhotoFolder } from './folder.ts'
import { incomingIn, isHash, photosIn, smallIn } from './places.ts'
import { type Refused, refusedFor } from './refused.ts'

export { isHash } from './places.ts'

/** How far a photo has come. `have`: the bytes of it that are on the disk. */
export interface State {
  readonly have: number
  readonly done: boolean
  readonly refused?: Refused
}
/** A piece of a photo: where it begins, and how many bytes the whole photo has. */
export interface Sent {
  readonly from: number
  readonly size: number
  readonly bytes: Uint8Array
}
/** What became of a piece: `elsewhere`, it does not begin where the last one ended; `full`, too many photos are on their way. */
export type Arrived =
  | { readonly is: 'here'; readonly state: State }
  | { readonly is: 'elsewhere'; readonly have: number }
  | { readonly is: 'full' }

/** Photos that come in pieces. Whatever a hash is asked about, one thing is done after the other. */
export interface Incoming {
  readonly state: (hash: string) => Promise<State>
  /** Keeps a piece and answers when it is on the disk; with the last one the photo is taken in. Throws what the file system throws: asking for the state and going on is safe. */
  readonly add: (hash: string, sent: Sent) => Promise<Arrived>
  /** Removes what was left lying for a month. */
  readonly sweep: (now: number) => Promise<void>
}
export interface IncomingOptions {
  /** The bytes of all photos together that are not complete yet. */
  readonly mostWaiting?: number
  readonly on?: Disk
}

const monthMs = 30 * 86_400_000
const mostRemembered = 1_000
/** A file costs the disk so much, however little it holds. In bytes. */
const leastSize = 4_096
const isTemporary = (name: string): boolean => /\.(part|new)$/.test(name)

export function incoming(folder: string, photos: PhotoFolder, options: IncomingOptions = {}): Incoming {
  const { mostWaiting = 500_000_000, on = disk } = options
  const parts = incomingIn(folder)
  const partOf = (hash: string): string => join(parts, `${hash}.part`)
  const refusals = new Map<string, Refused>()
  const turns = new Map<string, Promise<unknown>>()
  /** Photos of which every byte was written here and is on the disk for sure; of others the power may have left something else. */
  const sure = new Set<string>()

  function inTurn<T>(hash: string, work: () => Promise<T>): Promise<T> {
    if (!isHash(hash)) throw new TypeError(`Unexpected name ${hash.slice(0, 80)}, expected 64 hexadecimal digits`)
    const now = (turns.get(hash) ?? Promise.resolve()).then(work)
    const settled = now.catch(() => undefined).then(() => void (turns.get(hash) === settled && turns.delete(hash)))
    turns.set(hash, settled)
    return now
  }

  async function state(hash: string): Promise<State> {
    const kept = await photos.kept(hash)
    if (kept) return { have: kept.bytes, done: true }
    const refused = refusals.get(hash)
    return { have: (await on.size(partOf(hash))) ?? 0, done: false, ...(refused && { refused }) }
  }

  async function add(hash: string, sent: Sent): Promise<Arrived> {
    const before = await state(hash)
    if (before.done) return { is: 'here', state: before }
    if (before.have !== sent.from) return { is: 'elsewhere', have: before.have }
    if (await wouldFill(hash, sent)) return { is: 'full' }
    refusals.delete(hash)
    await append(hash, sent)
    const have = sent.from + sent.bytes.length
    return { is: 'here', state: have < sent.size ? { have, done: false } : await complete(hash) }
  }

  async function wouldFill(hash: string, { size }: Sent): Promise<boolean> {
    const others = (await on.list(parts)).filter((name) => name !== `${hash}.part`)
    const sizes = await Promise.all(others.map((name) => on.size(join(parts, name))))
    return size + sizes.reduce<number>((sum, each) => sum + Math.max(leastSize, each ?? 0), 0) > mostWaiting
  }

  async function append(hash: string, { from, bytes }: Sent): Promise<void> {
    if (bytes.length === 0) return
    if (from === 0) {
      await makeSure(on, folder, photosIn(folder))
      await makeSure(on, photosIn(folder), parts)
    }
    const isSure = from === 0 || sure.delete(hash)
    await writeSynced(on, partOf(hash), 'a', bytes)
    if (from === 0) await syncFolder(on, parts)
    if (isSure) sure.add(hash)
  }

  /** What came is a photo of that name, or it is away. What a power cut left is not held against it: then it only begins anew. */
  async function complete(hash: string): Promise<State> {
    const bytes = await on.read(partOf(hash)).catch((error) => noneThere(error) ?? new Uint8Array())
    const isIt = createHash('sha256').update(bytes).digest('hex') === hash
    const taken = isIt ? await photos.takeIn(bytes) : ({ is: 'refused', refused: refusedFor('photo/other-content') } as const)
    await on.remove(partOf(hash)).catch(noneThere)
    const isHeld = sure.delete(hash) || isIt
    if (!isHeld) return { have: 0, done: false }
    if (taken.is === 'taken') return { have: taken.bytes, done: true }
    remember(hash, taken.refused)
    return { have: 0, done: false, refused: taken.refused }
  }
  function remember(hash: string, refused: Refused): void {
    refusals.set(hash, refused)
    for (const oldest of refusals.keys()) if (refusals.size > mostRemembered) refusals.delete(oldest)
  }

  async function sweep(now: number): Promise<void> {
    for (const at of [parts, photosIn(folder), smallIn(folder)])
      for (const name of (await on.list(at)).filter(isTemporary)) {
        const looks = await stat(join(at, name)).catch(noneThere)
        if (looks && now - looks.mtimeMs > monthMs) await on.remove(join(at, name)).catch(noneThere)
      }
  }

  return { state: (hash) => inTurn(hash, () => state(hash)), add: (hash, sent) => inTurn(hash, () => add(hash, sent)), sweep }
}
