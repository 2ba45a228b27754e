import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fold, type Line, write } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { folder, server } from './folder.ts'

const headers = { origin: 'http://localhost', 'content-type': 'application/json' }
const ceiling = '/rooms/den/ceiling'
const clock = '2026-11-25T09:12:00Z'
const lines = (puts: readonly unknown[], device = 'tablet-1'): readonly Line[] =>
  write(
    { device, last: undefined, clock },
    puts.map((value) => ({ place: ceiling, value })),
    fold([]),
  )

async function site() {
  const at = await folder()
  const built = await server(at)
  const post = (payload: string) => built.inject({ method: 'POST', url: '/log', headers, payload })
  const send = (...sent: readonly (Line | undefined)[]) => post(JSON.stringify({ lines: sent.map((line) => line?.text) }))
  return { ...at, built, post, send, get: async () => (await built.inject('/log')).json() }
}

test('a line that was answered is in the file of its device, and its value is read', async () => {
  const { send, get, job } = await site()
  const [line] = lines(['95 3/4'])
  expect((await send(line)).json()).toMatchObject({ last: { n: 1 }, entries: [{ read: 95.75 * 25_400_000 }] })
  expect(await readFile(join(job, 'log/tablet-1.jsonl'), 'utf8')).toBe(`${line?.text}\n`)
  expect(await get()).toMatchObject({ entries: [{ event: line?.event, read: 95.75 * 25_400_000 }], wrong: [] })
})

test('a line that comes twice is there once, and one that does not follow is refused with what is there', async () => {
  const { send, get } = await site()
  const [first, second, third] = lines(['95', '96', '97'])
  await send(first)
  expect((await send(first, second)).json()).toMatchObject({ last: { n: 2 } })
  expect((await get()).entries).toHaveLength(2)
  const [other] = lines(['90'])
  expect((await send(other)).json()).toMatchObject({ code: 'log/clash', last: { n: 2 } })
  expect((await send(third, third)).statusCode).toBe(409)
  expect((await send(third)).statusCode).toBe(200)
})

test('a value that its place refuses is kept, left out and said in both languages', async () => {
  const { send, get } = await site()
  await send(...lines(['96 ft tall']))
  const { entries } = await get()
  expect(entries[0].read).toBeUndefined()
  expect(entries[0].refused.says.en).toMatch(/^Unexpected/)
  expect(entries[0].refused.says.es).not.toBe(entries[0].refused.says.en)
})

test('a revised order keeps every reading at its place, and names those that have none any more', async () => {
  const { send, get, job } = await site()
  const [line] = lines(['95 3/4 in'])
  await send(line)
  const order = JSON.parse(await readFile(join(job, 'job.json'), 'utf8'))
  await writeFile(
    join(job, 'job.json'),
    JSON.stringify({ ...order, rooms: [{ id: 'hall', name: 'Hall', windows: [] }, ...order.rooms] }),
  )
  expect((await get()).entries).toMatchObject([{ read: 95.75 * 25_400_000 }])
  await writeFile(join(job, 'job.json'), JSON.stringify({ ...order, rooms: [{ id: 'hall', name: 'Hall', windows: [] }] }))
  const { entries } = await get()
  expect(entries[0].read).toBeUndefined()
  expect(entries[0].refused.says.en).toContain('den')
})

test.each([
  ['[', 'Unexpected content that is no JSON'],
  ['{"lines":[],"lines":[]}', 'Unexpected name that stands twice'],
  [`${'['.repeat(100)}${']'.repeat(100)}`, 'Unexpected depth'],
  ['{"lines":[]}', 'with 1 to 500 lines'],
  ['{"lines":[7]}', 'Unexpected line 1, expected text'],
  ['{"lines":["{}"]}', 'Unexpected “by” of an entry'],
  [JSON.stringify({ lines: [...lines(['1']), ...lines(['1'], 'b')].map(({ text }) => text) }), 'of several devices'],
])('what is no list of lines is refused: %s', async (payload, message) => {
  const answer = await (await site()).post(payload)
  expect(answer.statusCode).toBe(400)
  expect(answer.json().message).toContain(message)
})

test('a disk that takes nothing is said, and nothing counts as kept', async () => {
  const { job, send, get } = await site()
  await writeFile(join(job, 'log'), 'no folder')
  const answer = await send(...lines(['95']))
  expect([answer.statusCode, answer.json().code]).toEqual([507, 'not-kept'])
  expect(answer.json().message).toContain('sends them again')
  expect((await get()).code).toBe('fault')
})

test('a job file by its own name has no log', async () => {
  const at = await folder()
  await writeFile(join(at.job, 'other.json'), await readFile(join(at.job, 'job.json')))
  const built = await server({ ...at, job: join(at.job, 'other.json') })
  const answer = await built.inject({
    method: 'POST',
    url: '/log',
    headers,
    payload: JSON.stringify({ lines: [lines(['95'])[0]?.text] }),
  })
  expect(answer.json().code).toBe('no-folder')
})

test('nobody writes to the log from another page', async () => {
  const { built } = await site()
  const payload = JSON.stringify({ lines: [lines(['95'])[0]?.text] })
  const from = (origin: string) => built.inject({ method: 'POST', url: '/log', headers: { ...headers, origin }, payload })
  expect((await from('http://elsewhere.example')).statusCode).toBe(403)
})
