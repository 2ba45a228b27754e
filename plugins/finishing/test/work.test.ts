import { drapery } from '@evenhem/drapery'
import type { Job } from '@evenhem/job'
import { createPlanner } from '@evenhem/planner'
import { changed } from '@evenhem/plugin/kit'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { traverse } from '@evenhem/plugin-traverse'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { finishing } from '../src/index.ts'

const planner = createPlanner([drapery, rodAndRing, traverse, finishing])
const { found, ordered } = example('dressed-and-steamed')
const at = '/rooms/long-room/windows/'
const planOf = (window: string, job: Job = found) => planner.window(job, ordered, at + window)
const stepsOf = (window: string, job?: Job) => planOf(window, job).steps.map(({ plugin, id }) => `${plugin}/${id}`)
const own = (window: string) => stepsOf(window).filter((id) => id.startsWith('finishing/'))

test('folds are let down and steamed after hanging and before the hem is read; trained when it is right; content is last', () => {
  const order = stepsOf('w1')
  const wanted = [
    'drapery/hang',
    'finishing/let-down',
    'finishing/try-steam',
    'finishing/steam',
    'drapery/read-hem',
    'finishing/break-buckram',
    'rod-and-ring/fold-back',
    'finishing/train',
    'finishing/tie',
    'finishing/untie',
    'finishing/read-again',
    'drapery/hand-over',
    'finishing/content',
  ]
  expect(order.filter((id) => wanted.includes(id))).toEqual(wanted)
  expect(order.at(-1)).toBe('finishing/content')
})

test.each(['w4', 'w8', 'w9', 'w10', 'w11', 'w12', 'w13', 'w14'])(
  'at %s nobody is told to steam, and what is done instead is',
  (window) => {
    expect(own(window)).toContain('finishing/no-steam')
    expect(own(window)).not.toContain('finishing/steam')
    expect(own(window)).not.toContain('finishing/try-steam')
  },
)

test('whoever holds a hot steamer reads of burns, the hot head, the wet floor, the cord and the ladder', () => {
  const steaming = planOf('w6').steps.filter(({ id }) => id.endsWith('steam'))
  expect(steaming.map(({ id }) => id)).toEqual(['try-steam', 'steam'])
  for (const { cautions } of steaming)
    expect(cautions).toEqual([
      'finishing/caution-burn',
      'finishing/caution-hot-head',
      'finishing/caution-wet-floor',
      'finishing/caution-cord',
      'drapery/caution-ladder',
      'finishing/caution-spots',
    ])
})

test('nothing is asked where nobody wants it finished by this plugin', () => {
  const plain = example('tern-hollow')
  const plan = planner.window(plain.found, plain.ordered, plain.places[0] ?? '')
  expect(plan.steps.filter(({ plugin }) => plugin === 'finishing')).toEqual([])
  expect(plan.checks.filter(({ by }) => by.startsWith('finishing/'))).toEqual([])
})

test('a part at the fabric or at the window is enough; hours that are not said are 48; 0 ties nothing', () => {
  const hours = (window: string) =>
    planOf(window).checks.find(({ code }) => code === 'finishing/tie-hours')?.values.hours as { count: number } | undefined
  expect(['w15', 'w16', 'w5'].map((window) => hours(window)?.count)).toEqual([24, 48, 48])
  expect(hours('w10')).toBeUndefined()
  expect(own('w10')).not.toContain('finishing/tie')
  const bare = changed(found, `${at}w1/treatments/over/with/finishing`)
  expect(stepsOf('w1', bare)).toContain('finishing/steam')
})

test('48 hours after 2026-12-14 is two days later, 120 hours five: the way out puts that day', () => {
  const put = (window: string) =>
    planOf(window)
      .checks.find(({ code }) => code === 'finishing/untie-day')
      ?.ways?.[0]?.put.map(({ value }) => value)
  expect([put('w8'), put('w2'), put('w7')]).toEqual([['2026-12-16'], ['2026-12-19'], undefined])
})

test('the coolest iron is reckoned: label before fibre, none where an iron is crossed out', () => {
  const limit = (window: string) => planOf(window).reckonings.find(({ what }) => what === 'finishing/plate-limit')?.value
  expect(['w1', 'w2', 'w12', 'w13', 'w14', 'w15'].map(limit)).toEqual([200, 110, 110, 191, undefined, 150])
})

test('where a cloth has neither a label nor a fibre that is known, no iron is reckoned from the others', () => {
  const over = `${at}w3/treatments/over`
  const plate = (job: Job) => planOf('w3', job).reckonings.find(({ what }) => what === 'finishing/plate-limit')?.value
  expect(plate(found)).toBe(150)
  for (const lining of ['straw', 'nameless']) expect(plate(changed(found, `${over}/lining`, lining))).toBeUndefined()
  const blended = changed(found, '/fabrics/sateen', {
    id: 'sateen',
    name: 'Blend',
    fibres: [{ fibre: 'cotton' }, { fibre: 'jute' }],
  })
  expect(plate(blended)).toBeUndefined()
})

test('buckram is broken the way in which the hardware dresses its folds, wherever heights tell it', () => {
  const ways = ['about-the-traverse-rod', 'two-and-three-layers', 'curlew-strand', 'tern-hollow'].flatMap((name) => {
    const job = example(name)
    return job.places.flatMap((place) => {
      const finished = changed(job.found, `${place}/with/finishing`, {})
      const { steps } = planner.window(finished, job.ordered, place)
      return steps.flatMap(({ id, on, values }) => {
        const dressed = steps.find((step) => step.on === on && /\/fold-(back|forward)$/.test(step.code))
        return id === 'break-buckram' && dressed ? [`${dressed.code.replace(/.*fold-/, '')} ${values?.at}`] : []
      })
    })
  })
  expect([...new Set(ways)].sort()).toEqual(['back under', 'forward front', 'forward unclear'])
})
