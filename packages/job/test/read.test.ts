import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { millimetres } from '@evenhem/length'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Extensions, extensionsOf, readJob } from '../src/read.ts'
import { bare, codes, inch, jobOf, jobText, pulleys, withPulleys } from './job.ts'

const demo = readFileSync(fileURLToPath(new URL('../../../schema/examples/tern-hollow/job.json', import.meta.url)))
const said = (text: string | Uint8Array, extensions = withPulleys) =>
  readJob(text, extensions).diagnostics.map(({ code, severity, place }) => [severity, code, place])
const left = '/rooms/den/windows/w1/treatments/over/panels/left'

test('nothing in a file makes reading throw', () => {
  const never = (bytes: Uint8Array | string) => readJob(bytes, withPulleys).diagnostics.length >= 0
  fc.assert(
    fc.property(
      fc.oneof(
        fc.uint8Array(),
        fc.string(),
        fc.json(),
        fc
          .json()
          .map(
            (json) =>
              `{"format":"evenhem-job/1","units":"in","rooms":${json},"hardware":${json},"found":${json},"uses":${json},"with":${json}}`,
          ),
      ),
      never,
    ),
  )
})

test('nothing that is put into a job in the place of something else makes reading throw', () => {
  const paths = [
    ['job'],
    ['uses'],
    ['uses', 'pulleys'],
    ['units'],
    ['format'],
    ['hardware'],
    ['hardware', '0'],
    ['hardware', '0', 'kind'],
    ['rooms', '0', 'windows'],
    ['rooms', '0', 'windows', '0', 'treatments', '0'],
    ['rooms', '0', 'windows', '0', 'treatments', '0', 'hardware'],
    ['with'],
  ]
  const odd = fc.oneof(
    fc.jsonValue(),
    fc.constantFrom<unknown>(
      { toString: 1, valueOf: 1 },
      { __proto__: null, constructor: 1 },
      [[]],
      { id: 1 },
      { kind: 'constructor' },
      'toString',
      Number.MAX_VALUE,
    ),
  )
  fc.assert(
    fc.property(fc.constantFrom(...paths), odd, (path, value) => {
      const job = JSON.parse(jobText({ found: { '/rooms/den/ceiling': { value: '96' } }, with: { pulleys: {} } }))
      const holder = path.slice(0, -1).reduce((at, name) => at[name], job)
      holder[path.at(-1) ?? ''] = value
      expect(readJob(JSON.stringify(job), withPulleys).text).toBe(JSON.stringify(job))
    }),
  )
})

test('bytes that are cut or changed anywhere are read or refused with a place', () =>
  fc.assert(
    fc.property(fc.nat(demo.length), fc.nat(255), (at, byte) => {
      const bytes = Uint8Array.from(demo)
      bytes[at] = byte
      for (const file of [bytes, demo.subarray(0, at)]) {
        const { job, diagnostics } = readJob(file, bare)
        expect(
          job !== undefined || diagnostics.some(({ severity, line, column }) => severity === 'error' && line > 0 && column > 0),
        ).toBe(true)
      }
    }),
  ))

test('every length of a job is read, and a number without a unit is in the job’s units', () => {
  const job = jobOf()
  expect(job.rooms[0]?.windows[0]?.treatments[0]?.panels[0]?.finishedLength).toBe(inch(84))
  expect(job.hardware?.[0]).toMatchObject({ rope: inch(0.5) })
  const metric = JSON.parse(jobText({ units: 'mm' }).replaceAll('"84"', '2197').replace('"1/2"', '"1 in"'))
  expect(readJob(JSON.stringify(metric), withPulleys).job?.rooms[0]?.windows[0]?.treatments[0]?.panels[0]?.finishedLength).toBe(
    millimetres(2197),
  )
})

test('text stays text: what looks like a length elsewhere is not touched', () => {
  expect(jobOf({ job: { number: '86 1/2', name: '7 ft', country: 'US' } }).job).toEqual({
    number: '86 1/2',
    name: '7 ft',
    country: 'US',
  })
})

