import { expect, test } from 'vitest'
import { largestFile, logWriter, mergeFolders } from '../src/folder/index.ts'
import { Clash, type Line } from '../src/index.ts'
import * as crashes from './crashes.ts'
import {
  empty,
  everyLeft,
  fileOf,
  folders,
  merge,
  mustEndWell,
  mustStand,
  sendAll,
  strikes,
  Tablet,
  tablets,
  textsOf,
  twoFolders,
} from './crashes.ts'
import { type Call, type Mishap, SimulatedDisk } from './simulated-disk.ts'

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
        for (const left of ['kill', 'nothing'] as const) {
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

/** A folder whose file holds these rows, on the disk. */
async function holding(...rows: readonly string[]): Promise<SimulatedDisk> {
  const on = new SimulatedDisk('/job', '/job/log')
  const file = await on.disk.open('/job/log/tablet-1.jsonl', 'a')
  await file.write(new TextEncoder().encode(rows.map((row) => `${row}\n`).join('')))
  on.reboot('everything')
  return on
}
const [first, second, third, fourth] = one.flat() as readonly Line[] as readonly [Line, Line, Line, Line]
const adding = (on: SimulatedDisk, ...lines: readonly Line[]) => logWriter('/job', on.disk, on.lock).add('tablet-1', lines)

test('a line that was torn to pieces before one that is whole is put where it belongs when it comes again', async () => {
  const on = await holding(first.text, '\0\0\0\0', third.text)
  expect(await adding(on, second, third, fourth)).toMatchObject({ is: 'kept', added: 2, last: { n: 4 } })
  expect(await textsOf(on, 'tablet-1')).toEqual([first, second, third, fourth].map(({ text }) => text))
  expect((await fileOf(on, 'tablet-1'))?.wrong.map(({ code }) => code)).toEqual(['log/no-json'])
})

test.each<[string, readonly string[], readonly Line[], string]>([
  ['a line twice', [first.text], [second, second], 'log/twice'],
  ['a line behind one that is lacking', [first.text], [third], 'log/gap'],
  ['another line under its number', [first.text], [{ ...second, event: { ...second.event, n: 1 } }], 'log/clash'],
  ['a line of another device', [], tablets()[1].batches.flat(), 'log/other-device'],
  ['a text that is no event', [], [{ ...first, text: '{}' }], 'log/member-by'],
  ['a first line for a log that went another way', ['', second.text.replace(/(?<=before":")..../, '0000')], [first], 'log/chain'],
])('%s is refused, and nothing is added', async (_, rows, lines, code) => {
  const on = await holding(...rows)
  expect(await adding(on, ...lines)).toMatchObject({ is: 'refused', wrong: { code } })
  expect(await textsOf(on, 'tablet-1')).toEqual(rows.filter(Boolean))
})

test('a file that is too big to be read is neither added to nor merged into', async () => {
  const on = await holding(first.text)
  const disk = { ...on.disk, size: async (file: string) => (file.startsWith('/job/log/') ? largestFile + 1 : on.disk.size(file)) }
  const writer = logWriter('/job', disk, on.lock)
  expect(await writer.add('tablet-1', [second])).toMatchObject({ is: 'refused', wrong: { code: 'log/big-file' } })
  const both = await folders()
  const big = {
    ...both.disk,
    size: async (file: string) => (file.startsWith('/job/log/') ? largestFile + 1 : both.disk.size(file)),
  }
  await expect(mergeFolders('/job', '/other', big, both.lock)).rejects.toMatchObject({ wrong: { code: 'log/big-file' } })
  expect((await textsOf(both, 'tablet-1')).length).toBe(1)
})

test('logs that say two things of one event are not merged, and nothing is changed', async () => {
  const on = await twoFolders({ device: 'tablet-2', batches: tablets()[1].batches }, { device: 'tablet-1', batches: one })
  const [before, name] = [await on.disk.list('/job/log'), '/other/log/tablet-1.jsonl']
  await on.disk.remove(name)
  const file = await on.disk.open(name, 'a')
  await file.write(new TextEncoder().encode(`${first.text.replace('0 in', '9 in')}\n`))
  await expect(merge(on)).rejects.toBeInstanceOf(Clash)
  expect(await on.disk.list('/job/log')).toEqual(before)
  expect(await textsOf(on, 'tablet-1')).toEqual([first.text])
})

test('somebody who may have lost the lock confirms nothing and replaces nothing', async () => {
  const [on, tablet] = [await empty(), new Tablet('tablet-1', one)]
  const lost = async (file: string) => ({
    ...(await on.lock(file)),
    sure: () => {
      throw Object.assign(new Error('lost'), { code: 'ELOCKED' })
    },
  })
  await expect(tablet.next(logWriter('/job', on.disk, lost))).rejects.toMatchObject({ code: 'ELOCKED' })
  expect(await on.disk.list('/job/log')).toEqual([])
  await mustEndWell(on, [tablet], 'after a lost lock')
})

test('a line that another process added meanwhile is passed over when it comes here too', async () => {
  const on = await empty()
  const [ours, others] = [logWriter('/job', on.disk, on.lock), logWriter('/job', on.disk, on.lock)]
  await ours.add('tablet-1', [first])
  await others.add('tablet-1', [first, second])
  expect(await ours.add('tablet-1', [second])).toMatchObject({ is: 'kept', added: 0, last: { n: 2 } })
  expect((await fileOf(on, 'tablet-1'))?.wrong).toEqual([])
})
