import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { changed, conformance } from '@evenhem/plugin/kit'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { punchList } from '../src/index.ts'

const { ordered } = example('left-to-mend')
const place = '/rooms/garden-room/windows/w1/with/punch-list/points/p1'
const ofHouse = '/with/punch-list/points'
// A point that says nothing of what is wrong is asked for it, one of the job too; who mends it may be left open. What is unsafe in the house
// was mended there, and once was not.
const jobs = [
  ordered,
  changed(ordered, `${place}/what`),
  changed(ordered, `${ofHouse}/p1/what`),
  changed(ordered, `${ofHouse}/p2/state`),
]
const verdicts = { 'punch-list/told': ['pass'], 'punch-list/agreed': ['pass', 'unknown'] } as const
conformance(punchList, { test, createPlanner, with: [drapery, rodAndRing], jobs, verdicts })
