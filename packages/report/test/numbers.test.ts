import { figuresOf } from '@evenhem/drawing'
import { windowsOf } from '@evenhem/job'
import { type Length, tapes, writeLength } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import { expect, test } from 'vitest'
import { reportOf, type Said } from '../src/index.ts'
import { example, house, planned } from './example.ts'

const examples = [
  'tern-hollow',
  'tern-hollow-found',
  'rod-too-short',
  'panels-do-not-meet',
  'returns-do-not-fit',
  'rod-above-casing',
]

const lengthsIn = (values: object): readonly Length[] =>
  Object.values(values).flatMap((value) => (typeof value === 'object' && 'length' in value ? [value.length as Length] : []))
/** Every length that a plan has for people: reckonings, values of sentences, figures of drawings. */
const lengthsOf = (plan: WindowPlan): ReadonlySet<number> =>
  new Set([
    ...plan.reckonings.map(({ value }) => value),
    ...[...plan.entries, ...plan.checks].flatMap(({ values }) => lengthsIn(values)),
    ...plan.layers.flatMap(({ marks }) =>
      [...JSON.stringify(marks).matchAll(/"figure":\{"value":(-?\d+)/g)].map(([, value]) => Number(value)),
    ),
  ])
const numbersIn = (sentences: readonly Said[]) =>
  sentences.flatMap((sentence) => sentence.filter((part) => typeof part !== 'string'))

const inSixteenths = (length: number): string => writeLength(length as Length, tapes.sixteenths).text
/** The numbers of a page, as they are read, without their unit. */
const numbersOn = (page: string): readonly string[] =>
  [...page.matchAll(/<span class="number"[^>]*>((?:[^<]|<span class="fraction">[^<]*<\/span>)*)<\/span>/g)].map(
    ([, inside = '']) => inside.replaceAll(/<[^>]*>/g, '').replace(/ (mm|in|pulg\.?)$/, ''),
  )

test.each(examples)('every number of the outline is one of the plan’s, exactly: %s', (name) => {
  const { plan, page } = planned(example(name))
  const said = numbersIn([
    ...page.lead,
    ...page.facts.flatMap(({ of }) => of.flatMap(({ says }) => says)),
    ...page.notes.flatMap(({ of }) => of),
    ...(page.marks?.of ?? []).flatMap(({ says }) => says),
    ...[...page.open.of, ...page.checked.of].flatMap(({ says, help = [] }) => [says, help]),
  ])
  const drawn = page.drawing
    ? [...figuresOf(page.drawing.scene), ...figuresOf(page.drawing.small)].map(({ figure }) => figure.value)
    : []
  const all = [...said.map(({ length }) => length), ...drawn]
  expect(all.length).toBeGreaterThan(20)
  expect(all.filter((length) => length === undefined || !lengthsOf(plan).has(length))).toEqual([])
})

test.each(['in', 'mm'] as const)('every number on the page is a length of the plan, written by the tape: %s', (unit) => {
  const tape = unit === 'in' ? tapes.sixteenths : tapes.wholeMillimetres
  const order = example('tern-hollow-found', { tape })
  const written = new Set(
    [...lengthsOf(planned(order).plan)].map((length) => writeLength(length as Length, tape).text.replace(' mm', '')),
  )
  const texts = numbersOn(reportOf(order).html)
  expect(texts.length).toBeGreaterThan(20)
  expect(texts.filter((text) => !written.has(text))).toEqual([])
})

test('every number of a house’s report is a length of one of its plans, in Spanish too', () => {
  const order = house(examples.slice(0, 4), { language: 'es' })
  const plans = windowsOf(order.ordered).map(({ place }) => order.planner.window(order.ordered, order.ordered, place))
  const written = new Set(plans.flatMap((plan) => [...lengthsOf(plan)].map((length) => inSixteenths(length))))
  const texts = numbersOn(reportOf(order).html)
  expect(texts.length).toBeGreaterThan(100)
  expect(texts.filter((text) => !written.has(text))).toEqual([])
})

test('every entry and every check of the plan is in the report', () => {
  const { plan, page } = planned(example('tern-hollow-found'))
  const { lead, facts, notes, open, checked } = page
  expect(lead.length + [...facts, ...notes].flatMap(({ of }) => of as readonly unknown[]).length).toBe(plan.entries.length)
  expect(open.of.length + checked.of.length).toBe(plan.checks.length)
})

test('counts stand as the plan has them', () => {
  const { plan, page } = planned(example('tern-hollow-found'))
  const rings = plan.entries.find(({ code }) => code === 'rod-and-ring/entry-rings')?.values.rings
  expect(rings).toEqual({ count: 24 })
  expect(page.facts.flatMap(({ of }) => of).find(({ name }) => name?.[0] === 'Rings')?.says).toEqual([['24']])
})
