// `npm run test:others`: the sheet in browsers other than Chromium. `EVENHEM_OTHERS=firefox` asks for one of them only.
// With `--here` it runs nothing: it prints those that can run here, and says why the others cannot.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { all, asked, type BrowserName, missing } from './browsers.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

function here(): number {
  for (const browser of all) if (missing(browser)) console.error(`${browser} not run: ${missing(browser)}`)
  console.log(all.filter((browser) => !missing(browser)).join(','))
  return 0
}

function run(browsers: readonly BrowserName[], more: readonly string[]): number {
  const gone = browsers.flatMap((browser) => missing(browser) ?? [])
  for (const sentence of gone) console.error(sentence)
  if (gone.length > 0) return 2
  const words = [`${root}node_modules/vitest/vitest.mjs`, 'run', '--config', 'tests/vitest.config.ts', '--project', 'others']
  const env = { ...process.env, EVENHEM_OTHERS: browsers.join(',') }
  return spawnSync(process.execPath, [...words, ...more], { cwd: root, stdio: 'inherit', env }).status ?? 1
}

function main(words: readonly string[]): number {
  if (words[0] === '--here') return here()
  try {
    return run(asked(process.env.EVENHEM_OTHERS ?? all.join(',')), words)
  } catch (error) {
    console.error((error as Error).message)
    return 2
  }
}

process.exitCode = main(process.argv.slice(2))
