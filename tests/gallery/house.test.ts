import { readFileSync } from 'node:fs'
import { closedMarks, figuresOf, type Scene } from '@evenhem/drawing'
import { expect, test } from 'vitest'
import { exampleOf } from '../tools/examples.ts'
import { sayFor, sceneOf, shown, windowsIn } from './scenes.ts'
import { faults } from './truth.ts'

const text = readFileSync(new URL('../../schema/examples/heron-point/job.json', import.meta.url), 'utf8')
/** The scenes of one window of the demo house, with something changed in it. */
function scenesOf(place: string, change: (window: Record<string, unknown>) => void = () => {}) {
  const job = JSON.parse(text)
  for (const room of job.rooms)
    for (const window of room.windows) if (place === `/rooms/${room.id}/windows/${window.id}`) change(window)
  const example = exampleOf('house', JSON.stringify(job))
  const layers = windowsIn(example).find((each) => each.place === place)?.layers ?? []
  const scenes = shown.map((each) => sceneOf(layers, each, sayFor(example))) as [Scene, Scene, Scene, Scene, Scene]
  const closed = sceneOf(closedMarks(layers), shown[4], sayFor(example))
  return { elevation: scenes[0], above: scenes[2], marks: scenes[4], closed, scenes }
}
const saidIn = (scene: Scene) => figuresOf(scene).map(({ words }) => words)
const titlesIn = (scene: Scene) => scene.items.flatMap((item) => (item.kind === 'detail' ? [item.title?.text ?? ''] : []))
const rolesIn = (scene: Scene, role: string) => scene.items.filter((item) => 'role' in item && item.role === role)

const three = scenesOf('/rooms/living-room/windows/w3')
test('a support is a bracket on the elevation and from above, and is enlarged under its own name', () => {
  const without = scenesOf('/rooms/living-room/windows/w1')
  expect(rolesIn(three.elevation, 'bracket').length - rolesIn(without.elevation, 'bracket').length).toBe(1)
  // From back to front.
  expect(titlesIn(three.marks).map((title) => title.split(',')[0])).toEqual(['Right bracket', 'support', 'Left bracket'])
})
test('the marks sheet goes to each end from floor, casing and ceiling, and says how the rings go on', () => {
  const said = saidIn(three.marks)
  expect(said.filter((words) => words.startsWith('to ceiling: 19 1/2 in'))).toHaveLength(2)
  expect(said.filter((words) => words.startsWith('to casing: 6 1/2 in'))).toHaveLength(2)
  expect(three.marks.labels.map(({ text }) => text)).toEqual(expect.arrayContaining(['1 | 16 | 16 | 1', 'rings, left to right']))
})
test('where a stop closes the marks nothing is left to pencil', () => {
  expect(saidIn(three.closed)).toEqual([])
  expect(three.closed.items.filter(({ kind }) => kind === 'cross' || kind === 'detail')).toEqual([])
  expect(rolesIn(three.closed, 'casing').length).toBeGreaterThan(0)
})
test('cloth that is longer than the way to the floor lies on it', () => {
  const cloths = (clearance: string) =>
    rolesIn(
      scenesOf('/rooms/bedroom/windows/w1', (window) => {
        const [treatment] = window.treatments as [Record<string, unknown>]
        treatment.clearance = clearance
      }).elevation,
      'fabric',
    ).length
  expect(cloths('-1')).toBe(2 * cloths('1/2'))
})
test('a ceiling out of level is drawn through its points, and each end is measured from what is over it', () => {
  const { marks, scenes } = scenesOf('/rooms/living-room/windows/w1', (window) => {
    window.ceiling = [
      { id: 'l', x: '-30', y: '108' },
      { id: 'r', x: '78', y: '106' },
    ]
  })
  for (const scene of scenes) expect(faults(scene)).toEqual([])
  expect(saidIn(marks).filter((words) => words.startsWith('to ceiling'))).toHaveLength(2)
  expect(new Set(saidIn(marks).filter((words) => words.startsWith('to ceiling'))).size).toBe(2)
})
test('unlike projections: each end stands out by its own', () => {
  const { above, scenes } = scenesOf('/rooms/living-room/windows/w1', (window) => {
    const [treatment] = window.treatments as [Record<string, unknown>]
    treatment.projection = { left: '3 1/2', right: '5' }
  })
  for (const scene of scenes) expect(faults(scene)).toEqual([])
  expect(
    saidIn(above)
      .filter((words) => words.startsWith('projection'))
      .map((words) => words.split(' in')[0]),
  ).toEqual(expect.arrayContaining(['projection: 3 1/2', 'projection: 5']))
})
