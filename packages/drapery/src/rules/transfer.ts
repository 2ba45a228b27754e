import type { Place, Treatment, Window } from '@evenhem/job'
import type { LengthReckoning } from '@evenhem/length'
import { checks, layers, reckonings, rule } from '@evenhem/plugin'
import { ruleOf } from '../defaults.ts'
import {
  ceiling,
  floor,
  frame,
  type HangLine,
  type HungBracket,
  type HungLine,
  hangLine,
  hungLine,
  makeUp,
  plannedMarks,
  topOfRod,
} from '../facts/index.ts'
import { coveredBy, windowOf } from '../given.ts'
import { levelLayers } from '../pictures/level.ts'
import { fixedMarks, hungHem, marksAgree, rodLevel, supportsInLine } from './transfer-checks.ts'
import {
  type Bracket,
  bracketsOf,
  type First,
  type Further,
  firstHole,
  firstOf,
  furtherOf,
  hungOf,
  inLine,
  isRecorded,
  levelWith,
  type Put,
  putAt,
  type StandIns,
} from './transfer-marks.ts'

/** All that is known where the marks go over from the first bracket to the others. */
export interface Transfer {
  readonly at: Place
  readonly it: Treatment
  readonly first: First
  readonly further: readonly Further[]
  readonly hung: HungLine
  readonly hangLine: HangLine
}

/** Points of the tops of the casings that are covered, from left to right. */
const headOf = (it: Treatment, window: Window, windowAt: Place): StandIns['head'] =>
  coveredBy(it, window, windowAt)
    .flatMap(({ opening, openingAt }) =>
      (opening.head ?? []).map(({ id, x, y }) => ({
        x: { value: x, from: `${openingAt}/head/${id}/x` },
        y: { value: y, from: `${openingAt}/head/${id}/y` },
      })),
    )
    .sort((a, b) => a.x.value - b.x.value)

/** Where every bracket hangs: the first, the ends from it, and then the supports, which without a word about them stand in line. */
function hungOn(
  at: Place,
  brackets: readonly Bracket[],
  first: First,
  further: readonly Further[],
  heights: HangLine,
  top: LengthReckoning | undefined,
): { readonly points: readonly HungBracket[]; readonly working: readonly LengthReckoning[] } {
  const found = new Map<string, ReturnType<typeof hungOf>>()
  const hang = (bracket: Bracket, floor: LengthReckoning, put: Put | undefined): void => {
    found.set(bracket.id, hungOf(at, bracket, heights, top, floor, put))
  }
  const { bracket } = first
  hang(
    bracket,
    bracket.ground,
    isRecorded(bracket) ? { by: bracket.found.fixed ? 'fixed' : 'read', mark: first.hole } : undefined,
  )
  const point = (id: string): HungBracket => (found.get(id) as ReturnType<typeof hungOf>).point
  const isEnd = ({ id }: Bracket): boolean => id === 'left' || id === 'right'
  for (const each of further.filter((one) => isEnd(one.bracket)))
    hang(each.bracket, each.floor, putAt(at, each) ?? levelWith(at, each.bracket, point(bracket.id)))
  for (const each of further.filter((one) => !isEnd(one.bracket)))
    hang(each.bracket, each.floor, putAt(at, each) ?? inLine(at, each.bracket, point('left'), point('right')))
  return { points: brackets.map(({ id }) => point(id)), working: [...found.values()].flatMap((one) => one.working) }
}

/**
 * Transfer and level: from the first bracket to each further one, three marks and a level line, what each does to what the eye sees, and the line that the
 * rod hangs on then. What was not read is not known; nothing is asked for before something was read at a further bracket.
 */
export const transfer = rule({
  id: 'transfer',
  on: 'treatment',
  needs: {
    floor,
    plannedMarks: { maybe: plannedMarks },
    hangLine: { maybe: hangLine },
    topOfRod: { maybe: topOfRod },
    makeUp: { maybe: makeUp },
    ceiling: { maybe: ceiling },
    frame: { maybe: frame },
  },
  gives: { hungLine, checks, layers, reckonings },
  codes: ['drapery/marks-agree', 'drapery/rod-level', 'drapery/fixed-mark', 'drapery/hung-hem', 'drapery/support-in-line'],
}).run(({ it, at, window, job }, facts) => {
  const { marks = [] } = facts.plannedMarks ?? {}
  if (it.mount === 'ceiling' || marks.length < 2 || !facts.hangLine || !facts.makeUp) return {}
  const brackets = bracketsOf(it, at, marks, facts.floor)
  const first = firstHole(at, firstOf(it, brackets))
  const stand = { floor: facts.floor, head: headOf(it, window, windowOf(at)), ceiling: facts.ceiling?.points ?? [] }
  const [near, reach] = [ruleOf(job, 'heightsAgree'), ruleOf(job, 'eyeReach')]
  const further = brackets
    .filter((bracket) => bracket !== first.bracket)
    .map((bracket) => furtherOf(at, first, bracket, stand, near, reach))
  const { points, working } = hungOn(at, brackets, first, further, facts.hangLine, facts.topOfRod)
  const hung = { points, first: first.bracket.id }
  const all: Transfer = { at, it, first, further, hung, hangLine: facts.hangLine }
  const found = [
    marksAgree(all, job),
    fixedMarks(all, job),
    rodLevel(all, job),
    hungHem(all, facts.makeUp, job),
    supportsInLine(all, job),
  ]
  const drawn = levelLayers(all, window, facts.frame)
  const every = [
    ...brackets.map(({ ground }) => ground),
    first.hole,
    first.height,
    ...further.flatMap((each) => each.working),
    ...working,
    ...found.flatMap((each) => each.working),
    ...drawn.working,
  ]
  return {
    hungLine: hung,
    checks: found.flatMap((each) => each.checks),
    layers: drawn.layers,
    // Further brackets share what stands at the first.
    reckonings: [...new Map(every.map((each) => [each.name, each])).values()],
  }
})
