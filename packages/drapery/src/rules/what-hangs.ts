import type { Fabric } from '@evenhem/job'
import { number } from '@evenhem/length'
import { type Entry, entries, parts, rule } from '@evenhem/plugin'
import { pastCasing } from '../arithmetic/index.ts'
import { coverage, frame, type HangLine, hangLine, type MakeUp, makeUp, packed } from '../facts/index.ts'
import { long, magnitude, panelAt } from '../given.ts'
import { isCorded } from './operation.ts'

const code = (name: string) => ({ code: `drapery/${name}` })

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
