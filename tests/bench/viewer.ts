import { execFile } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { buildServer, listen } from '@evenhem/server'
import { jobOf } from '../tools/jobs.ts'
import { median, tell } from './measure.ts'
import { type Pages, withPages } from './pages.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** What travels before and after the first paint, and how soon the sheet is drawn. Built into a folder of its own: `viewer/dist` may be in use. */
export async function viewer(): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'evenhem-bench-'))
  try {
    const built = join(folder, 'viewer')
    tellSizes(await builtInto(built))
    await withPages(join(folder, 'empty'), (pages) => tellReady(pages, folder, built))
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** Builds the viewer; returns what the build prints. */
const builtInto = async (built: string): Promise<string> =>
  (await promisify(execFile)(process.execPath, ['viewer/build.js', built], { cwd: root, timeout: 60_000 })).stdout

function tellSizes(said: string): void {
  const [first, planned, whole] = [...said.matchAll(/([\d.]+) kB/g)].map((found) => Number(found[1]))
  if (first === undefined || planned === undefined || whole === undefined)
    throw new Error(`Unexpected words of viewer/build.js, expected three sizes in kB: ${said}`)
  console.log('\nviewer, compressed script')
  tell({ what: 'before the first paint', is: first, unit: 'kB', limit: 60 })
  tell({ what: "with the plan's worker", is: planned, unit: 'kB', limit: 120 })
  tell({ what: 'in all, with what is loaded after the first paint', is: whole, unit: 'kB', limit: 120 })
}

const limits = [
  { windows: 12, times: 1.5 },
  { windows: 300, times: 2 },
  { windows: 3000, ms: 400 },
] as const
// The plan is there and the window's drawing, with its figures, is in the page.
const sheetIsReady = `(() => {
  const app = document.querySelector('evenhem-app')
  const sheet = app?.shadowRoot?.querySelector('window-sheet')
  const drawing = sheet?.shadowRoot?.querySelector('room-drawing')
  return drawing?.shadowRoot?.querySelector('svg .figure') && app.planText() !== undefined
})()`

async function tellReady({ visit, empty }: Pages, folder: string, built: string): Promise<void> {
  console.log('\nviewer ready, against an empty page of the same framework: median of fresh pages')
  for (const limit of limits) {
    await writeFile(join(folder, 'job.json'), JSON.stringify(jobOf(7, limit.windows, 0)))
    const server = buildServer({ job: folder, viewer: built })
    const address = await listen(server, 0)
    const [sheets, empties]: [number[], number[]] = [[], []]
    try {
      // They take turns, so that what else the machine does meets both.
      for (let n = 0; n < 9; n++) {
        empties.push(await empty())
        sheets.push(await visit(`${address}/#/room-0/w0`, sheetIsReady))
      }
    } finally {
      await server.close()
    }
    tellLimit(limit, median(sheets), median(empties))
  }
}

function tellLimit(limit: (typeof limits)[number], sheet: number, empty: number): void {
  const what = `${limit.windows} windows, the sheet is drawn`
  const note = `(${sheet.toFixed(0)} ms against ${empty.toFixed(0)} ms)`
  if ('times' in limit) tell({ what, is: sheet / empty, unit: '×', limit: limit.times, note })
  else tell({ what, is: sheet, unit: 'ms', limit: limit.ms, note: `(an empty page ${empty.toFixed(0)} ms)` })
}
