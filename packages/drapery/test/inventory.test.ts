import type { Job } from '@evenhem/job'
import { tapes } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { createSay, wordsOf } from '@evenhem/planner/say'
import { changed } from '@evenhem/plugin/kit'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'

const planner = createPlanner(plugins)
const { found: counted } = example('what-came')
const window = (n: number) => `/rooms/garden-room/windows/w${n}`
const over = (n: number) => `${window(n)}/treatments/over`
const checksOf = (job: Job, n: number, code = 'drapery/came') =>
  planner.window(job, job, window(n)).checks.filter((each) => each.code === code)
const missing = (job: Job, what: string) => checksOf(job, 2).find(({ at }) => at === came(2, what))
const came = (n: number, what: string) => `${over(n)}/found/came/${what.replace('/', '~1')}`

test('what is missing stops before anything is marked, and says what and how many', () => {
  expect(missing(counted, 'rod-and-ring/part-hook')).toMatchObject({
    verdict: 'fail',
    stops: 'mark',
    values: { missing: { count: 2 }, came: { count: 24 }, needed: { count: 26 } },
  })
})

test('more than needed is information', () => {
  expect(checksOf(counted, 1)).toMatchObject([{ verdict: 'pass', values: { over: { count: 1 }, spare: { count: 4 } } }])
  expect(checksOf(changed(counted, came(1, 'rod-and-ring/part-hook'), 26), 1)).toMatchObject([
    { verdict: 'pass', values: { over: { count: 0 } } },
  ])
})

test('what nobody counted is no fault: nothing is said, or what is left is not known and stops nothing', () => {
  expect(checksOf(changed(counted, `${over(1)}/found/came`), 1)).toEqual([])
  const open = checksOf(counted, 2).find(({ verdict }) => verdict === 'unknown')
  expect(open).toMatchObject({ values: { left: { count: 1 }, part: { code: 'rod-and-ring/part-screw' } } })
  expect(open).not.toHaveProperty('stops')
})

test('the first step asks for every part once, where its count is kept', () => {
  const unpack = planner.window(counted, counted, window(1)).steps.find(({ id }) => id === 'unpack')
  expect(unpack?.captures?.map(({ at, expected }) => [at.slice(over(1).length), expected])).toEqual([
    ['/found/came/drapery~1panel', { count: 2 }],
    ['/found/came/returns~1part-angle', { count: 2 }],
    ['/found/came/rod-and-ring~1part-rod', { count: 1 }],
    ['/found/came/rod-and-ring~1part-bracket', { count: 2 }],
    ['/found/came/rod-and-ring~1part-finial', { count: 2 }],
    ['/with/rod-and-ring/rings', { count: 24 }],
    ['/found/came/rod-and-ring~1part-hook', { count: 26 }],
    ['/found/came/rod-and-ring~1part-screw', { count: 4 }],
  ])
})

test('a rod in two pieces is counted piece by piece', () => {
  const job = changed(counted, `${over(1)}/rod/splices`, [{ id: 's', fromLeft: 1_000_000_000 }])
  const unpack = planner.window(job, job, window(1)).steps.find(({ id }) => id === 'unpack')
  expect(unpack?.captures).toContainEqual({ at: came(1, 'drapery/rod-piece'), as: 'count', expected: { count: 2 } })
})

test('rings that were counted too few are one stop, not two', () => {
  const job = changed(counted, came(1, 'rod-and-ring/part-ring'), 20)
  const fails = planner.window(job, job, window(1)).checks.filter(({ verdict }) => verdict === 'fail')
  expect(fails).toMatchObject([{ code: 'rod-and-ring/rings', values: { ordered: { count: 20 }, over: { count: 4 } } }])
})

test('carriers that were counted together are judged together, and once', () => {
  const { ordered, places } = example('two-and-three-layers')
  const sheer = planner
    .window(ordered, ordered, places[0] as string)
    .checks.find(({ code }) => code === 'traverse/carriers-enough')
  const job = changed(ordered, `${sheer?.on}/found/came/traverse~1part-carrier`, 3)
  const own = planner
    .window(job, job, places[0] as string)
    .checks.filter(({ verdict, on }) => verdict === 'fail' && on === sheer?.on)
  expect(own).toMatchObject([{ code: 'traverse/carriers-enough', values: { side: 'both', packed: { count: 3 } } }])
})

test('the workroom is called about one count; another count is another difference', () => {
  const finial = 'rod-and-ring/part-finial'
  expect(missing(counted, finial)).toMatchObject({ says: 'drapery/came.called', stops: 'mark', ways: [] })
  expect(missing(changed(counted, came(2, finial), 0), finial)).toMatchObject({
    says: 'drapery/came.fail',
    ways: [{ code: 'drapery/way-call' }],
  })
})

test('a reason to go on holds for one count of one part', () => {
  const hooks = 'rod-and-ring/part-hook'
  const job = changed(counted, `${over(2)}/found/overrides/drapery~1came rod-and-ring~1part-hook 24 of 26`, 'Two are in the van.')
  expect(missing(job, hooks)?.override).toBe('Two are in the van.')
  expect(missing(job, 'rod-and-ring/part-finial')).not.toHaveProperty('override')
  expect(missing(changed(job, came(2, hooks), 23), hooks)).not.toHaveProperty('override')
})

/** Two layers on the same rod: the inner one has hooks to spare. */
const layered = () => {
  const treatment = counted.rooms[0]?.windows[1]?.treatments[0]
  const inner = changed(changed(treatment, '/id', 'under'), '/found/came/rod-and-ring~1part-hook', 27)
  return changed(counted, `${window(2)}/treatments`, [inner, treatment])
}

const hooksOf = (job: Job) => missing(job, 'rod-and-ring/part-hook')

test('another layer’s spare parts are a way out, and with them on both sides the count is right', () => {
  const job = layered()
  const [way] = hooksOf(job)?.ways ?? []
  expect(way).toMatchObject({ code: 'drapery/way-spare', values: { count: { count: 1 }, spare: { count: 1 } } })
  const taken = way?.put.reduce((each, { at, value }) => changed(each, at, (value as { count: number }).count), job) as Job
  expect(hooksOf(taken)?.values).toMatchObject({ came: { count: 25 }, missing: { count: 1 } })
  expect(hooksOf(taken)?.ways).toMatchObject([{ code: 'drapery/way-call' }])
})

test('the way out is said in both languages', () => {
  const way = hooksOf(layered())?.ways?.[0]
  const says = (language: string) =>
    createSay({ words: wordsOf(plugins), language, tape: tapes.sixteenths }).say(way?.code ?? '', way?.values)
  expect(says('en')).toBe('Take 1 × hook from the other layer, which has 1 to spare.')
  expect(says('es')).toBe('Tomar 1 × gancho de la otra capa, a la que le sobran 1.')
})
