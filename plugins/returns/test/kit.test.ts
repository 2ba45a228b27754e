import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { test } from 'vitest'
import { examples } from '../../../tests/tools/examples.ts'
import { returns } from '../src/index.ts'

// Examples of one window, and the larger ones that are about this.
const larger = ['heron-point']
const jobs = examples.filter(({ name, places }) => places.length === 1 || larger.includes(name))
conformance(returns, { test, createPlanner, with: [drapery, rodAndRing], jobs })
