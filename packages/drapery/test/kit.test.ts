import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { test } from 'vitest'
import { examples } from '../../../tests/tools/examples.ts'
import { drapery } from '../src/index.ts'

conformance(drapery, {
  test,
  createPlanner,
  with: [rodAndRing, returns],
  jobs: examples,
  verdicts: { 'drapery/mount': ['unknown'], 'drapery/around-corner': ['fail'] },
})
