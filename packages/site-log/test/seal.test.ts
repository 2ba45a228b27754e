import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  againstSeal,
  type Event,
  fold,
  hashOf,
  isFault,
  isSignature,
  type Line,
  type Put,
  readLogFile,
  sealed,
  sealOf,
  signaturesAt,
  write,
  writeEvent,
} from '../src/index.ts'

const examples = fileURLToPath(new URL('../../../schema/examples/', import.meta.url))
const sha256 = (text: string | Uint8Array): string => createHash('sha256').update(text).digest('hex')
const clock = '2026-12-08T17:30:00Z'
const job = sha256('{}')
const [one, two, three] = ['a', 'b', 'c'].map((letter) => letter.repeat(64)) as [string, string, string]
const photo = (hash: string): Put => ({ place: `/rooms/den/windows/w1/found/photos/${hash}`, value: 'The pair, closed' })
const note = (n: number): Put => ({ place: `/rooms/den/windows/w1/found/notes/n${n}`, value: `Note ${n}` })
const linesOf = (device: string, ...puts: readonly Put[]): readonly Line[] =>
  write({ device, last: undefined, clock }, puts, fold([]))

const first = linesOf('tablet-1', note(1), photo(two), note(2), photo(one))
const second = linesOf('tablet-2', note(3), photo(one), note(4))
const all = [...first, ...second]
const words = { role: 'customer', name: 'Ida Marsh', accepts: 'with open points', strokes: [[0.1, 0.2, 0.3, 0.4]] } as const

/** The signature as an entry behind what its tablet wrote. */
function signedBy(device: string, seen: readonly Line[]): { readonly event: Event; readonly value: ReturnType<typeof sealed> } {
  const value = sealed(words, job, seen)
  const n = Math.max(0, ...seen.flatMap(({ event }) => (event.by === device ? [event.n] : []))) + 1
  return { event: { by: device, n, count: 900, clock, place: `${signaturesAt}/s1`, value }, value }
}
const signature = signedBy('tablet-1', all)
const there = new Set([one, two])
const found = (lines: readonly { readonly event: Event }[], photos: ReadonlySet<string> = there, of = signature, hash = job) =>
  againstSeal(of, hash, lines, photos)
/** The same lines with one of them otherwise. */
const changed = (by: string, n: number, other: Partial<Event>) =>
  all.map(({ event }) => ({ event: event.by === by && event.n === n ? { ...event, ...other } : event }))

