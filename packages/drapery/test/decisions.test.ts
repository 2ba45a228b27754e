import type { Job } from '@evenhem/job'
import { inch, inches, type Length, tapes } from '@evenhem/length'
import { createPlanner, type PlannedCheck } from '@evenhem/planner'
import { createSay, wordsOf } from '@evenhem/planner/say'
import type { WayOut } from '@evenhem/plugin'
import { changed } from '@evenhem/plugin/kit'
import { plugins } from '@evenhem/plugins'
import { describe, expect, test } from 'vitest'
import { example } from '../../../tests/tools/examples.ts'
import { followLengths, resetPins } from '../src/arithmetic/index.ts'
import { decided, differenceOf } from '../src/decisions.ts'

// A pair of panels of 89 with pins at 1/2, on rings that take pins from 1/4 to 3/4; rod ordered at 91 1/8, ceiling at 103 1/2.
const planner = createPlanner(plugins)
const { ordered } = example('panels-came-wrong')
const window = '/rooms/garden-room/windows/w1'
const over = `${window}/treatments/over`
type Change = readonly [place: string, value: unknown]
const panel = (side: string, size: string, value: number): Change => [`${over}/panels/${side}/${size}`, inches(value)]
const found = (...changes: readonly Change[]): Job => changes.reduce<Job>((job, [at, value]) => changed(job, at, value), ordered)
const planOf = (job: Job, order = ordered) => {
  const plan = planner.window(job, order, window)
  expect(plan.faults).toEqual([])
  return plan
}
const asOrdered = (job: Job, place: string, order = ordered): PlannedCheck | undefined =>
  planOf(job, order).checks.find(({ code, at }) => code === 'drapery/as-ordered' && at === `${over}/panels/${place}`)
const checkOf = (job: Job, code: string) => planOf(job).checks.find((each) => each.code === code)
const codes = (check: PlannedCheck | undefined) => check?.ways?.map(({ code }) => code.replace('drapery/way-', ''))
const wayOf = (check: PlannedCheck | undefined, code: string) => check?.ways?.find((way) => way.code === `drapery/way-${code}`)
/** The job once a way out is taken. */
const taking = (job: Job, way: WayOut | undefined): Job => {
  if (!way) throw new Error('Unexpected check without this way out, expected one')
  return way.put.reduce<Job>((each, { at, value }) => changed(each, at, plain(value)), job)
}
const plain = (value: WayOut['put'][number]['value']) => (typeof value === 'object' ? Object.values(value)[0] : value)
const wrong = (job: Job) =>
  planOf(job)
    .checks.filter(({ verdict }) => verdict === 'fail' || verdict === 'warn')
    .map(({ code }) => code)
const inInches = (value: unknown) => (value as { readonly length: Length }).length / inch
const topOfRod = (job: Job) => {
  const fact = planOf(job).facts.find(({ id }) => id === 'drapery/top-of-rod@1')
  return ((fact?.value as { readonly value: number } | undefined)?.value ?? 0) / inch
}

