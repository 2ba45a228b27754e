import { type Added, logWriter, mergeFolders, readSiteLog } from '../src/folder/index.ts'
import { fold, type Line, type LogFile, write } from '../src/index.ts'
import { type Call, Crash, type Left, type Mishap, SimulatedDisk } from './simulated-disk.ts'

/** What each device sends: lines in batches, each after the answer to the one before. */
export type Batches = readonly (readonly Line[])[]
const clock = '2026-11-25T09:12:00Z'
const nobody = fold([])

/** Batches of so many lines each, one chain. */
export function batchesOf(device: string, ...sizes: readonly number[]): Batches {
  const places = Array.from({ length: sizes.reduce((sum, size) => sum + size, 0) }, (_, i) => ({
    place: `/rooms/r/n${i}`,
    value: `${i} in`,
  }))
  const lines = write({ device, last: undefined, clock }, places as never, nobody)
  const from = (i: number) => sizes.slice(0, i).reduce((sum, size) => sum + size, 0)
  return sizes.map((size, i) => lines.slice(from(i), from(i) + size))
}

/** A tablet: it sends again what it heard no answer to. */
export class Tablet {
  readonly device: string
  readonly batches: Batches
  sent = 0
  heard = 0
  constructor(device: string, batches: Batches) {
    this.device = device
    this.batches = batches
  }
  async send(on: SimulatedDisk): Promise<void> {
    const writer = logWriter('/job', on.disk, on.lock)
    while (this.heard < this.batches.length) await this.next(writer)
  }
  async next(writer: { readonly add: (device: string, lines: readonly Line[]) => Promise<Added> }): Promise<void> {
    const batch = this.batches[this.heard] ?? []
    this.sent = Math.max(this.sent, this.heard + 1)
    const added = await writer.add(this.device, batch)
    if (added.is !== 'kept') throw new Error(`${this.device} was refused: ${JSON.stringify(added.wrong)}`)
    this.heard++
  }
  texts = (batches: number): readonly string[] => this.batches.slice(0, batches).flatMap((batch) => batch.map(({ text }) => text))
}

export const fileOf = async (on: SimulatedDisk, device: string, job = '/job'): Promise<LogFile | undefined> =>
  (await readSiteLog(job, on.disk)).files.find((file) => file.device === device)
export const textsOf = async (on: SimulatedDisk, device: string, job = '/job'): Promise<readonly string[]> =>
  ((await fileOf(on, device, job))?.lines ?? []).map(({ text }) => text)

/** Everything that was confirmed is there, nothing is there that was not sent, and it stands in its order. */
export async function mustStand(on: SimulatedDisk, tablet: Tablet, where: string): Promise<void> {
  const there = await textsOf(on, tablet.device)
  const sent = tablet.texts(tablet.sent)
  const lost = tablet.texts(tablet.heard).filter((text) => !there.includes(text))
  if (lost.length > 0) throw new Error(`${where}: confirmed and not there: ${lost}`)
  if (there.join() !== sent.filter((text) => there.includes(text)).join())
    throw new Error(`${where}: not what was sent: ${there}`)
}

/** Sends the rest with a new writer; then the power goes, and all of it is there. */
export async function mustEndWell(on: SimulatedDisk, tablets: readonly Tablet[], where: string): Promise<void> {
  on.mishap = () => undefined
  for (const tablet of tablets) await tablet.send(on)
  const left = (await on.disk.list('/job/log')).filter((name) => !name.endsWith('.jsonl'))
  if (left.length > 0) throw new Error(`${where}: ${left} are left over`)
  on.reboot('nothing')
  for (const tablet of tablets) {
    const there = await textsOf(on, tablet.device)
    if (there.join() !== tablet.texts(tablet.batches.length).join()) throw new Error(`${where}: in the end there is ${there}`)
  }
}

export const everyLeft = (seeds: number): readonly Left[] => [
  ...(['kill', 'nothing', 'everything', 'data', 'names'] as const),
  ...Array.from({ length: seeds }, (_, i) => i + 1),
]
const changes = /^(makeFolder|open|rename|remove|write|sync)$/
const whens = ['before', 'middle', 'after'] as const

/** The crashes at a call: in the middle only of what has one, and of what changes nothing only one. */
const whensOf = ({ does }: Call) =>
  whens.filter((when) => when === 'before' || (changes.test(does) && (when === 'after' || /write|sync/.test(does))))

/** Every crash that may come over a script. */
export interface Strike {
  readonly at: number
  readonly when: 'before' | 'middle' | 'after'
}
export async function strikes(
  script: (on: SimulatedDisk) => Promise<void>,
  begin: () => Promise<SimulatedDisk>,
): Promise<readonly Strike[]> {
  const on = await begin()
  const from = on.calls.length
  await script(on)
  return on.calls.slice(from).flatMap((call) => whensOf(call).map((when) => ({ at: call.number, when })))
}
export const crashAt =
  ({ at, when }: Strike) =>
  ({ number }: Call): Mishap | undefined =>
    number === at ? { is: 'crash', when } : undefined

/** Runs until the crash, if it comes. Answers what else went wrong. */
export async function until(run: Promise<void>): Promise<void> {
  await run.catch((error) => {
    if (!(error instanceof Crash)) throw error
  })
}

