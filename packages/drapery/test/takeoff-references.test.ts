import {
  centimetre,
  foot,
  inch,
  type Known,
  type Length,
  metre,
  millimetre,
  plus,
  type Reckoning,
  wholeNanometres,
  yard,
} from '@evenhem/length'
import { expect, test } from 'vitest'
import {
  type CoverEnds,
  clothNeeded,
  clothOrdered,
  coverEnds,
  cutAndRepeat,
  cutAsNeeded,
  cutOfRepeats,
  cutsFor,
  cutsTogether,
  cutWidth,
  finishedOfShare,
  flatOfCovered,
  flatOfFinished,
  fullnessOfPercent,
  halfDropExtra,
  lengthNeeded,
  lessThanFace,
  makeUp,
  overlapped,
  pairShares,
  placingExtra,
  repeatsIn,
  restOfCut,
  roundedWidths,
  sideHemsOf,
  soldSteps,
  stackOfShare,
  turned,
  usableWidth,
  widthsExact,
  widthsTogether,
} from '../src/arithmetic/index.ts'
import cases from './takeoff-references.json' with { type: 'json' }

// Published cases of how cloth is counted, copied with source and basis beside every number; `left_out` names what a case prints that we do not work out.

interface Given {
  // biome-ignore lint/suspicious/noExplicitAny: the cases are plain data of many shapes, read by name
  readonly value: any
  readonly unit: string
}
type Inputs = Readonly<Record<string, Given>>
type Found = Readonly<Record<string, number | readonly number[] | Reckoning>>

const sizes: Readonly<Record<string, number>> = { in: inch, ft: foot, yd: yard, mm: millimetre, cm: centimetre, m: metre }
const size = (value: number, unit = 'in'): Known<Length> => ({
  value: wholeNanometres(value * (sizes[unit] ?? 1)),
  from: '/test',
})
const long = ({ value, unit }: Given | undefined = { value: 0, unit: 'in' }): Known<Length> => size(value, unit)
const plain = ({ value }: Given | undefined = { value: 0, unit: '1' }): Known<number> => ({ value, from: '/test' })
const times = (a: number): Known<number> => ({ value: a, from: '/test' })
const none = size(0)
const term = (given: Given | undefined) => plus('allowance', long(given))
const whole = (n: number): Reckoning => ({ name: '/t#n', what: 'n', value: n, unit: 'count', how: 'sum', terms: [] })

const flat = (finished: Known<Length>, fullness: Given | undefined) => flatOfFinished('/t', finished, plain(fullness))[0]
const exact = (cut: Known<Length> | Reckoning, fabric: Given | undefined) =>
  widthsExact('/t#e', cut as Known<Length>, usableWidth('/t#u', long(fabric), none))
const up = (cut: Known<Length> | Reckoning, fabric: Given | undefined) => roundedWidths('/t#w', exact(cut, fabric), 'up')
const together = (cuts: Given | undefined, length: Known<Length>) =>
  cutsTogether('/t#t', cutAsNeeded('/t#c', length), cutsFor('/t#n', whole(plain(cuts).value)))
/** Cut to whole repeats, and what is left over. */
const repeated = (needed: Known<Length>, repeat: Given | undefined, divided = needed) => {
  const repeats = repeatsIn('/t#r', divided, long(repeat))
  const cut = cutOfRepeats('/t#c', repeats, long(repeat))
  const [of, by] = repeats.terms.map(({ value }) => value)
  return { repeats, cut, rest: restOfCut('/t#rest', cut, needed), exact: (of ?? 0) / (by ?? 0) }
}
const halfDrop = (n: Inputs, cuts: number) => {
  const { cut, rest, repeats, exact } = repeated(long(n.cut_drop), n.repeat)
  const extra = halfDropExtra('/t#h', 'half a repeat once', {
    cuts: whole(cuts),
    rest: size(rest.value, 'nm'),
    repeat: long(n.repeat),
  })
  return { cut, rest, repeats, exact, extra, order: clothNeeded('/t#o', cutsTogether('/t#t', cut, whole(cuts)), extra) }
}
/** The finished widths of a pair that overlaps: each its share, half the overlap and its own return. */
const pair = ({ rod_width, overlap_total, return_each }: Inputs) => {
  const rod = long(rod_width)
  const ends = coverEnds('/t', { frame: { right: rod, width: rod }, rodWidth: rod }) as CoverEnds
  const { covers } = overlapped('/t', pairShares('/t', ends, {}), long(overlap_total))
  return [covers.left, covers.right].map((share) => finishedOfShare('/t#f', share, long(return_each)))
}
const summed = (all: readonly Reckoning[]): Known<Length> =>
  size(
    all.reduce((sum, { value }) => sum + value, 0),
    'nm',
  )

