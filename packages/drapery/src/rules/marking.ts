import type { JobHead } from '@evenhem/job'
import type { Known, Length, LengthReckoning } from '@evenhem/length'
import { type Capture, rule, type Step, steps } from '@evenhem/plugin'
import { ruleOf } from '../defaults.ts'
import { ceiling, floor, frame, type HangLine, type Hole, hangLine, held, holes, hungLine, topOfRod } from '../facts/index.ts'
import { long, windowOf } from '../given.ts'
import { brackets, drilling } from './brackets.ts'
import { drillCaptures, inMarkingOrder, markCaptures } from './transfer-captures.ts'

const code = (name: string) => ({ code: `drapery/${name}` })
const ladder = 'drapery/caution-ladder'

const bracketId = (own: readonly Hole[]): string => `mark-${own[0]?.support ? `support-${own[0].support}` : own[0]?.side}`

/** Mark, drill and prove: every hole with its own height from its own floor. */
export const marking = rule({
  id: 'marking',
  on: 'treatment',
  needs: {
    holes,
    topOfRod,
    hangLine,
    floor,
    hungLine: { maybe: hungLine },
    ceiling: { maybe: ceiling },
    frame: { maybe: frame },
    held: { maybe: held },
  },
  gives: { steps },
}).run(({ it, window, at, job }, facts) => {
  if (it.bracketsOf !== undefined) return {}
  const all = inMarkingOrder(brackets(facts.holes), facts.hungLine)
  const mark = (own: readonly Hole[], i: number): Step => ({
    id: bracketId(own),
    stage: 'mark',
    code: own[0]?.support ? 'drapery/mark-support' : 'drapery/mark-bracket',
    after: [i === 0 ? 'set-up' : bracketId(all[i - 1] ?? [])],
    values: { side: code(own[0]?.side ?? 'left'), count: { count: own.length } },
    numbers: [
      ...own.map((hole) => {
        const from = hole.fromWall ?? hole.fromFloor
        return { what: hole.what, value: from.value, of: from.name }
      }),
      ...own.slice(0, 1).map(({ fromCasing, fromCorner }) => {
        const from = fromCorner ?? fromCasing
        return { what: from.what, value: from.value, of: from.name }
      }),
    ],
    cautions: [ladder],
    tools: ['drapery/tape', 'drapery/pencil', 'drapery/level'],
    captures: markCaptures(at, own, all[0] ?? [], job, facts),
  })
  const [setting, levelling] = [setUp(facts.topOfRod, facts.hangLine, ruleOf(job, 'ladderHeight')), checkLevel(all, job)]
  const captures = drillCaptures(at, all, job, facts.hungLine)
  return {
    steps: [setting, ...all.map(mark), levelling, drill(drilling(it, all, window, windowOf(at), facts.held), job, captures)],
  }
})

/** Once all brackets are marked. */
const checkLevel = (all: readonly (readonly Hole[])[], job: JobHead): Step => ({
  id: 'check-level',
  stage: 'mark',
  after: [bracketId(all.at(-1) ?? [])],
  code: 'drapery/check-level',
  values: { near: long(ruleOf(job, 'heightsAgree')) },
  cautions: [ladder],
  tools: ['drapery/level', 'drapery/tape'],
})

const drill = (how: ReturnType<typeof drilling>, job: JobHead, captures: readonly Capture[]): Step => ({
  id: 'drill',
  stage: 'drill',
  code: `drapery/drill-${how}`,
  cautions: ['drapery/caution-drill', isOldPaint(job.site?.yearBuilt) ? 'drapery/caution-lead' : 'drapery/caution-dust', ladder],
  tools: ['drapery/drill-tool', 'drapery/goggles'],
  captures,
})

/** Paint of before 1978 may hold lead (US Environmental Protection Agency, Renovation, Repair and Painting rule, 40 CFR 745; from memory). */
const isOldPaint = (built: number | undefined): boolean => built !== undefined && built < 1978

/** Which ladder the work needs: how high the rod is above the floor it stands on. */
function setUp(top: LengthReckoning, hung: HangLine, most: Known<Length>): Step {
  const height = top.value - hung.highestFloor.value
  const high = height > most.value
  return {
    id: 'set-up',
    stage: 'mark',
    code: 'drapery/set-up',
    values: { height: { length: height as Length }, high: high ? 'yes' : 'no', most: long(most) },
    cautions: [high ? 'drapery/caution-tower' : ladder],
    tools: [high ? 'drapery/tower' : 'drapery/ladder-tool'],
  }
}
