import { readFileSync } from 'node:fs'
import { figuresOf, type Scene } from '@evenhem/drawing'
import { expect, test } from 'vitest'
import { exampleOf } from '../tools/examples.ts'
import { sayFor, sceneOf, shown, windowsIn } from './scenes.ts'
import { faults } from './truth.ts'

const text = readFileSync(new URL('../../schema/examples/tern-hollow/job.json', import.meta.url), 'utf8')
/** The window of Tern Hollow with more on its wall: a second opening, an apron, a crown, studs, and things that are in the way. */
function crowded() {
  const job = JSON.parse(text)
  const [wall] = job.rooms[0].windows[0].walls
  wall.space.right = '30'
  wall.crown = { bottom: '99', projection: '3' }
  wall.studs = [
    { id: 's1', x: '-12' },
    { id: 's2', x: '4' },
  ]
  wall.obstacles = [
    { id: 'heat', kind: 'thermostat', left: '-15', bottom: '58', width: '4', height: '5', depth: '1 1/4', keepOff: '1' },
    { id: 'lamp', kind: 'other', name: 'Lamp', left: '120', bottom: '64', width: '6', height: '9', depth: '5' },
    { id: 'vent', kind: 'grille', bottom: '2' },
  ]
  wall.openings[0].apron = { bottom: '21' }
  wall.openings.push({
    id: 'p',
    x: '80',
    casing: { width: '30', top: '86 1/4', bottom: '24', board: '3 1/2' },
    sill: { top: '28', depth: '2 1/4' },
  })
  return exampleOf('crowded', JSON.stringify(job))
}
const example = crowded()
const [window] = windowsIn(example)
const scenes = shown.map((each) => sceneOf(window?.layers ?? [], each, sayFor(example)))
const [elevation, , above, , marks] = scenes as [Scene, Scene, Scene, Scene, Scene]
const saidIn = (scene: Scene) => figuresOf(scene).map(({ words }) => words)

test('two openings, an apron, a crown, studs and obstacles are drawn true, no label on another', () => {
  for (const scene of scenes) expect(faults(scene)).toEqual([])
})
test('both casings stand in the row below, with what is between them', () => {
  expect(saidIn(elevation)).toEqual(
    expect.arrayContaining(['casing: 62 in, ordered', 'between the casings: 18 in, worked out', 'casing: 30 in, ordered']),
  )
})
test('an obstacle says what it is, by its name where it has one, and stands with what keeps off it', () => {
  expect(elevation.labels.map(({ text }) => text)).toEqual(expect.arrayContaining(['thermostat', 'Lamp']))
  expect(elevation.labels.map(({ text }) => text)).not.toContain('grille')
  const roles = elevation.items.flatMap((item) => ('role' in item ? [item.role] : []))
  expect(roles.filter((role) => role === 'obstacle')).toHaveLength(2)
})
test('from above, how far obstacles and stool stand out is enlarged', () => {
  expect(saidIn(above)).toEqual(
    expect.arrayContaining(['stands out: 1 1/4 in, ordered', 'stands out: 5 in, ordered', 'stool: 2 1/4 in, ordered']),
  )
})
test('studs are broken lines on the marks, and only there', () => {
  const lines = (scene: Scene) => scene.items.filter((item) => item.kind === 'line' && item.role === 'hidden').length
  expect([lines(marks), lines(elevation)]).toEqual([2, 0])
})