test('every line of every example is what writeEvent makes of its event, byte for byte', () => {
  const files = readdirSync(examples, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.jsonl'))
  const lines = files.flatMap((file) => readLogFile(file.replace(/^.*\/|\.jsonl$/g, ''), readFileSync(examples + file)).lines)
  expect(lines.length).toBeGreaterThan(500)
  expect(lines.filter(({ event, text }) => writeEvent(event) !== text)).toEqual([])
})

describe('a seal', () => {
  test('holds the job file, the last line of each device, and the photos that lines name: sorted, each once', () => {
    expect(sealOf(job, all)).toEqual({
      job,
      devices: {
        'tablet-1': { n: 4, hash: sha256(first[3]?.text ?? '') },
        'tablet-2': { n: 3, hash: sha256(second[2]?.text ?? '') },
      },
      photos: sha256(`${one}\n${two}`),
    })
  })
  test('of a job with an empty log holds no device, and the hash of no photos', () =>
    expect(sealOf(job, [])).toEqual({ job, devices: {}, photos: sha256('') }))
  test('is the same whatever way the lines came', () =>
    fc.assert(
      fc.property(fc.shuffledSubarray([...all], { minLength: all.length }), (lines) => {
        expect(JSON.stringify(sealOf(job, lines))).toBe(JSON.stringify(sealOf(job, all)))
      }),
      { numRuns: 30 },
    ))
  test('takes the hash of the line as it stands in its file where that is known', () =>
    expect(sealOf(job, [{ event: first[0]?.event as Event, hash: one }]).devices['tablet-1']?.hash).toBe(one))
  test('of a signature proves the rest of it, members in the order of the schema', () => {
    const { signature: own, ...seal } = signature.value.seal
    expect(own).toBe(sha256(JSON.stringify({ ...words, seal })))
  })
  test('can be read, or the value is no signature', () => {
    const { seal } = signature.value
    const broken = [
      { ...seal, job: 'x' },
      { ...seal, devices: { a: { n: 1 } } },
      { ...seal, photos: 1 },
      { ...seal, devices: [] },
      7,
    ]
    expect(broken.map((each) => isSignature({ ...words, seal: each }))).toEqual(broken.map(() => false))
    expect([isSignature(signature.value), isSignature(undefined), isSignature('signed')]).toEqual([true, false, false])
  })
})

describe('against its seal', () => {
  test('what did not change has nothing to say', () => expect(found(all)).toEqual([]))
  test('another job file is told', () => expect(found(all, there, signature, sha256('{ }'))).toEqual([{ code: 'seal/job' }]))

  test('the line that was changed is named itself, wherever it stands', () => {
    const other = { value: 'Nothing to see' }
    for (const { by, n } of all.map(({ event }) => event).filter(({ place }) => place.includes('notes')))
      expect(found(changed(by, n, other))).toEqual([{ code: 'seal/line-changed', by, n }])
  })
  test('what a changed line says of the one before it proves nothing', () => {
    expect(found(changed('tablet-2', 3, { before: hashOf('other') }))).toEqual([
      { code: 'seal/chain', by: 'tablet-2', n: 3 },
      { code: 'seal/line-changed', by: 'tablet-2', n: 3 },
    ])
  })
  test('a chain that was made anew ends in another line than the one that was signed', () => {
    const anew = linesOf('tablet-2', { ...note(3), value: 'Other' }, photo(one), note(4))
    expect(found([...first, ...anew])).toContainEqual({ code: 'seal/line-changed', by: 'tablet-2', n: 3 })
  })

  test('lines that are missing are named: at the end, between, and a whole device', () => {
    const without = (by: string, ...ns: readonly number[]) => all.filter(({ event }) => event.by !== by || !ns.includes(event.n))
    const missing = (by: string, n: number, to: number) => ({ code: 'seal/line-missing', by, n, to, count: to - n + 1 })
    expect(found(without('tablet-1', 3))).toEqual([missing('tablet-1', 3, 3)])
    expect(found(without('tablet-2', 3))).toEqual([missing('tablet-2', 3, 3)])
    expect(found(without('tablet-1', 1))).toEqual([missing('tablet-1', 1, 1)])
    expect(found(first)).toEqual([missing('tablet-2', 1, 3)])
  })
  test('a seal that speaks of more lines than anybody can count to is read at once', () => {
    const seal = { ...sealOf(job, all), devices: { 'tablet-1': { n: Number.MAX_SAFE_INTEGER, hash: one } } }
    const [only] = againstSeal({ ...signature, value: { ...words, seal } }, job, first, there)
    expect(only).toMatchObject({ code: 'seal/line-missing', n: 5, to: Number.MAX_SAFE_INTEGER })
  })

  test('a photo that is not there is told, and a signed line that names another one', () => {
    expect(found(all, new Set([one]))).toEqual([{ code: 'seal/photo', photo: two }])
    expect(found(changed('tablet-1', 2, { place: photo(three).place }), new Set([one, two, three]))).toEqual([
      { code: 'seal/line-changed', by: 'tablet-1', n: 2 },
      { code: 'seal/photos' },
    ])
  })
  test('a signature that was changed is told, be it what is accepted, a stroke or the seal', () => {
    const { seal } = signature.value
    const others = [
      { ...signature.value, accepts: 'without open points' as const },
      { ...signature.value, strokes: [[0.1, 0.2, 0.3, 0.5]] },
      { ...signature.value, seal: { ...seal, photos: one } },
    ]
    for (const value of others)
      expect(found(all, there, { ...signature, value })).toContainEqual({ code: 'seal/signature', by: 'tablet-1', n: 5 })
  })
  test('a signature without its own hash is taken as it is', () =>
    expect(found(all, there, { ...signature, value: { ...words, seal: sealOf(job, all) } })).toEqual([]))

  test('what came later is told and is no fault: of the signing tablet, of another one, of a new one', () => {
    const later = (by: string, n: number) => ({ event: { by, n, count: 901 + n, clock, ...note(9) } })
    const more = [later('tablet-1', 5), later('tablet-1', 6), later('tablet-1', 7), later('tablet-2', 4), later('tablet-3', 1)]
    const told = found([...all, ...more])
    expect(told).toEqual([
      { code: 'seal/after', by: 'tablet-1', n: 6, to: 7, count: 2 },
      { code: 'seal/after', by: 'tablet-2', n: 4, to: 4, count: 1 },
      { code: 'seal/after', by: 'tablet-3', n: 1, to: 1, count: 1 },
    ])
    expect(told.filter(isFault)).toEqual([])
  })
  test('a photo that was taken later is not asked for', () => {
    const later = { event: { by: 'tablet-2', n: 4, count: 905, clock, ...photo(three) } }
    expect(found([...all, later]).filter(isFault)).toEqual([])
  })
})
