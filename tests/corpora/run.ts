// `npm run test:corpora -- <folder>`: public collections of hard inputs, which this repository does not hold. See README of that folder.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const [folder, ...more] = process.argv.slice(2)
if (!folder || !existsSync(folder)) {
  console.error(`Unexpected folder ${folder ?? 'none'}, expected the collections; write npm run test:corpora -- <folder>`)
  process.exit(2)
}
const words = [
  `${root}node_modules/vitest/vitest.mjs`,
  'run',
  '--config',
  'tests/vitest.config.ts',
  '--project',
  'corpora',
  ...more,
]
const { status } = spawnSync(process.execPath, words, {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, EVENHEM_CORPORA: resolve(folder) },
})
process.exitCode = status ?? 1
