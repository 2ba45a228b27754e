import { checks, type Fact, type Plugin, type Rule, rule } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createPlanner, type Misfit } from '../src/index.ts'
import { many, one, pluginOf } from './invented.ts'

const [a, b, c] = [one('a'), one('b'), one('c')]
const total = one('total', 'window')
const inRoom = one('in-room', 'room')
const inJob = one('in-job', 'job')
const pole = { kind: 'pole', schema: {} }
const wire = { kind: 'wire', schema: {} }

const made = (id: string, on: Rule['on'], needs: Rule['needs'], gives: Rule['gives']): Rule =>
  rule({ id, on, needs, gives }).run(() => ({}))
const refused = (...plugins: readonly Plugin[]): readonly Misfit[] => {
  try {
    createPlanner(plugins)
  } catch (error) {
    return (error as { readonly faults: readonly Misfit[] }).faults
  }
  return []
}
const messages = (...plugins: readonly Plugin[]) => refused(...plugins).map((fault) => fault.message)

test('plugins that fit are not refused', () => {
  expect(refused(pluginOf('p', [made('x', 'treatment', {}, { a }), made('y', 'treatment', { a }, { b, checks })]))).toEqual([])
})

test('a cycle is refused with its whole path', () => {
  const first = pluginOf('first', [made('x', 'treatment', { c }, { a }), made('y', 'treatment', { a }, { b })])
  const second = pluginOf('second', [made('z', 'treatment', { b: { maybe: b } }, { c })])
  expect(messages(second, first)).toEqual([
    'Unexpected cycle, expected an order: first/x (gives test/a@1) → first/y (gives test/b@1) → second/z (gives test/c@1) → first/x; let one of them read something else',
  ])
})

test('a cycle through a window is refused', () => {
  const plugin = pluginOf('p', [made('sum', 'window', { all: { each: a } }, { total }), made('x', 'treatment', { total }, { a })])
  expect(messages(plugin)).toEqual([
    'Unexpected cycle, expected an order: p/sum (gives test/total@1) → p/x (gives test/a@1) → p/sum; let one of them read something else',
  ])
})

test('a rule that reads a list it adds to is a cycle of one', () => {
  expect(refused(pluginOf('p', [made('x', 'treatment', { l: many('l') }, { l: many('l') })])).map(({ what }) => what)).toEqual([
    'cycle',
  ])
})

test('two kinds may work out the same two facts in opposite orders', () => {
  const down = pluginOf('down', [made('x', pole, { c }, { a }), made('y', pole, { a }, { b })], { kinds: [pole] })
  const up = pluginOf('up', [made('x', wire, { c }, { b }), made('y', wire, { b }, { a })], { kinds: [wire] })
  expect(refused(down, up)).toEqual([])
})

test('two givers for the same kind of treatment are refused, both named', () => {
  const own = pluginOf('own', [made('x', pole, {}, { a })], { kinds: [pole] })
  const every = pluginOf('every', [made('y', 'treatment', {}, { a })])
  expect(messages(own, every)).toEqual([
    'every/y and own/x: unexpected second giver of test/a@1 for the same treatment, expected one; leave one out, or put each on a kind of its own',
  ])
})

test('two kinds may each give the same fact', () => {
  const poles = pluginOf('poles', [made('x', pole, {}, { a })], { kinds: [pole] })
  const wires = pluginOf('wires', [made('x', wire, {}, { a })], { kinds: [wire] })
  expect(refused(poles, wires)).toEqual([])
})

test('two parts that plugins add to the same level are one giver too many', () => {
  const addition = { to: 'window', schema: {} } as const
  const plugins = ['p', 'q'].map((id) => pluginOf(id, [made('x', addition, {}, { total })], { additions: [addition] }))
  expect(refused(...plugins)).toMatchObject([{ what: 'two-givers', plugin: 'p', rule: 'x' }])
})

test('any number of givers may add to a list', () => {
  expect(
    refused(
      pluginOf(
        'p',
        ['x', 'y'].map((id) => made(id, 'treatment', {}, { l: many('l') })),
      ),
    ),
  ).toEqual([])
})

test('a read of a level below is refused without each', () => {
  expect(messages(pluginOf('p', [made('x', 'window', { a }, {})]))).toEqual([
    'p/x: unexpected read of test/a@1 of the treatment from the window above it; gather it with { each: … }',
  ])
})

