import type { Place } from '@evenhem/job'
import { comesTo, type Known, number, plus, type Reckoning } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { type HookMap, hookMap, panelLoads, panelWeights, type RodBody, rodBody } from '../facts/index.ts'
import { panelAt } from '../given.ts'

/** What a panel's rings or carriers weigh: one for each of its hooks, though some hooks go elsewhere. */
function bearersOf(at: Place, panel: string, { places }: HookMap, { bearer }: RodBody): Reckoning | undefined {
  if (!bearer) return undefined
  const hooks = places.filter((each) => each.panel === panel).length
  const terms = [plus('drapery/bearer-weight', bearer), plus('drapery/hook-count', number(hooks))]
  const value = comesTo('times', terms, 'mass') as number
  return { name: `${at}#bearers-weight`, what: 'drapery/bearers-weight', value, unit: 'mass', how: 'times', terms }
}
function loaded(at: Place, panel: string, weight: Known<number>, map: HookMap, body: RodBody) {
  const bearers = bearersOf(at, panel, map, body)
  const terms = [plus('drapery/panel-weight', weight), ...(bearers ? [plus('drapery/bearers-weight', bearers)] : [])]
  const value = comesTo('sum', terms, 'mass') as number
  const whole: Reckoning = { name: `${at}#load`, what: 'drapery/panel-load', value, unit: 'mass', how: 'sum', terms }
  return { panel, weight: whole, working: [...(bearers ? [bearers] : []), whole] }
}

/** What each panel weighs with its rings or carriers; nothing while one of them is not known. */
export const panelLoadsRule = rule({
  id: 'panel-loads',
  on: 'treatment',
  needs: { hookMap, rodBody, panelWeights },
  gives: { panelLoads, reckonings },
}).run(({ it, at }, facts) => {
  const known = facts.panelWeights.map(({ panel, weight }) =>
    loaded(panelAt(at, panel), panel, weight, facts.hookMap, facts.rodBody),
  )
  if (known.length < it.panels.length) return {}
  return {
    panelLoads: known.map(({ panel, weight }) => ({ panel, weight })),
    reckonings: known.flatMap(({ working }) => working),
  }
})
