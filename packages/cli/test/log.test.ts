import { createHash } from 'node:crypto'
import { copyFile, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fold, type Line, type Put, write, writeEvent } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { example, folder, line, started } from './line.ts'

const panel = '/rooms/garden-room/windows/w1/treatments/over/panels/left/finishedLength'
const bracket = '/rooms/garden-room/windows/w1/treatments/over/found/brackets/left/fixed'
const site = (...lines: readonly Line[]) => fold(lines.map(({ event }) => ({ event, read: event.value })))
const linesOf = (device: string, puts: readonly Put[], seen: readonly Line[] = [], who?: string): readonly Line[] =>
  write({ device, last: undefined, clock: '2026-11-25T09:12:00Z', ...(who && { who }) }, puts, site(...seen))

/** A copy of a job's folder with what these devices wrote. */
async function jobWith(...logs: readonly (readonly Line[])[]): Promise<string> {
  const to = await folder()
  await copyFile(join(example('tern-hollow'), 'job.json'), join(to, 'job.json'))
  await mkdir(join(to, 'log'))
  for (const [first, ...rest] of logs)
    if (first)
      await writeFile(join(to, 'log', `${first.event.by}.jsonl`), [first, ...rest].map(({ text }) => `${text}\n`).join(''))
  return to
}
const one = linesOf('tablet-1', [{ place: panel, value: '84 1/2' }], [], 'Ana Roble')
const over = linesOf('tablet-2', [{ place: panel, value: '85' }], one)
const beside = linesOf('tablet-3', [{ place: panel, value: '86' }])

test('each entry has its time, who, its place in words, the value before and the new one in the reader’s units', async () => {
  const job = await jobWith(one, over)
  const { code, out, err } = await line('log', job)
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(
    /2026-11-25 09:12 UTC {2}Ana Roble \(tablet-1\) {2}Garden room, Window 1, treatment, panel left, finished length {2}/,
  )
  expect(out).toMatch(/ordered [\d /]+ in → 84 1\/2 in\n/)
  expect(out).toMatch(/tablet-2 .* 84 1\/2 in → 85 in\n/)
  expect((await line('log', job, '--units', 'mm')).out).toMatch(/2146 mm → 2159 mm|2146\.3 mm → 2159 mm/)
})

test('a withdrawal says so, and ticks and other values are said as what they are', async () => {
  const gone = linesOf('tablet-1', [{ place: panel, value: '84 1/2' }, { place: panel }, { place: bracket, value: true }])
  const { code, out } = await line('log', await jobWith(gone))
  expect([code, out]).toEqual([0, expect.stringMatching(/84 1\/2 in → withdrawn\n[\s\S]*bracket.*fixed {2,}ticked\n/)])
})

test('values that stand against each other are marked, and that is a problem', async () => {
  const { code, out } = await line('log', await jobWith(one, beside))
  expect(code).toBe(1)
  expect(out.match(/stands against another value; put one over both/g)).toHaveLength(2)
})

test('a value that its place refuses is named with its file and line, and so is a line that is none', async () => {
  const job = await jobWith(one, linesOf('tablet-2', [{ place: panel, value: 'long' }]))
  await writeFile(join(job, 'log', 'tablet-4.jsonl'), '{"by":"tab')
  const { code, out } = await line('log', job)
  expect(code).toBe(1)
  expect(out).toContain('left out, tablet-2.jsonl:1: ')
  expect(out).toMatch(/Files of the log\n {2}tablet-4\.jsonl:1: Unexpected end in the middle of a line \(10 bytes\)/)
})

test('one window can be shown alone, and a folder without a log has nothing to show', async () => {
  const job = await jobWith(one, linesOf('tablet-2', [{ place: '/job/note', value: 'Ring twice' }]))
  expect((await line('log', job)).out).toContain('Ring twice')
  expect((await line('log', job, '--window', 'w1')).out).not.toContain('Ring twice')
  expect(await line('log', example('tern-hollow'))).toMatchObject({
    code: 0,
    out: '',
    err: expect.stringContaining('Nothing is recorded yet'),
  })
})

test('as JSON each entry has its id, file and line, and whether it stands', async () => {
  const { out } = await line('log', await jobWith(one, over), '--json')
  expect(JSON.parse(out).entries).toMatchObject([
    { id: 'tablet-1:1', place: panel, value: '84 1/2', who: 'Ana Roble', stands: false, file: 'tablet-1.jsonl', line: 1 },
    { id: 'tablet-2:1', over: ['tablet-1:1'], stands: true, inConflict: false },
  ])
})

test('what a person wrote on a tablet is shown and never obeyed by the terminal', async () => {
  const job = await jobWith(linesOf('tablet-1', [{ place: '/job/note', value: '\u001b[2Jgone' }], [], 'A\u001b[2J'))
  expect((await line('log', job)).out).not.toContain('\u001b')
})

test('it is said in Spanish', async () => {
  const { out } = await line('log', await jobWith(one, beside), '--lang', 'es')
  expect(out).toMatch(/pedido .*contradice a otro valor/)
})

test('merging adds what the other folder has, says from whom, and again adds nothing', async () => {
  const [ours, theirs] = [await jobWith(one), await jobWith(one, over, beside)]
  expect(await line('merge', ours, theirs)).toMatchObject({
    code: 0,
    out: `tablet-2: 1 entry from ${theirs}\ntablet-3: 1 entry from ${theirs}\n`,
    err: '',
  })
  expect(await readdir(join(ours, 'log'))).toEqual(['tablet-1.jsonl', 'tablet-2.jsonl', 'tablet-3.jsonl'])
  expect((await line('merge', ours, theirs)).out).toBe(`Nothing new in ${theirs}; everything it has is here.\n`)
})