test('the text that comes back is the file, byte for byte', () => {
  const text = `\uFEFF${jobText()}\r\n\t `
  expect(readJob(Buffer.from(text), withPulleys).text).toBe(text)
  expect(readJob(Buffer.from(text), withPulleys).job).toEqual(jobOf())
})

test('a diagnostic has its place, its pointer, and the exact part of the line', () => {
  const text = jobText({ units: 'in' }).replace('"pleats": 7', '"pleats": "seven"')
  const [diagnostic] = readJob(text, withPulleys).diagnostics
  expect(diagnostic).toMatchObject({
    code: 'job/type-whole-number',
    severity: 'error',
    place: `${left}/pleats`,
    pointer: '/rooms/0/windows/0/treatments/0/panels/0/pleats',
  })
  const { line = 0, column = 0, endLine, endColumn = 0 } = diagnostic ?? {}
  expect([endLine, text.split('\n')[line - 1]?.slice(column - 1, endColumn - 1)]).toEqual([line, '"seven"'])
})

test('the place of a length counts its escapes', () => {
  const text = jobText().replace('"84"', String.raw`"7' 14\"  "`)
  const [{ column = 0, endColumn = 0, line = 0 } = {}] = readJob(text, withPulleys).diagnostics
  expect(text.split('\n')[line - 1]?.slice(column - 1, endColumn - 1)).toBe(String.raw`14\"`)
})

test('what a plugin’s kind refuses is an error, and so is what its part refuses', () => {
  const hardware = [{ id: 'rope', kind: 'pulley', name: 'Rope', turns: 0.3, colour: 'red' }]
  expect(said(jobText({ hardware }))).toEqual([
    ['error', 'job/step', '/hardware/rope/turns'],
    ['error', 'job/unknown-member', '/hardware/rope/colour'],
  ])
  const withKnots = jobText().replace('"draw": "pair"', '"draw": "pair", "with": { "pulleys": { "knots": 9 } }')
  expect(said(withKnots)).toEqual([
    ['error', 'job/too-large-or-equal', '/rooms/den/windows/w1/treatments/over/with/pulleys/knots'],
  ])
})

test('lengths in a plugin’s part are read too', () => {
  const text = jobText().replace('"draw": "pair"', '"draw": "pair", "with": { "pulleys": { "drop": "2 1/2" } }')
  expect(readJob(text, withPulleys).job?.rooms[0]?.windows[0]?.treatments[0]?.with).toEqual({ pulleys: { drop: inch(2.5) } })
})

test('a part that is added to a level is checked at that level and nowhere else', () => {
  const room = (colour: string) =>
    jobText().replace('"name": "Den"', `"name": "Den", "with": { "pulleys": { "colour": "${colour}" } }`)
  expect([said(room('red')), codes(room('no')), codes(room('yellow'))]).toEqual([
    [],
    ['job/text-too-short'],
    ['job/text-too-long'],
  ])
  expect(said(jobText({ with: { pulleys: {} } }))).toEqual([['warning', 'job/part-not-here', '/with/pulleys']])
})

test('an unknown kind and an unknown part are kept as they are, and said once', () => {
  const strange = { id: 'a', kind: 'lift', name: 'A', height: '9 ft', list: [{ id: 'x' }] }
  const text = jobText({
    hardware: [...(jobOf().hardware ?? []), strange, { ...strange, id: 'b' }].map((entry) => ({ ...entry, rope: undefined })),
    with: { sky: { b: ['1/2'] } },
  })
  expect(said(text)).toEqual([
    ['info', 'job/unknown-kind', '/hardware/a/kind'],
    ['info', 'job/unknown-part', '/with/sky'],
  ])
  expect(readJob(text, withPulleys).job).toMatchObject({ hardware: [{}, strange, {}], with: { sky: { b: ['1/2'] } } })
})