describe('pins', () => {
  // Left 1/4 long, where the workroom allows 1/8: its pins go 1/4 deeper, the brackets stay.
  const strict: Change = ['/job/workroom/rules', { lengthOff: inches(0.125) }]
  const long = () => found(strict, panel('left', 'finishedLength', 89.25))
  test('a panel that is a little long has its pins set deeper by as much, and nothing else moves', () => {
    const check = asOrdered(long(), 'left/finishedLength')
    expect([check?.verdict, codes(check)]).toEqual(['warn', ['pins', 'go-on', 'call']])
    const { values } = wayOf(check, 'pins') as WayOut
    expect([values.how, values.move, inInches(values.pin)]).toEqual(['one', 'none', 0.75])
  })
  test('once the pins are set for it, nothing is left to say', () => {
    const set = taking(long(), wayOf(asOrdered(long(), 'left/finishedLength'), 'pins'))
    expect(asOrdered(set, 'left/finishedLength')?.says).toBe('drapery/as-ordered.reset-pins')
    expect([wrong(set), topOfRod(set)]).toEqual([[], topOfRod(ordered)])
  })
  test('pins that are then read otherwise are a difference again', () => {
    const set = taking(long(), wayOf(asOrdered(long(), 'left/finishedLength'), 'pins'))
    expect(asOrdered(changed(set, `${over}/panels/left/pin`, inches(0.625)), 'left/pin')?.verdict).toBe('warn')
  })
  test('pins that came set otherwise go back to the order, and need no decision there', () => {
    const job = found(panel('right', 'pin', 0.625))
    const way = wayOf(asOrdered(job, 'right/pin'), 'pins')
    expect(way?.put).toEqual([{ at: `${over}/panels/right/pin`, value: { length: inches(0.5) } }])
    expect(wrong(taking(job, way))).toEqual([])
  })
  test('where only a little of the brackets brings all pins into their range, they move by that', () => {
    const job = found(panel('left', 'finishedLength', 88.5))
    const way = wayOf(asOrdered(job, 'left/finishedLength'), 'pins')
    expect(
      [way?.values.move, way?.values.by, way?.values.left, way?.values.right].map((each) =>
        typeof each === 'object' ? inInches(each) : each,
      ),
    ).toEqual(['down', 0.25, 0.25, 0.75])
    const set = taking(job, way)
    expect([wrong(set), topOfRod(set)]).toEqual([[], topOfRod(ordered) - 0.25])
  })
  test('pins never sit lower in the heading than half an inch above its edge', () => {
    const low = (height: number): Change => [`${over}/panels/left/heading/height`, inches(height)]
    const way = (height: number) =>
      wayOf(asOrdered(found(strict, low(height), panel('left', 'finishedLength', 89.25)), 'left/finishedLength'), 'pins')
    expect(way(1.25)?.values.move).toBe('none')
    expect([way(1.1875)?.values.move, inInches(way(1.1875)?.values.by)]).toEqual(['up', 1 / 16])
  })
  test('a carrier in front of its rod keeps the heading above it', () => {
    const { ordered: layers, places } = example('two-and-three-layers')
    const at = `${places[0]}/treatments/over`
    const short = changed(layers, `${at}/panels/left/finishedLength`, inches(88.625))
    const plan = planner.window(short, layers, places[0] as string)
    const reach = plan.facts.find(({ id, at: on }) => id === 'drapery/pin-reach@1' && on === at)?.value as {
      least: { value: number }
    }
    const ways = plan.checks.find(({ code, on }) => code === 'drapery/as-ordered' && on === at)?.ways
    const pins =
      ways?.flatMap(({ put }) => put.filter((each) => each.at.endsWith('/pin')).map(({ value }) => plain(value) as number)) ?? []
    expect(Math.min(...pins)).toBe(reach.least.value)
  })
})

describe('brackets', () => {
  const both = (length: number) => found(panel('left', 'finishedLength', length), panel('right', 'finishedLength', length))
  test('panels that are short alike are followed by the brackets, and the order’s own height of the rod goes with them', () => {
    const way = wayOf(asOrdered(both(88), 'left/finishedLength'), 'brackets')
    expect([way?.values.move, inInches(way?.values.by)]).toEqual(['down', 1])
    const set = taking(both(88), way)
    expect([wrong(set), topOfRod(set)]).toEqual([[], topOfRod(ordered) - 1])
    expect(['left', 'right'].map((side) => asOrdered(set, `${side}/finishedLength`)?.says)).toEqual(
      Array(2).fill('drapery/as-ordered.move-the-brackets'),
    )
  })
  test.each([
    ['rod/aboveCasing', 4.875, 3.875],
    ['rod/belowCeiling', 12.375, 13.375],
  ])('an order that means the rod by %s says so afterwards', (place, was, is) => {
    const order = changed(changed(ordered, `${over}/rod/top`), `${over}/${place}`, inches(was))
    const job = (['left', 'right'] as const).reduce(
      (each, side) => changed(each, `${over}/panels/${side}/finishedLength`, inches(88)),
      order,
    )
    const put = wayOf(asOrdered(job, 'left/finishedLength', order), 'brackets')?.put
    expect(put?.find(({ at }) => at === `${over}/${place}`)?.value).toEqual({ length: inches(is) })
  })
  test('panels that are long alike raise them, while there is room overhead', () => {
    const ceiling = (height: number) => changed(both(90), '/rooms/garden-room/ceiling', inches(height))
    expect(codes(asOrdered(ceiling(103.5), 'left/finishedLength'))).toContain('brackets')
    expect(codes(asOrdered(ceiling(92.5), 'left/finishedLength'))).not.toContain('brackets')
  })
  test('they stay once one is fixed, and where they are not its own or on a ceiling', () => {
    const ways = (...change: Change) => codes(asOrdered(changed(both(88), ...change), 'left/finishedLength'))
    expect(ways(`${over}/found/brackets/left/fixed`, false)).toContain('brackets')
    expect(ways(`${over}/found/brackets/left/fixed`, true)).toEqual(['call'])
    expect(ways(`${over}/bracketsOf`, 'other')).toEqual(['call'])
    expect(ways(`${over}/mount`, 'ceiling')).toEqual(['call'])
  })
  test('panels that are unlike are not followed by them', () => {
    expect(followLengths([hung(88.5, 88.5), hung(88.5, 88)], inches(0.125))).toBeUndefined()
    expect(followLengths([hung(88.5, 88), hung(88.5, 88.125)], inches(0.125))).toBe(inches(-0.375))
    expect(followLengths([hung(88.5, 88), hung(88.4375, 88)], inches(0.125))).toBe(inches(-0.5))
  })
  const hung = (was: number, bears: number) => ({ ordered: inches(was), bears: inches(bears) })
})

