import { expect, test } from 'vitest'
import { compose, figuresOf, type Scene, withLegend, words } from '../src/index.ts'
import { overlap } from '../src/space.ts'
import { onTablet } from './scenes/options.ts'
import { pair } from './scenes/pair.ts'

const options = onTablet()
const scene = compose(pair, options)
const added = (whole: Scene) => whole.items.slice(scene.items.length)
const saidIn = (whole: Scene) => added(whole).flatMap((item) => (item.kind === 'caption' ? [item.words.text] : []))

test('the legend shows each way in which a number of the drawing is known, once, in its dress', () => {
  const states = new Set(figuresOf(scene).flatMap(({ tag, role }) => (role === 'dimension' ? [tag.state] : [])))
  const samples = added(withLegend(scene, options)).flatMap((item) => (item.kind === 'dimension' ? [item.label.tag.state] : []))
  expect(new Set(samples)).toEqual(states)
  expect(samples).toHaveLength(states.size)
})
test('it says in words what each means', () => expect(saidIn(withLegend(scene, options))).toContain('measured'))
test('it stands below the drawing, on the sheet, and nothing in it stands on another, also on a phone', () => {
  for (const width of [820, 390]) {
    const narrow = { ...options, width }
    const whole = withLegend({ ...scene, width }, narrow)
    const boxes = added(whole).map((item) =>
      item.kind === 'caption' ? item.words.box : item.kind === 'dimension' ? item.label.box : undefined,
    )
    for (const [n, box] of boxes.entries()) {
      if (!box) throw new Error('Unexpected item in a legend')
      expect([box.x >= 0, box.x + box.width <= width, box.y >= scene.height, box.y + box.height <= whole.height]).toEqual(
        Array(4).fill(true),
      )
      expect(boxes.slice(n + 1).filter((other) => other && overlap(box, other))).toEqual([])
    }
  }
})
test('a drawing without numbers has no legend', () => {
  const empty = compose([], options)
  expect(withLegend(empty, options)).toEqual(empty)
})
test('English and Spanish have the same codes', () => {
  expect(Object.keys(words.es)).toEqual(Object.keys(words.en))
})
