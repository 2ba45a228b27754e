import { mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { signaturesAt } from '@evenhem/site-log'
import { beforeAll, describe, expect, test } from 'vitest'
import { line } from './line.ts'
import { signedDay, verified } from './signed.ts'

describe('a folder that was signed', () => {
  let job = ''
  const at = (name: string) => join(job, name)
  beforeAll(async () => {
    const within = await mkdtemp(join(tmpdir(), 'evenhem-'))
    job = await signedDay(within)
    return () => rm(within, { recursive: true })
  })
  /** What is said while a file has other bytes; the file is as before afterwards. */
  async function whileOther(name: string, change: (bytes: Buffer) => Uint8Array) {
    const before = await readFile(at(name))
    await writeFile(at(name), change(Buffer.from(before)))
    try {
      const { code, signatures, odd } = await verified(job)
      const faults = [...signatures.flatMap(({ findings }: { findings: object[] }) => findings), ...odd]
      return { code, faults: faults.filter((each) => each.isFault), signatures }
    } finally {
      await writeFile(at(name), before)
    }
  }
  const flipped =
    (index: number, bit = 1) =>
    (bytes: Buffer) => {
      bytes[index] = (bytes[index] ?? 0) ^ bit
      return bytes
    }
  const replaced = (row: number, text: string | RegExp, by: string) => (bytes: Buffer) => {
    const rows = bytes.toString().split('\n')
    const was = rows[row - 1] ?? ''
    rows[row - 1] = was.replace(text, by)
    if (rows[row - 1] === was) throw new Error(`Unexpected line ${row} without ${text}: ${was}`)
    return Buffer.from(rows.join('\n'))
  }
  const rowsIn = async (name: string) => (await readFile(at(name), 'utf8')).trimEnd().split('\n')

  test('belongs together, and every part of every signature is said to', async () => {
    const { code, out, err } = await line('verify', job)
    expect([code, err]).toEqual([0, ''])
    const last = (await rowsIn('log/tablet-1.jsonl')).length
    expect(out).toContain(`Customer Ida Marsh, 2026-12-08 17:30 UTC, log/tablet-1.jsonl:${last - 1}
  Accepted with open points
  job.json   as signed
  log        as signed
  photos     as signed
  signature  as signed
  After that 1 entry of tablet-1 came, from log/tablet-1.jsonl:${last} on; no fault.

Installer Odo Fennel, 2026-12-08 17:30 UTC, log/tablet-1.jsonl:${last}
  job.json   as signed
  log        as signed
  photos     as signed
  signature  as signed

Everything belongs together.
`)
  })

  test('a changed byte of job.json is told, be it still a job or not', async () => {
    const bytes = await readFile(at('job.json'))
    for (const index of [bytes.indexOf('Heron') + 1, bytes.length - 1]) {
      const { code, faults, signatures } = await whileOther('job.json', flipped(index))
      expect([code, faults.length > 0]).toEqual([1, true])
      for (const each of faults) expect(each).toMatchObject({ code: 'seal/job', file: 'job.json' })
      expect(signatures.at(-1).asSigned).toEqual({ job: false, log: true, photos: true, signature: true })
    }
    await writeFile(at('job.json'), bytes.subarray(1))
    const { code, out, err } = await line('verify', job)
    await writeFile(at('job.json'), bytes)
    expect([code, out]).toEqual([1, expect.stringMatching(/job\.json {3}not as signed\n[\s\S]*Not everything belongs together/)])
    expect(err).toContain('job.json:2:3 error job/no-object')
  })

  test('a changed value in a line is told by file and line, whether it is the first, one between or the last that was signed', async () => {
    const [one, two] = ['log/tablet-1.jsonl', 'log/tablet-2.jsonl']
    const signed = (await rowsIn(one)).findIndex((row) => row.includes(`${signaturesAt}/theirs`))
    for (const [name, row] of [
      [one, 1],
      [one, signed],
      [two, 100],
    ] as const) {
      const { code, faults } = await whileOther(name, replaced(row, /(?<="clock":".{18})\d/, '9'))
      const told = expect.objectContaining({ code: 'seal/line-changed', file: name, line: row })
      expect([code, faults]).toEqual([1, expect.arrayContaining([told])])
    }
  })
  test('a changed byte that makes a line none is told at that line, and that the signed line is missing', async () => {
    const name = 'log/tablet-2.jsonl'
    const rows = await rowsIn(name)
    const starts = (row: number) =>
      Buffer.byteLength(
        rows
          .slice(0, row - 1)
          .map((text) => `${text}\n`)
          .join(''),
      )
    for (const row of [1, rows.length]) {
      const { code, faults } = await whileOther(name, flipped(starts(row)))
      expect([code, faults]).toEqual([
        1,
        expect.arrayContaining([
          expect.objectContaining({ code: 'log/no-json', file: name, line: row }),
          expect.objectContaining({ code: 'seal/line-missing', by: 'tablet-2', n: row, to: row, file: name }),
        ]),
      ])
    }
    // The last line feed: a line that does not end was never confirmed.
    const torn = await whileOther(name, (bytes) => bytes.subarray(0, -1))
    expect(torn.faults.map(({ code }) => code)).toEqual(expect.arrayContaining(['seal/line-missing', 'log/torn']))
  })
  test('a changed signature is told, also the last line of all, which no other line proves', async () => {
    const name = 'log/tablet-1.jsonl'
    const row = (await rowsIn(name)).length
    for (const [text, by] of [
      ['"Odo Fennel","strokes', '"Odo Fennes","strokes'],
      ['0.25', '0.26'],
      [/(?<="photos":")./, 'x'],
    ] as const) {
      const { code, faults } = await whileOther(name, replaced(row, text, by))
      expect([code, faults[0]]).toEqual([1, expect.objectContaining({ file: name, line: row })])
    }
    const accepted = await whileOther(name, replaced(row - 1, '"with open', '"without open'))
    expect(accepted.signatures.find(({ name: who }: { name: string }) => who === 'Ida Marsh').asSigned.signature).toBe(false)
    expect(accepted.signatures.at(-1).asSigned).toMatchObject({ log: false, signature: true })
  })

  test('a changed byte of a photo is told by its file, and a photo that is gone by the line that names it', async () => {
    const [name = ''] = (await readdir(at('photos'))).filter((each) => each.endsWith('.jpg'))
    const { code, faults, signatures } = await whileOther(`photos/${name}`, flipped(40))
    expect([code, signatures.at(-1).asSigned]).toEqual([1, { job: true, log: true, photos: false, signature: true }])
    expect(faults).toContainEqual(expect.objectContaining({ code: 'verify-photo-changed', file: `photos/${name}` }))
    expect(faults).toContainEqual(expect.objectContaining({ code: 'seal/photo', photo: name.slice(0, 64) }))
    await rename(at(`photos/${name}`), at('photos/away.jpg'))
    const gone = await verified(job)
    await rename(at('photos/away.jpg'), at(`photos/${name}`))
    const named = (await rowsIn('log/tablet-1.jsonl')).findIndex((row) => row.includes(`/found/photos/${name.slice(0, 64)}`))
    expect(gone).toMatchObject({ code: 1, odd: [{ code: 'verify-photo-lacks', file: 'log/tablet-1.jsonl', line: named + 1 }] })
  })

  test('it is said in Spanish', async () => {
    const before = await readFile(at('log/tablet-2.jsonl'))
    await writeFile(at('log/tablet-2.jsonl'), replaced(7, /(?<="clock":".{18})\d/, '9')(Buffer.from(before)))
    const { out } = await line('verify', job, '--lang', 'es')
    await writeFile(at('log/tablet-2.jsonl'), before)
    expect(out).toContain('Cliente Ida Marsh')
    expect(out).toMatch(/registro {10}no como se firmó\n/)
    expect(out).toContain('log/tablet-2.jsonl:7: Otro contenido inesperado de la anotación tablet-2:7')
  })
})
