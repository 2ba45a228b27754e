import { randomUUID } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { mkdir, rename, rm } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { LaunchOptions } from 'playwright'

const modules = fileURLToPath(new URL('../../node_modules/', import.meta.url))
const onSystem = ['/usr/bin/chromium', '/usr/bin/google-chrome', '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome']
// Not the npm package's own list: that one turns web security off and runs everything in one process.
const args = [
  '--no-sandbox',
  '--no-zygote',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

// The package holds a Linux program; it is a headless shell, which needs half the time of a whole browser.
const npmRuns = process.platform === 'linux' && process.arch === 'x64'

/**
 * Options with which playwright launches a real Chromium: the one from npm, unpacked once, where it runs, else the system's.
 * `EVENHEM_CHROMIUM` says otherwise: `npm`, `system` or the path of a browser.
 */
export async function chromium(): Promise<LaunchOptions> {
  const wanted = process.env.EVENHEM_CHROMIUM ?? (npmRuns ? 'npm' : 'system')
  if (wanted === 'npm') return fromNpm()
  const executablePath = wanted === 'system' ? onSystem.find((path) => existsSync(path)) : wanted
  if (!executablePath || !existsSync(executablePath))
    throw new Error(`Unexpected EVENHEM_CHROMIUM=${wanted}, expected "npm", "system" or the path of a browser; nothing is there.`)
  return { executablePath, args, env: environment() }
}

async function fromNpm(): Promise<LaunchOptions> {
  const { version } = JSON.parse(readFileSync(`${modules}@sparticuz/chromium/package.json`, 'utf8'))
  const folder = `${modules}.cache/chromium-${version}`
  if (!existsSync(folder)) await unpack(folder)
  return {
    executablePath: `${folder}/chromium`,
    args,
    env: { ...environment(), LD_LIBRARY_PATH: `${folder}/al2023/lib`, FONTCONFIG_PATH: `${folder}/fonts` },
  }
}

/** Unpacks beside and renames: two test files that start at once, in one process or two, never see half a browser. */
async function unpack(folder: string): Promise<void> {
  const beside = `${folder}.${randomUUID()}`
  await mkdir(beside, { recursive: true })
  // The package reads both when it is imported: where to unpack, and that its shared libraries are wanted too.
  await withEnvironment(
    { TMPDIR: beside, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x', LD_LIBRARY_PATH: undefined, FONTCONFIG_PATH: undefined },
    async () => {
      const { default: packed } = await import('@sparticuz/chromium')
      packed.setGraphicsMode = false
      await packed.executablePath()
    },
  )
  await rename(beside, folder).catch(async (error) => {
    if (!existsSync(folder)) throw error
    await rm(beside, { recursive: true })
  })
}

async function withEnvironment(changes: Readonly<Record<string, string | undefined>>, run: () => Promise<void>): Promise<void> {
  const before = Object.keys(changes).map((name) => [name, process.env[name]] as const)
  put(Object.entries(changes))
  await run().finally(() => put(before))
}

function put(values: readonly (readonly [name: string, value: string | undefined])[]): void {
  for (const [name, value] of values) {
    if (value === undefined) delete process.env[name]
    else process.env[name] = value
  }
}

const environment = (): Record<string, string> =>
  Object.fromEntries(Object.entries(process.env).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])))
