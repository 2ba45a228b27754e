import { check, filled, long, magnitude, member, openingOf, ruleOf, windowOf } from '@evenhem/drapery'
import { floorAt, fromCasing, fromFloor, returnHoleHeight, returnLess } from '@evenhem/drapery/arithmetic'
import { coverage, floor, type Hole, hangLine, heldAtWall, holes, makeUp, projection } from '@evenhem/drapery/facts'
import type { Known, Length } from '@evenhem/length'
import { checks, entries, parts, reckonings, rule, type Step, steps } from '@evenhem/plugin'
import { addition } from './addition.ts'

const ends = ['left', 'right'] as const

/** Which outer edges are held at the wall: the last hook there needs no ring and no carrier. */
export const held = rule({ id: 'held-at-wall', on: addition, needs: {}, gives: { heldAtWall } }).run(({ mine }) => ({
  heldAtWall: ends.flatMap((side) => (mine?.[side] ? [{ side, by: mine[side].held }] : [])),
}))

/** Each return against its own projection: too narrow and it pulls the last ring off the corner, too wide and it bulges. */
export const fits = rule({
  id: 'return',
  on: addition,
  needs: { makeUp, projection },
  gives: { checks, reckonings },
  codes: ['returns/return'],
}).run(({ mine, at, job }, facts) => {
  const short = ruleOf(job, 'returnShort')
  const over = ruleOf(job, 'returnOver')
  const each = facts.makeUp.panels
    .filter((panel) => mine?.[panel.outer])
    .map((panel) => {
      const less = returnLess(`${at}/panels/${panel.panel}#return-less`, panel.return, facts.projection)
      const verdict = less.value < -short.value ? 'fail' : less.value > over.value ? 'warn' : 'pass'
      const values = {
        side: { code: `drapery/${panel.outer}` },
        return: long(panel.return),
        projection: long(facts.projection),
        less: magnitude(less),
        short: long(short),
        over: long(over),
      }
      return { less, check: check('returns/return', verdict, panel.return.from, values, 'drill') }
    })
  return { checks: each.map((one) => one.check), reckonings: each.map((one) => one.less) }
})

/** The holes of the wall angles: behind the parked ring, a little below where the last hook bears. */
export const wallHoles = rule({
  id: 'wall-holes',
  on: addition,
  needs: { coverage, hangLine, floor },
  gives: { holes, reckonings },
}).run(({ mine, mineAt, at, window }, facts) => {
  const { opening, openingAt } = openingOf(window, windowOf(at))
  const used = ends.filter((side) => mine?.[side])
  const below = (side: 'left' | 'right') => member(mineAt, [side, 'hole'], mine?.[side]?.hole)
  const asked = used
    .map(below)
    .filter((hole) => hole.value === undefined)
    .map((hole) => hole.from)
  if (asked.length > 0) return { ask: asked }
  return filled({ casing: member(openingAt, ['casing', 'width'], opening.casing?.width) }, ({ casing }) => {
    const all = used.map((side) => {
      const x = facts.coverage[side]
      const ground = floorAt(`${at}#floor-return-${side}`, facts.floor.points, { value: x.value, from: x.name })
      const height = returnHoleHeight(`${at}#hole-return-${side}`, facts.hangLine.hangLine, below(side) as Known<Length>)
      const outward = fromCasing(`${at}#return-from-casing-${side}`, side, x, casing)
      const hole: Hole = {
        id: `return-${side}`,
        on: 'return',
        what: 'returns/hole',
        side,
        x,
        height,
        fromFloor: fromFloor(`${at}#from-floor-return-${side}`, height, ground),
        fromCasing: outward,
      }
      return { hole, working: [ground, height, outward, hole.fromFloor] }
    })
    return { holes: all.map((one) => one.hole), reckonings: all.flatMap((one) => one.working) }
  })
})

/** The wall angles are the last marks and the last holes, drilled when the hem has proven the height; then the returns are hooked. */
export const work = rule({ id: 'work', on: addition, needs: { holes }, gives: { steps, parts, entries } }).run(
  ({ mine }, facts) => {
    const own = facts.holes.filter((hole) => hole.on === 'return')
    const count = { count: own.length }
    const list: readonly Step[] = [
      {
        id: 'mark',
        stage: 'mark',
        after: ['mark-right'],
        code: 'returns/mark',
        values: { count },
        numbers: own.flatMap((hole) => [
          { what: `returns/hole-${hole.side}`, value: hole.fromFloor.value, of: hole.fromFloor.name },
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
        values: { count },
        cautions: ['drapery/caution-drill', 'drapery/caution-dust', 'drapery/caution-ladder'],
        tools: ['drapery/drill-tool', 'drapery/goggles'],
      },
      { id: 'hook', stage: 'true-up', after: ['fix'], code: 'returns/hook', values: { count } },
    ]
    const some = ends.some((side) => mine?.[side])
    return {
      steps: some ? list : [],
      parts: some ? [{ what: 'returns/part-angle', count: own.length }] : [],
      entries: some ? [{ section: 'what-hangs-here' as const, code: 'returns/entry', values: { count } }] : [],
    }
  },
)
