import { below, type Panel } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { type Check, checks, rule, type WayOut } from '@evenhem/plugin'
import { areSwapped } from '../arithmetic/index.ts'
import { decided, exactly } from '../decisions.ts'
import { lengthAllowed, ruleOf } from '../defaults.ts'
import { swapped } from '../facts/index.ts'
import { check, panelAt } from '../given.ts'
import { type CheckedIn, decideWay, twinsOf } from './ways.ts'

const sizes = ['finishedLength', 'firstToLast', 'return', 'pin'] as const
/** The sizes by which two panels are told from one another. */
const telling = ['finishedLength', 'firstToLast'] as const
type Telling = (typeof telling)[number]
type Two = readonly [Panel, Panel]
const both = (panels: Two, size: Telling): readonly [Length, Length] | undefined => {
  const [a, b] = [panels[0][size], panels[1][size]]
  return a === undefined || b === undefined ? undefined : [a, b]
}

const allowedOf = ({ job }: CheckedIn, size: Telling, ordered: Length): Length =>
  size === 'finishedLength' ? lengthAllowed(job, ordered) : ruleOf(job, 'widthOff').value

/** Whether this size was read, tells the two from one another, and says that each is the other one. */
function saidBy(subject: CheckedIn, is: Two, was: Two, size: Telling): 'swapped' | 'own' | undefined {
  const [ordered, measured] = [both(was, size), both(is, size)]
  if (!ordered || !measured) return undefined
  const allowed = allowedOf(subject, size, ordered[0])
  if (areSwapped(ordered, measured, allowed)) return 'swapped'
  const isRead = measured[0] !== ordered[0] || measured[1] !== ordered[1]
  return isRead && Math.abs(ordered[0] - ordered[1]) > allowed ? 'own' : undefined
}

/** Each reading at the other panel. A size that was read of one panel alone is its new owner's; the other is taken for what was ordered. */
function swapping({ at }: CheckedIn, is: Two, was: Two): WayOut['put'] {
  return sizes.flatMap((size) => {
    const [read0, read1] = [is[0][size] !== was[0][size], is[1][size] !== was[1][size]]
    if (!read0 && !read1) return []
    const next = [read1 ? is[1][size] : was[0][size], read0 ? is[0][size] : was[1][size]]
    return [0, 1].flatMap((n) => {
      const value = next[n]
      return value === undefined ? [] : [{ at: below(panelAt(at, (is[n] as Panel).id), size), value: { length: value } }]
    })
  })
}

/** Two panels that came in each other's bags measure like each other's order: named once, and not as two panels that are wrong. */
export const bagsSwapped = rule({
  id: 'bags-swapped',
  on: 'treatment',
  needs: {},
  gives: { swapped, checks },
  codes: ['drapery/panels-swapped'],
}).run((subject) => {
  const [first, second, ...more] = twinsOf(subject)
  if (!first || !second || more.length > 0) return {}
  const [is, was]: readonly [Two, Two] = [
    [first.is, second.is],
    [first.was, second.was],
  ]
  const said = telling.map((size) => saidBy(subject, is, was, size))
  const isSwapped = said.includes('swapped') && !said.includes('own')
  if (!isSwapped) return said.includes('own') ? { checks: [check('drapery/panels-swapped', 'pass', subject.at, {})] } : {}
  const difference = telling.flatMap((size) => both(is, size)?.map(exactly) ?? []).join(', ')
  const isCalled = decided(subject.it, 'panels', difference) === 'call the workroom'
  const found: Check = {
    ...check('drapery/panels-swapped', 'fail', subject.at, {}, 'mark'),
    ...(isCalled ? { says: 'drapery/panels-swapped.called' } : {}),
    about: `panels ${difference}`,
    ways: [
      { code: 'drapery/way-swap', values: {}, put: swapping(subject, is, was) },
      ...(isCalled ? [] : [decideWay(subject.at, 'call the workroom', 'panels', difference)]),
    ],
  }
  return { swapped: { panels: is.map(({ id }) => id) }, checks: [found] }
})
