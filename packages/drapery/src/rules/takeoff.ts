import type { Fabric, Place } from '@evenhem/job'
import { type Length, minus, most, plus, type Reckoning, sum, wholeNanometres } from '@evenhem/length'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import { clothOrdered, panelWeight, placingExtra, soldSteps } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import {
  type ClothTakeoff,
  cloths,
  coverage,
  type FabricSum,
  fabricSums,
  makeUp,
  type PanelTakeoff,
  takeoff,
} from '../facts/index.ts'
import { below, check, long, magnitude, panelAt } from '../given.ts'
import { choiceOf } from './takeoff-choices.ts'
import { type ClothOrder, counted, lined, weights } from './takeoff-cloth.ts'
import { type PanelCut, panelCut } from './takeoff-panels.ts'

/** The fabrics by which cloth is counted: those whose width the order says. */
export const clothsRule = rule({ id: 'cloths', on: 'job', needs: {}, gives: { cloths } }).run(({ it }) => {
  const known = it.fabrics?.filter((fabric) => fabric.width !== undefined) ?? []
  return known.length > 0 ? { cloths: known } : {}
})

/**
 * How the cloth of a treatment is cut. Cloth is counted where the order says how wide some fabric is; what a treatment lacks for it is named. It asks an
 * installer for nothing, since cloth is cut before anybody measures on the site.
 */
export const takeoffRule = rule({
  id: 'takeoff',
  on: 'treatment',
  needs: { cloths: { maybe: cloths }, makeUp: { maybe: makeUp }, coverage: { maybe: coverage } },
  gives: { takeoff, reckonings },
}).run(({ it, at, job }, facts) => {
  if (!facts.cloths) return {}
  const named = (id: string | undefined) => facts.cloths?.find((each) => each.id === id)
  const face = named(it.fabric)
  const cuts = it.panels.map((panel) => panelCut({ it, at, job, makeUp: facts.makeUp, coverage: facts.coverage }, panel))
  const inner = (
    [
      ['lining', it.lining],
      ['interlining', it.interlining],
    ] as const
  ).flatMap(([as, id]) => (id === undefined ? [] : [{ as, id, fabric: named(id) }]))
  const lacks = [
    ...(face ? [] : [it.fabric === undefined ? below(at, 'fabric') : below('/fabrics', it.fabric, 'width')]),
    ...cuts.flatMap((cut) => ('lacks' in cut ? cut.lacks : [])),
    ...inner.flatMap(({ id, fabric }) => (fabric ? [] : [below('/fabrics', id, 'width')])),
  ]
  if (!face || lacks.length > 0) return { takeoff: { lacks: [...new Set(lacks)], panels: [], cloths: [] } }
  const panels = cuts as readonly PanelCut[]
  const { order, working } = faceOrder(at, face, panels)
  const linings = inner.map(({ as, fabric }) => lined(as, fabric as Fabric, at, job, order))
  const orders = [order, ...linings.map((each) => each.order)]
  const all = orders.map((each) => counted(at, job, each))
  const weighed = panels.map((panel) => panelOf(at, panel, orders))
  return {
    takeoff: { lacks: [], panels: weighed.map(({ panel }) => panel), cloths: all.map(({ cloth }) => cloth) },
    reckonings: [
      ...panels.flatMap((panel) => panel.working),
      ...working,
      ...linings.flatMap((each) => each.working),
      ...all.flatMap((each) => each.working),
      ...weighed.flatMap((each) => each.working),
    ],
  }
})

/** All panels are cut to the longest of them, so that their patterns meet. */
function faceOrder(at: Place, fabric: Fabric, panels: readonly PanelCut[]) {
  const needed = most(
    `${at}#face-length-needed`,
    'drapery/length-needed',
    ...panels.map((panel) => plus('drapery/length-needed', panel.needed)),
  )
  const finished = most(
    `${at}#longest-finished`,
    'drapery/finished-length',
    ...panels.map((panel) => plus('drapery/finished-length', panel.finishedLength)),
  )
  const order: ClothOrder = { as: 'face', fabric, panels, needed, finished }
  return { order: { ...order, panels: panels.map(({ panel, cutWidth }) => ({ panel, cutWidth })) }, working: [needed, finished] }
}

function panelOf(at: Place, cut: PanelCut, orders: readonly ClothOrder[]) {
  const { panel, outer, finishedWidth, flat, ordered } = cut
  const each = weights(at, cut, orders)
  const weight = each && panelWeight(`${panelAt(at, panel)}#cloth-weight`, each)
  const sizes = { panel, outer, finishedWidth, flat, ...(ordered ? { ordered } : {}), ...(weight ? { weight } : {}) }
  return { panel: sizes satisfies PanelTakeoff, working: weight ? [...each, weight] : [] }
}

/** What the whole job takes of each fabric, and what is ordered of it: once for all its windows, in the steps in which it is sold. */
export const fabricSumsRule = rule({
  id: 'fabric-sums',
  on: 'job',
  needs: { takeoffs: { each: takeoff }, cloths: { maybe: cloths } },
  gives: { fabricSums, reckonings },
}).run(({ job }, facts) => {
  const all = facts.takeoffs.flatMap(({ value }) => value.cloths)
  const sums = (facts.cloths ?? []).flatMap((fabric) => {
    const used = all.filter((cloth) => cloth.fabric === fabric.id)
    return used.length === 0 ? [] : [sumOf(fabric, used, choiceOf(job, 'placing'), fabric.soldBy ?? choiceOf(job, 'soldBy'))]
  })
  if (sums.length === 0) return {}
  return { fabricSums: sums.map(({ sum }) => sum), reckonings: sums.flatMap(({ working }) => working) }
})

