import type { Hole } from '@evenhem/drapery/facts'
import { paper, phone, screen } from '@evenhem/drawing'
import type { examples } from '../tools/examples.ts'
import { sayFor, sceneOf, shown, windowsIn } from './scenes.ts'
import { faults } from './truth.ts'

/** What a window is drawn on. */
export const sheets = [
  { name: 'tablet', width: 820, height: 726, sizes: screen },
  { name: 'phone', width: 390, height: 380, sizes: phone },
  { name: 'paper', width: 190, height: 180, sizes: paper },
]

/** Every scene of every window of an example, on these sheets. */
export const scenesOf = (example: (typeof examples)[number], on = sheets) => {
  const say = sayFor(example)
  return windowsIn(example).flatMap(({ place, layers }) =>
    on.flatMap((sheet) =>
      shown.map((each) => ({ scene: sceneOf(layers, each, say, sheet), of: `${place}, ${each.title}, ${sheet.name}` })),
    ),
  )
}

/** What is wrong with a scene, and that it says something to who cannot see it. */
export const wrong = ({ scene }: ReturnType<typeof scenesOf>[number]): readonly string[] => [
  ...faults(scene),
  ...(scene.items.length > 0 && scene.words.length === 0 ? ['it has no words'] : []),
]

/** What is pencilled on the wall at a window, on the marks sheet: with how many of them it was asked for, and what is said beside each. */
export const markedSheets = (example: (typeof examples)[number], language: 'en' | 'es', on = sheets) => {
  const say = sayFor(example, language)
  const marks = shown.find(({ view }) => view === 'marks') as (typeof shown)[number]
  return windowsIn(example).flatMap(({ place, plan, layers }) =>
    on.map((sheet) => {
      const scene = sceneOf(layers, marks, say, sheet)
      const labels = scene.items.flatMap((item) => (item.kind === 'height' && item.role === 'mark' ? [item.label] : []))
      const holes = plan.facts.filter(({ id }) => id === 'drapery/holes@1').flatMap(({ value }) => value as readonly Hole[])
      return { of: `${place}, ${sheet.name}, ${language}`, labels, wanted: holes.filter(({ fromWall }) => !fromWall).length }
    }),
  )
}
/** Holes that are left out, and captions that are cut. A phone is too low for more than seven or eight marks: its list of holes has the rest. */
export function wrongMarks({ of, labels, wanted }: ReturnType<typeof markedSheets>[number]): readonly string[] {
  const words = labels.map(({ captions }) => captions.map(({ text }) => text).join(' '))
  return [
    ...(of.includes('phone') || labels.length === wanted ? [] : [`${labels.length} holes of ${wanted}`]),
    ...words.filter((each) => each === '' || each.endsWith('…')),
  ]
}
