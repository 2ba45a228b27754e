import { formula, type Known, known, type Length, type LengthReckoning, minus, plus, sum, type Term } from '@evenhem/length'
import { onLine } from './floor.ts'

/** What a rod can follow from its first bracket to another one, beside true level: a line that the eye compares it to. */
export const lines = ['ceiling', 'head', 'level', 'floor'] as const
export type LineName = (typeof lines)[number]
export type Follows = LineName | 'between'

/** The first bracket, each height from the floor right below it: its top hole, and what was read there. */
export interface FirstBracket {
  readonly hole: Known<Length>
  readonly head?: Known<Length> | undefined
  readonly ceiling?: Known<Length> | undefined
}
/** A further bracket, each height from the floor right below it. `level`: a level line carried from the first hole. */
export interface FurtherBracket {
  readonly head?: Known<Length> | undefined
  readonly ceiling?: Known<Length> | undefined
  readonly level?: Known<Length> | undefined
  /** How much lower than the first one its top hole sits on a level rod, when its plate is another. */
  readonly lower?: Known<Length> | undefined
}

/** Marks by the line that each of them follows; from the floor right below the further bracket. A line that was not read at both has none. */
export type Marks = Readonly<Partial<Record<LineName, LengthReckoning>>>

const lowered = (lower: Known<Length> | undefined): readonly Term[] =>
  lower === undefined ? [] : [minus('drapery/plate-lower', lower)]
const raised = (lower: Known<Length> | undefined): readonly Term[] =>
  lower === undefined ? [] : [plus('drapery/plate-lower', lower)]

/**
 * At a further bracket there is no hole yet. These stand for it (common practice, no source): the first hole's height above the floor, its height
 * above the frame head and its distance below the ceiling, each taken there, and a level line. `at`: names begin with it.
 */
export function marksAt(at: string, first: FirstBracket, further: FurtherBracket): Marks {
  const { head, ceiling, level } = further
  const end = lowered(further.lower)
  const hole = plus('drapery/first-hole', first.hole)
  const mark = (line: LineName, ...terms: readonly Term[]) => ({
    [line]: sum(`${at}-${line}`, `drapery/mark-${line}`, ...terms, ...end),
  })
  return {
    ...(ceiling && first.ceiling
      ? mark('ceiling', plus('drapery/floor-to-ceiling', ceiling), minus('drapery/first-ceiling', first.ceiling), hole)
      : {}),
    ...(head && first.head
      ? mark('head', plus('drapery/floor-to-head', head), hole, minus('drapery/first-head', first.head))
      : {}),
    ...(level ? mark('level', plus('drapery/floor-to-level', level)) : {}),
    ...mark('floor', hole),
  }
}

/** How far apart marks are: the highest less the lowest. */
export const spreadOf = (marks: readonly { readonly value: number }[]): Length =>
  (Math.max(...marks.map(({ value }) => value)) - Math.min(...marks.map(({ value }) => value))) as Length

const linesIn = (marks: Marks): readonly LineName[] => lines.filter((line) => marks[line] !== undefined)

/** The largest sets of two or more marks that lie within `near` of one another; none when no two do. */
export function agreeing(marks: Marks, near: Length): readonly (readonly LineName[])[] {
  const height = (line: LineName): number => marks[line]?.value ?? 0
  const known = linesIn(marks)
  const lowest = known.filter((line, i) => known.findIndex((other) => height(other) === height(line)) === i)
  const sets = lowest.map((low) => known.filter((line) => height(line) >= height(low) && height(line) - height(low) <= near))
  const most = Math.max(...sets.map((set) => set.length))
  return most < 2 ? [] : sets.filter((set) => set.length === most)
}

/** How far the first hole is from the lines that an eye may read the rod against. */
export interface Distances {
  readonly ceiling?: LengthReckoning
  readonly head?: LengthReckoning
}
export function distancesOf(at: string, { hole, head, ceiling }: FirstBracket): Distances {
  return {
    ...(ceiling
      ? {
          ceiling: sum(
            `${at}-to-ceiling`,
            'drapery/to-ceiling',
            plus('drapery/first-ceiling', ceiling),
            minus('drapery/first-hole', hole),
          ),
        }
      : {}),
    ...(head
      ? { head: sum(`${at}-to-head`, 'drapery/to-head', plus('drapery/first-hole', hole), minus('drapery/first-head', head)) }
      : {}),
  }
}

