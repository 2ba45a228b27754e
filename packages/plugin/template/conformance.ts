import { readFileSync } from 'node:fs'
import { drapery } from '@evenhem/drapery'
import { extensionsOf, formatDiagnostics, readJob } from '@evenhem/job/read'
import { createPlanner } from '@evenhem/planner'
import { changed, conformance } from '@evenhem/plugin/kit'
import { test } from 'vitest'
import { plainPole } from './src/index.ts'

// A job that shows the plugin at work, in one window as it should be and in one not; read as every job file is.
const file = readFileSync(new URL('job.json', import.meta.url))
const { job, diagnostics, text } = readJob(file, extensionsOf([drapery, plainPole]))
if (!job) throw new Error(formatDiagnostics(diagnostics, text, { file: 'job.json' }))

// The second lacks a member, so that the rule that needs it asks.
conformance(plainPole, { test, createPlanner, with: [drapery], jobs: [job, changed(job, '/hardware/pole/drop')] })
