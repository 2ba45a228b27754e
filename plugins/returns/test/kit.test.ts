import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { test } from 'vitest'
import { examples } from '../../../tests/tools/examples.ts'
import { returns } from '../src/index.ts'

conformance(returns, { test, createPlanner, with: [drapery, rodAndRing], jobs: examples })
