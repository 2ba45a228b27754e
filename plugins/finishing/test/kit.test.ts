import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { traverse } from '@evenhem/plugin-traverse'
import { test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { finishing } from '../src/index.ts'

conformance(finishing, {
  test,
  createPlanner,
  with: [drapery, rodAndRing, traverse],
  jobs: [example('dressed-and-steamed'), example('tern-hollow')],
})
