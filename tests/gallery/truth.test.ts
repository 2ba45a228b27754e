import { figuresOf, paper, phone, screen } from '@evenhem/drawing'
import { describe, expect, test } from 'vitest'
import { exampleOf, examples } from '../tools/examples.ts'
import { jobOf } from '../tools/jobs.ts'
import { sayFor, sceneOf, shown, windowsIn } from './scenes.ts'
import { faults } from './truth.ts'

const sheets = [
  { name: 'tablet', width: 820, height: 726, sizes: screen },
  { name: 'phone', width: 390, height: 380, sizes: phone },
  { name: 'paper', width: 190, height: 180, sizes: paper },
]
const numbersOf = (example: (typeof examples)[number]) => {
  const say = sayFor(example)
  return windowsIn(example).flatMap(({ place, layers }) =>
    sheets.flatMap((sheet) =>
      shown.map((each) => ({ scene: sceneOf(layers, each, say, sheet), of: `${place}, ${each.title}, ${sheet.name}` })),
    ),
  )
}

test.each(examples)('$name: no label stands on another or leaves its sheet, and every line is as long as it says', (example) => {
  for (const { scene, of } of numbersOf(example)) expect(faults(scene), of).toEqual([])
})
test('of every example every view says something, also to who cannot see it', () => {
  for (const { scene, of } of examples.flatMap(numbersOf)) {
    if (scene.items.length > 0) expect(scene.words.length, of).toBeGreaterThan(0)
  }
})
describe('random jobs', () => {
  test.each([1, 2, 3])('of seed %i are drawn true to scale, without a label on another', (seed) => {
    const example = exampleOf(`seed ${seed}`, JSON.stringify(jobOf(seed, 8, 4)))
    const scenes = numbersOf(example)
    for (const { scene, of } of scenes) expect(faults(scene), of).toEqual([])
    expect(scenes.flatMap(({ scene }) => figuresOf(scene)).length).toBeGreaterThan(200)
  })
})
