import { inch, inches, type Length } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import { random } from '../../../tests/tools/jobs.ts'
import {
  type ChainHook,
  chainOf,
  daysAfter,
  floorAt,
  floorUnder,
  type Held,
  hemAt,
  moveBoth,
  moveBrackets,
  movesOf,
  panelLong,
  pinsIn,
  remainsOf,
  riseAt,
  setPins,
  trueUp,
} from '../src/arithmetic/index.ts'

const eighth = inches(1 / 8)
const sixteenth = inches(1 / 16)
const none = 0 as Length
const rings = { least: inches(1 / 4), most: inches(3 / 4), step: eighth }
const inInches = (lengths: readonly number[]): readonly number[] => lengths.map((length) => length / inch)
const at = (value: number) => ({ value: inches(value), from: '/test' })
/** Hooks of one panel, all pins alike, the hem of each this much too low (to rise) or too high (negative). */
const hooks = (pin: number, ...lifts: readonly number[]) => lifts.map((lift) => ({ pin: inches(pin), lift: inches(lift) }))
const one = (pin: number, ...lifts: readonly number[]): readonly ChainHook[] =>
  chainOf([{ hooks: hooks(pin, ...lifts), back: true }], eighth, sixteenth)

describe('the hooks of a pair are one chain', () => {
  const chain = chainOf(
    [
      { hooks: hooks(0.5, 1, 2, 3), back: true },
      { hooks: hooks(0.5, 4, 5, 6), back: false },
    ],
    eighth,
    sixteenth,
  )
  test('from the left outer edge to the leading edges to the right outer edge', () =>
    expect(inInches(chain.map(({ lift }) => lift))).toEqual([3, 2, 1, 4, 5, 6]))
  test('leading edges at most 1/16 apart, the return like the last pleat, an outer edge without one within 1/8', () =>
    expect(inInches(chain.slice(1).map(({ apart }) => apart))).toEqual([0, 1 / 8, 1 / 16, 1 / 8, 1 / 8]))
  test('one panel begins at its leading edge; of none there is no chain', () => {
    expect(inInches(one(0.5, 1, 2, 3).map(({ lift }) => lift))).toEqual([1, 2, 3])
    expect(inInches(one(0.5, 1, 2, 3).map(({ apart }) => apart))).toEqual([1 / 8, 1 / 8, 0])
    expect(chainOf([], eighth, sixteenth)).toEqual([])
  })
})

test('pins may be set on the step inside the range, and may stay where they are', () => {
  expect(inInches(pinsIn(rings, [inches(0.5), inches(0.3)]))).toEqual([1 / 4, 0.3, 3 / 8, 1 / 2, 5 / 8, 3 / 4])
  expect(inInches(pinsIn({ least: inches(0.3), most: inches(0.7), step: eighth }, []))).toEqual([3 / 8, 1 / 2, 5 / 8])
  expect(inInches(pinsIn({ least: inches(0.3), most: inches(0.35), step: eighth }, [inches(0.5)]))).toEqual([0.5])
})

describe('the hem of the concept: 1/2 at the leading edge, rising to 3/4 at the wall', () => {
  // Twelve hooks, pins at 5/8, too high by 0 to 1/4: the hem comes down, so pins get shallower.
  const chain = one(0.625, ...Array.from({ length: 11 }, (_, i) => -i / 40), -1 / 4)
  const { pins, changed, remains } = setPins(chain, rings)
  test('pins go from 5/8 to 3/8, and the return takes the pin of the last pleat', () => {
    expect([pins[0], pins.at(-2), pins.at(-1)].map((pin) => (pin as number) / inch)).toEqual([5 / 8, 3 / 8, 3 / 8])
  })
  test('on eighths 1/20 remains: hooks at 3/40 and 1/5 are that far from an eighth, and no other is further', () =>
    expect(inInches([remains])).toEqual([0.05]))
  test('nine pins move', () => expect(changed).toBe(9))
  test('eighths bring it inside 1/8; for a tolerance of 1/32 sixteenths are taken', () => {
    expect(trueUp(chain, rings, eighth)).toEqual(setPins(chain, rings))
    expect(trueUp(chain, rings, inches(1 / 32))).toEqual(setPins(chain, { ...rings, step: sixteenth }))
  })
})

