import { ownersOf } from '@evenhem/drawing'
import { below, type PlacedWindow } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import type { Line, Section } from './outline.ts'
import type { Voice } from './voice.ts'

/** The days of what hangs at a window, `YYYY-MM-DD` each. */
export interface DaysOf {
  readonly hungOn: readonly string[]
  readonly lookAgain: readonly string[]
}
export const daysIn = ({ window }: PlacedWindow): DaysOf => ({
  hungOn: window.treatments.flatMap(({ found }) => found?.hungOn ?? []),
  lookAgain: window.treatments.flatMap(({ found }) => found?.lookAgain ?? []),
})

/** When what hangs here was hung, and when somebody comes back to read the hem again; of each layer where several hang. Undefined where no day is known. */
export function daysOf({ window, place }: PlacedWindow, plan: WindowPlan, voice: Voice): Section<Line> | undefined {
  const owners = ownersOf(plan.layers)
  const of = window.treatments.flatMap(({ id, found }): readonly Line[] => {
    const layer = owners.get(below(place, 'treatments', id))
    const line = (code: string, day: string | undefined): readonly Line[] =>
      day ? [{ name: [layer ? `${voice.text(code)}, ${voice.text(layer)}` : voice.text(code)], says: [[voice.day(day)]] }] : []
    return [...line('report/hung-on', found?.hungOn), ...line('report/look-again', found?.lookAgain)]
  })
  return of.length > 0 ? { title: voice.text('report/days-title'), of } : undefined
}

/** The same of a whole house: from the first day to the last, and the first on which somebody comes back. */
export function daysOfHouse(all: readonly DaysOf[], voice: Voice): readonly Line[] {
  const hung = all.flatMap(({ hungOn }) => hungOn).toSorted()
  const again = all.flatMap(({ lookAgain }) => lookAgain).toSorted()
  const [first, last, next] = [hung[0], hung.at(-1), again[0]]
  const hungIn =
    first && last
      ? [first === last ? voice.day(first) : voice.text('report/days', { first: voice.day(first), last: voice.day(last) })]
      : []
  const line = (code: string, texts: readonly string[]): readonly Line[] =>
    texts.map((text) => ({ name: [voice.text(code)], says: [[text]] }))
  return [...line('report/hung-on', hungIn), ...line('report/look-again', next ? [voice.day(next)] : [])]
}