test('each of a fact that does not lie below is refused', () => {
  expect(messages(pluginOf('p', [made('x', 'treatment', { a: { each: a } }, {})]))).toEqual([
    'p/x: unexpected { each: test/a@1 }: a fact of the treatment does not lie below the treatment; read it without each',
  ])
})

test('a gift of another level is refused', () => {
  expect(messages(pluginOf('p', [made('x', 'window', {}, { a })]))).toEqual([
    'p/x: unexpected gift of test/a@1 of the treatment, expected a fact of the window that the rule is on',
  ])
})

test('what the host collects may be given on every level, and read on none', () => {
  expect(
    refused(
      pluginOf(
        'p',
        (['job', 'room', 'window', 'treatment'] as const).map((on) => made(on, on, {}, { checks })),
      ),
    ),
  ).toEqual([])
  expect(messages(pluginOf('p', [made('x', 'job', { all: { each: checks } }, {})]))).toEqual([
    'p/x: unexpected read of host/checks@1, which the host collects; read the fact that it was made from',
  ])
})

test('nobody can give a fact of the host’s that it does not collect', () => {
  const made = { ...checks, id: 'host/wishes@1' } as Fact
  expect(refused(pluginOf('p', [rule({ id: 'x', on: 'job', needs: {}, gives: { made } }).run(() => ({}))]))).toMatchObject([
    { what: 'collected' },
  ])
})

test('a window that reads what the room gathered is refused', () => {
  const room = pluginOf('room', [made('gathers', 'room', { all: { each: a } }, { inRoom })])
  const window = pluginOf('window', [made('reads', 'window', { inRoom }, {})])
  expect(messages(room, window)).toEqual([
    'window/reads: unexpected read of test/in-room@1, which room/gathers gathered from windows; what is gathered is for the job’s pages, read facts of this window instead',
  ])
})

test('a treatment that reads what the job gathered, through another fact, is refused', () => {
  const rules = [
    made('gathers', 'job', { all: { each: total } }, { inJob }),
    made('passes-on', 'room', { inJob }, { inRoom }),
    made('reads', 'treatment', { inRoom }, {}),
  ]
  expect(refused(pluginOf('p', rules))).toMatchObject([{ what: 'gathered', plugin: 'p', rule: 'reads' }])
})

test('a window may read what room and job give of themselves', () => {
  const rules = [
    made('x', 'job', {}, { inJob }),
    made('y', 'room', { inJob }, { inRoom }),
    made('z', 'window', { inRoom, inJob }, {}),
  ]
  expect(refused(pluginOf('p', rules))).toEqual([])
})

test('declarations of a fact that disagree are refused', () => {
  const other = { ...a, many: true } as Fact
  expect(messages(pluginOf('p', [made('x', 'treatment', {}, { a }), made('y', 'treatment', { other }, {})]))).toEqual([
    "p/y: unexpected { of: 'treatment', many: true } for test/a@1, expected { of: 'treatment', many: false } as in p/x; declare it alike",
  ])
})

test('a name, a rule, a kind and a part have one owner', () => {
  const addition = { to: 'room', schema: {} } as const
  const twice = pluginOf('p', [made('x', 'job', {}, {}), made('x', 'job', {}, {})], {
    kinds: [pole],
    additions: [addition, addition],
  })
  expect(refused(twice, pluginOf('p', [], { kinds: [pole] })).map(({ what }) => what)).toEqual([
    'plugin-twice',
    'kind-twice',
    'rule-twice',
    'addition',
  ])
})

test('a rule on a part that its plugin does not list is refused', () => {
  expect(refused(pluginOf('p', [made('x', { to: 'room', schema: {} }, {}, {})]))).toMatchObject([{ what: 'addition', rule: 'x' }])
})

test('another version of the contract is refused', () => {
  expect(messages(pluginOf('p', [], { contract: 2 as 1 }))).toEqual([
    'p: unexpected contract 2, expected 1; build the plugin for this version',
  ])
})

test('one refusal lists all faults', () => {
  const plugin = pluginOf('p', [made('x', 'window', { a }, { b }), made('y', 'treatment', { c }, { c })])
  expect(refused(plugin).map(({ what, rule }) => [what, rule])).toEqual([
    ['level', 'x'],
    ['level', 'x'],
    ['cycle', 'y'],
  ])
  expect(() => createPlanner([plugin])).toThrow(/^These plugins can’t work together:\n- p\/x: /)
})