test('a version newer than ours is not checked and not changed', () => {
  const hardware = [{ id: 'rope', kind: 'pulley', name: 'Rope', rope: 'spun from 3 strands' }]
  const text = jobText({ uses: { pulleys: 4 }, hardware })
  expect(said(text)).toEqual([['info', 'job/newer-plugin', '/uses/pulleys']])
  expect(readJob(text, withPulleys).job?.hardware).toEqual(hardware)
})

test('a plugin that is used and not named under uses is a warning, and the job is read', () => {
  expect(said(jobText({ uses: {} }))).toEqual([['warning', 'job/uses-lacks', '/uses']])
  expect(said(jobText({ uses: undefined }))).toEqual([['warning', 'job/no-uses', '']])
  expect(readJob(jobText({ uses: undefined }), withPulleys).job).toBeDefined()
})

test('readings are typed by the schema of their places, also in parts and in hardware', () => {
  const found = {
    [`${left}/finishedLength`]: { value: '84 1/8', by: 'A' },
    [`${left}/pleats`]: { value: 8 },
    '/hardware/rope/rope': { value: 0.75 },
    '/rooms/den/windows/w1/treatments/over/with/pulleys/drop': { value: '1' },
  }
  expect(readJob(jobText({ found }), withPulleys).readings).toEqual({
    [`${left}/finishedLength`]: { value: inch(84.125), by: 'A' },
    [`${left}/pleats`]: { value: 8 },
    '/hardware/rope/rope': { value: inch(0.75) },
    '/rooms/den/windows/w1/treatments/over/with/pulleys/drop': { value: inch(1) },
  })
})

test('a reading that is refused is left out, and the order is read all the same', () => {
  const { job, readings, diagnostics } = readJob(
    jobText({ found: { [`${left}/pleats`]: { value: 'seven' }, [`${left}/finishedLength`]: { value: '84' } } }),
    withPulleys,
  )
  expect([job !== undefined, Object.keys(readings), diagnostics.map(({ code }) => code)]).toEqual([
    true,
    [`${left}/finishedLength`],
    ['job/type-whole-number'],
  ])
})

test('a reading says what its schema says of an order: a member of its value that nobody knows', () => {
  const found = { '/rooms/den/windows/w1/treatments/over/rod': { value: { width: '78', topp: '91' } } }
  expect(said(jobText({ found }))).toEqual([
    ['error', 'job/unknown-member-near', '/found/~1rooms~1den~1windows~1w1~1treatments~1over~1rod/value/topp'],
  ])
})

test('of a broken text what it lost is not asked for', () => {
  expect(codes(jobText().replace('"units": "in"', '"units" = "in"').slice(0, -4))).toEqual([
    'job/missing-colon',
    'job/unclosed-at-end',
  ])
})

test('where the text itself is wrong nothing more is said of the value', () => {
  expect(codes(jobText().replace('"pleats": 7', '"pleats": 1e999'))).toEqual(['job/number-too-large'])
})

const upgrades = [
  {
    to: 3,
    because: 'turns are counted',
    up: ({ twists, ...item }: { twists?: number }) => ({ ...item, ...(twists !== undefined && { turns: twists }) }),
  },
  {
    to: 2,
    because: 'cord is rope',
    up: ({ cord, ...item }: { cord?: string }) => ({ ...item, ...(cord !== undefined && { rope: cord }) }),
  },
]
const withUpgrades: Extensions = extensionsOf([{ ...pulleys, upgrades }])
const old = (version: number, more: object) =>
  jobText({ uses: { pulleys: version }, hardware: [{ id: 'rope', kind: 'pulley', name: 'Rope', ...more }] })

test('what an older version wrote is brought up, step by step, and the text stays', () => {
  const text = old(1, { cord: '1/2', twists: 2 })
  const read = readJob(text, withUpgrades)
  expect(read.job?.hardware).toEqual([{ id: 'rope', kind: 'pulley', name: 'Rope', rope: inch(0.5), turns: 2 }])
  expect([read.job?.uses, read.text]).toEqual([{ pulleys: 3 }, text])
  expect(read.diagnostics.map(({ code, values }) => [code, values.to, values.because])).toEqual([
    ['job/upgraded', 2, 'cord is rope'],
    ['job/upgraded', 3, 'turns are counted'],
  ])
})

