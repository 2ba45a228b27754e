import { drapery } from '@evenhem/drapery'
import type { Job } from '@evenhem/job'
import { inches } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { changed, conformance } from '@evenhem/plugin/kit'
import { test } from 'vitest'
import { plainPole } from './src/index.ts'

// A job that shows the plugin at work, as it is after reading: lengths are whole nanometres.
const pole = { id: 'pole', kind: 'plain-pole', name: 'Pole', projection: inches(3), drop: inches(1), cut: inches(80) }
const casing = { width: inches(60), top: inches(84), bottom: inches(24) }
const job: Job = {
  format: 'evenhem-job/1',
  units: 'in',
  job: { number: '1', name: 'House of the template', country: 'US' },
  hardware: [pole],
  rooms: [
    {
      id: 'den',
      name: 'Den',
      windows: [
        {
          id: 'w1',
          name: 'Window 1',
          walls: [{ id: 'a', openings: [{ id: 'o', casing }] }],
          treatments: [
            { id: 'over', hardware: 'pole', draw: 'pair', rod: { width: inches(76) }, panels: [{ id: 'left' }, { id: 'right' }] },
          ],
        },
      ],
    },
  ],
}
const jobs = [job, changed(job, '/hardware/pole/cut', inches(70)), changed(job, '/hardware/pole/drop')]

conformance(plainPole, { test, createPlanner, with: [drapery], jobs })
