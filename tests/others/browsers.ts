import { existsSync, readdirSync } from 'node:fs'

export type BrowserName = 'firefox' | 'webkit'

/** A program that a browser needs, and the package of the system that brings it. */
interface Needed {
  readonly program: string
  readonly from: string
}

const libraries = '/usr/lib'
/** The folder of WebKitGTK's own programs is named after the machine. */
const ofMachine = (): string => {
  const folders = existsSync(libraries) ? readdirSync(libraries).map((name) => `${libraries}/${name}/webkit2gtk-4.1`) : []
  return folders.find((folder) => existsSync(`${folder}/MiniBrowser`)) ?? `${libraries}/webkit2gtk-4.1`
}

export const programs = {
  firefox: '/usr/bin/firefox-esr',
  webkitDriver: '/usr/bin/WebKitWebDriver',
  webkitBrowser: `${ofMachine()}/MiniBrowser`,
  screen: '/usr/bin/Xvfb',
}

const needed: Readonly<Record<BrowserName, readonly Needed[]>> = {
  firefox: [{ program: programs.firefox, from: 'firefox-esr' }],
  webkit: [
    { program: programs.webkitDriver, from: 'webkit2gtk-driver' },
    { program: programs.webkitBrowser, from: 'webkit2gtk-driver' },
    { program: programs.screen, from: 'xvfb' },
  ],
}
export const all = Object.keys(needed) as readonly BrowserName[]

const isBrowser = (name: string): name is BrowserName => Object.hasOwn(needed, name)

/** The browsers that `EVENHEM_OTHERS` asks for: names with commas between them. Throws when it names another, or none. */
export function asked(names: string): readonly BrowserName[] {
  const each = names.split(',').map((name) => name.trim())
  const known = each.filter(isBrowser)
  if (known.length === each.length) return [...new Set(known)]
  throw new Error(`Unexpected EVENHEM_OTHERS=${names}, expected some of ${all.join(',')}; name them with a comma between.`)
}

/** Why a browser cannot run here, as a sentence; undefined when it can. */
export function missing(browser: BrowserName): string | undefined {
  const gone = needed[browser].find(({ program }) => !existsSync(program))
  if (!gone) return undefined
  const rest = all.filter((other) => other !== browser).join(',')
  return `Unexpected: no ${gone.program}, expected it for ${browser}; install the package ${gone.from}, or ask for others only with EVENHEM_OTHERS=${rest}.`
}
