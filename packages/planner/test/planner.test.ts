import type { Hardware } from '@evenhem/job'
import { type Addition, checks, entries, type Kind, layers, type Plugin, parts, reckonings, rule, steps } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner, planText } from '../src/index.ts'
import { house, many, one, over, pluginOf, put, under, w1 } from './invented.ts'

const width = one('width')
const total = one('total', 'window')
const sizes = many('sizes')
const named = rule({ id: 'width', on: 'treatment', needs: {}, gives: { width } }).run(({ it }) => ({ width: it.id.length }))
const plan = (...plugins: readonly Plugin[]) => createPlanner(plugins).window(house, house, w1)
const facts = (...plugins: readonly Plugin[]) => plan(...plugins).facts.map(({ at, value }) => [at, value])

test('facts flow from treatments to their window and back', () => {
  const plugin = pluginOf('p', [
    named,
    rule({ id: 'total', on: 'window', needs: { widths: { each: width } }, gives: { total } }).run((_, { widths }) => ({
      total: widths.reduce((sum, { value }) => sum + value, 0),
    })),
    rule({ id: 'share', on: 'treatment', needs: { width, total }, gives: { checks }, codes: ['p/share'] }).run(
      ({ at }, facts) => ({
        checks: [{ code: 'p/share', verdict: 'pass', at, values: { share: { ratio: facts.width / facts.total } } }],
      }),
    ),
  ])
  expect(facts(plugin)).toEqual([
    [w1, 9],
    [under, 5],
    [over, 4],
  ])
  expect(plan(plugin).checks).toEqual([
    { code: 'p/share', verdict: 'pass', at: under, values: { share: { ratio: 5 / 9 } }, by: 'p/share', on: under },
    { code: 'p/share', verdict: 'pass', at: over, values: { share: { ratio: 4 / 9 } }, by: 'p/share', on: over },
  ])
})

test('each gathers in the order of the job, with places', () => {
  const read: unknown[] = []
  plan(
    pluginOf('p', [
      named,
      rule({ id: 'r', on: 'window', needs: { all: { each: width } }, gives: {} }).run((_, { all }) => {
        read.push(...all)
        return {}
      }),
    ]),
  )
  expect(read).toEqual([
    { at: under, value: 5 },
    { at: over, value: 4 },
  ])
})

test('a list holds what all its givers added, by the names of plugins and rules', () => {
  const giver = (id: string) =>
    pluginOf(id, [rule({ id: 'x', on: 'treatment', needs: {}, gives: { sizes } }).run(() => ({ sizes: [id.length] }))])
  const reader = pluginOf('reader', [
    rule({ id: 'x', on: 'treatment', needs: { sizes }, gives: { width } }).run((_, { sizes }) => ({
      width: Number(sizes.join('')),
    })),
  ])
  expect(facts(giver('zzz'), reader, giver('a'))).toEqual([
    [under, [1, 3]],
    [over, [1, 3]],
    [under, 13],
    [over, 13],
  ])
})

test('a list without a giver is empty', () => {
  expect(
    facts(
      pluginOf('p', [
        rule({ id: 'x', on: 'treatment', needs: { sizes }, gives: { width } }).run((_, { sizes }) => ({ width: sizes.length })),
      ]),
    ),
  ).toEqual([
    [under, 0],
    [over, 0],
  ])
})

test('maybe is undefined when nobody gives, and the value when somebody does', () => {
  const reader = pluginOf('reader', [
    rule({ id: 'x', on: 'treatment', needs: { width: { maybe: width } }, gives: { other: one<string>('other') } }).run(
      (_, { width }) => ({ other: `${width}` }),
    ),
  ])
  expect(facts(reader)).toEqual([
    [under, 'undefined'],
    [over, 'undefined'],
  ])
  expect(facts(reader, pluginOf('p', [named])).slice(0, 2)).toEqual([
    [under, '5'],
    [over, '4'],
  ])
})

test('a rule on a kind runs for treatments that hang on it, and gets the hardware', () => {
  const pole: Kind<Hardware> = { kind: 'pole', schema: {} }
  const plugin = pluginOf(
    'poles',
    [
      rule({ id: 'x', on: pole, needs: {}, gives: { name: one<string>('name') } }).run(({ hardware, hardwareAt }) => ({
        name: `${hardware.name} ${hardwareAt}`,
      })),
    ],
    { kinds: [pole] },
  )
  expect(facts(plugin)).toEqual([[over, 'Pole /hardware/h']])
})