describe('what was decided', () => {
  const decidedAt = `${over}/found/decided`
  const fail = () => found(panel('right', 'firstToLast', 38.5))
  test('going on is offered where nothing stops, and a stop takes a reason', () => {
    expect(codes(asOrdered(found(panel('right', 'pin', 0.625)), 'right/pin'))).toContain('go-on')
    expect(codes(asOrdered(fail(), 'right/firstToLast'))).toEqual(['call'])
    const went = changed(fail(), decidedAt, { 'right.firstToLast': `go on: ${differenceOf(inches(38.5), inches(37.5))}` })
    expect(asOrdered(went, 'right/firstToLast')).toMatchObject({ verdict: 'fail', stops: 'mark' })
  })
  test('going on is shown, and a reading that changes afterwards is a new difference', () => {
    const job = found(panel('right', 'pin', 0.625))
    const went = taking(job, wayOf(asOrdered(job, 'right/pin'), 'go-on'))
    expect(asOrdered(went, 'right/pin')).toMatchObject({ verdict: 'pass', says: 'drapery/as-ordered.go-on' })
    expect(asOrdered(changed(went, `${over}/panels/right/pin`, inches(0.6875)), 'right/pin')?.verdict).toBe('warn')
  })
  test('an order that is revised afterwards is a new difference', () => {
    const text = { 'right.pin': `go on: ${differenceOf(inches(0.625), inches(0.5))}` }
    const job = changed(found(panel('right', 'pin', 0.625)), decidedAt, text)
    expect(asOrdered(job, 'right/pin')?.verdict).toBe('pass')
    expect(asOrdered(job, 'right/pin', changed(ordered, `${over}/panels/right/pin`, inches(0.375)))?.verdict).toBe('warn')
  })
  test('calling the workroom stops, also where nothing stopped', () => {
    for (const [job, place] of [
      [fail(), 'right/firstToLast'],
      [found(panel('right', 'pin', 0.625)), 'right/pin'],
    ] as const) {
      const called = taking(job, wayOf(asOrdered(job, place), 'call'))
      expect(asOrdered(called, place)).toMatchObject({
        verdict: 'fail',
        stops: 'mark',
        says: 'drapery/as-ordered.call-the-workroom',
      })
      expect(codes(asOrdered(called, place))).not.toContain('call')
    }
  })
  test('a reason lifts the difference that it was given for, and not another one', () => {
    const key = `drapery~1as-ordered right.firstToLast ${differenceOf(inches(38.5), inches(37.5))}`
    const job = changed(fail(), `${over}/found/overrides/${key}`, 'The customer likes it full.')
    expect(asOrdered(job, 'right/firstToLast')?.override).toBe('The customer likes it full.')
    expect(planOf(job).steps.filter(({ closed }) => closed.includes('drapery/as-ordered'))).toEqual([])
    const other = changed(job, `${over}/panels/right/firstToLast`, inches(38.625))
    expect(asOrdered(other, 'right/firstToLast')).not.toHaveProperty('override')
    expect(asOrdered(changed(job, `${over}/panels/left/return`, inches(5)), 'left/return')).not.toHaveProperty('override')
  })
  test('words that are none of ours decide nothing', () => {
    const treatment = { found: { decided: { a: 'go on', b: 'leave it: 1 mm for 2 mm' } } } as never
    expect(['a', 'b', 'c'].map((key) => decided(treatment, key, '1 mm for 2 mm'))).toEqual([undefined, undefined, undefined])
  })
})