/**
 * The compromise: the middle of the marks of those lines that are nearer to the rod than `reach`, each counting by how much nearer it is (an eye reads a rod
 * against a line within about 12 in, from memory; that nearness weighs evenly is our own). Where none is that near, halfway between the lowest and the highest mark.
 */
export function middleMark(at: string, marks: Marks, distances: Distances, reach: Known<Length>): LengthReckoning {
  const near = (['ceiling', 'head'] as const).flatMap((line) => {
    const [mark, distance] = [marks[line], distances[line]]
    const weight = reach.value - Math.abs(distance?.value ?? reach.value)
    return mark && distance && weight > 0 ? [{ line, mark, distance, weight }] : []
  })
  const name = `${at}-between`
  if (near.length === 0) {
    const all = linesIn(marks).map((line) => ({ line, mark: marks[line] as LengthReckoning }))
    const heights = all.map(({ mark }) => mark.value)
    const terms = all.map(({ line, mark }) => plus(`drapery/mark-${line}`, mark))
    return formula(name, 'drapery/mark-between', (Math.min(...heights) + Math.max(...heights)) / 2, 'drapery/halfway', ...terms)
  }
  const total = near.reduce((whole, { weight }) => whole + weight, 0)
  // From the first mark, so that large heights lose no nanometre.
  const [{ mark: base }] = near as [(typeof near)[number]]
  const more = near.reduce((whole, { mark, weight }) => whole + (mark.value - base.value) * (weight / total), 0)
  const terms = near.flatMap(({ line, mark, distance }) => [
    plus(`drapery/mark-${line}`, mark),
    plus(`drapery/to-${line}`, distance),
  ])
  return formula(
    name,
    'drapery/mark-between',
    base.value + more,
    'drapery/by-nearness',
    ...terms,
    plus('drapery/eye-reach', reach),
  )
}

/** What the eye sees at a further bracket against the first one: positive is a wider gap, a higher hem, a higher rod. A line that was not read has none. */
export interface Gaps {
  readonly ceiling?: LengthReckoning
  readonly head?: LengthReckoning
  readonly hem: LengthReckoning
  /** How far the rod is out of level. */
  readonly rod?: LengthReckoning
}
/** What a mark at a further bracket does to what is seen there. */
export function gapsAt(at: string, first: FirstBracket, further: FurtherBracket, mark: Known<Length>): Gaps {
  const { head, ceiling, level } = further
  const own = [plus('drapery/mark', mark), ...raised(further.lower)]
  const taken = [minus('drapery/mark', mark), ...lowered(further.lower)]
  const gap = (which: string, ...terms: readonly Term[]) => sum(`${at}-gap-${which}`, `drapery/gap-${which}`, ...terms)
  return {
    ...(ceiling && first.ceiling
      ? {
          ceiling: gap(
            'ceiling',
            plus('drapery/floor-to-ceiling', ceiling),
            ...taken,
            minus('drapery/first-ceiling', first.ceiling),
            plus('drapery/first-hole', first.hole),
          ),
        }
      : {}),
    ...(head && first.head
      ? {
          head: gap(
            'head',
            ...own,
            minus('drapery/floor-to-head', head),
            minus('drapery/first-hole', first.hole),
            plus('drapery/first-head', first.head),
          ),
        }
      : {}),
    hem: gap('hem', ...own, minus('drapery/first-hole', first.hole)),
    ...(level ? { rod: gap('rod', ...own, minus('drapery/floor-to-level', level)) } : {}),
  }
}
/** The largest of what is seen, without its sign; level itself is not seen. */
export const largestOf = ({ ceiling, head, hem }: Gaps): Length =>
  Math.max(...[ceiling, head, hem].map((gap) => Math.abs(gap?.value ?? 0))) as Length

/** How the lines run from the first bracket to a further one: positive rises there. Only a level line tells. */
export interface OutOfLevel {
  readonly ceiling?: LengthReckoning
  readonly head?: LengthReckoning
  readonly floor?: LengthReckoning
}
export function outOfLevel(at: string, first: FirstBracket, { head, ceiling, level }: FurtherBracket): OutOfLevel {
  if (!level) return {}
  const rise = (line: string, ...terms: readonly Term[]) => sum(`${at}-rise-${line}`, `drapery/rise-${line}`, ...terms)
  const from = [minus('drapery/floor-to-level', level), plus('drapery/first-hole', first.hole)]
  return {
    ...(ceiling && first.ceiling
      ? {
          ceiling: rise(
            'ceiling',
            plus('drapery/floor-to-ceiling', ceiling),
            ...from,
            minus('drapery/first-ceiling', first.ceiling),
          ),
        }
      : {}),
    ...(head && first.head
      ? { head: rise('head', plus('drapery/floor-to-head', head), ...from, minus('drapery/first-head', first.head)) }
      : {}),
    floor: rise('floor', plus('drapery/first-hole', first.hole), minus('drapery/floor-to-level', level)),
  }
}