/** A folder that has one line of each device, and another one that has all of them: both on the disk. */
export async function twoFolders(
  ...devices: readonly { readonly device: string; readonly batches: Batches }[]
): Promise<SimulatedDisk> {
  const on = new SimulatedDisk('/job', '/other')
  for (const { device, batches } of devices) {
    for (const batch of batches) await logWriter('/other', on.disk, on.lock).add(device, batch)
    await logWriter('/job', on.disk, on.lock).add(device, batches[0] ?? [])
  }
  return on
}
export const merge = async (on: SimulatedDisk): Promise<void> => {
  await mergeFolders('/job', '/other', on.disk, on.lock)
}

const [one, two] = [batchesOf('tablet-1', 1, 2, 1), batchesOf('tablet-2', 1, 1, 1)]
export const tablets = (): readonly [Tablet, Tablet] => [new Tablet('tablet-1', one), new Tablet('tablet-2', two.slice(0, 1))]
export const sendAll = async (on: SimulatedDisk, all: readonly Tablet[] = tablets()): Promise<void> => {
  for (const each of all) await each.send(on)
}
export const empty = async (): Promise<SimulatedDisk> => new SimulatedDisk('/job')

/** One crash, what is left, and what follows. */
async function crash(strike: Strike, left: Left, then?: { readonly strike: Strike; readonly left: Left }): Promise<void> {
  const where = JSON.stringify([strike, left, then])
  const [on, all] = [await empty(), tablets()]
  on.mishap = crashAt(strike)
  await until(sendAll(on, all))
  on.reboot(left)
  on.mishap = () => undefined
  for (const tablet of all) await mustStand(on, tablet, where)
  if (then) {
    on.mishap = crashAt({ ...then.strike, at: then.strike.at + on.calls.length })
    await until(sendAll(on, all))
    on.reboot(then.left)
    on.mishap = () => undefined
    for (const tablet of all) await mustStand(on, tablet, where)
  }
  await mustEndWell(on, all, where)
}

/** Crashes at every call of adding, each with all that may be left. Answers how many. */
export async function crashesOfAdding(lefts: readonly Left[]): Promise<number> {
  const all = await strikes(sendAll, empty)
  for (const strike of all) for (const left of lefts) await crash(strike, left)
  return all.length * lefts.length
}
/** The same, and a second crash at every call of what mends it: of all these every so manieth. */
export async function crashesOfMending(lefts: readonly Left[], step: number): Promise<number> {
  const all = await strikes(sendAll, empty)
  const runs = all.flatMap((strike) => all.flatMap((second) => lefts.map((left) => ({ strike, left, second }))))
  const some = runs.filter((_, i) => i % step === 0)
  for (const [i, { strike, left, second }] of some.entries())
    await crash(strike, left, { strike: second, left: lefts[(3 * i) % lefts.length] as Left })
  return some.length
}

const both = [
  { device: 'tablet-1', batches: one },
  { device: 'tablet-2', batches: two },
]
export const folders = (): Promise<SimulatedDisk> => twoFolders(...both)
/** What stood before stands, nothing else came than what the other has, and merging again brings all of it. */
async function crashMerging(strike: Strike, left: Left): Promise<void> {
  const where = JSON.stringify([strike, left])
  const on = await folders()
  on.mishap = crashAt(strike)
  await until(merge(on))
  on.reboot(left)
  on.mishap = () => undefined
  for (const { device, batches } of both) {
    const [there, all] = [await textsOf(on, device), batches.flat().map(({ text }) => text)]
    if (there.length === 0 || all.slice(0, there.length).join() !== there.join()) throw new Error(`${where}: there is ${there}`)
  }
  await merge(on)
  on.reboot('nothing')
  for (const { device, batches } of both) {
    for (const job of ['/job', '/other'])
      if (
        (await textsOf(on, device, job)).join() !==
        batches
          .flat()
          .map(({ text }) => text)
          .join()
      )
        throw new Error(`${where}: ${job} ends with something else`)
  }
}
/** Crashes at every call of merging, each with all that may be left. */
export async function crashesOfMerging(lefts: readonly Left[]): Promise<number> {
  const all = await strikes(merge, folders)
  for (const strike of all) for (const left of lefts) await crashMerging(strike, left)
  return all.length * lefts.length
}

/** A process that added a line and lives; what the other folder holds besides is for another process to merge. */
async function living(batches: Batches) {
  const on = await twoFolders({ device: 'tablet-1', batches })
  const tablet = new Tablet('tablet-1', one)
  const { disk, lock } = on.process()
  const writer = logWriter('/job', disk, lock)
  await tablet.next(writer)
  return { on, tablet, writer }
}
/** Another process is killed at every call of merging into the same folder, the first one adds, and then the power goes. */
export async function crashesOfOthers(lefts: readonly Left[], batches: Batches = one): Promise<number> {
  const all = await strikes(merge, async () => (await living(batches)).on)
  const gone = lefts.filter((left) => left !== 'kill')
  for (const strike of all)
    for (const left of gone) {
      const where = JSON.stringify([strike, left])
      const { on, tablet, writer } = await living(batches)
      on.mishap = crashAt(strike)
      await until(merge(on))
      on.mishap = () => undefined
      await tablet.next(writer)
      tablet.sent = tablet.batches.length
      on.reboot(left)
      await mustStand(on, tablet, where)
      await mustEndWell(on, [tablet], where)
    }
  return all.length * gone.length
}
/** The same where the other folder has nothing new: what is put in the place of our file has its very bytes. */
export const crashesOfOthersAlike = (lefts: readonly Left[]): Promise<number> => crashesOfOthers(lefts, one.slice(0, 1))
