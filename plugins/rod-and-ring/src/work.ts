import { below, filled, long, member, packedPart, packedRod, screwsOf } from '@evenhem/drapery'
import { between } from '@evenhem/drapery/arithmetic'
import { coverage, hangLine, hookMap, type Packed, packed, topOfRod } from '@evenhem/drapery/facts'
import type { Length } from '@evenhem/length'
import { type Entry, entries, type Part, parts, reckonings, rule, type Step, steps } from '@evenhem/plugin'
import { along } from './facts.ts'
import { rod } from './kind.ts'

/** Rings go on before brackets and finials close the rod; folds of rings go back. */
export const work = rule({ id: 'work', on: rod, needs: { hookMap }, gives: { steps } }).run(({ mineAt }, facts) => {
  const counts = facts.hookMap.threading.map((each) => each.count)
  const inside = counts.slice(1, -1)
  const list: readonly Step[] = [
    {
      id: 'count-rings',
      stage: 'check-in',
      code: 'rod-and-ring/count-rings',
      values: { needed: { count: facts.hookMap.bearers.value }, hooks: { count: facts.hookMap.places.length } },
      captures: [
        { at: member(mineAt, ['rings'], undefined).from, as: 'count', expected: { count: facts.hookMap.bearers.value } },
      ],
    },
    {
      id: 'thread',
      stage: 'mount',
      code: 'rod-and-ring/thread',
      values: {
        order: counts.join(', '),
        left: { count: counts[0] ?? 0 },
        between: { count: inside.reduce((a, b) => a + b, 0) },
        bays: { count: inside.length },
        right: { count: counts.at(-1) ?? 0 },
      },
    },
    {
      id: 'mount',
      stage: 'mount',
      after: ['thread'],
      code: 'rod-and-ring/mount',
      cautions: ['drapery/caution-ladder', 'drapery/caution-lift'],
      tools: ['drapery/level'],
    },
    { id: 'fold-back', stage: 'dress', code: 'rod-and-ring/fold-back' },
  ]
  return { steps: list }
})

/** What must be in the box: the rod cut to length, brackets, rings, finials, screws. */
export const pullList = rule({
  id: 'parts',
  on: rod,
  needs: { along, hookMap, coverage },
  gives: { parts, packed, reckonings },
}).run(({ it, at, mine, mineAt, hardwareAt, hardware }, facts) => {
  const { left, right } = facts.along
  const cut = between(`${at}#rod-cut`, 'rod-and-ring/rod-cut', left.rodEnd, right.rodEnd, facts.coverage.corners)
  // In double brackets, those count where they belong.
  const own = it.bracketsOf === undefined
  const supports = own ? facts.along.supports.length : 0
  const screws = own ? screwsOf(hardware, supports) : 0
  const list: readonly Part[] = [
    { what: 'rod-and-ring/part-rod', count: 1, length: cut.value, hardware: hardwareAt, of: cut.name },
    ...(own ? [{ what: 'rod-and-ring/part-bracket', count: 2, hardware: hardwareAt }] : []),
    ...(supports > 0 ? [{ what: 'rod-and-ring/part-support', count: supports, hardware: hardwareAt }] : []),
    { what: 'rod-and-ring/part-finial', count: 2, hardware: hardwareAt },
    {
      what: 'rod-and-ring/part-ring',
      count: facts.hookMap.bearers.value,
      hardware: hardwareAt,
      of: facts.hookMap.bearers.name,
      ...(mine?.rings === undefined ? {} : { spares: Math.max(0, mine.rings - facts.hookMap.bearers.value) }),
    },
    {
      what: 'rod-and-ring/part-hook',
      count: facts.hookMap.places.length,
      hardware: hardwareAt,
      ...(it.hooks?.spares === undefined ? {} : { spares: it.hooks.spares }),
    },
    ...(screws > 0 ? [{ what: 'rod-and-ring/part-screw', count: screws, hardware: hardwareAt }] : []),
  ]
  const { value, name } = facts.hookMap.bearers
  // Rings are counted where the order says how many were packed, and judged there.
  const counting: readonly Packed[] = list.map((part) => {
    if (part.what === 'rod-and-ring/part-rod') return packedRod(part, it.rod?.splices?.length ?? 0)
    if (part.what !== 'rod-and-ring/part-ring') return packedPart(part)
    return { ...packedPart(part), needed: { value, from: name }, counted: [{ at: below(mineAt, 'rings'), needed: value }] }
  })
  return { parts: list, packed: counting, reckonings: [cut] }
})

/** What the customer is told about the rod. */
export const hangsHere = rule({ id: 'hangs-here', on: rod, needs: { hookMap, topOfRod, hangLine }, gives: { entries } }).run(
  ({ hardware, hardwareAt }, facts) =>
    filled({ diameter: member(hardwareAt, ['rod', 'diameter'], hardware.rod.diameter) }, ({ diameter }) => {
      const list: readonly Entry[] = [
        { section: 'what-hangs-here', code: 'rod-and-ring/entry-rod', values: { rod: hardware.name, diameter: long(diameter) } },
        {
          section: 'what-hangs-here',
          code: 'rod-and-ring/entry-rings',
          values: { rings: { count: facts.hookMap.bearers.value } },
        },
        {
          section: 'set-on-the-day',
          code: 'rod-and-ring/entry-height',
          values: { top: { length: (facts.topOfRod.value - facts.hangLine.highestFloor.value) as Length } },
        },
      ]
      return { entries: list }
    }),
)
