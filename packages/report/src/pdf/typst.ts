import { type ChildProcessByStdio, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { fontFiles } from './faces.ts'
import { giveBack } from './memory.ts'

const require = createRequire(import.meta.url)
/** Found by its package, so that a bundle finds it too. */
const found = (name: 'report.typ' | 'typesetter.js'): string => require.resolve(`@evenhem/report/${name}`)

/** A document that is being put together, in a folder of its own that goes away with it, and also where this process ends before. */
export interface Document {
  /** Gives it a file, by a name of letters, digits, dots and dashes. It is on the disk at once: held here it would take the memory that setting needs. */
  readonly add: (name: string, bytes: string | Uint8Array) => void
  /**
   * Sets `report.json`. `timestamp`: when it was made, in seconds since 1970. Rejects with all that was said when something cannot be set, PDF/UA-1 forbids it,
   * or a font is missing.
   */
  readonly set: (timestamp: number) => Promise<Uint8Array>
  readonly away: () => void
}

export function newDocument(): Document {
  const folder = mkdtempSync(join(tmpdir(), 'evenhem-typeset-'))
  const goes: (() => void)[] = [() => rmSync(folder, { recursive: true, force: true, maxRetries: 3 })]
  const away = (): void => {
    process.off('exit', away)
    for (const go of goes) go()
  }
  process.once('exit', away)
  const add: Document['add'] = (name, bytes) => writeFileSync(join(folder, name), bytes)
  const set: Document['set'] = async (timestamp) => {
    add('report.typ', readFileSync(found('report.typ')))
    add('setting.json', JSON.stringify({ timestamp, fonts: fontFiles() }))
    await giveBack()
    const typesetter = started(folder)
    goes.unshift(() => typesetter.kill('SIGKILL'))
    await ended(typesetter)
    return readFile(join(folder, 'report.pdf'))
  }
  return { add, set: (timestamp) => set(timestamp).finally(away), away }
}

type Typesetter = ChildProcessByStdio<null, null, Readable>

/** How the C library of Linux hands memory back: large pieces at once, and all out of one place. Setting holds a tenth less than without (measured). */
const memory = { MALLOC_ARENA_MAX: '1', MALLOC_MMAP_THRESHOLD_: '32768' }

const started = (folder: string): Typesetter =>
  spawn(process.execPath, [found('typesetter.js'), folder], {
    env: { ...process.env, ...memory },
    stdio: ['ignore', 'ignore', 'pipe'],
    windowsHide: true,
  })

const mostSaid = 20_000

/** Until it has set its document. Rejects with what it said when it could not. */
async function ended(typesetter: Typesetter): Promise<void> {
  let said = ''
  typesetter.stderr.setEncoding('utf8').on('data', (text) => {
    said = (said + text).slice(0, mostSaid)
  })
  const [code, signal] = await once(typesetter, 'close')
  if (code !== 0) throw unset(said || `its process ended by ${signal ?? code}`)
}

const unset = (trouble: string): Error =>
  new Error(`Unexpected trouble while setting the PDF, expected none; look at the template report.typ: ${trouble}`)
