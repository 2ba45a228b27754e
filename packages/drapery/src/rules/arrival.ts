import { below, type JobHead, type Panel, type Place } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { type Capture, rule, type Step, steps } from '@evenhem/plugin'
import { lengthAllowed, ruleOf, widthAllowedFor } from '../defaults.ts'
import { packed } from '../facts/index.ts'
import { coveredBy, long, panelAt, windowOf } from '../given.ts'
import { countsOf } from './inventory.ts'

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
    cautions: ['drapery/caution-ladder', 'drapery/caution-dust'],
  }
  return { steps: [step] }
})