/** A mark that can be chosen, and what it does. */
export interface Choice {
  readonly follows: Follows
  readonly mark: LengthReckoning
  readonly gaps: Gaps
  /** The largest that is seen of it. */
  readonly largest: Length
}
/** All that can be chosen at a further bracket, the best first, and why that one. */
export interface Choices {
  readonly marks: Marks
  /** How far the marks are apart. */
  readonly apart: Length
  readonly list: readonly Choice[]
  /** The lines whose marks agree, of which the first choice is one; without any it is the compromise. */
  readonly agree: readonly LineName[]
  /** What leaves the least to be seen. */
  readonly least: Choice
  readonly distances: Distances
}
const bySight = (a: Choice, b: Choice): number =>
  a.largest - b.largest || Math.abs(a.gaps.rod?.value ?? 0) - Math.abs(b.gaps.rod?.value ?? 0)

/**
 * What can be chosen at a further bracket. Where two marks or more agree within `near` one of those is the first, else the compromise; of equals, and of
 * all that follow, what leaves the smallest largest error to be seen, and then the more level.
 */
export function choicesAt(at: string, first: FirstBracket, further: FurtherBracket, near: Length, reach: Known<Length>): Choices {
  const marks = marksAt(`${at}-mark`, first, further)
  const distances = distancesOf(at, first)
  const all = [
    ...linesIn(marks).map((line) => [line, marks[line]] as const),
    ['between', middleMark(`${at}-mark`, marks, distances, reach)] as const,
  ]
  const sorted = all
    .map(([follows, mark]): Choice => {
      const own = mark as LengthReckoning
      const gaps = gapsAt(`${at}-${follows}`, first, further, known(own))
      return { follows, mark: own, gaps, largest: largestOf(gaps) }
    })
    .sort(bySight)
  const sets = agreeing(marks, near)
  const isFirst = ({ follows }: Choice): boolean =>
    sets.length === 0 ? follows === 'between' : sets.some((set) => set.some((line) => line === follows))
  const best = sorted.find(isFirst) as Choice
  const list = [best, ...sorted.filter((choice) => choice !== best)]
  const agree = sets.find((set) => set.some((line) => line === best.follows)) ?? []
  return {
    marks,
    apart: spreadOf(linesIn(marks).map((line) => marks[line] as LengthReckoning)),
    list,
    agree,
    least: sorted[0] as Choice,
    distances,
  }
}

/** All reckonings of what can be chosen. */
export const reckoningsOf = ({ list, distances }: Choices): readonly LengthReckoning[] => [
  ...Object.values(distances),
  ...list.flatMap(({ mark, gaps }) => [mark, ...Object.values(gaps)]),
]

/** A bracket along the walls, and where the hooks bear there above the level line. */
export interface HungPoint {
  readonly x: LengthReckoning
  readonly height: LengthReckoning
}
/** Where the hooks bear at a place: straight from bracket to bracket, and beyond the outer ones as the rod runs on. Points from left to right, two or more. */
export function hungAt(name: string, points: readonly HungPoint[], x: Known<Length>): LengthReckoning {
  const inner = points.slice(1, -1)
  const [a, b] = [
    inner.findLast((point) => point.x.value < x.value) ?? points[0],
    inner.find((point) => point.x.value >= x.value) ?? points.at(-1),
  ] as [HungPoint, HungPoint]
  const words = { what: 'drapery/bears', how: 'drapery/straight-along-rod', at: 'drapery/bracket-x', point: 'drapery/bears' }
  const end = (point: HungPoint) => ({ x: known(point.x), y: known(point.height) })
  return onLine(name, words, x, end(a), end(b))
}

/** How far a rod may be out of level over so long a way: `most` in 6 ft (common practice, no source). */
export const mostOutOfLevel = (name: string, apart: LengthReckoning, most: Known<Length>): LengthReckoning =>
  formula(
    name,
    'drapery/most-out-of-level',
    (most.value * Math.abs(apart.value)) / sixFeet,
    'drapery/in-six-feet',
    plus('drapery/bracket-to-bracket', apart),
    plus('drapery/rod-level-most', most),
  )
const sixFeet = 72 * 25_400_000
