import { defaults } from '@evenhem/drapery'
import { checkReckonings, createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { exampleOf } from '../tools/examples.ts'
import { jobOf } from '../tools/jobs.ts'
import { effort } from '../tools/long.ts'

/** 1,000 jobs when all is asked for; CI takes the first hundred. */
const jobs = effort === 'all' ? 1000 : 100
const planner = createPlanner(plugins)

test(`every reckoning of ${jobs} generated jobs comes to its value, and its leaves hold what they say`, () => {
  let reckonings = 0
  for (let seed = 1; seed <= jobs; seed++) {
    const { found, ordered, places } = exampleOf(`seed ${seed}`, JSON.stringify(jobOf(seed, 3, seed % 3, seed % 2 === 0)))
    for (const plan of places.map((place) => planner.window(found, ordered, place))) {
      expect(plan.faults, `seed ${seed}`).toEqual([])
      expect(checkReckonings(plan, found, defaults), `seed ${seed}`).toEqual([])
      const names = plan.reckonings.map(({ name }) => name)
      expect(new Set(names).size, `seed ${seed}: every reckoning has a name of its own`).toBe(names.length)
      reckonings += plan.reckonings.length
    }
  }
  console.log(`reckonings: ${reckonings} in ${jobs} jobs`)
  expect(reckonings).toBeGreaterThan(jobs * 50)
})
