import { below, type Fabric } from '@evenhem/job'
import { type Capture, type Entry, entries, parts, rule, type Step, steps } from '@evenhem/plugin'
import { pastCasing } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { coverage, type HangLine, type Hole, hangLine, holes, hookMap, type MakeUp, makeUp } from '../facts.ts'
import { filled, long, member, openingOf, panelAt, windowOf } from '../given.ts'
import { lengthAllowed } from './check-in.ts'

const code = (name: string) => ({ code: `drapery/${name}` })
const ladder = 'drapery/caution-ladder'

/** Unpack on a clean cover and count, then lay the tape on the panels and the window, before anything is marked. */
export const arrival = rule({ id: 'arrival', on: 'treatment', needs: {}, gives: { steps } }).run(
  ({ it, ordered, at, job, window }) => {
    const lengthOff = ruleOf(job, 'lengthOff')
    const { openingAt } = openingOf(window, windowOf(at))
    const panels = ordered.panels.map(
      (panel): Capture => ({
        at: below(panelAt(at, panel.id), 'finishedLength'),
        as: 'length',
        ...(panel.finishedLength === undefined ? {} : { expected: { length: panel.finishedLength } }),
        tolerance: { length: lengthAllowed(job, panel.finishedLength ?? lengthOff.value) },
      }),
    )
    const floor = (window.floor ?? []).map(
      (point): Capture => ({ at: below(windowOf(at), 'floor', point.id, 'y'), as: 'length', expected: { length: point.y } }),
    )
    const list: readonly Step[] = [
      {
        id: 'unpack',
        stage: 'unpack',
        code: 'drapery/unpack',
        values: { count: { count: it.panels.length }, bags: it.panels.map((panel) => panel.bag ?? panel.id).join(', ') },
        cautions: ['drapery/caution-lift'],
        tools: ['drapery/clean-cover'],
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
        captures: [{ at: below(openingAt, 'casing', 'width'), as: 'length' }, ...floor],
      },
    ]
    return { steps: list }
  },
)

const bySide = (all: readonly Hole[], side: 'left' | 'right') => all.filter((hole) => hole.side === side && hole.on === 'bracket')

/** Mark, drill and prove: every hole with its own height from its own floor. */
export const marking = rule({ id: 'marking', on: 'treatment', needs: { holes }, gives: { steps } }).run(
  ({ window, at }, facts) => {
    const { wall } = openingOf(window, windowOf(at))
    const mark = (side: 'left' | 'right'): Step => {
      const own = bySide(facts.holes, side)
      return {
        id: `mark-${side}`,
        stage: 'mark',
        code: 'drapery/mark-bracket',
        after: side === 'right' ? ['mark-left'] : [],
        values: { side: code(side), count: { count: own.length } },
        numbers: [
          ...own.map((hole) => ({ what: hole.what, value: hole.fromFloor.value, of: hole.fromFloor.name })),
          ...own
            .slice(0, 1)
            .map((hole) => ({ what: 'drapery/from-casing', value: hole.fromCasing.value, of: hole.fromCasing.name })),
        ],
        cautions: [ladder],
        tools: ['drapery/tape', 'drapery/pencil', 'drapery/level'],
      }
    }
    const wood = wall.buildUp?.behind === 'wood'
    const drill: Step = {
      id: 'drill',
      stage: 'drill',
      code: wood ? 'drapery/drill-wood' : 'drapery/drill-other',
      cautions: ['drapery/caution-drill', 'drapery/caution-dust', ladder],
      tools: ['drapery/drill-tool', 'drapery/goggles'],
    }
    return { steps: [mark('left'), mark('right'), drill] }
  },
)

/** Hang from the meeting point outward, read the hem, and finish what the length has proven. */
export const hanging = rule({ id: 'hanging', on: 'treatment', needs: { hookMap }, gives: { steps } }).run(({ it, at }, facts) =>
  filled({ clearance: member(at, ['clearance'], it.clearance) }, ({ clearance }) => {
    const list: readonly Step[] = [
      {
        id: 'hang',
        stage: 'hang',
        code: 'drapery/hang',
        values: { count: { count: facts.hookMap.places.length } },
        cautions: [ladder, 'drapery/caution-lift'],
      },
      {
        id: 'read-hem',
        stage: 'true-up',
        code: 'drapery/read-hem',
        values: { clearance: long(clearance) },
        numbers: [{ what: 'drapery/clearance', value: clearance.value, of: clearance.from }],
        tools: ['drapery/tape'],
      },
      { id: 'all-screws', stage: 'true-up', after: ['read-hem'], code: 'drapery/all-screws', cautions: [ladder] },
      { id: 'hand-over', stage: 'hand-over', code: 'drapery/hand-over' },
    ]
    return { steps: list }
  }),
)

/** The panels for the pull list. */
export const panelParts = rule({ id: 'panel-parts', on: 'treatment', needs: {}, gives: { parts } }).run(({ it, at }) => ({
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
export const lead = rule({ id: 'lead', on: 'treatment', needs: { coverage, hangLine }, gives: { entries } }).run(
  ({ at, window, fabric }, facts) => {
    const { opening, openingAt } = openingOf(window, windowOf(at))
    return filled(
      {
        casing: member(openingAt, ['casing', 'width'], opening.casing?.width),
      },
      ({ casing }) => {
        const clears = facts.hangLine.panels.map((panel) => panel.clears.value)
        const clearance = { value: Math.min(...clears) }
        const past = pastCasing(at, facts.coverage.left, facts.coverage.right, casing)
        const sides = past.left.value === past.right.value ? 'alike' : 'apart'
        const values = {
          lined: fabric?.lining ? 'yes' : 'no',
          sides,
          left: long(past.left),
          right: long(past.right),
          clearance: long(clearance),
          even: Math.max(...clears) === clearance.value ? 'yes' : 'no',
        }
        const isShort = past.left.value < 0 || past.right.value < 0
        const list: readonly Entry[] = [
          { section: 'lead', code: isShort ? 'drapery/entry-lead.short' : 'drapery/entry-lead', values },
        ]
        return { entries: list }
      },
    )
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
  ({ fabric }, facts) => {
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
      { section: 'safe-use', code: 'drapery/entry-safe', values: {} },
    ]
    return { entries: list }
  },
)
