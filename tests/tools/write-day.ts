// Writes the log of schema/examples/heron-point-day anew, as its script goes.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { filesOf, replay } from './day.ts'
import { heronPointDay } from './heron-point-day.ts'

const folder = fileURLToPath(new URL('../../schema/examples/heron-point-day/log/', import.meta.url))
const { lines } = replay(heronPointDay)
for (const [file, text] of filesOf(lines, heronPointDay.tablets)) writeFileSync(folder + file, text)
console.log(`${lines.length} entries`)
