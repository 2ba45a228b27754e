import { readdirSync, readFileSync } from 'node:fs'
import { defaults } from '@evenhem/drapery'
import type { Hole } from '@evenhem/drapery/facts'
import { compose, screen, toSvg } from '@evenhem/drawing'
import { lay, type Readings } from '@evenhem/job'
import { extensionsOf } from '@evenhem/job/read'
import { inches, type Length, tapes, writeLength } from '@evenhem/length'
import { checkReckonings, createPlanner } from '@evenhem/planner'
import { createSay, wordsOf } from '@evenhem/planner/say'
import { conformance } from '@evenhem/plugin/kit'
import { plugins } from '@evenhem/plugins'
import { reportOf } from '@evenhem/report'
import { expect, test } from 'vitest'
import { exampleOf } from '../tools/examples.ts'
import { pegRail } from './peg-rail.ts'

const all = [...plugins, pegRail]
const { found, ordered, places, read } = exampleOf('cabin', readFileSync(new URL('job.json', import.meta.url), 'utf8'), extensionsOf(all))
const plan = createPlanner(all).window(found, ordered, places[0]!)
const { say } = createSay({ words: wordsOf(all), language: 'en', tape: tapes.sixteenths })

test('a job on hardware that nobody here has seen is read without a complaint', () => expect(read.diagnostics).toEqual([]))
test('it is planned without a fault, and every number has its working', () => {
  expect(plan.faults).toEqual([])
  expect(checkReckonings(plan, found, defaults)).toEqual([])
})
test('the shared checks, the returns and its own check judge it', () => {
  expect(plan.checks.map((check) => `${check.code} ${check.verdict}`).sort()).toEqual([
    'drapery/behind-wall pass',

    'drapery/casing-edge pass',
    'drapery/coverage pass',
    'drapery/finished-floor pass',
    'drapery/floor-read pass',
    'drapery/head-room pass',
    'drapery/hems-alike pass',
    'drapery/ladder pass',
    'drapery/panel-width pass',
    'drapery/panel-width pass',
    'drapery/panels-of-draw pass',
    'drapery/pin-in-heading pass',
    'drapery/pins-alike pass',
    'drapery/pleat-spaces pass',
    'drapery/return-fits pass',
    'drapery/return-fits pass',
    'drapery/return-held pass',
    'drapery/rod-height pass',
    'drapery/stool warn',
    'drapery/wall-fits pass',
    'peg-rail/enough pass',
  ])
})
test('its screws and the wall angles have marks, steps and drawings', () => {
  const scene = compose(plan.layers, {
    view: 'marks',
    state: 'drawn',
    width: 820,
    height: 726,
    sizes: screen,
    write: (length) => writeLength(length, tapes.sixteenths),
    say: (code) => say(code),
  })
  const svg = toSvg(scene, { title: 'Marks' })
  expect(svg).toContain('screw of the rail')
  expect(svg).toContain('wall angle')
  expect(plan.steps.map((step) => step.id)).toEqual(expect.arrayContaining(['mark-left', 'mark', 'fix', 'hang', 'hook']))
})
test('its screws go where somebody chose that the rail follows the ceiling, and stay where one is fixed', () => {
  const at = `${places[0]}/treatments/over/found/brackets`
  const put = (values: Readonly<Record<string, unknown>>) => {
    const readings = Object.fromEntries(Object.entries(values).map(([name, value]) => [`${at}/${name}`, { value }])) as Readings
    const { facts } = createPlanner(all).window(lay(ordered, readings).job, ordered, places[0]!)
    const holes = facts.find(({ id }) => id === 'drapery/holes@1')?.value as readonly Hole[]
    return holes.filter(({ on }) => on === 'bracket').map(({ fromFloor }) => fromFloor.value)
  }
  const [left, right] = put({}) as [Length, Length]
  const ceilings = { 'left/floorToCeiling': inches(100), 'right/floorToCeiling': inches(99.5) }
  expect(put(ceilings)).toEqual([left, right])
  expect(put({ ...ceilings, 'right/follows': 'ceiling' })).toEqual([left, left - inches(0.5)])
  expect(put({ 'right/floorToHole': inches(90), 'right/fixed': true, ...ceilings, 'right/follows': 'ceiling' })[1]).toBe(inches(90))
})
test('it takes at most 150 lines, marks at the wall with it', () =>
  expect(readFileSync(new URL('peg-rail.ts', import.meta.url), 'utf8').split('\n').length).toBeLessThanOrEqual(150))
test('the report tells of it', () => {
  const { html } = reportOf({
    ordered,
    readings: read.readings,
    planner: createPlanner(all),
    words: wordsOf(all),
    language: 'en',
    tape: tapes.sixteenths,
    paper: 'a4',
  })
  expect(html).toContain('Larch rail with pegs')
  expect(html).toContain('pegs for')
})
test('without its plugin the job is kept and told of, and what is shared still plans', () => {
  const without = exampleOf('cabin', readFileSync(new URL('job.json', import.meta.url), 'utf8'))
  expect(without.read.diagnostics.map((each) => each.severity)).toEqual(expect.arrayContaining(['info']))
  expect(without.ordered.hardware?.[0]).toMatchObject({ kind: 'peg-rail', pegDrop: '1 3/4' })
  const alone = createPlanner(plugins).window(without.found, without.ordered, places[0]!)
  expect(alone.faults).toEqual([])
  expect(alone.checks.find((check) => check.code === 'drapery/coverage')?.verdict).toBe('pass')
})
test('nothing in Evenhem names it', () => {
  const root = new URL('../../', import.meta.url)
  const files = ['packages', 'plugins', 'viewer'].flatMap((folder) =>
    readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
      .filter((name) => /^(?!.*(node_modules|dist)).*\.(ts|json|js|css|html)$/.test(name))
      .map((name) => `${folder}/${name}`),
  )
  expect(files.length).toBeGreaterThan(100)
  expect(files.filter((file) => readFileSync(new URL(file, root), 'utf8').includes('peg-rail'))).toEqual([])
})

conformance(pegRail, {
  test,
  createPlanner,
  with: plugins,
  jobs: [
    { name: 'cabin', ordered, found },
    { name: 'few pegs', ordered: few(), found: few() },
    { name: 'no pegs', ordered: few(undefined), found: few(undefined) },
  ],
})

function few(pegs: number | undefined = 3) {
  return exampleOf('few', JSON.stringify({ ...JSON.parse(read.text), hardware: [{ ...JSON.parse(read.text).hardware[0], pegs }] }), extensionsOf(all)).ordered
}