test('a rule on a part runs for items that have it, and sees only its own', () => {
  const addition: Addition<'treatment', { readonly n: number }> = { to: 'treatment', schema: {} }
  const plugin = pluginOf(
    'p',
    [
      rule({ id: 'x', on: addition, needs: {}, gives: { seen: one<unknown>('seen') } }).run(({ mine, mineAt }) => ({
        seen: [mine, mineAt],
      })),
    ],
    { additions: [addition] },
  )
  const job = put(put(house, `${over}/with/p`, { n: 1 }), `${over}/with/q`, { n: 2 })
  expect(createPlanner([plugin]).window(job, job, w1).facts).toEqual([
    { id: 'test/seen@1', at: over, value: [{ n: 1 }, `${over}/with/p`] },
  ])
})

test('a rule sees what was found and what was ordered', () => {
  const plugin = pluginOf('p', [
    rule({ id: 'x', on: 'treatment', needs: {}, gives: { both: one<unknown>('both') } }).run(({ it, ordered }) => ({
      both: [it.clearance, ordered.clearance],
    })),
  ])
  const found = put(house, `${over}/clearance`, 3)
  expect(createPlanner([plugin]).window(found, put(house, `${over}/clearance`, 2), w1).facts).toMatchObject([
    { value: [undefined, undefined] },
    { value: [3, 2] },
  ])
})

test('a rule sees its room, its job and its fabric, but no windows beside its own', () => {
  const plugin = pluginOf('p', [
    rule({ id: 'x', on: 'window', needs: {}, gives: { seen: one<unknown, 'window'>('seen', 'window') } }).run(
      ({ room, job, window, it }) => ({ seen: [room.name, room.windows, job.number, window === it] }),
    ),
  ])
  expect(plan(plugin).facts).toMatchObject([{ value: ['Room 1', [], '1', true] }])
})

test('a rule on a job sees its own members, and no rooms but by gathering', () => {
  const seen = one<unknown, 'job'>('seen', 'job')
  const plugin = pluginOf('p', [
    rule({ id: 'x', on: 'job', needs: {}, gives: { seen } }).run(({ it, ordered }) => ({
      seen: [it.units, it.rooms, ordered.rooms],
    })),
  ])
  expect(createPlanner([plugin]).job(house, house).facts).toMatchObject([{ value: ['in', [], []] }])
})

test('what rooms and jobs give of themselves is read in their windows', () => {
  const inJob = one('in-job', 'job')
  const inRoom = one('in-room', 'room')
  const plugin = pluginOf('p', [
    rule({ id: 'j', on: 'job', needs: {}, gives: { inJob } }).run(({ it }) => ({ inJob: it.hardware?.length ?? 0 })),
    rule({ id: 'r', on: 'room', needs: { inJob }, gives: { inRoom } }).run(({ it }, { inJob }) => ({
      inRoom: inJob * 10 + it.id.length,
    })),
    rule({ id: 'w', on: 'window', needs: { inRoom }, gives: { total } }).run((_, { inRoom }) => ({ total: inRoom })),
  ])
  expect(facts(plugin)).toEqual([[w1, 22]])
})

test('hardware of a kind that nobody knows runs only rules for any hardware, and its checks say what is not given', () => {
  const projection = one('projection')
  const wire = { kind: 'wire', schema: {} }
  const wires = pluginOf(
    'wires',
    [rule({ id: 'x', on: wire, needs: {}, gives: { projection } }).run(() => ({ projection: 1 }))],
    { kinds: [wire] },
  )
  const every = pluginOf('every', [
    rule({ id: 'y', on: 'treatment', needs: { projection }, gives: { width } }).run((_, { projection }) => ({
      width: projection,
    })),
    rule({ id: 'z', on: 'treatment', needs: { width }, gives: { checks }, codes: ['every/z'] }).run(({ at }) => ({
      checks: [{ code: 'every/z', verdict: 'pass', at, values: {} }],
    })),
  ])
  const { checks: found, faults, asks, unread } = plan(wires, every)
  expect(found.map(({ at, verdict, says, values }) => [at, verdict, says, values.first])).toEqual([
    [under, 'pass', undefined, undefined],
    [over, 'unknown', 'host/not-given', 'test/projection@1'],
  ])
  expect([faults, asks, unread]).toEqual([[], [], [{ at: '/hardware/h/kind', what: 'kind', name: 'pole' }]])
})