test('a folder that has no log takes one, and gives none', async () => {
  const [ours, theirs] = [await folder(), await jobWith(one)]
  await copyFile(join(example('tern-hollow'), 'job.json'), join(ours, 'job.json'))
  expect((await line('merge', theirs, ours)).out).toContain('Nothing new')
  expect((await line('merge', ours, theirs)).code).toBe(0)
  expect(await readFile(join(ours, 'log', 'tablet-1.jsonl'), 'utf8')).toBe(`${one[0]?.text}\n`)
})

test('two logs that say different things of one entry are not merged, and nothing is changed', async () => {
  const changed = one.map(({ event }) => ({ event, text: writeEvent({ ...event, value: '80' }) }))
  const [ours, theirs] = [await jobWith(one), await jobWith(over, changed)]
  const { code, out, err } = await line('merge', ours, theirs)
  expect([code, out]).toEqual([1, ''])
  expect(err).toContain('Unexpected other content of entry tablet-1:1')
  expect(await readdir(join(ours, 'log'))).toEqual(['tablet-1.jsonl'])
})

test('folders of different jobs, one folder twice, and a job file are refused', async () => {
  const [ours, theirs] = [await jobWith(one), await jobWith(over)]
  const text = await readFile(join(ours, 'job.json'), 'utf8')
  await writeFile(join(theirs, 'job.json'), text.replace(/"number": "[^"]+"/, '"number": "X-9"'))
  const refused = await line('merge', ours, theirs)
  expect([refused.code, refused.err]).toEqual([2, expect.stringContaining('Unexpected job number X-9')])
  expect((await line('merge', ours, ours)).err).toContain('twice, expected two copies of a job')
  await writeFile(join(theirs, 'other.json'), text)
  expect((await line('merge', ours, join(theirs, 'other.json'))).err).toContain('expected a folder with job.json')
  expect(await readdir(join(ours, 'log'))).toEqual(['tablet-1.jsonl'])
})

/** A job's folder with these photos in it, by name. */
async function jobWithPhotos(photos: Readonly<Record<string, Uint8Array>>): Promise<string> {
  const to = await jobWith(one)
  await mkdir(join(to, 'photos'))
  for (const [name, bytes] of Object.entries(photos)) await writeFile(join(to, 'photos', name), bytes)
  return to
}
const jpegOf = (says: string): Buffer => Buffer.from(`\xff\xd8\xff${says}`, 'latin1')
const named = (bytes: Buffer): string => `${createHash('sha256').update(bytes).digest('hex')}.jpg`
const [jamb, sill] = [jpegOf('jamb'), jpegOf('sill')]

test('merging carries the photos that the other folder has, says how many, and again carries none', async () => {
  const [ours, theirs] = [
    await jobWithPhotos({ [named(jamb)]: jamb }),
    await jobWithPhotos({ [named(jamb)]: jamb, [named(sill)]: sill }),
  ]
  expect(await line('merge', ours, theirs)).toEqual({ code: 0, out: `1 photo from ${theirs}\n`, err: '' })
  expect(await readFile(join(ours, 'photos', named(sill)))).toEqual(sill)
  expect((await line('merge', ours, theirs)).out).toBe(`Nothing new in ${theirs}; everything it has is here.\n`)
  expect((await line('merge', await jobWith(one), theirs, '--lang', 'es')).out).toBe(`2 fotos de ${theirs}\n`)
})

test('a photo that is damaged, and a link to another place, are named and left out; the others come', async () => {
  const [ours, theirs] = [await jobWith(one), await jobWithPhotos({ [named(jamb)]: jpegOf('jam'), [named(sill)]: sill })]
  const elsewhere = await jobWithPhotos({ 'secret.jpg': jpegOf('secret') })
  const link = named(jpegOf('secret'))
  await symlink(join(elsewhere, 'photos', 'secret.jpg'), join(theirs, 'photos', link))
  const { code, out, err } = await line('merge', ours, theirs)
  expect([code, out]).toEqual([1, `1 photo from ${theirs}\n`])
  expect(err).toContain(`left out, ${theirs}/photos/${named(jamb)}: Unexpected content, expected the photo of that name;`)
  expect(err).toContain(`left out, ${theirs}/photos/${link}: Unexpected link to another place`)
  expect(await readdir(join(ours, 'photos'))).toEqual([named(sill)])
})

test('where photos find no room the log is merged all the same, and it is said', async () => {
  const [ours, theirs] = [await jobWith(one), await jobWithPhotos({ [named(sill)]: sill })]
  await writeFile(join(ours, 'photos'), 'no folder')
  await writeFile(join(theirs, 'log', 'tablet-2.jsonl'), over.map(({ text }) => `${text}\n`).join(''))
  const { code, out, err } = await line('merge', ours, theirs)
  expect([code, out]).toEqual([2, `tablet-2: 1 entry from ${theirs}\n`])
  expect(err).toContain('expected room for the photos; the log is merged')
})

test('both run as processes of their own', async () => {
  const [ours, theirs] = [await jobWith(one), await jobWith(over)]
  expect((await started('merge', ours, theirs)).out).toContain('tablet-2: 1 entry')
  expect((await started('log', ours)).out).toContain('84 1/2 in → 85 in')
}, 60_000)