test('a deeper pin lifts: a hem that must rise by 1/8 takes a pin deeper by it', () =>
  expect(setPins(one(0.5, 1 / 8, 1 / 8, 1 / 8), rings)).toEqual({ pins: Array(3).fill(inches(0.625)), changed: 3, remains: 0 }))
test('what the range does not allow remains', () => {
  expect(setPins(one(0.5, 1, 1, 1), rings)).toEqual({ pins: Array(3).fill(inches(0.75)), changed: 3, remains: inches(0.75) })
  expect(setPins(one(0.5, -1, -1, -1), rings)).toEqual({ pins: Array(3).fill(inches(0.25)), changed: 3, remains: inches(0.75) })
})
test('neighbours stay within 1/8: a step of 1/2 in the floor is taken halfway', () =>
  expect(inInches(setPins(one(0.5, 0, 0.5, 0.5, 0.5), { ...rings, most: inches(2) }).pins)).toEqual([0.75, 0.875, 1, 1]))
test('half of the step is not taken when it brings nothing', () =>
  expect(inInches(trueUp(one(0.5, 1, 1, 1), rings, eighth).pins)).toEqual([0.75, 0.75, 0.75]))
test('what remains of given pins is told of the worst hook, and of pins that are not given as they are', () => {
  expect(inInches([remainsOf(one(0.5, 0.25, -0.5), [inches(0.75), inches(0.5)])])).toEqual([0.5])
  expect(inInches([remainsOf(one(0.5, 0.25, -0.125), [])])).toEqual([0.25])
  expect(remainsOf([], [])).toBe(0)
})
test('a panel whose hem must rise everywhere is long, by the middle of its most and its least', () => {
  expect(panelLong([inches(1), inches(1.5)])).toEqual({ long: inches(1.25), remains: inches(0.25) })
  expect(panelLong([inches(-1), inches(-0.5)])).toEqual({ long: inches(-0.75), remains: inches(0.25) })
})

/** All ways to set the pins of a chain, tried one by one. */
function bruteForce(chain: readonly ChainHook[], range: typeof rings) {
  const values = pinsIn(
    range,
    chain.map(({ pin }) => pin),
  )
  const all = chain.reduce<readonly (readonly Length[])[]>(
    (some, hook, i) =>
      some.flatMap((pins) =>
        values.filter((pin) => i === 0 || Math.abs(pin - (pins.at(-1) as number)) <= hook.apart).map((pin) => [...pins, pin]),
      ),
    [[]],
  )
  const rank = (pins: readonly Length[]) => {
    const errors = chain.map(({ lift, pin }, i) => Math.abs(lift - ((pins[i] as number) - pin)))
    return [Math.max(...errors), pins.filter((pin, i) => pin !== chain[i]?.pin).length, errors.reduce((a, b) => a + b, 0)]
  }
  return all.map(rank).sort((a, b) => a.map((value, i) => value - (b[i] as number)).find((apart) => apart !== 0) ?? 0)[0]
}
test('no other pins of a thousand small chains leave less, move fewer or add up to less', () => {
  for (let seed = 1; seed <= 1000; seed++) {
    const next = random(seed)
    const lift = () => Math.round((next() - 0.5) * inch) as Length
    const pin = () => inches(0.25 + Math.round(next() * 4) / 8 + (next() < 0.2 ? 0.03 : 0))
    const panel = (n: number) => ({ hooks: Array.from({ length: n }, () => ({ pin: pin(), lift: lift() })), back: next() < 0.5 })
    const panels = next() < 0.5 ? [panel(4)] : [panel(2), panel(2)]
    const chain = chainOf(panels, eighth, sixteenth)
    const { pins, changed, remains } = setPins(chain, rings)
    const sum = chain.reduce((all, { lift, pin }, i) => all + Math.abs(lift - ((pins[i] as number) - pin)), 0)
    expect({ seed, rank: [remains, changed, sum] }).toEqual({ seed, rank: bruteForce(chain, rings) })
    expect(remainsOf(chain, pins)).toBe(remains)
  }
})
test('of a thousand windows every hook is inside the tolerance after the correction, or it is said by how much not', () => {
  const counts = { inside: 0, outside: 0 }
  for (let seed = 1; seed <= 1000; seed++) {
    const next = random(seed)
    const pleats = 4 + Math.floor(next() * 10)
    const [a, b, c] = [next() - 0.5, next() - 0.5, next() - 0.5].map((value) => value * 1.2) as [number, number, number]
    const side = (from: number, to: number) => ({
      back: next() < 0.8,
      hooks: hooks(0.5, ...Array.from({ length: pleats + 2 }, (_, i) => from + ((to - from) * Math.min(i, pleats)) / pleats)),
    })
    const panels = [side(a, b), ...(next() < 0.7 ? [side(a, c)] : [])]
    const chain = chainOf(panels, eighth, sixteenth)
    const { pins, remains } = trueUp(chain, rings, eighth)
    const off = chain.map(({ lift, pin }, i) => Math.abs(lift - ((pins[i] as number) - pin)))
    expect({ seed, remains }).toEqual({ seed, remains: Math.max(...off) })
    const isAllowed = (pin: number, i: number): boolean =>
      pin >= rings.least &&
      pin <= rings.most &&
      (i === 0 || Math.abs(pin - (pins[i - 1] as number)) <= (chain[i] as ChainHook).apart)
    expect(pins.filter((pin, i) => !isAllowed(pin, i))).toEqual([])
    // What the range reaches is never said to remain: pins that need no more than a quarter inch, on slopes that neighbours can follow.
    const reach = Math.max(...chain.map(({ lift }) => Math.abs(lift)))
    if (reach <= inches(1 / 4)) expect(remains).toBeLessThanOrEqual(eighth)
    counts[remains <= eighth ? 'inside' : 'outside'] += 1
  }
  expect(Math.min(counts.inside, counts.outside)).toBeGreaterThan(100)
})

