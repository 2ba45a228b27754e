import { below, type Fabric, type JobHead, type Panel, type Place, type Treatment, type Window } from '@evenhem/job'
import { type Known, type Length, type LengthReckoning, number } from '@evenhem/length'
import { type Capture, type Entry, entries, parts, rule, type Step, steps } from '@evenhem/plugin'
import { pastCasing } from '../arithmetic/index.ts'
import { lengthAllowed, ruleOf, widthAllowedFor } from '../defaults.ts'
import {
  ceiling,
  coverage,
  floor,
  frame,
  type HangLine,
  type Hole,
  hangLine,
  holes,
  hookMap,
  hungLine,
  type MakeUp,
  makeUp,
  overlap,
  packed,
  reach,
  rod,
  topOfRod,
} from '../facts/index.ts'
import { coveredBy, filled, kilogramsOf, long, magnitude, member, panelAt, wallUnder, windowOf } from '../given.ts'
import { shownCaptures } from './hand-over.ts'
import { countsOf } from './inventory.ts'
import { isCorded } from './operation.ts'
import { drillCaptures, inMarkingOrder, markCaptures } from './transfer-captures.ts'
import { hemCaptures, hooksSaid } from './true-up-steps.ts'

const code = (name: string) => ({ code: `drapery/${name}` })
const ladder = 'drapery/caution-ladder'

/** What the tape reads on a panel, with what the order expects there and how far it may be off. */
function readingsOf(panel: Panel, at: Place, job: JobHead): readonly Capture[] {
  const allowed = {
    finishedLength: lengthAllowed(job, panel.finishedLength ?? (0 as Length)),
    firstToLast: widthAllowedFor(job, panel.firstToLast ?? (0 as Length)),
    return: ruleOf(job, 'returnUnder').value,
    pin: ruleOf(job, 'pinOff').value,
  }
  return (['finishedLength', 'firstToLast', 'return', 'pin'] as const)
    .filter((size) => size !== 'return' || panel.return !== 0)
    .map((size): Capture => {
      const expected = panel[size]
      return {
        at: below(at, size),
        as: 'length',
        ...(expected === undefined ? {} : { expected: { length: expected } }),
        tolerance: { length: allowed[size] },
      }
    })
}

/** Unpack on a clean cover and count, then lay the tape on the panels and the window, before anything is marked. */
export const arrival = rule({ id: 'arrival', on: 'treatment', needs: { packed: { maybe: packed } }, gives: { steps } }).run(
  ({ it, ordered, at, job, window }, facts) => {
    const lengthOff = ruleOf(job, 'lengthOff')
    const casings = coveredBy(it, window, windowOf(at)).map(
      ({ openingAt }): Capture => ({ at: below(openingAt, 'casing', 'width'), as: 'length' }),
    )
    const panels = ordered.panels.flatMap((panel) => readingsOf(panel, panelAt(at, panel.id), job))
    const floor = (window.floor ?? []).map(
      (point): Capture => ({ at: below(windowOf(at), 'floor', point.id, 'y'), as: 'length', expected: { length: point.y } }),
    )
    const ceiling = (window.ceiling ?? []).map(
      (point): Capture => ({ at: below(windowOf(at), 'ceiling', point.id, 'y'), as: 'length', expected: { length: point.y } }),
    )
    const list: readonly Step[] = [
      {
        id: 'unpack',
        stage: 'unpack',
        code: 'drapery/unpack',
        values: { count: { count: it.panels.length }, bags: it.panels.map((panel) => panel.bag ?? panel.id).join(', ') },
        cautions: ['drapery/caution-lift'],
        tools: ['drapery/clean-cover'],
        captures: countsOf(at, facts.packed ?? []),
      },
      {
        id: 'measure-panels',
        stage: 'check-in',
        code: 'drapery/measure-panels',
        values: { off: long(lengthOff) },
        tools: ['drapery/tape'],
        captures: panels,
      },
      {
        id: 'measure-window',
        stage: 'check-in',
        after: ['measure-panels'],
        code: 'drapery/measure-window',
        tools: ['drapery/tape', 'drapery/level'],
        captures: [...casings, ...floor, ...ceiling],
      },
    ]
    return { steps: list }
  },
)

