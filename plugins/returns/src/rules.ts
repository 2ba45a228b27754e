import { fromCorner, member, packedPart, windowOf } from '@evenhem/drapery'
import { floorAt, fromCasing, fromFloor, hungAt, returnHoleHeight } from '@evenhem/drapery/arithmetic'
import { coverage, floor, frame, type Hole, hangLine, heldAtWall, holes, hungLine, makeUp, packed } from '@evenhem/drapery/facts'
import { type Known, known, type Length } from '@evenhem/length'
import { entries, type Part, parts, reckonings, rule, type Step, steps } from '@evenhem/plugin'
import { addition } from './addition.ts'
import type { Returns } from './part.generated.ts'

const ends = ['left', 'right'] as const

type Holder = NonNullable<NonNullable<Returns['left']>['held']>
/** Screwed to the wall, with a hole of its own, and takes the last hook. */
const isScrewed = (by: Holder | undefined): boolean => by === 'wall angle' || by === 'screw eye'
/** The last hook hangs in a ring all the same: the rod bends back to the wall, a side wall closes it, or nothing does. */
const keepsRing: readonly Holder[] = ['returned rod', 'side wall', 'none']

/** Which outer edges are held, and whether the last hook goes there and needs no ring and no carrier. */
export const held = rule({ id: 'held-at-wall', on: addition, needs: {}, gives: { heldAtWall } }).run(({ mine }) => ({
  heldAtWall: ends.flatMap((side) => {
    const by = mine?.[side]?.held
    return by ? [{ side, by, takesHook: !keepsRing.includes(by) }] : []
  }),
}))

/** A return that is meant to reach the wall behind it. */
const reaches = (by: Holder | undefined): boolean => by !== undefined && by !== 'side wall' && by !== 'none'

/** The holes of wall angles and screw eyes: behind the parked ring, a little below where the last hook bears. */
export const wallHoles = rule({
  id: 'wall-holes',
  on: addition,
  needs: { coverage, hangLine, floor, frame, hungLine: { maybe: hungLine } },
  gives: { holes, reckonings },
}).run(({ mine, mineAt, at, window }, facts) => {
  const used = ends.filter((side) => isScrewed(mine?.[side]?.held))
  const below = (side: 'left' | 'right') => member(mineAt, [side, 'hole'], mine?.[side]?.hole)
  const asked = used
    .map(below)
    .filter((hole) => hole.value === undefined)
    .map((hole) => hole.from)
  if (asked.length > 0) return { ask: asked }
  const all = used.map((side) => {
    const x = facts.coverage[side]
    const ground = floorAt(`${at}#floor-return-${side}`, facts.floor.points, known(x))
    const hung = facts.hungLine?.points.some(({ moved }) => moved)
      ? hungAt(`${at}#bears-return-${side}`, facts.hungLine.points, known(x))
      : undefined
    const height = returnHoleHeight(`${at}#hole-return-${side}`, hung ?? facts.hangLine.hangLine, below(side) as Known<Length>)
    const outward = fromCasing(`${at}#return-from-casing-${side}`, side, x, facts.frame)
    const corner = fromCorner(`${at}#return-from-corner-${side}`, side, x, facts.frame, window, windowOf(at))
    const hole: Hole = {
      id: `return-${side}`,
      on: 'return',
      what: mine?.[side]?.held === 'screw eye' ? 'returns/eye' : 'returns/hole',
      side,
      x,
      height,
      fromFloor: fromFloor(`${at}#from-floor-return-${side}`, height, ground),
      fromCasing: outward,
      ...(corner ? { fromCorner: corner } : {}),
    }
    return { hole, working: [ground, ...(hung ? [hung] : []), height, outward, ...(corner ? [corner] : []), hole.fromFloor] }
  })
  return { holes: all.map((one) => one.hole), reckonings: all.flatMap((one) => one.working) }
})

/** Wall angles and eyes are the last marks and the last holes, drilled when the hem has proven the height; then the returns are fastened. */
export const work = rule({ id: 'work', on: addition, needs: { holes, makeUp }, gives: { steps, parts, packed, entries } }).run(
  ({ mine }, facts) => {
    const own = facts.holes.filter((hole) => hole.on === 'return')
    const edges = ends.filter(
      (side) =>
        reaches(mine?.[side]?.held) && facts.makeUp.panels.some((panel) => panel.outer === side && panel.return.value > 0),
    )
    const fittings = (['returns/hole', 'returns/eye'] as const).flatMap((what): readonly Part[] => {
      const count = own.filter((hole) => hole.what === what).length
      return count > 0 ? [{ what: what === 'returns/eye' ? 'returns/part-eye' : 'returns/part-angle', count }] : []
    })
    return {
      steps: [
        ...(own.length > 0 ? screwing(own) : []),
        ...fastening(
          edges.filter((side) => !keepsRing.includes(mine?.[side]?.held ?? 'none')),
          own.length > 0,
        ),
      ],
      parts: fittings,
      packed: fittings.map(packedPart),
      entries:
        edges.length > 0
          ? [{ section: 'what-hangs-here' as const, code: 'returns/entry', values: { count: { count: edges.length } } }]
          : [],
    }
  },
)

function screwing(own: readonly Hole[]): readonly Step[] {
  const eyes = own.filter((hole) => hole.what === 'returns/eye').length
  const values = { count: { count: own.length }, by: eyes === own.length ? 'eye' : eyes === 0 ? 'angle' : 'both' }
  return [
    {
      id: 'mark',
      stage: 'mark',
      after: ['mark-right'],
      code: 'returns/mark',
      values,
      numbers: own.flatMap((hole) => [
        { what: `${hole.what}-${hole.side}`, value: hole.fromFloor.value, of: hole.fromFloor.name },
        { what: 'drapery/from-casing', value: hole.fromCasing.value, of: hole.fromCasing.name },
      ]),
      cautions: ['drapery/caution-ladder'],
      tools: ['drapery/tape', 'drapery/pencil'],
    },
    {
      id: 'fix',
      stage: 'true-up',
      after: ['all-screws'],
      code: 'returns/fix',
      values,
      cautions: ['drapery/caution-drill', 'drapery/caution-dust', 'drapery/caution-ladder'],
      tools: ['drapery/drill-tool', 'drapery/goggles'],
    },
  ]
}

const fastening = (edges: readonly ('left' | 'right')[], screwed: boolean): readonly Step[] =>
  edges.length === 0
    ? []
    : [
        {
          id: 'hook',
          stage: 'true-up',
          after: [screwed ? 'fix' : 'all-screws'],
          code: 'returns/hook',
          values: { count: { count: edges.length } },
        },
      ]
