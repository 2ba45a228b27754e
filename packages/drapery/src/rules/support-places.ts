import type { Wall } from '@evenhem/job'
import { inch, type Length, millimetre } from '@evenhem/length'

/** A stretch along the wall in which a support may stand. */
export interface Stretch {
  readonly from: Length
  readonly to: Length
}
export type Places = readonly Length[]

/** Whether each of these is near one of those. */
export const isNear = (those: Places, each: Length, most: Length): boolean => those.some((x) => Math.abs(x - each) <= most)
/** All ways to take so many of a list, in order. */
export const choose = (list: Places, n: number): readonly Places[] =>
  n === 0 ? [[]] : list.flatMap((first, i) => choose(list.slice(i + 1), n - 1).map((rest) => [first, ...rest]))

/** To the nearest 1/8 in, or 5 mm where the job is in metric. */
const pencilled = (x: number, isMetric: boolean): Length => {
  const step = isMetric ? 5 * millimetre : inch / 8
  return (Math.round(x / step) * step) as Length
}
/** A support nearer to an end bracket than this would be a second bracket: 6 in, a choice of ours. */
const apart = 6 * inch
/** The stretches without what is beside the end brackets. */
export const between = (stretches: readonly Stretch[], [left, right]: readonly [Length, Length]): readonly Stretch[] =>
  stretches
    .map(({ from, to }) => ({ from: Math.max(from, left + apart) as Length, to: Math.min(to, right - apart) as Length }))
    .filter(({ from, to }) => from <= to)
const isIn = (stretches: readonly Stretch[], x: number): boolean => stretches.some(({ from, to }) => x >= from && x <= to)

/** Even places for so many supports between the end brackets; where bearers leave only the place at which a pair meets, that one. */
export function evenPlaces(
  n: number,
  [left, right]: readonly [Length, Length],
  stretches: readonly Stretch[],
  isMetric: boolean,
): readonly Places[] {
  const even = Array.from({ length: n }, (_, i) => pencilled(left + ((i + 1) * (right - left)) / (n + 1), isMetric))
  const only = stretches.filter(({ from, to }) => from === to).map(({ from }) => from)
  return [even, ...(only.length >= n ? choose(only, n) : [])].filter((places) => places.every((x) => isIn(stretches, x)))
}

/** At most so many ways are tried. */
const most = 400
/** Places on studs for so many supports. */
export function studPlaces(n: number, walls: readonly Wall[], stretches: readonly Stretch[]): readonly Places[] {
  const studs = walls.flatMap(({ studs = [] }) => studs.map(({ x }) => x)).filter((x) => isIn(stretches, x))
  const sorted = [...new Set(studs)].sort((a, b) => a - b)
  return sorted.length > 14 && n > 2 ? [] : choose(sorted, n).slice(0, most)
}
