import { tokens } from '@evenhem/job'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'

const planner = createPlanner(plugins)
/** What is ticked at the hand-over of each window of an example, by the window; without what is ticked everywhere. */
function shownIn(name: string): ReadonlyMap<string, readonly string[]> {
  const { ordered, found, places } = example(name)
  return new Map(
    places.map((place) => {
      const steps = planner
        .window(found, ordered, place)
        .steps.filter(({ id, plugin }) => id === 'hand-over' && plugin === 'drapery')
      const ticks = steps.flatMap(({ captures = [] }) => captures.map(({ at, as }) => `${as} ${tokens(at).at(-1)}`))
      expect(ticks.filter((tick) => /hemsEven|rubbishGone/.test(tick)).length).toBe(2 * steps.length)
      return [tokens(place).slice(-1).join(), ticks.filter((tick) => !/hemsEven|rubbishGone/.test(tick)).sort()]
    }),
  )
}

test('a pair on rings is drawn five times, its finials are tight, and spares are left where the order has some', () => {
  expect(shownIn('heron-point-day').get('w3')).toEqual(['tick drawnFiveTimes', 'tick finialsTight', 'tick sparesLeft'])
  expect([...shownIn('tern-hollow').values()].flat()).not.toContain('tick sparesLeft')
})
test('an overlap closes only where there is one, stationary panels are not drawn, and a wand or a motor is shown where it is', () => {
  const traverse = shownIn('about-the-traverse-rod')
  expect([traverse.get('fits'), traverse.get('rings-overlap')]).toEqual([
    ['tick drawnFiveTimes', 'tick overlapCloses'],
    ['tick drawnFiveTimes', 'tick finialsTight'],
  ])
  const drawn = shownIn('how-it-is-drawn')
  expect([...drawn].filter(([, ticks]) => ticks.includes('tick wandShown')).map(([window]) => window)).toEqual(['wand-too-high'])
  const motors = [...drawn].filter(([, ticks]) => ticks.includes('tick motorShown')).map(([window]) => window)
  expect(motors).toEqual(['motor-outlet', 'motor-far', 'motor-unsaid'])
  expect(shownIn('about-the-rod').get('side-support')).not.toContain('tick drawnFiveTimes')
})
