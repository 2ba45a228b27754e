import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { conformance } from '@evenhem/plugin/kit'
import { returns } from '@evenhem/plugin-returns'
import { test } from 'vitest'
import { examples } from '../../../tests/tools/examples.ts'
import { traverse } from '../src/index.ts'

const jobs = examples.filter(({ name }) => name === 'about-the-traverse-rod')
conformance(traverse, { test, createPlanner, with: [drapery, returns], jobs })