function sumOf(
  { id, repeat }: Fabric,
  used: readonly ClothTakeoff[],
  rule: Parameters<typeof placingExtra>[1],
  sold: keyof typeof soldSteps,
): { readonly sum: FabricSum; readonly working: readonly Reckoning[] } {
  const at = below('/fabrics', id)
  const needed = sum(
    `${at}#cloth-needed`,
    'drapery/cloth-needed',
    ...used.map(({ cloth }) => plus('drapery/cloth-needed', cloth)),
  )
  const name = repeat?.received === undefined ? 'vertical' : 'received'
  const once = repeat?.[name]
  const placing =
    once === undefined ? undefined : placingExtra(`${at}#placing-extra`, rule, { value: once, from: below(at, 'repeat', name) })
  const wanted = sum(
    `${at}#cloth-wanted`,
    'drapery/cloth-wanted',
    plus('drapery/cloth-needed', needed),
    ...(placing ? [plus('drapery/placing-extra', placing)] : []),
  )
  const order = clothOrdered(`${at}#cloth-ordered`, wanted, soldSteps[sold])
  const extra = placing ? { placing } : {}
  return { sum: { fabric: id, needed, ...extra, order }, working: [needed, ...Object.values(extra), wanted, order] }
}

/** The flat width in the order against the one that its fullness asks for: told of the panel where they differ most. */
export const fullnessHeld = rule({
  id: 'fullness-held',
  on: 'treatment',
  needs: { takeoff: { maybe: takeoff } },
  gives: { checks, reckonings },
  codes: ['drapery/fullness-held'],
}).run(({ at, job }, facts) => {
  const face = facts.takeoff?.cloths[0]
  if (!facts.takeoff || !face) return {}
  const bare = facts.takeoff.panels.find(({ flat, finishedWidth }) => flat.value < finishedWidth.value)
  if (bare) return { checks: [withoutFullness(at, bare)] }
  const near = ruleOf(job, 'flatShort')
  const each = facts.takeoff.panels.flatMap((panel) => {
    const { ordered, flat } = panel
    if (!ordered) return []
    const place = panelAt(at, panel.panel)
    const less = sum(
      `${place}#flat-less`,
      'drapery/flat-less',
      plus('drapery/flat-width', ordered),
      minus('drapery/flat-asked', flat),
    )
    const [least, greatest] = flatsWithin(panel, face)
    return [{ panel, ordered, less, over: Math.max(least - ordered.value, ordered.value - greatest), place }]
  })
  const [worst] = [...each].sort((a, b) => b.over - a.over)
  if (!worst) return {}
  const { panel, ordered, less, over, place } = worst
  const values = {
    panel: { code: `drapery/panel-${panel.outer}` },
    ordered: long(ordered),
    asked: long(panel.flat),
    off: magnitude(less),
    way: over <= near.value ? 'near' : less.value < 0 ? 'short' : 'wide',
  }
  const verdict = over > near.value ? 'warn' : 'pass'
  return {
    checks: [check('drapery/fullness-held', verdict, below(place, 'flatWidth'), values)],
    reckonings: each.map((one) => one.less),
  }
})

/** Cloth that is narrower than the panel is to be: most often per cent of the width where per cent beyond it are meant. */
function withoutFullness(at: Place, { panel, outer, flat, finishedWidth }: PanelTakeoff): Check {
  const values = {
    panel: { code: `drapery/panel-${outer}` },
    ordered: long(flat),
    asked: long(finishedWidth),
    off: { length: (finishedWidth.value - flat.value) as Length },
    way: 'bare',
  }
  return check('drapery/fullness-held', 'warn', panelAt(at, panel), values)
}

/** From the narrower to the wider of what fullness asks for and what the rounded widths of a panel give. */
function flatsWithin({ panel, flat }: PanelTakeoff, face: ClothTakeoff): readonly [number, number] {
  const cut = face.panels.find((each) => each.panel === panel)
  const rounded = cut?.widths.how === 'formula' ? cut.widths : face.widths
  const exact = rounded.terms[0]?.value
  if (!cut || !exact) return [flat.value, flat.value]
  const made = wholeNanometres(flat.value + cut.cutWidth.value * (rounded.value / exact - 1))
  return [Math.min(flat.value, made), Math.max(flat.value, made)]
}

/** A cut of whole repeats holds what is needed of it. Only a workroom that divides the finished length can come out short. */
export const cutHolds = rule({
  id: 'cut-holds',
  on: 'treatment',
  needs: { takeoff: { maybe: takeoff } },
  gives: { checks },
  codes: ['drapery/cut-holds'],
}).run(({ at }, facts) => {
  const each = (facts.takeoff?.cloths ?? []).flatMap(({ cut, needed, rest }) => (rest ? [{ cut, needed, rest }] : []))
  const [worst] = [...each].sort((a, b) => a.rest.value - b.rest.value)
  if (!worst) return {}
  const values = { cut: long(worst.cut), needed: long(worst.needed), rest: magnitude(worst.rest) }
  return { checks: [check('drapery/cut-holds', worst.rest.value < 0 ? 'fail' : 'pass', at, values)] }
})