describe('hems that hang unlike', () => {
  // Both inside 1/4 of the order, 3/8 from one another.
  const unlike = () => found(panel('left', 'finishedLength', 89.1875), panel('right', 'finishedLength', 88.8125))
  test('are said to come from the lengths, and pins bring them together', () => {
    const check = checkOf(unlike(), 'drapery/hems-alike')
    expect(check).toMatchObject({ verdict: 'warn', values: { cause: 'lengths' } })
    expect(wrong(taking(unlike(), wayOf(check, 'pins')))).toEqual([])
  })
  test('are said to come from the pins where the lengths are alike', () =>
    expect(checkOf(found(panel('left', 'pin', 0.75)), 'drapery/hems-alike')).toMatchObject({
      verdict: 'warn',
      values: { cause: 'pins' },
    }))
  test('may stay so, or the workroom is called', () => {
    const once = (code: string) =>
      checkOf(taking(unlike(), wayOf(checkOf(unlike(), 'drapery/hems-alike'), code)), 'drapery/hems-alike')
    expect(once('go-on')).toMatchObject({ verdict: 'pass', says: 'drapery/hems-alike.go-on' })
    expect(once('call')).toMatchObject({ verdict: 'fail', says: 'drapery/hems-alike.called', stops: 'mark' })
  })
  test('pins that take up what the lengths differ are no fault', () => {
    const set = found(panel('left', 'finishedLength', 89.25), panel('left', 'pin', 0.75))
    expect(checkOf(set, 'drapery/pins-alike')).toMatchObject({ verdict: 'pass', says: 'drapery/pins-alike.taken' })
    expect(checkOf(found(panel('left', 'pin', 0.75)), 'drapery/pins-alike')?.verdict).toBe('warn')
  })
})

describe('panels in each other’s bags', () => {
  const { ordered: order, found: swapped } = example('what-was-decided')
  const codesOf = (job: Job) =>
    planner.window(job, order, window).checks.filter(({ verdict }) => verdict === 'fail' || verdict === 'warn')
  test('are named once', () => expect(codesOf(swapped).map(({ code }) => code)).toEqual(['drapery/panels-swapped']))
  test('swapped, they are as they were ordered', () => {
    const [check] = codesOf(swapped)
    expect(codes(check)).toEqual(['swap', 'call'])
    expect(codesOf(taking(swapped, wayOf(check, 'swap')))).toEqual([])
  })
  test('a reading of one panel alone goes with it', () => {
    const read = changed(swapped, `${over}/panels/left/finishedLength`, inches(88.875))
    const set = taking(read, wayOf(codesOf(read)[0], 'swap'))
    const lengths = set.rooms[0]?.windows[0]?.treatments[0]?.panels.map(({ finishedLength }) => (finishedLength ?? 0) / inch)
    expect(lengths).toEqual([89, 88.875])
  })
  test('the workroom is called about what was read', () => {
    const called = taking(swapped, wayOf(codesOf(swapped)[0], 'call'))
    expect(codesOf(called)).toMatchObject([{ says: 'drapery/panels-swapped.called', stops: 'mark' }])
    expect(codesOf(changed(called, `${over}/panels/left/firstToLast`, inches(45.375)))).toMatchObject([
      { says: 'drapery/panels-swapped.fail' },
    ])
  })
  test('panels that are alike, or of which one only is off, are not swapped', () => {
    expect(
      checkOf(found(panel('left', 'firstToLast', 39), panel('right', 'firstToLast', 36)), 'drapery/panels-swapped'),
    ).toBeUndefined()
    const one = changed(swapped, `${over}/panels/right/firstToLast`, inches(45.5))
    expect(codesOf(one).map(({ code }) => code)).not.toContain('drapery/panels-swapped')
  })
})

