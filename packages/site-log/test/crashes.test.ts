import { expect, test } from 'vitest'
import { logWriter } from '../src/folder/index.ts'
import {
  batchesOf,
  crashAt,
  everyLeft,
  merge,
  mustEndWell,
  mustStand,
  type Strike,
  strikes,
  Tablet,
  textsOf,
  twoFolders,
  until,
} from './crashes.ts'
import { type Call, type Left, type Mishap, SimulatedDisk } from './simulated-disk.ts'

const isLong = process.env.EVENHEM_LONG === 'all'
const [one, two] = [batchesOf('tablet-1', 1, 2, 1), batchesOf('tablet-2', 1)]
const tablets = () => [new Tablet('tablet-1', one), new Tablet('tablet-2', two)]
const sendAll = (on: SimulatedDisk, all = tablets()) =>
  all.reduce((before, each) => before.then(() => each.send(on)), Promise.resolve())
const empty = async () => new SimulatedDisk('/job')
const lefts = everyLeft(isLong ? 40 : 3)

test('a line is on the disk when it is confirmed, and the power may go', async () => {
  const [on, [tablet]] = [await empty(), tablets() as [Tablet]]
  await tablet.send(on)
  on.reboot('nothing')
  expect(await textsOf(on, 'tablet-1')).toEqual(tablet.texts(3))
})

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

test('wherever adding is cut off, what was confirmed is there, and sending again ends well', async () => {
  const all = await strikes(sendAll, empty)
  for (const strike of all) for (const left of lefts) await crash(strike, left)
  expect(all.length).toBeGreaterThan(60)
})

test('a crash while what a crash left is mended changes nothing of that', async () => {
  const all = await strikes(sendAll, empty)
  const [firsts, seconds] = isLong ? [all, all] : [all.filter((_, i) => i % 7 === 3), all.filter((_, i) => i % 11 === 5)]
  for (const [i, strike] of firsts.entries())
    for (const [k, second] of seconds.entries())
      for (const left of isLong ? everyLeft(2) : [everyLeft(2)[(i + k) % 7] as Left])
        await crash(strike, left, { strike: second, left: everyLeft(2)[(i + 3 * k) % 7] as Left })
})

const both = [
  { device: 'tablet-1', batches: one },
  { device: 'tablet-2', batches: [...two, ...batchesOf('tablet-2', 1, 1).slice(1)] },
]
const folders = () => twoFolders(...both)
/** What stood before stands, nothing else came than what the other has, and merging again brings all of it. */
async function crashMerging(strike: Strike, left: Left): Promise<void> {
  const where = JSON.stringify([strike, left])
  const on = await folders()
  const theirs = on.calls.length
  on.mishap = crashAt(strike)
  await until(merge(on))
  on.reboot(left)
  on.mishap = () => undefined
  for (const { device, batches } of both) {
    const [there, all] = [await textsOf(on, device), batches.flat().map(({ text }) => text)]
    expect(all.slice(0, there.length), where).toEqual(there)
    expect(there.length, where).toBeGreaterThan(0)
  }
  await merge(on)
  on.reboot('nothing')
  for (const { device, batches } of both) {
    expect(await textsOf(on, device), where).toEqual(batches.flat().map(({ text }) => text))
    expect(await textsOf(on, device, '/other'), where).toEqual(batches.flat().map(({ text }) => text))
  }
  expect(theirs).toBeLessThan(strike.at)
}
test('wherever merging is cut off, what stood there stands, and merging again ends well', async () => {
  const all = await strikes(merge, folders)
  for (const strike of all) for (const left of lefts) await crashMerging(strike, left)
  expect(all.length).toBeGreaterThan(30)
})

test('a line that a process wrote and died over is not confirmed by another before it is on the disk', async () => {
  const on = await empty()
  const first = new Tablet('tablet-1', one)
  on.mishap = ({ does, path }) => (does === 'sync' && path.endsWith('.jsonl') ? { is: 'fails', code: 'EIO' } : undefined)
  const writer = logWriter('/job', on.disk, on.lock)
  await first.next(writer)
  await expect(first.next(writer)).rejects.toThrow('EIO')
  on.reboot('kill')
  await mustEndWell(on, [first], 'another process')
})

test('a process lives on while another one that writes the same file is killed', async () => {
  const from = async (): Promise<readonly [SimulatedDisk, Tablet, ReturnType<typeof logWriter>]> => {
    const on = await twoFolders({ device: 'tablet-1', batches: one })
    const tablet = new Tablet('tablet-1', one)
    const { disk, lock } = on.process()
    const writer = logWriter('/job', disk, lock)
    await tablet.next(writer)
    return [on, tablet, writer]
  }
  const all = await strikes(merge, async () => (await from())[0])
  for (const strike of all)
    for (const left of lefts.filter((each) => each !== 'kill')) {
      const [on, tablet, writer] = await from()
      on.mishap = crashAt(strike)
      await until(merge(on))
      on.mishap = () => undefined
      await tablet.next(writer)
      tablet.sent = tablet.batches.length
      on.reboot(left)
      await mustStand(on, tablet, JSON.stringify([strike, left]))
      await mustEndWell(on, [tablet], JSON.stringify([strike, left]))
    }
})

