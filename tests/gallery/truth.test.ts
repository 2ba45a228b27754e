import type { Hole } from '@evenhem/drapery/facts'
import { figuresOf, paper, phone, screen } from '@evenhem/drawing'
import { expect, test } from 'vitest'
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

/** Told once of each scene: what is wrong with it, and that it says something to who cannot see it. */
const wrong = (each: ReturnType<typeof numbersOf>[number]): readonly string[] => [
  ...faults(each.scene),
  ...(each.scene.items.length > 0 && each.scene.words.length === 0 ? ['it has no words'] : []),
]

test.each(examples)(
  '$name: no label stands on another or leaves its sheet, every line is as long as it says, and all has words',
  (example) => {
    for (const each of numbersOf(example)) expect(wrong(each), each.of).toEqual([])
  },
)

/** What is pencilled on the wall at a window, on the marks sheet: with how many of them it was asked for, and what is said beside each. */
const marksSheets = (example: (typeof examples)[number], language: 'en' | 'es') => {
  const say = sayFor(example, language)
  const marks = shown.find(({ view }) => view === 'marks') as (typeof shown)[number]
  return windowsIn(example).flatMap(({ place, plan, layers }) =>
    sheets.map((sheet) => {
      const scene = sceneOf(layers, marks, say, sheet)
      const labels = scene.items.flatMap((item) => (item.kind === 'height' && item.role === 'mark' ? [item.label] : []))
      const holes = plan.facts.filter(({ id }) => id === 'drapery/holes@1').flatMap(({ value }) => value as readonly Hole[])
      return { of: `${place}, ${sheet.name}, ${language}`, labels, wanted: holes.filter(({ fromWall }) => !fromWall).length }
    }),
  )
}
test.each(['en', 'es'] as const)(
  'no hole that is pencilled is left out on tablet or paper, and its caption is whole everywhere (%s)',
  (language) => {
    const all = examples.flatMap((example) => marksSheets(example, language))
    for (const { of, labels, wanted } of all) {
      // A phone is too low for more than seven or eight: its list of holes has the rest.
      if (!of.includes('phone')) expect(labels.length, of).toBe(wanted)
      const words = labels.map(({ captions }) => captions.map(({ text }) => text).join(' '))
      expect(
        words.filter((each) => each === '' || each.endsWith('…')),
        of,
      ).toEqual([])
    }
    expect(all.length).toBeGreaterThan(300)
  },
)
test('windows of a random job are drawn true to scale, without a label on another', () => {
  const scenes = numbersOf(exampleOf('seed 1', JSON.stringify(jobOf(1, 8, 4, true))))
  for (const each of scenes) expect(wrong(each), each.of).toEqual([])
  expect(scenes.flatMap(({ scene }) => figuresOf(scene)).length).toBeGreaterThan(200)
})