test('the whole width is named where its parts are well and it is not', () => {
  const wide = found(
    ['/job/workroom/rules', { widthOff: inches(0.5) }],
    panel('left', 'firstToLast', 37.875),
    panel('left', 'leadingFlat', 1.75),
  )
  expect(asOrdered(wide, 'left')).toMatchObject({
    verdict: 'fail',
    values: { size: { code: 'drapery/finished-width' }, off: { length: inches(0.625) } },
  })
  expect(asOrdered(found(panel('left', 'firstToLast', 37.875)), 'left')).toBeUndefined()
  expect(asOrdered(found(panel('left', 'firstToLast', 38.25)), 'left')).toBeUndefined()
})

test('pins move with their panels while the brackets stay, and there are none beyond their range', () => {
  const came = (length: number, ordered = 88.5) => ({
    panel: 'p',
    ordered: inches(ordered),
    length: inches(length),
    least: inches(0.25),
    most: inches(0.75),
  })
  const pins = (...all: readonly ReturnType<typeof came>[]) => resetPins(all, true)?.pins.map(({ pin }) => pin / inch)
  expect(pins(came(89), came(89.25))).toEqual([0.5, 0.75])
  // The one that was meant to hang from the higher line sets it.
  expect(pins(came(89), came(89.25, 88.75))).toEqual([0.25, 0.5])
  expect(pins(came(88.5))).toEqual([0.25])
  expect(pins(came(89), came(89.5))).toEqual([0.25, 0.75])
  expect(pins(came(89), came(89.5625))).toBeUndefined()
  expect(resetPins([came(89.5)], false)).toBeUndefined()
  expect(resetPins([came(88.75)], false)?.lift).toBe(0)
})

test('every way out is said in both languages', () => {
  const jobs = [
    found(panel('left', 'finishedLength', 88.5), panel('right', 'pin', 0.625)),
    found(panel('left', 'finishedLength', 88), panel('right', 'finishedLength', 88)),
    found(panel('left', 'finishedLength', 90), panel('right', 'finishedLength', 90)),
  ]
  const ways = jobs.flatMap((job) => planOf(job).checks.flatMap((check) => check.ways ?? []))
  const said = (language: string) =>
    ways.map(({ code, values }) => createSay({ words: wordsOf(plugins), language, tape: tapes.sixteenths }).say(code, values))
  expect([...new Set(said('en'))]).toMatchInlineSnapshot(`
    [
      "Reset the pins to 1/4 on the left and 3/4 on the right, with the brackets 1/4 lower than ordered: the hems then hang as ordered.",
      "Stop and call the workroom.",
      "Go on with it as it is.",
      "Put the brackets 1 lower than ordered, as the plan does for panels of this length.",
      "Reset the pins to 1/4 on the left and 1/4 on the right, with the brackets 3/4 lower than ordered: the hems then hang as ordered.",
      "Put the brackets 1 higher than ordered, as the plan does for panels of this length.",
      "Reset the pins to 3/4 on the left and 3/4 on the right, with the brackets 3/4 higher than ordered: the hems then hang as ordered.",
    ]
  `)
  expect([...new Set(said('es'))]).toMatchInlineSnapshot(`
    [
      "Ajustar los ganchos a 1/4 en el izquierdo y a 3/4 en el derecho, con los soportes 1/4 más bajos que lo pedido: los dobladillos cuelgan entonces como se pidió.",
      "Parar y llamar al taller.",
      "Seguir así.",
      "Poner los soportes 1 más bajos que lo pedido, como hace el plan con paños de este largo.",
      "Ajustar los ganchos a 1/4 en el izquierdo y a 1/4 en el derecho, con los soportes 3/4 más bajos que lo pedido: los dobladillos cuelgan entonces como se pidió.",
      "Poner los soportes 1 más altos que lo pedido, como hace el plan con paños de este largo.",
      "Ajustar los ganchos a 3/4 en el izquierdo y a 3/4 en el derecho, con los soportes 3/4 más altos que lo pedido: los dobladillos cuelgan entonces como se pidió.",
    ]
  `)
})