/** Sends all with one writer while calls fail; a failure is told by the system's code, and trying again is all there is to do. */
async function sendThrough(on: SimulatedDisk, tablet: Tablet, code: string, most: number): Promise<number> {
  const writer = logWriter('/job', on.disk, on.lock)
  let failures = 0
  while (tablet.heard < tablet.batches.length) {
    await tablet.next(writer).catch((error) => {
      if (error.code !== code || ++failures > most) throw error
    })
  }
  return failures
}
const fails = (code: string, half?: true): Mishap => ({ is: 'fails', code, ...(half && { half }) })

test('a call that fails once costs one answer', async () => {
  const calls = (await strikes(sendAll, empty)).filter(({ when }) => when === 'before').map(({ at }) => at)
  for (const at of calls)
    for (const how of [fails('EIO'), fails('EIO', true), fails('ENOSPC', true)])
      for (const forgets of [false, true])
        for (const left of ['kill', 'nothing', 3] as const) {
          const [on, all] = [await empty(), tablets()]
          on.forgets = forgets
          on.mishap = ({ number }) => (number === at ? how : undefined)
          for (const tablet of all) await sendThrough(on, tablet, how.is === 'fails' ? how.code : '', 1)
          on.reboot(left)
          for (const tablet of all) await mustStand(on, tablet, JSON.stringify([at, how, forgets, left]))
          await mustEndWell(on, all, JSON.stringify([at, how, forgets, left]))
        }
})

test.each(['write', 'sync', 'open', 'rename', 'read', 'makeFolder', 'size', 'close'] as const)(
  'while no %s succeeds nothing is confirmed, and when it does all is',
  async (does) => {
    for (const from of [0, 12, 20, 30]) {
      const [on, tablet] = [await empty(), new Tablet('tablet-1', one)]
      on.mishap = (call: Call) => (call.does === does && call.number > from ? fails('EIO') : undefined)
      const writer = logWriter('/job', on.disk, on.lock)
      let failures = 0
      for (let i = 0; i < 8 && tablet.heard < 3; i++) await tablet.next(writer).catch(() => failures++)
      if (from === 0 && does !== 'read') expect([failures, tablet.heard], does).toEqual([8, 0])
      on.mishap = () => undefined
      await mustStand(on, tablet, `${does} ${from}`)
      on.reboot('nothing')
      await mustStand(on, tablet, `${does} ${from}`)
      await mustEndWell(on, [tablet], `${does} ${from}`)
    }
  },
)

test('a disk that is full after any byte refuses, keeps what it confirmed, and takes the rest when there is room', async () => {
  const size = 2 * one.flat().reduce((sum, { text }) => sum + text.length + 1, 0)
  for (let room = 0; room <= size; room += isLong ? 1 : 23) {
    const [on, tablet] = [await empty(), new Tablet('tablet-1', one)]
    on.room = room
    await expect(
      tablet.send(on).then(
        () => 'all',
        ({ code }) => code,
      ),
    ).resolves.toMatch(room < size / 2 ? 'ENOSPC' : /all|ENOSPC/)
    on.reboot('nothing')
    await mustStand(on, tablet, `room for ${room}`)
    on.room = Number.POSITIVE_INFINITY
    await mustEndWell(on, [tablet], `room for ${room}`)
  }
})

test('a system that writes less than it was given is asked again', async () => {
  const [on, tablet] = [await empty(), new Tablet('tablet-1', one)]
  on.mishap = ({ does }) => (does === 'write' ? { is: 'short' } : undefined)
  await tablet.send(on)
  expect(on.calls.filter(({ does }) => does === 'write').length).toBeGreaterThan(12)
  await mustEndWell(on, [tablet], 'short writes')
})

test('merging onto a full disk changes nothing, and says so', async () => {
  const on = await folders()
  on.room = 1400
  await expect(merge(on)).rejects.toMatchObject({ code: 'ENOSPC' })
  on.room = Number.POSITIVE_INFINITY
  expect(await on.disk.list('/job/log')).toEqual(['tablet-1.jsonl', 'tablet-2.jsonl'])
  await merge(on)
  on.reboot('nothing')
  expect(await textsOf(on, 'tablet-1')).toEqual(one.flat().map(({ text }) => text))
})
