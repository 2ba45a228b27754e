import { readFile, stat, writeFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { devicesIn, nameOf } from '../src/devices.ts'
import { pairing } from '../src/pairing.ts'
import { networked } from './network.ts'

const minuteMs = 60_000
const start = Date.parse('2026-11-25T09:00:00Z')
function atDesk() {
  const clock = { now: start }
  return { clock, ...pairing(() => clock.now) }
}

test('a code is eight characters that nobody takes for others, in two halves, and no two are the same', () => {
  const { newCode } = atDesk()
  const codes = Array.from({ length: 200 }, () => newCode().code)
  expect(codes.filter((code) => !/^[a-hj-km-np-z2-9]{4}-[a-hj-km-np-z2-9]{4}$/.test(code))).toEqual([])
  expect(new Set(codes).size).toBe(200)
})

test('a code is good once, written in whatever way', () => {
  for (const way of [
    (code: string) => code,
    (code: string) => ` ${code.replace('-', '').toUpperCase()} `,
    (code: string) => code.replace('-', ' – '),
  ]) {
    const { newCode, use } = atDesk()
    const { code } = newCode()
    expect([use(way(code)), use(code)]).toEqual(['right', 'none'])
  }
})

test('a code is good for ten minutes, and not longer', () => {
  const { newCode, use, clock } = atDesk()
  const { code, until } = newCode()
  expect(until).toEqual(new Date('2026-11-25T09:10:00Z'))
  clock.now += 10 * minuteMs
  expect(use(code)).toBe('none')
  const next = newCode()
  clock.now += 10 * minuteMs - 1
  expect(use(next.code)).toBe('right')
})

test('a new code ends the one before', () => {
  const { newCode, use } = atDesk()
  const [first, second] = [newCode().code, newCode().code]
  expect([use(first), use(second)]).toEqual([{ left: 4 }, 'right'])
})

test('five wrong tries end a code, for the right one too, until there is a new one', () => {
  const { newCode, use } = atDesk()
  const { code } = newCode()
  expect(['a', '', 'b', 'aaaa-aaaa', 'c'].map(use)).toEqual([{ left: 4 }, { left: 3 }, { left: 2 }, { left: 1 }, 'void'])
  expect(use(code)).toBe('void')
  expect(use(newCode().code)).toBe('right')
})

test('where none was asked for, none is right', () => expect(atDesk().use('')).toBe('none'))

test('a tablet is paired by a code from the desk, and is known by its cookie from then on', async () => {
  const { desk, tablet, newCode, devices } = await networked()
  expect((await tablet('/job')).json()).toMatchObject({ code: 'unpaired', message: expect.stringMatching(/^Unexpected tablet/) })
  const answer = await tablet('/pair', { code: (await newCode()).toUpperCase(), name: ' Ana’s tablet ' })
  const { id, name } = answer.json()
  expect([answer.statusCode, name]).toEqual([200, 'Ana’s tablet'])
  const cookie = String(answer.headers['set-cookie'])
  expect(cookie).toMatch(new RegExp(`^evenhem-device=${id}\\.[\\w-]{43}; HttpOnly; SameSite=Strict; Path=/; Max-Age=15552000$`))
  expect((await tablet('/job', undefined, { cookie: `other=1; ${cookie.split(';')[0]}` })).statusCode).toBe(200)
  const secret = cookie.split(/[.;]/)[1]!
  expect(await readFile(devices, 'utf8')).not.toContain(secret)
  expect((await desk('/devices')).json()).toMatchObject({
    network: true,
    devices: [{ id, name, since: '2026-11-25T09:00:00.000Z' }],
    addresses: expect.arrayContaining(['http://tablet.test']),
  })
  expect((await desk('/devices')).body).not.toMatch(/hash|[0-9a-f]{64}/)
})

test('the code of the desk has its link, and the link as a picture of its own', async () => {
  const { code, until, link, qr } = (await (await networked()).desk('/devices/code', {})).json()
  expect([link, until]).toEqual([`http://tablet.test/#pair=${code}`, '2026-11-25T09:10:00.000Z'])
  expect(qr).toMatch(/^<svg [\s\S]*<\/svg>\s*$/)
  expect(qr).not.toMatch(/script|href|style/)
})

test('a wrong code says how many tries are left, and five end it with what to do', async () => {
  const { tablet, newCode } = await networked()
  const code = await newCode()
  const said = []
  for (const each of ['a', 'b', 'c', 'd', 'e', code]) said.push((await tablet('/pair', { code: each, name: 'Tablet' })).json())
  expect(said.map(({ code, left }) => [code, left])).toEqual([
    ...[4, 3, 2, 1].map((left) => ['wrong-code', left]),
    ['code-void', undefined],
    ['code-void', undefined],
  ])
  expect(said[3].message).toContain('1 more try is left')
  expect(said[5].message).toContain('ask for a new one at the computer')
})

test('a code that is over is gone, and says what to do', async () => {
  const { tablet, newCode, clock } = await networked()
  const code = await newCode()
  clock.now += 10 * minuteMs
  const answer = await tablet('/pair', { code, name: 'Tablet' })
  expect([answer.statusCode, answer.json().code]).toEqual([410, 'no-code'])
})

test('a name that is no name uses up no code', async () => {
  const { tablet, newCode } = await networked()
  const code = await newCode()
  for (const name of ['', '  ', 'a\nb', 'x'.repeat(41), '\u200b', '\u202eabc', 7, null]) {
    const answer = await tablet('/pair', { code, name })
    expect([answer.statusCode, answer.json().code]).toEqual([400, 'name'])
  }
  for (const body of [{ name: 'Tablet' }, { code: 7, name: 'Tablet' }, { code, name: '\ud800' }, []])
    expect((await tablet('/pair', body)).statusCode).toBe(400)
  expect((await tablet('/pair', { code, name: 'Tablet' })).statusCode).toBe(200)
})

test('names are kept as written, without spaces around them, up to forty characters', () => {
  expect([' Ana ', 'Niño', 'x'.repeat(40), '📐', 'a'.repeat(41), '\t'].map(nameOf)).toEqual([
    'Ana',
    'Niño',
    'x'.repeat(40),
    '📐',
    undefined,
    undefined,
  ])
})

test('a name that is taken gets a number, and stays within forty characters', async () => {
  const { pair } = await networked()
  const names = []
  for (const name of ['Tablet', 'tablet', 'Tablet', 'x'.repeat(40), 'x'.repeat(40)]) names.push((await pair(name)).name)
  expect(names).toEqual(['Tablet', 'tablet 2', 'Tablet 3', 'x'.repeat(40), `${'x'.repeat(38)} 2`])
})

test('the file is for its owner alone, and another process may change it while the server runs', async () => {
  const { pair, tablet, devices } = await networked()
  const [one, two] = [await pair('One'), await pair('Two')]
  expect((await stat(devices)).mode & 0o777).toBe(0o600)
  await devicesIn(devices).remove(one.id)
  expect((await tablet('/job', undefined, one.paired)).statusCode).toBe(401)
  expect((await tablet('/job', undefined, two.paired)).statusCode).toBe(200)
})

test('a tablet that is revoked at the desk is let in no more', async () => {
  const { pair, tablet, desk } = await networked()
  const [one, two] = [await pair('One'), await pair('Two')]
  const answer = await desk('/devices/revoke', { id: one.id })
  expect(answer.json().devices).toMatchObject([{ id: two.id, name: 'Two' }])
  expect((await tablet('/job', undefined, one.paired)).json().code).toBe('unpaired')
  expect((await desk('/devices/revoke', { id: one.id })).json().code).toBe('no-device')
})

test('the secret of one tablet is none of another’s', async () => {
  const { pair, tablet } = await networked()
  const [one, two] = [await pair('One'), await pair('Two')]
  const cookie = `evenhem-device=${two.id}.${one.paired.cookie!.split('.')[1]}`
  expect((await tablet('/job', undefined, { cookie })).statusCode).toBe(401)
})

test('a tablet that asks for something is noted as seen', async () => {
  const { pair, tablet, desk } = await networked()
  await tablet('/job', undefined, (await pair('One')).paired)
  await expect.poll(async () => (await desk('/devices')).json().devices[0].seen).toBe('2026-11-25T09:00:00.000Z')
})

test('when it was seen is noted once an hour', async () => {
  const { devices: file, clock } = await networked()
  const devices = devicesIn(file, () => clock.now)
  await devices.add('One')
  const seenAfter = async (minutes: number) => {
    clock.now += minutes * minuteMs
    for (const device of await devices.all()) await devices.saw(device)
    return (await devices.all())[0]?.seen
  }
  expect(await seenAfter(0)).toBe('2026-11-25T09:00:00.000Z')
  expect(await seenAfter(59)).toBe('2026-11-25T09:00:00.000Z')
  expect(await seenAfter(1)).toBe('2026-11-25T10:00:00.000Z')
})

test.each(['', '{', '{}', '[{}]', '[1]', '[{"id":"a","name":"A","hash":"0","since":"2026-11-25T09:00:00Z"}]', '[],[]'])(
  'a file of devices that holds %j lets nobody in, says so, and stays as it is',
  async (text) => {
    const { pair, tablet, desk, newCode, devices } = await networked()
    const { paired, id } = await pair('One')
    const code = await newCode()
    await writeFile(devices, text)
    const said = [
      await tablet('/job', undefined, paired),
      await tablet('/pair', { code, name: 'Two' }),
      await desk('/devices'),
      await desk('/devices/revoke', { id }),
    ]
    expect(said.map((answer) => [answer.statusCode, answer.json().code])).toEqual(Array(4).fill([503, 'devices-broken']))
    expect(said[0]?.json().message).toContain('.evenhem/devices.json')
    expect((await tablet('/', undefined, paired)).statusCode).toBe(200)
    expect(await readFile(devices, 'utf8')).toBe(text)
  },
)

test('devices that are paired at the same time are all kept', async () => {
  const { devices } = await networked()
  const [one, other] = [devicesIn(devices), devicesIn(devices)]
  await Promise.all([one.add('A'), other.add('A'), one.add('A')])
  expect((await one.all()).map(({ name }) => name).sort()).toEqual(['A', 'A 2', 'A 3'])
})
