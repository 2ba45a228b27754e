import { expect, test } from 'vitest'
import { logWriter } from '../src/folder/index.ts'
import * as crashes from './crashes.ts'
import {
  empty,
  everyLeft,
  folders,
  merge,
  mustEndWell,
  mustStand,
  sendAll,
  strikes,
  Tablet,
  tablets,
  textsOf,
} from './crashes.ts'
import type { Call, Mishap, SimulatedDisk } from './simulated-disk.ts'

const lefts = everyLeft(1)
const [{ batches: one }] = tablets()

test('a line is on the disk when it is confirmed, and the power may go', async () => {
  const [on, [tablet]] = [await empty(), tablets()]
  await tablet.send(on)
  on.reboot('nothing')
  expect(await textsOf(on, 'tablet-1')).toEqual(tablet.texts(3))
})

test('wherever adding is cut off, what was confirmed is there, and sending again ends well', async () => {
  expect(await crashes.crashesOfAdding(lefts)).toBeGreaterThan(400)
})
test('a crash while what a crash left is mended changes nothing of that', async () => {
  expect(await crashes.crashesOfMending(everyLeft(2), 331)).toBeGreaterThan(100)
})
test('wherever merging is cut off, what stood there stands, and merging again ends well', async () => {
  expect(await crashes.crashesOfMerging(lefts)).toBeGreaterThan(250)
})
test('a process lives on while another one that writes the same file is killed', async () => {
  expect(await crashes.crashesOfOthers(lefts)).toBeGreaterThan(150)
  expect(await crashes.crashesOfOthersAlike(lefts)).toBeGreaterThan(150)
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
  for (let room = 0; room <= size; room += 23) {
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