describe('brackets', () => {
  const held: Held = {
    left: { x: none, least: inches(3 / 8) },
    right: { x: inches(80), least: inches(3 / 4) },
    supports: [],
  }
  const rules = { step: eighth, most: inches(1), inLine: sixteenth, tolerance: eighth }
  const rail = (x: number, lift: number) => ({ x: inches(x), lift: inches(lift) })
  test('the rod stays straight, beyond its brackets too', () => {
    const move = { left: inches(0.5), right: none }
    expect(inInches([-8, 0, 40, 80, 88].map((x) => riseAt(held, move, inches(x))))).toEqual([0.55, 0.5, 0.25, 0, -0.05])
  })
  test('a bracket stays, or moves at least as far as a new hole allows, up or down', () => {
    expect(inInches(movesOf(held.left, eighth, inches(1 / 2)))).toEqual([0, 3 / 8, -3 / 8, 1 / 2, -1 / 2])
    expect(inInches(movesOf({ x: none, least: inches(0.4) }, eighth, inches(1 / 2)))).toEqual([0, 1 / 2, -1 / 2])
    expect(movesOf(held.right, eighth, inches(1 / 2))).toEqual([0])
  })
  test('a rod that is low at its left end is raised there', () =>
    expect(moveBrackets([rail(0, 0.5), rail(40, 0.25), rail(80, 0)], held, rules)).toEqual({
      left: inches(0.5),
      right: 0,
      remains: 0,
    }))
  test('one bracket inside the tolerance comes before two that leave less, and the shorter way before the longer', () => {
    const both = [rail(0, 0.375), rail(80, 0.75)]
    expect(moveBrackets(both, held, rules)).toMatchObject({ left: inches(0.375), right: inches(0.75), remains: 0 })
    expect(moveBrackets(both, held, { ...rules, tolerance: inches(0.4) })).toMatchObject({ left: 0, right: inches(0.75) })
    expect(moveBrackets([rail(0, 0.4375)], held, rules)).toMatchObject({ left: inches(0.375), right: 0 })
  })
  test('a support follows within 1/16, or far enough for a new hole; else the move is not made', () => {
    const support = (x: number) => ({ ...held, supports: [{ x: inches(x), least: inches(3 / 8) }] })
    const hem = [rail(0, 0.375), rail(80, 0)]
    expect(moveBrackets(hem, support(70), rules)).toMatchObject({ left: inches(0.375) })
    expect(moveBrackets(hem, support(40), rules)).not.toMatchObject({ left: inches(0.375), right: 0 })
    expect(moveBrackets([rail(0, 0.75), rail(80, 0)], support(40), rules)).toMatchObject({ left: inches(0.75), right: 0 })
  })
  test('when a new hole allows nothing so short, nothing is moved', () =>
    expect(moveBrackets([rail(0, 0.5)], held, { ...rules, most: inches(1 / 4) })).toBeUndefined())
  test('what neither pins nor brackets do alone, both do', () => {
    // Low by 1 at the left, right at the right end; pins can lift by 1/4 only, and a bump in the middle needs them.
    const places = [0, 20, 40, 60, 80].map((x) => inches(x))
    const chain = one(0.5, 1, 0.75, 0.75, 0.25, 0)
    expect(trueUp(chain, rings, sixteenth).remains).toBeGreaterThan(sixteenth)
    const alone = moveBrackets(
      chain.map((hook, i) => ({ ...hook, x: places[i] as Length })),
      held,
      { ...rules, tolerance: sixteenth },
    )
    expect(alone?.remains).toBeGreaterThan(sixteenth)
    const both = moveBoth(chain, places, held, rings, { ...rules, tolerance: sixteenth })
    expect(both).toMatchObject({ left: inches(1), right: 0 })
    expect(both?.remains).toBeLessThanOrEqual(inches(1 / 8))
  })
  test('of brackets that may not move far enough there is no way with pins either', () =>
    expect(moveBoth(one(0.5, 1), [none], held, rings, { ...rules, most: none })).toBeUndefined())
})

