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
