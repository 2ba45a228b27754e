import { inch, inches, type Known, type Length, type LengthReckoning, number } from '@evenhem/length'
import { expect, test } from 'vitest'
import {
  type CoverEnds,
  carrierPlaces,
  cordFor,
  coverEnds,
  coverLess,
  floorAt,
  foldsBack,
  heights,
  highestFloor,
  holeHeight,
  makeUp,
  oneWayShare,
  pairShares,
  settles,
  stackOfShare,
  stacksBy,
  topOfPlate,
  topOfRod,
} from '../src/arithmetic/index.ts'
import cases from './references.json' with { type: 'json' }

// Published cases, copied with their source and basis beside every number (references.json). Each is worked out with the product's own functions.

// biome-ignore lint/suspicious/noExplicitAny: the cases are plain data of many shapes, read by name
type Numbers = Readonly<Record<string, any>>
const at = (value: number): Known<Length> => ({ value: inches(value), from: '/test' })
const rise = (value: number): LengthReckoning => ({
  name: '/test#y',
  what: 'y',
  value: inches(value),
  unit: 'length',
  how: 'given',
  terms: [],
})
const inInches = (reckoning: { readonly value: number } | undefined): number => (reckoning?.value ?? Number.NaN) / inch
const level = rise(0)
const hung = (finishedLength: number, clearance: number, pin: number, floor = level, hemAt: 'floor' | 'apron' = 'floor') =>
  heights('/test', { at: hemAt, height: { value: floor.value, from: floor.name } }, at(clearance), [
    { panel: 'left', finishedLength: at(finishedLength), pin: at(pin) },
  ])

/** How each case is put to our functions. `ring drop` in these sources is top of rod to top of drapery: our eye drop less the pin setting. */
const worked: Readonly<Record<string, (given: Numbers) => Numbers>> = {
  // the panel's top touches the ring's bottom: eye drop less pin is the ring's bottom below the rod, and the hole is `ring_bottom_to_top_hole` above it
  'mount-02': (n) => {
    const rod = topOfRod('/test', hung(n.finished_length, n.clearance, 0.375).hangLine, at(n.ring_bottom_to_top_hole + 1 + 0.375))
    return { top_hole_height: inInches(holeHeight('/test#h', topOfPlate('/test', rod, at(-0.5)), at(0.5))) }
  },
  // read backwards: a panel of the expected length puts the rod at the given height
  'mount-03': (n) => ({
    finished_length:
      n.floor_to_rod_top -
      (inInches(topOfRod('/test', hung(n.floor_to_rod_top - n.ring_drop, 0, 0.5).hangLine, at(n.ring_drop + 0.5))) -
        (n.floor_to_rod_top - n.ring_drop)),
  }),
  'mount-04': (n) => ({ finished_length: n.hook_to_floor - (inInches(hung(80, n.clearance, 0).hangLine) - 80) }),
  // heights of the apron are from the top of the panel here, so its bottom lies below 0
  'mount-06': (n) => ({
    finished_length_floor: n.top_of_panel_to_floor - inInches(hung(1, n.floor_clearance, 0).hem),
    finished_length_apron: -inInches(hung(1, n.below_apron, 0, rise(-n.top_of_panel_to_apron_bottom), 'apron').hem),
  }),
  // a level rod over a floor whose drops differ: the smallest drop stands over the highest floor
  'mount-07': (n) => {
    const drops = n.drops as readonly number[]
    const points = drops.map((drop, i) => ({ x: at(i * 10), y: at(drops[0]! - drop) }))
    const highest = highestFloor('/test', points, at(0), at(20))[2]
    const finished = drops[0]! - inInches(hung(1, n.clearance, 0, highest).hem)
    return { finished_length: finished, largest_gap: drops[0]! - finished - inInches(floorAt('/test#f', points, at(0))) }
  },
  'hooks-01': (n) => {
    const { hooks } = panel(n.pins - 2, 1, 30, 3)
    const to = carrierPlaces({ hooks, atWall: false }, { masterHoles: 3, endHoles: 2 }).map((place) => place.to)
    expect([
      to.filter((each) => each === 'master').length,
      to.filter((each) => each === 'end' || each === 'back').length,
    ]).toEqual([n.in_master, n.in_return])
    return { in_carriers: to.filter((each) => each === 'carrier').length }
  },
  // the heading stands above the bracket by its pin less the carrier's drop; any drop gives the same
  'mount-01': (n) => {
    const drop = 1.375
    const rod = topOfRod('/test', hung(n.finished_length, n.clearance, drop + n.heading_above_bracket).hangLine, at(drop))
    return { bracket_top_height: inInches(topOfPlate('/test', rod, at(0))) }
  },
  'mount-08': (n) => ({ max_pin_spacing: inInches(foldsBack('/test#f', at(n.wall_to_carrier_front), at(0.5))[1]) }),
  'hooks-02': (n) => ({ hooks: panel(n.pleats, 1, 30, 0).hooks.length }),
  'pleats-03': (n) =>
    sizes(n.pleats, n.overlap_flat, n.finished_width - n.overlap_flat - n.return_flat, n.return_flat, n.flat_width),
  'pleats-10': (n) => sizes(n.pleats, n.leading_edge, n.finished_width - n.leading_edge - n.return, n.return, n.panel),
  'pleats-11': (n) => {
    const made = panel(n.pleats, n.overlap_flat, n.space_size * (n.pleats - 1), n.return_flat, 101)
    return {
      finished_width: inInches(made.finishedWidth),
      flat_width: inInches(made.finishedWidth) + n.pleats * inInches(made.pleat),
    }
  },
  'stack-03': (n) => ({
    stack_each_side_pair: inInches(stackOfShare('/test', pairShares('/test', ends(n.rod), {}).left, 4, at(0.25)).at(-1)),
    stack_one_way: inInches(stackOfShare('/test', oneWayShare('/test', ends(n.rod)), 4, at(0.25)).at(-1)),
  }),
  // of the window: its stacks on both sides together, and the rod that clears it
  'stack-02': (n) => ({
    stack: stacked('window-third', n.window_width, false),
    rod: n.window_width + stacked('window-third', n.window_width, false),
  }),
  'stack-04': (n) => {
    const [each, one] = [stacked('window-fifth', n.window_width, true), stacked('window-fifth', n.window_width, false)]
    return {
      stack_total: 2 * each,
      stack_each_side: each,
      rod_pair: n.window_width + 2 * each,
      rod_one_way: n.window_width + one + n.one_way_clearance,
    }
  },
  'stack-06': (n) => ({
    stack: stacked('glass-third', n.glass_width, false),
    rod: n.glass_width + stacked('glass-third', n.glass_width, false),
  }),
  'stack-07': (n) => ({
    rod: n.window_width + stacked('window-half', n.window_width, false),
    stack: stacked('window-half', n.window_width, false),
  }),
  'stack-08': (n) => {
    const rod = (lining: 'none' | 'lined' | 'blackout' | 'interlined') =>
      n.window_width + stacked('window-lining', n.window_width, false, lining)
    return { rod_unlined: rod('none'), rod_lined: rod('lined'), rod_blackout: rod('blackout'), rod_interlined: rod('interlined') }
  },
  'stack-09': (n) => ({ track: n.glass_width + stacked('glass-three-tenths', n.glass_width, false) }),
  'cord-01': (n) => ({ cord_length: inInches(cordFor('/test#cord', at(n.rod_width), at(n.cord_drop), at(6)).at(-1)) }),
  // what a panel covers is all of it but its return: over a share of that width nothing is left over and nothing is short
  'width-03': (n) => {
    const face = n.finished_width_panel - n.return
    const less = coverLess('/test', at(2), at(face - 2), undefined, oneWayShare('/test', ends(face)))
    return { face_width: inInches(panel(12, 2, face - 2, n.return).finishedWidth) - n.return + inInches(less) }
  },
  // two panels that butt, each of its half and its own return
  'width-04': (n) => {
    const { left, right } = pairShares('/test', ends(n.rod_width), {})
    const made = [left, right].map((share) => panel(6, 2, inInches(share) - 2, n.return_each))
    return { finished_width: made.reduce((all, { finishedWidth }) => all + inInches(finishedWidth), 0) }
  },
  // the bulletin's 2 and 4 per cent are in its words, not among its numbers
  'tolerance-03': (n) => ({ loss_low: settled(n.length, 2), loss_high: settled(n.length, 4) }),
}
/** One panel's stack by a published rule, window and glass being as wide as one another. */
const stacked = (
  id: string,
  width: number,
  isPair: boolean,
  lining: 'none' | 'lined' | 'blackout' | 'interlined' = 'none',
): number =>
  inInches(
    stacksBy('/test', { share: rise(width), window: at(width), glass: at(width), isPair, lining }).find(({ name }) =>
      name.endsWith(`#stack-by-${id}`),
    ),
  )