const worked: Readonly<Record<string, (n: Inputs) => Found>> = {
  'width-01': (n) => {
    const both = summed(pair(n))
    return { finished_width_pair: both.value / inch, flat_width_pair: flat(both, n.fullness_ratio) }
  },
  'width-02': (n) => ({
    face_width: flatOfCovered('/t', long(n.finished_width_both_panels), long(n.returns_and_overlap_total), times(1))[0],
  }),
  'width-05': (n) => ({ finished_width_each: pair(n)[0] as Reckoning }),

  // the window with what it is passed by on both sides is what is covered
  'widths-01': (n) => {
    const covers = finishedOfShare(
      '/t#f',
      finishedOfShare('/t#f', long(n.window_width), long(n.extension_each_side)),
      long(n.extension_each_side),
    )
    const wide = flat(size(covers.value, 'nm'), n.fullness_ratio)
    const widths = exact(wide, n.fabric_width)
    return { width_to_cover: covers, flat_width: wide, widths_exact: widths, widths: roundedWidths('/t#w', widths, 'nearest') }
  },
  'widths-04': (n) => {
    const back = size(2 * n.return_each?.value)
    const [, full, wide] = flatOfCovered(
      '/t',
      size(n.face_width?.value + 2 * n.return_each?.value),
      back,
      plain(n.fullness_ratio),
    )
    const cut = cutWidth('/t#c', wide, term(n.side_hems_total))
    return { full_width: full, cut_width: cut, widths_exact: exact(cut, n.fabric_width), widths: up(cut, n.fabric_width) }
  },
  'widths-06': (n) => {
    const wide = flat(long(n.rod_used), n.fullness_ratio)
    return { flat_width: wide, widths_exact: exact(wide, n.fabric_width), widths: up(wide, n.fabric_width) }
  },
  'widths-07': (n) => {
    const wide = flat(long(n.window_width), n.multiple_per_panel)
    const widths = up(wide, n.fabric_width)
    return {
      panel_flat_width: wide,
      widths_per_panel: widths,
      fabric_in_hand_per_panel: (widths.value * usableWidth('/t#u', long(n.fabric_width), none).value) / inch,
    }
  },
  'widths-08': (n) => {
    const wide = flat(long(n.pole), n.fullness_ratio)
    return { flat_width: wide, widths_exact: exact(wide, n.fabric_width) }
  },
  'widths-09': (n) => {
    const whole = flat(long(n.window_width), n.fullness_ratio)
    const section = flat(size(n.window_width?.value / 2, 'ft'), n.fullness_ratio)
    const cut = cutWidth('/t#c', section, term(n.side_hems_total), term(n.seam_allowances_total))
    const joined = cutWidth('/t#j', cut, term(n.joining_seam))
    const shared = widthsTogether('/t#p', 'widths', [exact(joined, n.fabric_width), exact(joined, n.fabric_width)])
    return {
      total_flat_width: whole,
      section_flat_width: section,
      section_cut_width: cut,
      section_cut_width_with_joining_seam: joined,
      widths_per_section_alone: up(joined, n.fabric_width),
      widths_for_pair_shared: cutsFor('/t#n', roundedWidths('/t#w', shared, 'up')),
    }
  },
  // a double 1-in hem on each side is 4 in
  'widths-10': (n) => {
    const wide = flat(long(n.finished_width), n.fullness_ratio)
    const hems = sideHemsOf('/t#s', size(1), times(2))
    const one = cutWidth('/t#c', wide, plus('hems', hems))
    return { flat_width: wide, cut_width_one_way: one, cut_width_pair: cutWidth('/t#d', one, plus('hems', hems)) }
  },
  'widths-11': (n) => {
    const covers = size(n.rod_width?.value + 2 * n.return_each?.value)
    const wide = flat(covers, n.fullness_ratio)
    return {
      width_to_cover: covers.value / inch,
      flat_width: wide,
      panels_exact: exact(wide, n.panel_width),
      panels: cutsFor('/t#n', up(wide, n.panel_width)),
    }
  },

  'fullness-02': (n) => ({
    ratios: n.percents?.value.map((p: number) => fullnessOfPercent('/t#f', times(p), 'of the width').value),
  }),
  'fullness-03': (n) => ({
    ratios: n.percents?.value.map((p: number) => fullnessOfPercent('/t#f', times(p), 'beyond the width').value),
  }),
  'fullness-04': (n) => ({ usable_width: usableWidth('/t#u', long(n.fabric_width), long(n.seam_allowance_each_side)) }),
  'fullness-05': (n) => {
    const share = { ...finishedOfShare('/t#f', long(n.window_width), none) }
    const stack = stackOfShare('/t', share, 1, size(0.25)).at(-1) as Reckoning
    const covers = size(n.window_width?.value + stack.value / inch + n.returns_and_overlap?.value)
    const wide = flat(covers, n.fullness_ratio)
    return { stack, flat_width: wide, widths: up(wide, n.fabric_width) }
  },

  'length-01': (n) => ({ cut_length: lengthNeeded('/t#l', long(n.finished_length), term(n.allowance)) }),
  'length-03': (n) => ({ cut_length: lengthNeeded('/t#l', long(n.finished_length), term(n.hem), term(n.heading)) }),
  'length-04': (n) => ({ cut_length: lengthNeeded('/t#l', long(n.finished_length), term(n.allowance)) }),
  'length-05': (n) => ({ cut_length: lengthNeeded('/t#l', long(n.finished_length), term(n.allowance)) }),
  'length-06': (n) => {
    const cut = doubled(n, term(n.working_allowance))
    return { allowance: (cut.value - long(n.finished_length).value) / inch, cut_length: cut }
  },
  'length-07': (n) => ({ cut_length: doubled(n) }),
  'length-08': (n) => ({ cut_length: lengthNeeded('/t#l', long(n.finished_length), term(n.hem), term(n.heading)) }),
  'length-10': (n) => ({ cut_length: lengthNeeded('/t#l', long(n.length_to_sill), term(n.seams_and_hems), term(n.below_sill)) }),
  'length-11': (n) => ({ allowance: lengthNeeded('/t#l', none, term(n.above_rod), term(n.hem), term(n.turn_unders)) }),
  'length-12': (n) => {
    const cut = lengthNeeded('/t#l', long(n.finished_length), term(n.hem), term(n.heading))
    return { cut_length_exact: cut, cut_length_bought: clothOrdered('/t#b', cut, (foot / 2) as Length) }
  },
  'length-14': (n) => ({ run_in: long(n.run).value / inch, length_each: run(n).each.value / inch, spare_each: run(n).spare }),
  'length-15': (n) => ({ spare_each: run(n).spare }),

  // read backwards: with the pleats that the cloth in them gives, each takes what was said
  'pleats-01': (n) => {
    const [wide, flatWidth] = [n.finished_width?.value, long(n.flat_width)]
    const made = makeUp('/t', {
      pleats: times(13),
      leadingFlat: size(2),
      firstToLast: size(wide - 5),
      return: size(3),
      flatWidth,
    })
    const inPleats = made.working.find(({ name }) => name === '/t#in-pleats') as Reckoning
    return { fabric_for_pleats: inPleats, pleats: (13 * (made.pleat?.value ?? 0)) / long(n.fabric_per_pleat).value }
  },

  'repeat-01': (n) => {
    const { repeats, cut, rest, exact } = repeated(long(n.needed_length), n.repeat)
    return { repeats_exact: exact, repeats, cut_length: cut, waste_per_cut: rest }
  },
  'repeat-02': (n) => {
    const { repeats, cut, rest } = repeated(long(n.needed_length), n.repeat)
    return { repeats, cut_length: cut, waste_per_cut: rest }
  },
  'repeat-04': (n) => {
    const { repeats, cut, exact } = repeated(long(n.needed_length), n.repeat)
    return { repeats_exact: exact, repeats, cut_length: cut }
  },
  'repeat-05': (n) => ({
    yardage: cutsTogether('/t#t', cutAndRepeat('/t#c', long(n.cut_length), long(n.repeat)), whole(n.widths?.value)),
  }),
  'repeat-07': (n) => {
    const { repeats, cut, rest, exact } = repeated(long(n.finished_length), n.repeat)
    return { repeats_exact: exact, repeats, cut_length: cut, trim: rest }
  },
  'repeat-09': (n) => {
    const cloth = together(n.cuts, long(n.adjusted_cut_length))
    const extra = placingExtra('/t#p', 'a yard or a repeat', long(n.repeat)) as Reckoning
    return { fabric_in: cloth, extra_in: extra, order_yd: clothOrdered('/t#o', summed([cloth, extra]), soldSteps['half yard']) }
  },

  'half-drop-01': (n) => {
    const { cut, rest, repeats, exact, extra } = halfDrop(n, 6)
    const half_repeat = halfDropExtra('/t#h', 'half a repeat once', { cuts: whole(6), rest: none, repeat: long(n.repeat) })
    return { repeats_exact: exact, repeats, adjusted_cut_drop: cut, spare_per_cut: rest, half_repeat, extra_needed: extra }
  },
  'half-drop-02': (n) => {
    const { cut, rest, extra, order } = halfDrop(n, n.cuts?.value)
    return { adjusted_cut_drop: cut, spare_per_cut: rest, extra_needed: extra, order }
  },

  // the deductions are in the words of these two, not among their numbers
  'lining-01': (n) => ({
    lining_cut_length: lessThanFace('/t#l', 'x', long(n.face_cut_length), size(7.5, 'cm')),
    thermal_cut_length: lessThanFace('/t#l', 'x', long(n.face_cut_length), size(17.5, 'cm')),
    thermal_cut_width: lessThanFace('/t#l', 'x', long(n.face_cut_width), size(13, 'cm')),
  }),
  'lining-02': (n) => ({
    lining_width: lessThanFace('/t#l', 'x', long(n.panel_width), size(4)),
    lining_length_max: lessThanFace('/t#l', 'x', long(n.panel_length), size(2)),
    lining_length_min: lessThanFace('/t#l', 'x', long(n.panel_length), size(5)),
  }),

  'yardage-02': (n) => ({ fabric_in: together(n.widths, long(n.cut_length)), yardage: together(n.widths, long(n.cut_length)) }),
  'yardage-04': (n) => ({ fabric_in: together(n.cuts, long(n.cut_length)), yardage: together(n.cuts, long(n.cut_length)) }),
  'yardage-05': (n) => {
    const cloth = together(n.widths, long(n.cut_length))
    return { fabric_in: cloth, exact_m: cloth, order_m: clothOrdered('/t#o', cloth, soldSteps.metre) }
  },
  'yardage-06': (n) => ({ exact_m: cutAsNeeded('/t#c', long(n.yards)) }),
}
const doubled = (n: Inputs, ...more: readonly ReturnType<typeof term>[]) =>
  lengthNeeded(
    '/t#l',
    long(n.finished_length),
    plus('hem', turned('/t#h', 'x', long(n.hem_depth), times(2))),
    plus('heading', turned('/t#g', 'x', long(n.heading_depth), times(2))),
    ...more,
  )