test('the floor as a bare number is the floor that is reckoned, rounded to the nanometre', () => {
  for (let seed = 1; seed <= 500; seed++) {
    const next = random(seed)
    const xs = Array.from({ length: Math.floor(next() * 4) }, () => Math.round(next() * 20)).sort((a, b) => a - b)
    const points = [...new Set(xs)].map((x) => ({ x: at(x), y: at(Math.round(next() * 8)) }))
    const x = inches(Math.round(next() * 40) / 2 - 2)
    expect(Math.round(floorUnder(points, x))).toBe(floorAt('/test#floor', points, { value: x, from: '/test' }).value)
  }
})
test('the hem is straight between the hooks that it was read below, and level beyond them', () => {
  const readings = [
    { x: at(10), y: at(1) },
    { x: at(20), y: at(2) },
  ]
  const hem = (x: number) => hemAt('/test#hem-now-1', readings, at(x))
  expect([0, 10, 12.5, 20, 30].map((x) => hem(x).value / inch)).toEqual([1, 1, 1.25, 2, 2])
  expect(hem(12.5).terms.map(({ what }) => what)).toEqual([
    'drapery/along-the-wall',
    'drapery/hook-along',
    'drapery/hem-read',
    'drapery/hook-along',
    'drapery/hem-read',
  ])
})

describe('the day to look again', () => {
  test.each([
    ['2026-11-30', 14, '2026-12-14'],
    ['2026-12-20', 14, '2027-01-03'],
    ['2028-02-20', 9, '2028-02-29'],
    ['2027-02-20', 9, '2027-03-01'],
    ['2100-02-20', 9, '2100-03-01'],
    ['2000-02-20', 9, '2000-02-29'],
    ['2026-04-30', 1, '2026-05-01'],
    ['2026-11-30', 0, '2026-11-30'],
  ])('%s and %d days is %s', (date, days, after) => expect(daysAfter(date, days)).toBe(after))
  test('is what a calendar says, over four hundred years', () => {
    for (let seed = 1; seed <= 2000; seed++) {
      const next = random(seed)
      const [from, days] = [Date.UTC(1900 + Math.floor(next() * 400), 0, 1 + Math.floor(next() * 365)), Math.floor(next() * 800)]
      const text = (ms: number) => new Date(ms).toISOString().slice(0, 10)
      expect(daysAfter(text(from), days)).toBe(text(from + days * 86_400_000))
    }
  })
})
