import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { signedDay, verified } from '../../packages/cli/test/signed.ts'
import { random } from '../tools/jobs.ts'
import { effort } from '../tools/long.ts'

// Bytes changed, taken out and put in anywhere in a folder that was signed: verify must name that file each time. CI takes a fixed slice.
const times = effort === 'all' ? 300 : 12

let within = ''
let job = ''
beforeAll(async () => {
  within = await mkdtemp(join(tmpdir(), 'evenhem-'))
  job = await signedDay(within)
})
afterAll(() => rm(within, { recursive: true }))

async function filesIn(folder: string): Promise<readonly string[]> {
  const names = await readdir(join(job, folder))
  return names.filter((name) => /^[0-9a-z-]+\.(jsonl|jpg)$/.test(name)).map((name) => `${folder}/${name}`)
}

const changes = {
  changed: (bytes: Buffer, at: number, by: number) => bytes.fill((bytes[at] ?? 0) ^ (1 << by), at, at + 1),
  'taken out': (bytes: Buffer, at: number) => Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1)]),
  'put in': (bytes: Buffer, at: number, by: number) =>
    Buffer.concat([bytes.subarray(0, at), Buffer.from([32 + by * 9]), bytes.subarray(at)]),
}

/** From where on nothing but the signature itself proves bytes: the last line of the tablet that signed last. There only the value is proven. */
function unprovenIn(file: string, bytes: Buffer): readonly [from: number, to: number] {
  if (file !== 'log/tablet-1.jsonl') return [0, 0]
  const from = bytes.lastIndexOf('\n', bytes.length - 2) + 1
  return [from, bytes.indexOf('"value":', from)]
}

test.each(Object.keys(changes) as (keyof typeof changes)[])(
  'a byte that is %s anywhere is told, and in which file',
  async (how) => {
    const next = random(8_001)
    const below = (most: number): number => Math.floor(next() * most)
    for (const file of ['job.json', ...(await filesIn('log')), ...(await filesIn('photos'))]) {
      const bytes = await readFile(join(job, file))
      const [from, to] = unprovenIn(file, bytes)
      for (let n = 0; n < times; n++) {
        const at = below(bytes.length)
        if (at >= from && at < to) continue
        await writeFile(join(job, file), changes[how](Buffer.from(bytes), at, below(7)))
        const { code, signatures, odd } = await verified(job)
        const faults = [...signatures.flatMap(({ findings }: { findings: object[] }) => findings), ...odd].filter(
          (each) => each.isFault,
        )
        expect([how, file, at, code, faults.some((each) => each.file === file)]).toEqual([how, file, at, 1, true])
      }
      await writeFile(join(job, file), bytes)
    }
    expect((await verified(job)).code).toBe(0)
  },
)
