import { cp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { signaturesAt } from '@evenhem/site-log'
import { expect, test } from 'vitest'
import { fileWith, folder, line } from './line.ts'
import { linesOf, record, shaOf, sign, signedDay, unsignedDay as unsigned, verified } from './signed.ts'

const window = '/rooms/living-room/windows/w1'

test('what is added after signing is told, of which tablet and from which line on, and is no fault', async () => {
  const job = await signedDay()
  const photo = shaOf('later')
  await record(
    job,
    'tablet-2',
    { place: `${window}/found/notes/n1`, value: 'One more ring' },
    { place: `${window}/found/notes/n2`, value: 'Two' },
  )
  await record(job, 'tablet-3', { place: `${window}/found/notes/n3`, value: 'Three' })
  const { code, out } = await line('verify', job)
  expect(code).toBe(0)
  expect(out).toMatch(/After that 2 entries of tablet-2 came, from log\/tablet-2\.jsonl:\d+ on; no fault\./)
  expect(out).toContain('After that 1 entry of tablet-3 came, from log/tablet-3.jsonl:1 on; no fault.')
  // Not even a photo that is still on its tablet is one of the signature's; the folder lacks it all the same.
  await record(job, 'tablet-3', { place: `${window}/found/photos/${photo}`, value: 'Later' })
  const { signatures, odd } = await verified(job)
  expect(signatures.at(-1).asSigned.photos).toBe(true)
  expect(odd).toMatchObject([{ code: 'verify-photo-lacks', file: 'log/tablet-3.jsonl', line: 2 }])
})

test('folders that were merged still belong together, either way', async () => {
  const ours = await signedDay()
  const theirs = join(await folder(), 'job')
  await cp(ours, theirs, { recursive: true })
  await record(theirs, 'tablet-2', { place: `${window}/found/notes/n1`, value: 'From the other tablet' })
  await record(ours, 'tablet-1', { place: `${window}/found/notes/n2`, value: 'From this tablet' })
  expect((await line('merge', ours, theirs)).code).toBe(0)
  expect((await line('merge', theirs, ours)).code).toBe(0)
  for (const job of [ours, theirs]) {
    const { code, isGood, signatures } = await verified(job)
    expect([code, isGood]).toEqual([0, true])
    expect(signatures.at(-1).findings.map(({ by, count }: { by: string; count: number }) => [by, count])).toEqual([
      ['tablet-1', 1],
      ['tablet-2', 1],
    ])
  }
})

test('who signed without having all lines of another tablet signed what was there', async () => {
  const job = await unsigned()
  const file = join(job, 'log/tablet-2.jsonl')
  const all = await readFile(file)
  await writeFile(file, all.subarray(0, all.indexOf('\n', all.length / 2) + 1))
  await sign(job, 'tablet-1', 'theirs', 'customer', 'Ida Marsh')
  await writeFile(file, all)
  const { code, signatures } = await verified(job)
  expect([code, signatures[0].findings]).toEqual([
    0,
    [expect.objectContaining({ code: 'seal/after', by: 'tablet-2', isFault: false })],
  ])
  // A copy that has less than was signed is told what it lacks.
  await writeFile(file, all.subarray(0, all.indexOf('\n') + 1))
  expect((await line('verify', job)).out).toMatch(
    /log\/tablet-2\.jsonl: Unexpected gap at \d+ entries from tablet-2:2 on, expected every line/,
  )
})

test('a signature that was put over or withdrawn is looked at all the same', async () => {
  const job = await signedDay()
  await record(job, 'tablet-1', { place: `${signaturesAt}/theirs` })
  const { code, out } = await line('verify', job)
  expect([code, out]).toEqual([
    0,
    expect.stringMatching(/Ida Marsh.*\n.*\n {2}This signature was withdrawn, or another one put over it; no fault\./),
  ])
})

test('where nothing is signed that is said, and what does not belong together all the same', async () => {
  const job = await unsigned()
  expect(await line('verify', job)).toEqual({
    code: 0,
    out: `Nothing is signed in ${job} yet.\nEverything belongs together.\n`,
    err: '',
  })
  const [photo = ''] = await readdir(join(job, 'photos'))
  await writeFile(join(job, 'photos', photo), 'other')
  expect(await line('verify', job)).toMatchObject({
    code: 1,
    out: expect.stringContaining(`In the folder\n  photos/${photo}: Unexpected bytes`),
  })
  await rename(join(job, 'photos', photo), join(job, 'photos', `${photo.slice(0, 64)}.clean.jpg`))
  expect(await line('verify', job)).toMatchObject({ code: 0, out: expect.stringContaining('Only a cleaned copy') })
})

test('a signature that its place refuses, and one whose seal cannot be read, are none and are named', async () => {
  const job = await unsigned()
  await sign(job, 'tablet-1', 'theirs', 'customer', 'Ida Marsh')
  const value = (await linesOf(job)).find(({ event }) => event.place.startsWith(signaturesAt))?.event.value as object
  await record(
    job,
    'tablet-3',
    { place: `${signaturesAt}/odd`, value: { ...value, role: 'neighbour' } },
    { place: `${signaturesAt}/bare`, value: 'Ida' },
  )
  const { code, signatures, odd } = await verified(job)
  expect([code, signatures.length]).toEqual([1, 1])
  expect(odd.map(({ file, line: row }: { file: string; line: number }) => [file, row])).toEqual([
    ['log/tablet-3.jsonl', 1],
    ['log/tablet-3.jsonl', 2],
  ])
  // Without a job nothing says what a place takes; a seal must be there to be looked at.
  await writeFile(join(job, 'job.json'), '{')
  expect((await verified(job)).odd).toMatchObject([{ code: 'verify-no-seal', line: 2 }])
})

test('what cannot be read ends with 2', async () => {
  const job = await unsigned()
  await writeFile(join(job, 'job.json'), 'no job')
  expect((await line('verify', job)).code).toBe(2)
  expect(await line('verify', join(job, 'gone'))).toMatchObject({ code: 2, out: '' })
  expect((await line('verify', await fileWith('{}', 'other.json'))).err).toContain(
    'expected a folder with job.json, a log and photos',
  )
  await rm(join(job, 'log'), { recursive: true })
  await writeFile(join(job, 'log'), 'no folder')
  expect(await line('verify', job)).toMatchObject({ code: 2, err: expect.stringContaining('expected a folder that can be read') })
})

test('the log shows who signed and what was accepted, not how it was drawn', async () => {
  const job = await signedDay()
  const { out } = await line('log', job)
  expect(out).toMatch(/job, signature theirs +customer Ida Marsh, accepted with open points\n/)
  expect(out).toMatch(/job, signature ours +installer Odo Fennel\n/)
  expect((await line('log', job, '--lang', 'es')).out).toMatch(
    /firma theirs +cliente Ida Marsh, aceptado con puntos pendientes\n/,
  )
})
