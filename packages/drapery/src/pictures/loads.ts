import type { Dimension, Figure, Layer, Mark, Point } from '@evenhem/drawing'
import type { Length, Reckoning } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import {
  type BracketTold,
  coverage,
  hookMap,
  hungLine,
  loadsDrawn,
  loadsTold,
  type RodLoads,
  reach,
  rod,
  rodBody,
  rodLoads,
} from '../facts/index.ts'
import { kilogramsOfLoad, worstSag } from '../rules/rod-beam.ts'
import { type Bent, bentOf, clothOf, finialsOf, rodOf, type Sheet, saddles, shares } from './hung-rod.ts'
import { mm } from './shapes.ts'

/** How many times as steep as widths a rod may be drawn, and the part of its width that it may then hang down. */
const factors = [50, 20, 10, 5, 2] as const
const mostDown = 0.08

/** The largest factor that leaves all rods of a window within their picture; 1 where one hangs so far that none does. */
export function steepFor(all: readonly RodLoads[], wide: number): number {
  const most = Math.max(0, ...all.flatMap(({ line }) => line.map(({ down }) => Math.abs(mm(down)))))
  return factors.find((factor) => factor * most <= mostDown * wide) ?? 1
}

/** The rods of a window whose loads are known, and the scale that they are all drawn to. */
export const loadsDrawnRule = rule({
  id: 'loads-drawn',
  on: 'window',
  needs: { loads: { each: rodLoads }, reaches: { each: reach } },
  gives: { loadsDrawn },
}).run((_, { loads, reaches }) => {
  if (loads.length === 0) return {}
  const treatments = loads.map(({ at }) => at)
  const own = reaches.filter(({ at }) => treatments.includes(at))
  const wide = Math.max(shares.least * 1e6, ...own.map(({ value: { left, right } }) => right.value - left.value)) as Length
  return {
    loadsDrawn: {
      treatments,
      wide,
      steep: steepFor(
        loads.map(({ value }) => value),
        mm(wide),
      ),
    },
  }
})

const loadFigure = (load: Reckoning, what: string): Figure => ({
  ...{ mass: kilogramsOfLoad(load.value), of: load.name, what, state: 'computed' },
})

/** What hangs on a bracket: an arrow down from it. */
function arrows(all: readonly BracketTold[], { held: points }: Bent, { wide }: Sheet): readonly Mark[] {
  return all.map(({ load, name }, i): Dimension => {
    const [x, y] = points[i] as Point
    const from = y - (shares.bracket + shares.from) * wide
    return {
      ...{ kind: 'dimension', role: 'dimension', side: 'inside', isLoad: true },
      ...{ from: [x, from], to: [x, from - shares.arrow * wide], figure: loadFigure(load, name) },
    }
  })
}
/** What was found at a bracket, told by a sign beside it. */
function signs(all: readonly BracketTold[], { held: points }: Bent, { wide }: Sheet): readonly Mark[] {
  return all.flatMap(({ verdict, behind }, i): readonly Mark[] => {
    const [x, y] = points[i] as Point
    const inward = i > 0 && i === all.length - 1 ? -1 : 1
    const at: Point = [x + inward * 2.6 * shares.saddle * wide, y - (shares.bracket * wide) / 2]
    // What holds a rod in another one's brackets is told there.
    if (!behind && verdict === 'unknown') return []
    return [{ kind: 'finding', verdict, at, code: codes[verdict] }]
  })
}
const codes = {
  pass: 'drapery/bracket-holds-it',
  fail: 'drapery/bracket-over',
  warn: 'drapery/bracket-lifts',
  unknown: 'drapery/bracket-not-known',
} as const

/** How far the rod hangs at its lowest, with what is allowed there; a place to fill while its stiffness is not known. */
function sagMarks({ sag, held: points }: Bent, lacks: readonly string[], { y, wide }: Sheet): readonly Mark[] {
  const line = { kind: 'dimension', role: 'dimension', side: 'inside', isOver: true } as const
  if (!sag) {
    const x = ((points[0]?.[0] ?? 0) + (points[1]?.[0] ?? 0)) / 2
    const figure: Figure = { of: lacks[0] ?? '', what: 'drapery/sags-at-most', state: 'unknown' }
    return lacks.length > 0 ? [{ ...line, from: [x, y], to: [x, y - 0.02 * wide], broken: true, figure }] : []
  }
  const { sag: down, most } = sag.of
  const figure: Figure = { value: down.value, most: most.value, of: down.name, what: 'drapery/sags-at-most', state: 'computed' }
  const dimension: Mark = { ...line, from: sag.from, to: sag.to, figure }
  if (down.value <= most.value) return [dimension]
  const at: Point = [sag.to[0], sag.to[1] - shares.sign * wide]
  return [dimension, { kind: 'finding', verdict: 'warn', at, code: 'drapery/sags-too-far' }]
}

/** What is said above it, and ground that is kept free for words. Notes begin at one place: each goes above the one before. */
function notes(loads: RodLoads, [left, right]: readonly [number, number], { y, wide, steep }: Sheet): readonly Mark[] {
  const when = worstSag(loads.sags)?.when
  const top = y + (shares.above + 2 * shares.note) * wide
  const at: Point = [left - shares.margin * wide, y + (shares.above + 0.3 * shares.note) * wide]
  const codes = when ? [`${when}-lowest`, `drapery/loads-steep-${steep}`] : []
  return [
    ground([left - shares.margin * wide, top], [right + shares.margin * wide, y - shares.words * wide]),
    ...codes.map((code): Mark => ({ kind: 'caption', role: 'dimension', anchor: 'start', code, at })),
  ]
}
/** Nothing is drawn there, but there is room for it. */
const ground = (from: Point, to: Point): Mark => ({
  ...{ kind: 'path', role: 'hidden' },
  d: [
    ['M', ...from],
    ['M', ...to],
  ],
})

/** Loads: the rod on its brackets as it hangs the lowest, steeper than it is, and what each bracket carries at most. */
export const loadsPicture = rule({
  id: 'loads-picture',
  on: 'treatment',
  needs: {
    ...{ rodLoads, loadsTold, rod, reach, coverage, hookMap, loadsDrawn, rodBody },
    hungLine: { maybe: hungLine },
  },
  gives: { layers },
}).run(({ at }, facts) => {
  const { rodLoads: loads, loadsDrawn: drawn } = facts
  const wide = mm(drawn.wide)
  const nth = Math.max(0, drawn.treatments.indexOf(at))
  const sheet: Sheet = { y: -nth * shares.tall * wide, wide, steep: drawn.steep }
  const hung = { loads, ...facts }
  const bent = bentOf(hung, sheet)
  const when = worstSag(loads.sags)?.when ?? 'drapery/when-drawn'
  const ends = [mm(facts.reach.left.value), mm(facts.reach.right.value)] as const
  const layer = (depth: number, marks: readonly Mark[]): Layer => ({
    ...{ view: 'loads', depth, marks },
    ...(drawn.steep === 1 ? {} : { stretch: drawn.steep }),
  })
  const all = facts.loadsTold.brackets
  return {
    layers: [
      layer(10, clothOf(facts.coverage, facts.hookMap, when, bent, sheet)),
      layer(40, [...saddles(bent, sheet), rodOf(bent, sheet), ...finialsOf(hung, bent, sheet)]),
      layer(60, [
        ...sagMarks(bent, facts.rodBody.lacks, sheet),
        ...arrows(all, bent, sheet),
        ...signs(all, bent, sheet),
        ...notes(loads, ends, sheet),
      ]),
    ],
  }
})
