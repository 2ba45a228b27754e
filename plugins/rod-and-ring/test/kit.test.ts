import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { test } from 'vitest'
import { examples } from '../../../tests/tools/examples.ts'
import { rodAndRing } from '../src/index.ts'

conformance(rodAndRing, { test, createPlanner, with: [drapery, returns], jobs: examples })
