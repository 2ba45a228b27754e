import { below, filled, long, member, packedPart, packedRod, screwsOf } from '@evenhem/drapery'
import { between } from '@evenhem/drapery/arithmetic'
import { coverage, hangLine, hookMap, type Packed, packed, rod, topOfRod } from '@evenhem/drapery/facts'
import type { Length } from '@evenhem/length'
import { type Entry, entries, type Part, parts, reckonings, rule, type Step, steps } from '@evenhem/plugin'
import { type Carriers, carriers } from './facts.ts'
import { traverseRod } from './kind.ts'

const sides = ['left', 'right'] as const
/** How many carriers each side needs, of the sides that need any. */
const neededBySide = (all: Carriers) =>
  sides.flatMap((side) => {
    const own = all.filter(({ outer }) => outer === side)
    return own.length === 0 ? [] : [{ side, needed: own.reduce((sum, { needed }) => sum + needed.value, 0) }]
  })

/** Carriers are counted, the rod is set and hooked in, the arms pass one another; folds go where the carriers leave room. */
export const work = rule({
  id: 'work',
  on: traverseRod,
  needs: { hookMap, carriers, rod, coverage },
  gives: { steps, reckonings },
}).run(({ it, at, mineAt, hardware }, facts) => {
  const bySide = neededBySide(facts.carriers)
  const of = (side: 'left' | 'right') => bySide.find((each) => each.side === side)?.needed ?? 0
  const length = between(
    `${at}#rod-from-end-to-end`,
    'traverse/rod-end-to-end',
    facts.rod.left,
    facts.rod.right,
    facts.coverage.corners,
  )
  const inMaster = facts.hookMap.places.filter(({ to }) => to === 'traverse/to-master').length
  const list: readonly Step[] = [
    {
      id: 'count-carriers',
      stage: 'check-in',
      code: 'traverse/count-carriers',
      values: { needed: { count: facts.hookMap.bearers.value }, left: { count: of('left') }, right: { count: of('right') } },
      captures: bySide.map(({ side, needed }) => ({
        at: below(mineAt, 'carriers', side),
        as: 'count' as const,
        expected: { count: needed },
      })),
    },
    {
      id: 'mount',
      stage: 'mount',
      code: it.mount === 'ceiling' ? 'traverse/mount-ceiling' : 'traverse/mount',
      numbers: [{ what: 'traverse/rod-end-to-end', value: length.value, of: length.name }],
      cautions: ['drapery/caution-ladder', 'drapery/caution-lift'],
      tools: ['drapery/level'],
    },
    ...(it.draw === 'pair' && (it.overlap ?? 0) > 0
      ? [
          {
            id: 'arms',
            stage: 'mount' as const,
            after: ['mount'],
            code: 'traverse/arms',
            values: { overlap: { length: it.overlap as Length }, over: hardware.master?.over ?? 'unsaid' },
          },
        ]
      : []),
    ...(inMaster > 0
      ? [{ id: 'masters', stage: 'hang' as const, code: 'traverse/masters', values: { third: isThird(hardware.master?.holes) } }]
      : []),
    { id: 'folds', stage: 'dress', code: `traverse/fold-${hardware.carrier.at === 'front' ? 'forward' : 'back'}` },
  ]
  return { steps: list, reckonings: [length] }
})
const isThird = (holes: number | undefined): string => ((holes ?? 0) >= 3 ? 'third' : 'last')

/** What must be in the box: the rod with its carriers, brackets, supports, hooks, screws. */
export const pullList = rule({
  id: 'parts',
  on: traverseRod,
  needs: { rod, carriers, hookMap, coverage },
  gives: { parts, packed, reckonings },
}).run(({ it, at, mine, mineAt, hardware, hardwareAt }, facts) => {
  const length = between(`${at}#rod-length`, 'traverse/rod-end-to-end', facts.rod.left, facts.rod.right, facts.coverage.corners)
  const supports = facts.rod.held.length - 2
  /** In double brackets, those count where they belong. */
  const own = it.bracketsOf === undefined
  const packed = sides.reduce((all, side) => all + (mine?.carriers?.[side] ?? 0), 0)
  const masters = it.draw === 'stationary' ? 0 : it.panels.length
  const { bearers, places } = facts.hookMap
  const screws = it.mount === 'ceiling' ? (2 + supports) * (hardware.ceiling?.holes?.length ?? 0) : screwsOf(hardware, supports)
  const some = (what: string, count: number) =>
    count > 0 ? [{ what: `traverse/part-${what}`, count, hardware: hardwareAt }] : []
  const list: readonly Part[] = [
    { what: 'traverse/part-rod', count: 1, length: length.value, hardware: hardwareAt, of: length.name },
    ...some('bracket', own ? 2 : 0),
    ...some('support', own ? supports : 0),
    ...some('finial', hardware.finial ? 2 : 0),
    ...some('master', masters),
    {
      what: 'traverse/part-carrier',
      count: bearers.value,
      hardware: hardwareAt,
      of: bearers.name,
      ...(packed > 0 ? { spares: Math.max(0, packed - bearers.value) } : {}),
    },
    {
      what: 'traverse/part-hook',
      count: places.length,
      hardware: hardwareAt,
      ...(it.hooks?.spares === undefined ? {} : { spares: it.hooks.spares }),
    },
    ...some('screw', own ? screws : 0),
  ]
  // Carriers are counted side by side where the order says how many are in the rod, and judged there.
  const counted = neededBySide(facts.carriers).map(({ side, needed }) => ({ at: below(mineAt, 'carriers', side), needed }))
  const counting = list.map((part): Packed => {
    if (part.what === 'traverse/part-rod') return packedRod(part, it.rod?.splices?.length ?? 0)
    if (part.what !== 'traverse/part-carrier') return packedPart(part)
    return { ...packedPart(part), needed: { value: bearers.value, from: bearers.name }, counted }
  })
  return { parts: list, packed: counting, reckonings: [length] }
})

/** What the customer is told about the rod. */
export const hangsHere = rule({
  id: 'hangs-here',
  on: traverseRod,
  needs: { hookMap, topOfRod, hangLine },
  gives: { entries },
}).run(({ hardware, hardwareAt }, facts) =>
  filled({ height: member(hardwareAt, ['rod', 'height'], hardware.rod.height) }, ({ height }) => {
    const list: readonly Entry[] = [
      { section: 'what-hangs-here', code: 'traverse/entry-rod', values: { rod: hardware.name, height: long(height) } },
      {
        section: 'what-hangs-here',
        code: 'traverse/entry-carriers',
        values: { carriers: { count: facts.hookMap.bearers.value } },
      },
      {
        section: 'set-on-the-day',
        code: 'traverse/entry-height',
        values: { top: { length: (facts.topOfRod.value - facts.hangLine.highestFloor.value) as Length } },
      },
    ]
    return { entries: list }
  }),
)
