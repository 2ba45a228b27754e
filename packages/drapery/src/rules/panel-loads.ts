import { below, type Fabric, type Panel, type Place, type Treatment } from '@evenhem/job'
import { comesTo, type Known, number, plus, type Reckoning, readQuantity, sum } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { clothWeight } from '../arithmetic/index.ts'
import { type HookMap, hookMap, panelLoads, type RodBody, rodBody, type Takeoff, takeoff } from '../facts/index.ts'
import { kilogramsOf, member, panelAt, perhaps } from '../given.ts'

/** A panel's weight, and its working where it has some. */
interface Weighed {
  readonly weight: Known<number> | Reckoning
  readonly working: readonly Reckoning[]
}

/** An unlined panel weighs what its flat cloth does with its hem, turned twice, and its heading. */
function byItsCloth(at: Place, panel: Panel, fabric: Fabric | undefined): Weighed | undefined {
  const read = fabric?.weight === undefined ? undefined : readQuantity(fabric.weight, 'arealWeight')
  const flat = perhaps(member(at, ['flatWidth'], panel.flatWidth))
  const length = perhaps(member(at, ['finishedLength'], panel.finishedLength))
  if (!read?.ok || !flat || !length || fabric?.lining || fabric?.interlining) return undefined
  const cut = sum(`${at}#cloth-long`, 'drapery/cloth-long', plus('drapery/finished-length', length), ...turned(at, panel))
  const weight = clothWeight(`${at}#cloth-weight`, number(read.value), flat, cut)
  return { weight, working: [cut, weight] }
}
const turned = (at: Place, { hem, buckram }: Panel) => [
  ...(hem === undefined ? [] : [1, 2].map(() => plus('drapery/hem', { value: hem, from: below(at, 'hem') }))),
  ...(buckram === undefined ? [] : [plus('drapery/heading', { value: buckram, from: below(at, 'buckram') })]),
]

/** By the order or a reading, else by the cloths that it takes, else by its own cloth. */
function weighed(it: Treatment, at: Place, panel: Panel, fabric: Fabric | undefined, counted?: Takeoff): Weighed | undefined {
  const said = kilogramsOf(panel.weight)
  if (said !== undefined) return { weight: number(said), working: [] }
  const own = counted?.panels.find((each) => each.panel === panel.id)?.weight
  if (own) return { weight: own, working: [] }
  return it.lining || it.interlining ? undefined : byItsCloth(at, panel, fabric)
}

function loaded(at: Place, panel: string, { weight, working }: Weighed, places: HookMap['places'], { bearer }: RodBody) {
  const hooks = places.filter((each) => each.panel === panel).length
  const bearers = bearer && {
    name: `${at}#bearers-weight`,
    what: 'drapery/bearers-weight',
    value: comesTo('times', [plus('drapery/bearer-weight', bearer), plus('drapery/hook-count', number(hooks))], 'mass') as number,
    unit: 'mass' as const,
    how: 'times' as const,
    terms: [plus('drapery/bearer-weight', bearer), plus('drapery/hook-count', number(hooks))],
  }
  const terms = [plus('drapery/panel-weight', weight), ...(bearers ? [plus('drapery/bearers-weight', bearers)] : [])]
  const value = comesTo('sum', terms, 'mass') as number
  const whole: Reckoning = { name: `${at}#load`, what: 'drapery/panel-load', value, unit: 'mass', how: 'sum', terms }
  return { panel, weight: whole, working: [...working, ...(bearers ? [bearers] : []), whole] }
}

/** What each panel weighs with its rings or carriers; nothing while one of them is not known. */
export const panelLoadsRule = rule({
  id: 'panel-loads',
  on: 'treatment',
  needs: { hookMap, rodBody, takeoff: { maybe: takeoff } },
  gives: { panelLoads, reckonings },
}).run(({ it, at, fabric }, facts) => {
  const all = it.panels.map((panel) => {
    const place = panelAt(at, panel.id)
    const own = weighed(it, place, panel, fabric, facts.takeoff)
    return own && loaded(place, panel.id, own, facts.hookMap.places, facts.rodBody)
  })
  const known = all.flatMap((each) => each ?? [])
  if (known.length < all.length) return {}
  return {
    panelLoads: known.map(({ panel, weight }) => ({ panel, weight })),
    reckonings: known.flatMap(({ working }) => working),
  }
})