/** A run that is cut in equal lengths holds so much more than each needs. */
const run = (n: Inputs) => {
  const each = size(n.run?.value / n.panels?.value, 'yd')
  return { each, spare: restOfCut('/t#r', each, lengthNeeded('/t#l', long(n.finished_length), term(n.hems_total))) }
}

/** In the unit that is expected. */
const shown = (found: Found[string] | undefined, unit: string): readonly number[] =>
  [found].flat().map((one) => {
    if (typeof one !== 'object') return one ?? Number.NaN
    return one.unit === 'length' ? one.value / (sizes[unit] ?? Number.NaN) : one.value
  })

// biome-ignore lint/suspicious/noExplicitAny: as above
for (const { id, source, basis, inputs, expected, tolerance } of cases as readonly any[])
  test(`${id}: ${source.title} (${basis})`, () => {
    const found = worked[id]?.(inputs) ?? {}
    for (const [name, { value, unit }] of Object.entries(expected as Inputs)) {
      const ours = shown(found[name], unit)
      const allowed = Math.max(tolerance[name] ?? 0, 1e-7)
      for (const [i, one] of [value].flat().entries())
        expect(Math.abs((ours[i] ?? Number.NaN) - one), `${name}: ${ours[i]}`).toBeLessThanOrEqual(allowed)
    }
  })

test('there are so many cases of each topic, all of them read in a source', () => {
  const topics = cases.map(({ topic }) => topic)
  const counted = Object.fromEntries([...new Set(topics)].map((topic) => [topic, topics.filter((each) => each === topic).length]))
  expect(counted).toEqual({
    'finished width': 3,
    'number of widths': 8,
    fullness: 4,
    'cut length': 12,
    pleats: 1,
    'pattern repeat': 6,
    'half-drop match': 2,
    lining: 2,
    yardage: 4,
  })
  expect(new Set(cases.map(({ basis }) => basis))).toEqual(new Set(['read']))
})
test('every copied case is worked out', () => expect(Object.keys(worked).sort()).toEqual(cases.map(({ id }) => id).sort()))