const settled = (length: number, percent: number): number =>
  inInches(settles('/test#settles', at(length), { ...number(percent), from: '/test' }))
const ends = (width: number): CoverEnds => {
  const all = coverEnds('/test', { frame: { right: at(width), width: at(width) }, rodWidth: at(width) })
  return all as CoverEnds
}
const panel = (pleats: number, leadingFlat: number, firstToLast: number, back: number, flat?: number) =>
  makeUp('/test', {
    pleats: { ...number(pleats), from: '/test' },
    leadingFlat: at(leadingFlat),
    firstToLast: at(firstToLast),
    return: at(back),
    flatWidth: flat === undefined ? undefined : at(flat),
  })
const sizes = (pleats: number, leading: number, firstToLast: number, back: number, flat: number) => {
  const made = panel(pleats, leading, firstToLast, back, flat)
  return { pleat_size: inInches(made.pleat), space_size: inInches(made.space) }
}

const plain = (values: Numbers): Numbers => Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]))

for (const { id, source, basis, inputs, expected, tolerance } of cases as readonly Numbers[])
  test(`${id}: ${source.title} (${basis})`, () => {
    const result = worked[id]!(plain(inputs))
    for (const [name, value] of Object.entries(plain(expected))) {
      const allowed = Math.max((tolerance as Numbers)[name] ?? 0, 1e-7)
      for (const [i, one] of [value].flat().entries())
        expect(Math.abs([result[name]].flat()[i] - one), `${name}`).toBeLessThanOrEqual(allowed)
    }
  })

test('there are so many cases of each topic', () => {
  const topics = (cases as readonly Numbers[]).map(({ topic }) => topic as string)
  const counted = Object.fromEntries([...new Set(topics)].map((topic) => [topic, topics.filter((each) => each === topic).length]))
  expect(counted).toEqual({
    'mounting height': 5,
    'hook spacing': 1,
    clearance: 1,
    'hooks and carriers': 2,
    pleats: 3,
    stackback: 7,
    'operating cord': 1,
    'finished width': 2,
    'dimensional change': 1,
  })
})

test('every copied case is worked out', () => {
  expect(Object.keys(worked).sort()).toEqual((cases as readonly Numbers[]).map((each) => each.id).sort())
})
