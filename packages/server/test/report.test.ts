import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { folder, server } from './folder.ts'

const example = fileURLToPath(new URL('../../../schema/examples/tern-hollow', import.meta.url))
const report = async (query = '', job = example) =>
  (await server({ job, viewer: (await folder()).viewer })).inject(`/report${query}`)

test('the customer’s report is one page about the job', async () => {
  const answer = await report()
  expect([answer.statusCode, answer.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8'])
  expect(answer.body).toContain('House at Tern Hollow')
})

test('it stands under its own policy: its one style sheet by its hash, no script, no network', async () => {
  const policy = String((await report()).headers['content-security-policy'])
  expect(policy).toMatch(/^default-src 'none'; style-src 'sha256-[^']+'; font-src data:; img-src data:;/)
  expect(policy).toContain("frame-ancestors 'none'")
})

test('paper and units are as asked for', async () => {
  const { body } = await report('?paper=a4&units=mm')
  expect(body).toContain('size:A4')
  expect(body).toContain('1981')
})

test('the report is in English, and in Spanish where it is asked for', async () => {
  expect((await report()).body).toContain('<html lang="en">')
  expect((await report('?lang=es')).body).toMatch(/<html lang="es">[\s\S]*Informe de entrega/)
})

test.each([
  ['?lang=fr', 'Unexpected lang fr, expected one of en, es; write one of them.'],
  ['?units=furlongs', 'Unexpected units furlongs, expected one of in, ft-in, mm, cm; write one of them.'],
  ['?paper=a3', 'Unexpected paper a3, expected a4 or letter; write one of them.'],
  ['?units=__proto__', 'Unexpected units __proto__, expected one of in, ft-in, mm, cm; write one of them.'],
])('%s is refused', async (query, message) => {
  const answer = await report(query)
  expect([answer.statusCode, answer.json().message]).toEqual([400, message])
})

test('a job with errors has no report', async () => {
  const { job, viewer } = await folder()
  await writeFile(`${job}/job.json`, (await readFile(`${example}/job.json`, 'utf8')).replace('"units": "in"', '"units": "inch"'))
  const answer = await (await server({ job, viewer })).inject('/report')
  expect([answer.statusCode, answer.json().code]).toEqual([409, 'job-has-errors'])
})

test('photos come through the server, and the policy lets in what lies beside the report', async () => {
  const { job, viewer } = await folder()
  const hash = 'a'.repeat(64)
  const place = `/rooms/garden-room/windows/w1/found/photos/${hash}`
  const written = JSON.parse(await readFile(`${example}/job.json`, 'utf8'))
  await writeFile(`${job}/job.json`, JSON.stringify({ ...written, found: { [place]: { value: 'The wall' } } }))
  await mkdir(`${job}/photos`)
  await writeFile(`${job}/photos/${hash}.jpg`, '')
  const { body, headers } = await (await server({ job, viewer })).inject('/report')
  expect(body).toContain(`<img src="photos/${hash}/1600" alt="Photo. The wall"`)
  expect(headers['content-security-policy']).toContain("img-src data: 'self';")
})
