import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { programs } from './browsers.ts'
import type { Driven, Running, Size } from './driven.ts'
import { type Command, openSession } from './web-driver.ts'

const capabilities = {
  browserName: 'MiniBrowser',
  'webkitgtk:browserOptions': { binary: programs.webkitBrowser, args: ['--automation'] },
}
// Its tool bar would keep the window wider than a phone.
const narrowToolBar = '* { min-width: 0; min-height: 0; padding: 0; margin: 0; border-width: 0; font-size: 1px }'

/** WebKitGTK's browser on a screen that nobody sees, by its own driver. What it keeps lies in a folder that goes with it. */
export async function startWebkit(): Promise<Running> {
  const home = await mkdtemp(join(tmpdir(), 'evenhem-webkit-'))
  await mkdir(join(home, 'gtk-3.0'))
  await writeFile(join(home, 'gtk-3.0', 'gtk.css'), narrowToolBar)
  const [screen, display] = await startScreen()
  const [driver, address] = await startDriver(home, display)
  return {
    open: async () => driven(await openSession(address, capabilities)),
    close: async () => {
      await ended(driver)
      await ended(screen)
      await rm(home, { recursive: true, maxRetries: 10 })
    },
  }
}

/** The server of a screen; it chooses a number that is free, and says which when it is ready. */
async function startScreen(): Promise<readonly [screen: ChildProcess, display: string]> {
  const words = ['-displayfd', '1', '-screen', '0', '1280x1400x24', '-nolisten', 'tcp']
  const screen = spawn(programs.screen, words, { stdio: ['ignore', 'pipe', 'ignore'] })
  const [number] = await once(screen.stdout, 'data')
  return [screen, `:${String(number).trim()}`]
}

async function startDriver(home: string, display: string): Promise<readonly [driver: ChildProcess, address: string]> {
  const port = await freePort()
  const own = { XDG_CONFIG_HOME: home, XDG_CACHE_HOME: home, XDG_DATA_HOME: home }
  const env = { ...process.env, ...own, DISPLAY: display, LANG: 'C.UTF-8', LANGUAGE: 'en' }
  const driver = spawn(programs.webkitDriver, [`--port=${port}`, '--host=127.0.0.1'], { stdio: 'ignore', env })
  const address = `http://127.0.0.1:${port}`
  while (!(await answers(address)))
    if (driver.exitCode !== null) throw new Error(`${programs.webkitDriver} ended before it answered.`)
  return [driver, address]
}

const answers = (address: string): Promise<boolean> =>
  fetch(`${address}/status`).then(
    ({ ok }) => ok,
    () => false,
  )

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const address = server.address()
  server.close()
  await once(server, 'close')
  return typeof address === 'object' && address ? address.port : 0
}

async function ended(started: ChildProcess): Promise<void> {
  const end = once(started, 'exit')
  if (started.exitCode === null && started.kill()) await end
}

interface Point {
  readonly x: number
  readonly y: number
}

/** The driver takes no parts of a drawing for what can be clicked, so it is told where to press; whatever lies there gets it. */
const middleOf = (find: string): string => `(...given) => {
  const found = (${find})(...given)
  found?.scrollIntoView({ block: 'nearest' })
  const box = found?.getBoundingClientRect()
  return box && { x: Math.round(box.x + box.width / 2), y: Math.round(box.y + box.height / 2) }
}`
const pressAt = (point: Point) => ({
  type: 'pointer',
  id: 'finger',
  parameters: { pointerType: 'mouse' },
  actions: [
    { type: 'pointerMove', duration: 0, origin: 'viewport', ...point },
    { type: 'pointerDown', button: 0 },
    { type: 'pointerUp', button: 0 },
  ],
})

function driven(session: Command): Driven {
  const execute = <Value>(script: string, args: readonly unknown[]) =>
    session<Value>('POST', '/execute/sync', { script: `return (${script})(...arguments)`, args })
  let faults: readonly string[] = []
  // A page takes what it told with it when it goes.
  const hear = async () => {
    faults = [...faults, ...(await execute<readonly string[]>('() => (self.told ?? []).splice(0)', []))]
  }
  return {
    go: async (address) => {
      await hear()
      await session('POST', '/url', { url: address })
    },
    run: (work, ...given) => execute(String(work), given),
    touch: async (find, ...given) => {
      const middle = await execute<Point | null>(middleOf(String(find)), given)
      if (middle) await session('POST', '/actions', { actions: [pressAt(middle)] })
      return middle !== null
    },
    become: async (size) => {
      await session('POST', '/window/rect', { ...size })
      const { width, height } = await execute<Size>('() => ({ width: innerWidth, height: innerHeight })', [])
      // The tool bar takes its share of the window.
      await session('POST', '/window/rect', { width: 2 * size.width - width, height: 2 * size.height - height })
    },
    faults: async () => {
      await hear()
      const told = faults
      faults = []
      return told
    },
    close: async () => {
      await session('DELETE', '')
    },
  }
}
