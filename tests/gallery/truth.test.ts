import { figuresOf } from '@evenhem/drawing'
import { expect, test } from 'vitest'
import { exampleOf, examples } from '../tools/examples.ts'
import { jobOf } from '../tools/jobs.ts'
import { markedSheets, scenesOf, sheets, wrong, wrongMarks } from './sheets.ts'

// Every fourth example on one of the three sheets in turn; `npm run test:long` draws all of them on all three.
test.each(
  examples
    .filter((_, n) => n % 4 === 0)
    .map((example, k) => ({ name: example.name, example, sheet: sheets[k % sheets.length] as (typeof sheets)[number] })),
)(
  '$name: no label stands on another or leaves its sheet, every line is as long as it says, and all has words',
  ({ example, sheet }) => {
    for (const each of scenesOf(example, [sheet])) expect(wrong(each), each.of).toEqual([])
  },
)

// Every other example, the languages in turn; `npm run test:long` has both on every sheet of all.
test('no hole that is pencilled is left out on tablet or paper, and its caption is whole everywhere', () => {
  const some = examples.filter((_, n) => n % 2 === 0)
  const all = some.flatMap((example, n) =>
    markedSheets(example, n % 2 === 0 ? 'en' : 'es', [sheets[n % sheets.length] as (typeof sheets)[number]]),
  )
  for (const each of all) expect(wrongMarks(each), each.of).toEqual([])
  expect(all.length).toBeGreaterThan(50)
})

test('windows of a random job are drawn true to scale, without a label on another', () => {
  const scenes = scenesOf(exampleOf('seed 1', JSON.stringify(jobOf(1, 5, 4, true))))
  for (const each of scenes) expect(wrong(each), each.of).toEqual([])
  expect(scenes.flatMap(({ scene }) => figuresOf(scene)).length).toBeGreaterThan(120)
})