test('what nobody reads is named: parts of unknown plugins, hardware that is not there', () => {
  const job = put(put(house, `${over}/with/stranger`, {}), `${under}/hardware`, 'gone')
  expect(createPlanner([]).window(job, job, w1).unread).toEqual([
    { at: `${under}/hardware`, what: 'hardware', name: 'gone' },
    { at: '/hardware/h/kind', what: 'kind', name: 'pole' },
    { at: `${over}/with/stranger`, what: 'with', name: 'stranger' },
  ])
})

test('a plugin older than its part of the job sleeps', () => {
  const pole = { kind: 'pole', schema: {} }
  const poles = pluginOf('poles', [rule({ id: 'x', on: pole, needs: {}, gives: { width } }).run(() => ({ width: 1 }))], {
    kinds: [pole],
  })
  const job = { ...house, uses: { poles: 2 } }
  const planner = createPlanner([poles, pluginOf('wires', [], { kinds: [{ kind: 'wire', schema: {} }] })])
  expect(planner.window(job, job, w1)).toMatchObject({ facts: [], unread: [{ what: 'kind', name: 'pole' }] })
  expect(planner.job(job, job).unread[0]).toEqual({ at: '/uses/poles', what: 'version', name: 'poles' })
})

test('no rule of a plugin that sleeps runs, not on any level', () => {
  const job = { ...house, uses: { p: 2 } }
  expect(createPlanner([pluginOf('p', [named])]).window(job, job, w1).facts).toEqual([])
})

test('a need that no plugin can fill is named, so that a slip of the pen is found', () => {
  const plugin = pluginOf('p', [
    rule({ id: 'x', on: 'treatment', needs: { width, total: { maybe: total }, sizes }, gives: {} }).run(() => ({})),
  ])
  expect(createPlanner([plugin]).unmet).toEqual([{ plugin: 'p', rule: 'x', fact: 'test/width@1' }])
})

test('all that the host collects is in the plan, with its giver', () => {
  const reckoning = { name: `${w1}#n`, what: 'p/n', value: 1, unit: 'count', how: 'given', terms: [] } as const
  const layer = { view: 'plan', depth: 1, marks: [] } as const
  const part = { what: 'p/part', count: 2 }
  const entry = { section: 'care', code: 'p/care', values: {} } as const
  const plugin = pluginOf('p', [
    rule({ id: 'x', on: 'window', needs: {}, gives: { parts, layers, reckonings, entries, steps } }).run(() => ({
      parts: [part],
      layers: [layer],
      reckonings: [reckoning],
      entries: [entry],
      steps: [{ id: 's', stage: 'hang', code: 'p/s' }],
    })),
  ])
  const from = { by: 'p/x', on: w1 }
  expect(plan(plugin)).toEqual({
    window: w1,
    checks: [],
    parts: [{ ...part, ...from }],
    reckonings: [{ ...reckoning, ...from }],
    layers: [{ ...layer, ...from }],
    entries: [{ ...entry, ...from }],
    steps: [
      {
        id: 's',
        stage: 'hang',
        code: 'p/s',
        plugin: 'p',
        rule: 'x',
        on: w1,
        closed: [],
        done: false,
        doneAt: `${w1}/found/done/p/s`,
      },
    ],
    asks: [],
    unread: [
      { at: '/hardware/g/kind', what: 'kind', name: 'wire' },
      { at: '/hardware/h/kind', what: 'kind', name: 'pole' },
    ],
    faults: [],
    facts: [],
  })
})

test('the order of plugins and of their rules changes no byte', () => {
  const rules = ['c', 'a', 'b'].map((id) =>
    rule({ id, on: 'treatment', needs: { all: { maybe: width } }, gives: { sizes, checks } }).run(({ at }) => ({
      sizes: [id.charCodeAt(0)],
      checks: [{ code: `p/${id}`, verdict: 'pass', at, values: {} }],
    })),
  )
  const plugins = [pluginOf('q', rules), pluginOf('p', rules), pluginOf('o', [named])]
  const turned = [...plugins].reverse().map((plugin) => ({ ...plugin, rules: [...plugin.rules].reverse() }))
  expect(planText(plan(...turned))).toBe(planText(plan(...plugins)))
})

test('the text of a plan is indented JSON that ends its last line', () => {
  const one = plan()
  expect(planText(one)).toBe(`${JSON.stringify(one, null, 2)}\n`)
})

test('a place that is no window is refused with one that is', () => {
  expect(() => createPlanner([]).window(house, house, '/rooms/r1/windows/none')).toThrow(
    new RangeError('Unexpected place "/rooms/r1/windows/none", expected a window of this job, such as "/rooms/r1/windows/w1"'),
  )
})