/** What has to go before anything new comes: the old treatment, and holes to patch. */
export const clearing = rule({ id: 'clearing', on: 'window', needs: {}, gives: { steps } }).run(({ it }) => {
  const { remove, patch } = it.before ?? {}
  if (!remove && !patch) return {}
  const step: Step = {
    id: 'clear',
    stage: 'check-in',
    code: 'drapery/clear',
    values: { remove: remove ?? 'none', patch: patch ?? 'none' },
    cautions: [ladder, 'drapery/caution-dust'],
  }
  return { steps: [step] }
})

/** The brackets in the order in which they are marked, from left to right: the left one, the supports, the right one. */
function brackets(all: readonly Hole[]): readonly (readonly Hole[])[] {
  const ids = ['left', ...new Set(all.flatMap((hole) => hole.support ?? [])), 'right']
  const ofId = (id: string) => all.filter((hole) => (hole.on === 'bracket' && hole.side === id) || hole.support === id)
  return ids.map(ofId).filter((own) => own.length > 0)
}
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
  const oneScrew = holdsByOneScrew(it, all, window, windowOf(at))
  const drill: Step = {
    id: 'drill',
    stage: 'drill',
    code: oneScrew ? 'drapery/drill-wood' : 'drapery/drill-other',
    cautions: [
      'drapery/caution-drill',
      isOldPaint(job.site?.yearBuilt) ? 'drapery/caution-lead' : 'drapery/caution-dust',
      ladder,
    ],
    tools: ['drapery/drill-tool', 'drapery/goggles'],
    captures: drillCaptures(at, all, job, facts.hungLine),
  }
  const last = bracketId(all.at(-1) ?? [])
  const level: Step = {
    id: 'check-level',
    stage: 'mark',
    after: [last],
    code: 'drapery/check-level',
    values: { near: long(ruleOf(job, 'heightsAgree')) },
    cautions: [ladder],
    tools: ['drapery/level', 'drapery/tape'],
  }
  return { steps: [setUp(facts.topOfRod, facts.hangLine, ruleOf(job, 'ladderHeight')), ...all.map(mark), level, drill] }
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

/** One screw a bracket may carry until the hem is proven: in wood, and while no panel is heavier than 10 kg (common practice, no source; the weight from memory). */
function holdsByOneScrew(it: Treatment, all: readonly (readonly Hole[])[], window: Window, windowAt: Place): boolean {
  const inWood =
    it.mount !== 'ceiling' &&
    all.every((own) => wallUnder(window, windowAt, own[0]?.x.value ?? 0).wall.buildUp?.behind === 'wood')
  return inWood && it.panels.every((panel) => (kilogramsOf(panel.weight) ?? 0) <= 10)
}

/** Hang from the leading edge outward, read the hem, and finish what the length has proven. */
export const hanging = rule({
  id: 'hanging',
  on: 'treatment',
  needs: { hookMap, holes, overlap: { maybe: overlap }, rod: { maybe: rod }, reach: { maybe: reach } },
  gives: { steps },
}).run(({ it, at, window, job }, facts) =>
  filled({ clearance: member(at, ['clearance'], it.clearance) }, ({ clearance }) => {
    const oneScrew = holdsByOneScrew(it, brackets(facts.holes), window, windowOf(at))
    const draw = it.draw === 'pair' || it.draw === 'stationary' ? it.draw : 'one'
    const trial: Step = {
      id: 'trial',
      stage: 'hang',
      code: 'drapery/trial',
      cautions: [ladder, 'drapery/caution-lift'],
      tools: ['drapery/tape'],
    }
    const list: readonly Step[] = [
      ...(oneScrew ? [] : [trial]),
      {
        id: 'hang',
        stage: 'hang',
        after: oneScrew ? [] : ['trial'],
        code: 'drapery/hang',
        values: { draw, count: { count: facts.hookMap.places.length } },
        cautions: [ladder, 'drapery/caution-lift'],
      },
      {
        id: 'read-hem',
        stage: 'true-up',
        code: 'drapery/read-hem',
        values: {
          draw,
          to: it.hemAt ?? 'floor',
          lies: clearance.value < 0 ? 'yes' : 'no',
          clearance: magnitude(clearance),
          ...hooksSaid(it, facts.hookMap),
        },
        numbers: [{ what: 'drapery/clearance', value: clearance.value, of: clearance.from }],
        tools: ['drapery/tape'],
        captures: hemCaptures(it, at, facts.hookMap, clearance, ruleOf(job, 'hemEven')),
      },
      {
        id: 'all-screws',
        stage: 'true-up',
        after: ['read-hem', 'set-pins'],
        code: oneScrew ? 'drapery/all-screws' : 'drapery/look-over-screws',
        cautions: [ladder],
      },
      {
        id: 'hand-over',
        stage: 'hand-over',
        code: 'drapery/hand-over',
        values: { draw },
        captures: shownCaptures(it, at, job, facts),
      },
    ]
    return { steps: list }
  }),
)

