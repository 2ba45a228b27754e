import { below, type Fabric, type Panel, type Place, type Treatment } from '@evenhem/job'
import { comesTo, type Known, type LengthReckoning, number, plus, type Reckoning, readQuantity, sum } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { clothWeight } from '../arithmetic/index.ts'
import { type ClothUse, fabrics, panelWeights, type Takeoff, takeoff } from '../facts/index.ts'
import { kilogramsOf, member, panelAt, perhaps } from '../given.ts'

/** A panel's weight, and its working where it has some. */
interface Weighed {
  readonly weight: Known<number> | Reckoning
  readonly working: readonly Reckoning[]
}
interface Layer {
  readonly as: ClothUse
  /** kg/m². */
  readonly areal: number
}

/** The cloths of a panel, from the front; undefined while one of them is only named, or weighs nobody knows what. */
function layersOf(
  { lining, interlining }: Treatment,
  face: Fabric | undefined,
  all: readonly Fabric[],
): readonly Layer[] | undefined {
  const named = (id: string | undefined) => all.find((each) => each.id === id)
  const cloths = [
    { as: 'face' as const, fabric: face, isMeant: true },
    { as: 'lining' as const, fabric: named(lining), isMeant: (lining ?? face?.lining) !== undefined },
    { as: 'interlining' as const, fabric: named(interlining), isMeant: (interlining ?? face?.interlining) !== undefined },
  ].filter(({ isMeant }) => isMeant)
  const layers = cloths.flatMap(({ as, fabric }): readonly Layer[] => {
    const read = fabric?.weight === undefined ? undefined : readQuantity(fabric.weight, 'arealWeight')
    return read?.ok ? [{ as, areal: read.value }] : []
  })
  return layers.length === cloths.length ? layers : undefined
}

/** Its flat cloth with its hem, turned twice, and its heading, of each layer. Linings are a little smaller: that is left as it is. */
function byItsCloths(at: Place, panel: Panel, layers: readonly Layer[] | undefined): Weighed | undefined {
  const flat = perhaps(member(at, ['flatWidth'], panel.flatWidth))
  const length = perhaps(member(at, ['finishedLength'], panel.finishedLength))
  if (!layers || !flat || !length) return undefined
  const cut: LengthReckoning = sum(
    `${at}#cloth-long`,
    'drapery/cloth-long',
    plus('drapery/finished-length', length),
    ...turned(at, panel),
  )
  const each = layers.map(({ as, areal }) => clothWeight(`${at}#${as}-weighs`, number(areal), flat, cut))
  const own = kilogramsOf(panel.hemWeight)
  const terms = [
    ...each.map((one) => plus('drapery/cloth-weight', one)),
    ...(own === undefined ? [] : [plus('drapery/hem-weights', number(own))]),
  ]
  const weight: Reckoning = {
    ...{ name: `${at}#weighs`, what: 'drapery/panel-weight', value: comesTo('sum', terms, 'mass') as number },
    ...{ unit: 'mass', how: 'sum', terms },
  }
  return { weight, working: [cut, ...each, weight] }
}
const turned = (at: Place, { hem, buckram }: Panel) => [
  ...(hem === undefined ? [] : [1, 2].map(() => plus('drapery/hem-allowance', { value: hem, from: below(at, 'hem') }))),
  ...(buckram === undefined ? [] : [plus('drapery/heading-allowance', { value: buckram, from: below(at, 'buckram') })]),
]

/** As the order or a scale says, else by the cloths that are cut for it, else by its own size. */
function weighed(at: Place, panel: Panel, layers: readonly Layer[] | undefined, counted?: Takeoff): Weighed | undefined {
  const said = kilogramsOf(panel.weight)
  if (said !== undefined) return { weight: number(said), working: [] }
  const own = counted?.panels.find((each) => each.panel === panel.id)?.weight
  if (!own) return byItsCloths(at, panel, layers)
  const more = kilogramsOf(panel.hemWeight)
  if (more === undefined) return { weight: own, working: [] }
  const terms = [plus('drapery/panel-weight', own), plus('drapery/hem-weights', number(more))]
  const whole = { name: `${at}#weighs`, what: 'drapery/panel-weight', value: comesTo('sum', terms, 'mass') as number }
  const weight: Reckoning = { ...whole, unit: 'mass', how: 'sum', terms }
  return { weight, working: [weight] }
}

/** What the panels weigh, of which it is known. */
export const panelWeightsRule = rule({
  id: 'panel-weights',
  on: 'treatment',
  needs: { takeoff: { maybe: takeoff }, fabrics: { maybe: fabrics } },
  gives: { panelWeights, reckonings },
}).run(({ it, at, fabric }, facts) => {
  const layers = layersOf(it, fabric, facts.fabrics ?? [])
  const known = it.panels.flatMap((panel) => {
    const own = weighed(panelAt(at, panel.id), panel, layers, facts.takeoff)
    return own ? [{ panel: panel.id, ...own }] : []
  })
  return {
    panelWeights: known.map(({ panel, weight }) => ({
      panel,
      weight: { value: weight.value, from: 'name' in weight ? weight.name : weight.from },
    })),
    reckonings: known.flatMap(({ working }) => working),
  }
})
