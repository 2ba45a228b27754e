import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { test } from 'vitest'
import { examples } from '../../../tests/tools/examples.ts'
import { rodAndRing } from '../src/index.ts'

// Examples of one window, and the larger ones that are about this.
const larger = ['heron-point', 'about-the-rod']
const jobs = examples.filter(({ name, places }) => places.length === 1 || larger.includes(name))
conformance(rodAndRing, { test, createPlanner, with: [drapery, returns], jobs })
