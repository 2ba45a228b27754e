// Adds up the results that vitest wrote as JSON into a folder: `N passed, N failed`. Fails when something failed or nothing ran.
import { readdirSync, readFileSync } from 'node:fs'

const folder = process.argv[2]
const results = readdirSync(folder).map((name) => JSON.parse(readFileSync(`${folder}/${name}`, 'utf8')))
const total = (of) => results.reduce((sum, result) => sum + of(result), 0)
// A file that could not be loaded has no tests to count; it counts as one that failed.
const unloaded = (result) =>
  result.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.every(({ status }) => status !== 'failed'),
  ).length

const passed = total((result) => result.numPassedTests)
const failed = total((result) => result.numFailedTests + unloaded(result))
const left = total((result) => result.numPendingTests + result.numTodoTests)
if (left > 0) console.log(`${left} not run`)
console.log(`${passed} passed, ${failed} failed`)
process.exitCode = failed > 0 || left > 0 || passed === 0 ? 1 : 0