/** The panels for the pull list. */
export const panelParts = rule({ id: 'panel-parts', on: 'treatment', needs: {}, gives: { parts, packed } }).run(({ it, at }) => ({
  packed: [{ what: 'drapery/panel', needed: number(it.panels.length) }],
  parts: it.panels.map((panel) => ({
    what: 'drapery/panel',
    count: 1,
    ...(panel.finishedLength === undefined ? {} : { length: panel.finishedLength }),
    of: panelAt(at, panel.id),
  })),
}))

const about = (fabric: Fabric): readonly Entry[] => [
  {
    section: 'what-hangs-here',
    code: 'drapery/entry-fabric',
    values: {
      fabric: fabric.name,
      fibres:
        (fabric.fibres ?? [])
          .map(({ fibre, percent }) => (percent === undefined ? fibre : `${fibre} ${percent}\u00a0%`))
          .join(', ') || 'none',
    },
  },
  ...(fabric.lining
    ? [{ section: 'what-hangs-here', code: 'drapery/entry-lining', values: { lining: fabric.lining } } as const]
    : []),
]

/** How the report begins: what hangs, how far it passes the casing closed, and how it clears the floor. */
export const lead = rule({ id: 'lead', on: 'treatment', needs: { coverage, hangLine, frame }, gives: { entries } }).run(
  ({ it, fabric, at }, facts) => {
    const clears = facts.hangLine.panels.map((panel) => panel.clears.value)
    const clearance = { value: Math.min(...clears) }
    const past = pastCasing(at, facts.coverage.left, facts.coverage.right, facts.frame)
    const values = {
      draw: it.draw === 'pair' || it.draw === 'stationary' ? it.draw : 'one',
      count: { count: it.panels.length },
      lined: fabric?.lining ? 'yes' : 'no',
      sides: past.left.value === past.right.value ? 'alike' : 'apart',
      left: long(past.left),
      right: long(past.right),
      to: facts.hangLine.hemAt,
      clearance: magnitude(clearance),
      lies: clearance.value < 0 ? 'yes' : 'no',
      even: Math.max(...clears) === clearance.value ? 'yes' : 'no',
    }
    const isShort = it.draw !== 'stationary' && (past.left.value < 0 || past.right.value < 0)
    const list: readonly Entry[] = [
      { section: 'lead', code: isShort ? 'drapery/entry-lead.short' : 'drapery/entry-lead', values },
    ]
    return { entries: list }
  },
)

/** How far the hems clear the floor: said once when they are alike. */
function hems(hung: HangLine['panels'], made: MakeUp['panels']): readonly Entry[] {
  const [first] = hung
  if (first && hung.every((panel) => panel.clears.value === first.clears.value))
    return [{ section: 'set-on-the-day', code: 'drapery/entry-hem', values: { hem: long(first.clears) } }]
  return hung.map((panel, i) => ({
    section: 'set-on-the-day',
    code: 'drapery/entry-hem-side',
    values: { side: code(made[i]?.outer ?? 'left'), hem: long(panel.clears) },
  }))
}

/** What the customer is told about the draperies. */
export const hangsHere = rule({ id: 'hangs-here', on: 'treatment', needs: { makeUp, hangLine }, gives: { entries } }).run(
  ({ it, fabric }, facts) => {
    const { panels } = facts.makeUp
    const list: readonly Entry[] = [
      {
        section: 'what-hangs-here',
        code: 'drapery/entry-panels',
        values: { count: { count: panels.length }, pleats: { count: panels[0]?.pleats ?? 0 } },
      },
      ...panels.map(
        (panel): Entry => ({
          section: 'what-hangs-here',
          code: 'drapery/entry-length',
          values: { side: code(panel.outer), length: long(panel.finishedLength) },
        }),
      ),
      ...(fabric ? about(fabric) : []),
      ...hems(facts.hangLine.panels, panels),
      { section: 'care', code: 'drapery/entry-care', values: {} },
      {
        section: 'safe-use',
        code: isCorded(it.operation?.by) ? 'drapery/entry-safe-corded' : 'drapery/entry-safe',
        values: {},
      },
    ]
    return { entries: list }
  },
)
