import { below, type JobHead, type Place } from '@evenhem/job'
import { known, type Length } from '@evenhem/length'
import type { Capture } from '@evenhem/plugin'
import { ceilingAt, floorAt } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import type { Floor, Frame, Hole, HungLine } from '../facts/index.ts'

interface Known {
  readonly hungLine?: HungLine | undefined
  readonly floor?: Floor | undefined
  readonly ceiling?: Floor | undefined
  readonly frame?: Frame | undefined
}
/** `left`, `right` or the id of a support. */
const idOf = (hole: Hole): string => hole.support ?? hole.side
const highest = (own: readonly Hole[]): Hole | undefined => [...own].sort((a, b) => b.height.value - a.height.value)[0]

/** The brackets in the order in which they are marked: that from which the others are taken comes first. */
export const inMarkingOrder = (
  all: readonly (readonly Hole[])[],
  hungLine: HungLine | undefined,
): readonly (readonly Hole[])[] => {
  const isFirst = ([hole]: readonly Hole[]): boolean => hole !== undefined && idOf(hole) === hungLine?.first
  return [...all.filter(isFirst), ...all.filter((own) => !isFirst(own))]
}

/** A reading from the floor up, with what the order expects there. */
const reading = (at: Place, name: string, expected: number | undefined, job: JobHead): Capture => ({
  at: below(at, name),
  as: 'length',
  ...(expected === undefined ? {} : { expected: { length: Math.round(expected) as Length } }),
  tolerance: { length: ruleOf(job, 'heightsAgree').value },
})

/** What is read when a bracket is marked: the frame head and the ceiling, and at a further one a level line carried from the first hole. */
export function markCaptures(
  at: Place,
  own: readonly Hole[],
  first: readonly Hole[],
  job: JobHead,
  { hungLine, floor, ceiling, frame }: Known,
): readonly Capture[] {
  const top = highest(own)
  if (!hungLine || !top || top.fromWall) return []
  const place = below(at, 'found', 'brackets', idOf(top))
  const ground = floorAt('#', floor?.points ?? [], known(top.x)).value
  const over = ceiling && ceilingAt('#', ceiling.points, known(top.x)).value - ground
  const head = frame?.top && frame.top.value - ground
  const from = highest(first)
  const isFirst = idOf(top) === hungLine.first || from === undefined
  return [
    reading(place, 'floorToHead', head, job),
    reading(place, 'floorToCeiling', over, job),
    // A support may be drilled at another height than an end: the line is that of the first bracket's hole.
    ...(isFirst ? [] : [reading(place, 'floorToLevel', from.height.value - ground, job)]),
  ]
}

/** What is written when the holes are drilled: how high each top hole came to be, and that the bracket is fixed. From then on no reading moves it. */
export function drillCaptures(
  at: Place,
  all: readonly (readonly Hole[])[],
  job: JobHead,
  hungLine: HungLine | undefined,
): readonly Capture[] {
  if (!hungLine) return []
  return all.flatMap((own): readonly Capture[] => {
    const top = highest(own)
    if (!top || top.fromWall) return []
    const place = below(at, 'found', 'brackets', idOf(top))
    return [
      {
        at: below(place, 'floorToHole'),
        as: 'length',
        expected: { length: top.fromFloor.value },
        tolerance: { length: ruleOf(job, 'markOff').value },
      },
      { at: below(place, 'fixed'), as: 'tick' },
    ]
  })
}
