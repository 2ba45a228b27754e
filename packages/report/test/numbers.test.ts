import { figuresOf } from '@evenhem/drawing'
import { lay, windowsOf } from '@evenhem/job'
import { type Length, tapes, writeLength } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import { expect, test } from 'vitest'
import { type ReportOrder, reportOf, type Said } from '../src/index.ts'
import { example, handedOver, house, outlined, planned } from './example.ts'

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

/** Every length that stands in what was found: pins, and the lengths in the words of decisions. */
const lengthsFound = (order: ReportOrder): ReadonlySet<number> =>
  new Set([
    ...Object.entries(order.readings).flatMap(([place, { value }]) =>
      /\/found\/pins\/|\/pin$/.test(place) ? [Number(value)] : [],
    ),
    ...[...JSON.stringify(order.readings).matchAll(/(-?[\d.]+) mm/g)].map(([, mm]) => Math.round(Number(mm) * 1e6)),
    ...[...JSON.stringify(order.ordered.rooms).matchAll(/"pin":(\d+)/g)].map(([, pin]) => Number(pin)),
  ])

test.each(['hem-trued-up', 'hems-beyond-pins', 'what-was-decided'])(
  'every number of corrections and pins is one that was found or ordered: %s',
  (name) => {
    const order = example(name)
    const { windows, closing } = outlined(order)
    const corrected = windows.flatMap(({ corrections }) => corrections?.of ?? [])
    const pins = closing.technical.of.flatMap(({ pins: { of } }) => of)
    const known = new Set([
      ...lengthsFound(order),
      ...windowsOf(order.ordered).flatMap(({ place }) => [...lengthsOf(planOf(order, place))]),
    ])
    const all = numbersIn([...corrected, ...pins].flatMap(({ says }) => says)).map(({ length }) => length)
    expect(all.length).toBeGreaterThan(2)
    expect(all.filter((length) => !known.has(length))).toEqual([])
  },
)
const planOf = ({ ordered, readings, planner }: ReportOrder, place: string) =>
  planner.window(lay(ordered, readings).job, ordered, place)

test('the pins of the next installer’s page are those of the hem as the plan has it, hook by hook', () => {
  const order = handedOver()
  const [window] = outlined(order).closing.technical.of
  const shown = (window?.pins.of ?? []).map(({ says }) => numbersIn(says).map(({ length }) => length))
  expect(shown).toEqual([[12700000, 9525000, 12700000, 15875000, 12700000], [12700000]])
})

type Map = { readonly places: readonly { readonly panel: string; readonly hook: { readonly n: number } }[] }
test.each(['tern-hollow', 'about-the-traverse-rod', 'pair-unlike'])(
  'every hook of the plan’s map stands once on the next installer’s page: %s',
  (name) => {
    const order = example(name)
    const { closing } = outlined(order)
    const hooksOf = (says: readonly Said[]) => says.map((one) => (one[0] as string).match(/^(\d+)(?: to (\d+))?:/))
    const shown = closing.technical.of.map(({ hooks }) =>
      hooks.of.flatMap(({ says }) =>
        hooksOf(says).flatMap((found) => (found ? [Number(found[2] ?? found[1]) - Number(found[1]) + 1] : [])),
      ),
    )
    const mapped = windowsOf(order.ordered).map(({ place }) =>
      planOf(order, place).facts.flatMap(({ id, value }) => (id === 'drapery/hook-map@1' ? (value as Map).places : [])),
    )
    expect(shown.map((counts) => counts.reduce((sum, count) => sum + count, 0))).toEqual(mapped.map((places) => places.length))
    expect(mapped.flat().length).toBeGreaterThan(10)
  },
)

test('the marks of the next installer’s page are those of the plan', () => {
  const { plan, page, outline } = planned(example('tern-hollow'))
  const [window] = outline.closing.technical.of
  expect(window?.marks).toEqual([page.marks])
  expect(
    numbersIn((page.marks?.of ?? []).flatMap(({ says }) => says)).filter(({ length }) => !lengthsOf(plan).has(length)),
  ).toEqual([])
})
