import type { Event } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { inMemory, type Keeper } from '../src/data/keeper.ts'
import { type JobServer, Refused } from '../src/data/served.ts'
import { ServedEntries } from '../src/data/served-entries.ts'
import { type SentEntry, SiteStore } from '../src/data/site.ts'

const entry = (by: string, n: number, read: unknown = n): SentEntry => ({
  event: { by, n, count: n, clock: '2026-11-26T09:00:00Z', place: `/rooms/den/windows/w${n}/name`, value: String(read) } as Event,
  read,
})
const ids = (entries: readonly SentEntry[]) => entries.map(({ event: { by, n } }) => `${by}:${n}`).sort()
const keptIn = async (keeper: Keeper) => (await keeper.entries('job')).map(({ id }) => id).sort()

test('what is told while the whole log is on its way stays, and is kept', async () => {
  const keeper = inMemory('me')
  const served = new ServedEntries('job', keeper)
  await served.ask(async () => {
    const older = [entry('a', 1)]
    served.take([entry('b', 1)])
    return older
  })
  expect(ids(served.all)).toEqual(['a:1', 'b:1'])
  expect(await keptIn(keeper)).toEqual(['a:1', 'b:1'])
})

test('what the server does not have any more is forgotten, and what it reads otherwise is taken anew', async () => {
  const keeper = inMemory('me')
  const before = new ServedEntries('job', keeper)
  await before.ask(async () => [entry('a', 1), entry('a', 2, 'old')])
  const served = new ServedEntries('job', keeper)
  expect([await served.load(), ids(served.all)]).toEqual([true, ['a:1', 'a:2']])
  await served.ask(async () => [entry('a', 2, 'new')])
  expect((await keeper.entries('job')).map(({ id, entry: { read } }) => [id, read])).toEqual([['a:2', 'new']])
})

test('who else is there stays known while the server only says that it is there, and is not when it is not', () => {
  const away = () => Promise.reject(new Refused('gone', 'gone'))
  const server: JobServer = { base: '/', job: away, log: away, send: away }
  const site = new SiteStore('job', inMemory('me'), server)
  const other = { by: 'tablet-2', at: '/rooms/den/windows/w1' }
  site.hears([other])
  site.hears()
  expect([site.contact.live, site.contact.others]).toEqual([true, [other]])
  site.hearsNoMore()
  expect([site.contact.live, site.contact.others]).toEqual([false, []])
})
