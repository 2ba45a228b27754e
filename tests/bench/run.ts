// Prints how fast Evenhem is, as ratios to what the same machine does in the same run. Speed is never a test.
// All parts, or the ones that are named: `npm run bench -- read plan rods log photos server viewer`.
import { cpus, loadavg } from 'node:os'
import { log } from './log.ts'
import { photos } from './photos.ts'
import { plan } from './plan.ts'
import { read } from './read.ts'
import { rods } from './rods.ts'
import { server } from './server.ts'
import { viewer } from './viewer.ts'

const parts: ReadonlyMap<string, () => void | Promise<void>> = new Map(
  Object.entries({ read, plan, rods, log, photos, server, viewer }),
)
const named = process.argv.slice(2)
const strange = named.filter((name) => !parts.has(name))

/** What else runs makes times longer and ratios restless: whoever reads the numbers should know. */
const load = () => console.log(`${cpus().length} cores, ${loadavg()[0]?.toFixed(1)} programs at work in the last minute`)

if (strange.length > 0) {
  console.error(
    `Unexpected part ${strange.join(', ')}, expected some of ${[...parts.keys()].join(', ')}; name those, or none for all.`,
  )
  process.exitCode = 1
} else {
  load()
  for (const [name, part] of parts) if (named.length === 0 || named.includes(name)) await part()
  console.log()
  load()
}
