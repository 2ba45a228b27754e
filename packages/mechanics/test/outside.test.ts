import { expect, test } from 'vitest'
import { random } from '../../../tests/tools/jobs.ts'
import { effort } from '../../../tests/tools/long.ts'
import { type Beam, beamOf, downAt, type Loads } from '../src/index.ts'
import { bentByCcx, hasCcx } from './deck.ts'

// A finite-element program that others wrote bends the same rods.

const rods = effort === 'all' ? 120 : 12

type Random = () => number
/** Whole centimetres between two, in m. */
const cm = (next: Random, least: number, most: number): number => Math.round(least + next() * (most - least)) / 100
const between = (next: Random, least: number, most: number): number => least + next() * (most - least)
const m = (x: number): number => Math.round(100 * x) / 100
const eighth = 0.0254 / 8

/** A rod of 1 to 6 bays that runs on beyond both ends, of two sections; some have a support an eighth of an inch low, and every other inner bay has a splice. */
function rodOf(seed: number): readonly [Beam, Loads] {
  const next = random(seed)
  const bays = 1 + ((seed - 1) % 6)
  const at = [0]
  for (let i = 0; i < bays; i++) at.push(m((at[i] as number) + cm(next, 40, 240)))
  const [from, to] = [-cm(next, 5, 40), m((at[bays] as number) + cm(next, 5, 40))]
  const low = next() < 0.6 ? Math.floor(next() * at.length) : -1
  const second = m(from + (to - from) * between(next, 0.3, 0.7))
  const beam: Beam = {
    from,
    to,
    stiffness: [
      { from, ei: between(next, 100, 800) },
      { from: second, ei: between(next, 800, 2000) },
    ],
    supports: at.map((x, i) => ({ at: x, down: i === low ? eighth : 0 })),
    splices: at.slice(1, -1).flatMap((x, i) => (i % 2 === 0 && i + 2 < bays ? [m(x + between(next, 0.05, 0.35))] : [])),
  }
  return [beam, loadsOn(beam, next)]
}
/** Its own weight, three uneven lots of cloth, and something at both tips and anywhere. */
function loadsOn({ from, to }: Beam, next: Random): Loads {
  const place = () => m(from + next() * (to - from))
  const lots = Array.from({ length: 3 }, () => [place(), place()].sort((a, b) => a - b) as [number, number])
  return {
    spread: [{ from, to, each: between(next, 5, 15) }, ...lots.map(([from, to]) => ({ from, to, each: between(next, 10, 80) }))],
    points: [from, to, place()].map((at) => ({ at, force: between(next, 5, 40) })),
  }
}
const most = (values: readonly number[]): number => Math.max(...values.map(Math.abs))

/** The largest difference of reactions and of places, each as a share of the largest of its kind. */
function differences(seed: number): readonly [reactions: number, places: number] {
  const [beam, loads] = rodOf(seed)
  const ours = beamOf(beam)?.(loads)
  const theirs = bentByCcx(beam, loads)
  if (!ours || theirs.reactions.length !== beam.supports.length || theirs.places.length < 100)
    throw new Error(`Unexpected rod of seed ${seed}, expected one that stands, and a reaction at each support`)
  const forces = theirs.reactions.map((each, i) => each - (ours.reactions[i] ?? Number.NaN))
  const downs = theirs.places.map(({ at, down }) => down - downAt(ours, at))
  return [most(forces) / most(theirs.reactions), most(downs) / most(theirs.places.map(({ down }) => down))]
}

test(`ccx bends ${rods} rods as we do`, () => {
  if (!hasCcx()) {
    expect(process.env.CI, 'Unexpected: no ccx, expected it in CI; install calculix-ccx').not.toBe('true')
    return console.log('rods bent by ccx: not run, since this machine has none')
  }
  const found = Array.from({ length: rods }, (_, i) => differences(i + 1))
  const [forces, downs] = [0, 1].map((i) => most(found.map((each) => each[i] ?? Number.NaN))) as [number, number]
  const percent = (share: number) => `${(100 * share).toFixed(3)} %`
  console.log(`rods bent by ccx: ${found.length}; reactions differ by ${percent(forces)} at most, places by ${percent(downs)}`)
  expect(forces).toBeLessThan(0.001)
  expect(downs).toBeLessThan(0.001)
})
test('among them are rods with splices, and with supports that are low', () => {
  const beams = Array.from({ length: rods }, (_, i) => rodOf(i + 1)[0])
  expect(beams.filter(({ splices = [] }) => splices.length > 0).length).toBeGreaterThan(rods / 3)
  expect(beams.filter(({ supports }) => supports.some(({ down }) => down === eighth)).length).toBeGreaterThan(rods / 3)
})