test('only the steps that a version lacks are taken', () => {
  expect(said(old(2, { twists: 2 }), withUpgrades)).toEqual([['info', 'job/upgraded', '/uses/pulleys']])
  expect(said(old(3, { turns: 2 }), withUpgrades)).toEqual([])
})

test('a plugin’s part under with is brought up too', () => {
  const text = old(2, {}).replace('"draw": "pair"', '"draw": "pair", "with": { "pulleys": { "twists": 2 } }')
  expect(said(text, withUpgrades).map(([, code, place]) => [code, place])).toContainEqual([
    'job/unknown-member',
    '/rooms/den/windows/w1/treatments/over/with/pulleys/turns',
  ])
})

test('a step that throws or gives no object is an error of the job, not of the reader', () => {
  const broken = (up: (item: object) => object) => extensionsOf([{ ...pulleys, upgrades: [{ to: 3, because: 'it must', up }] }])
  const throws = () => {
    throw new Error('no rope')
  }
  expect(said(old(1, {}), broken(throws))).toEqual([['error', 'job/upgrade-failed', '/uses/pulleys']])
  expect(
    codes(
      old(1, {}),
      broken(() => [] as object),
    ),
  ).toEqual(['job/upgrade-failed'])
})

test('two plugins that bring the same kind, or two schemas of one name, are refused and both named', () => {
  expect(() => extensionsOf([pulleys, { ...pulleys, id: 'ropes' }])).toThrow(/pulley in plugin ropes.*pulleys brings it too/)
  const twice = {
    kinds: {},
    additions: [1, 2].map((n) => ({
      plugin: `p${n}`,
      to: 'room',
      schema: { $id: 'https://evenhem.example/same', type: 'object' },
    })),
    formats: {},
  }
  expect(() => readJob(jobText(), twice)).toThrow(/evenhem.example\/same/)
})

test('a file of thousands of mistakes has a thousand diagnostics and says that there are more', () => {
  const rooms = Array.from({ length: 100_000 }, (_, n) => ({ id: `r${n}`, name: 'Room', windows: [], wallpaper: n }))
  const { diagnostics } = readJob(jobText({ rooms }), withPulleys)
  expect([diagnostics.length, diagnostics.at(-1)?.code, diagnostics.at(-1)?.values]).toEqual([1001, 'job/more', { most: 1000 }])
})

test.each([
  ['open brackets', '['.repeat(200_000)],
  ['quotes', '"'.repeat(200_000)],
  ['backslashes', `"${'\\'.repeat(200_001)}`],
  ['words without quotes', `[${'a '.repeat(100_000)}`],
  ['openings of comments', '/*'.repeat(100_000)],
  ['digits', `[-${'9'.repeat(100_000)}e-${'9'.repeat(100_000)}]`],
  ['one name again and again', `{${'"a":1,'.repeat(50_000)}"b":1}`],
  ['halves of characters', `[${'"\\ud800",'.repeat(50_000)}1]`],
  [
    'readings of nowhere',
    jobText({ found: Object.fromEntries(Array.from({ length: 20_000 }, (_, n) => [`/rooms/x${n}/y`, { value: 1 }])) }),
  ],
  ['a name of a hundred thousand letters', jobText({ ['x'.repeat(100_000)]: 1 })],
])('a file of %s is refused in few words', (_, text) => {
  const { job, diagnostics } = readJob(text, withPulleys)
  expect(diagnostics.length).toBeGreaterThan(0)
  expect(diagnostics.length).toBeLessThanOrEqual(1001)
  expect(job === undefined || diagnostics.every(({ pointer }) => pointer?.startsWith('/found/') || pointer === undefined)).toBe(
    true,
  )
  expect(JSON.stringify(diagnostics).length).toBeLessThan(1_500_000)
})
