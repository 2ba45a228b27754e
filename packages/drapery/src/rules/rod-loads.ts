import type { JobHead, Place, Treatment } from '@evenhem/job'
import { formula, number, plus, type Reckoning, type Term, twelveDigits } from '@evenhem/length'
import { type Beam, downAt, type Hung, type Sag } from '@evenhem/mechanics'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import { sagOf } from '../defaults.ts'
import {
  type CarriedLoad,
  coverage,
  type Fixing,
  fasteners,
  fixings,
  hookMap,
  hungLine,
  panelLoads,
  type Rod,
  type RodLoads,
  type RodSag,
  reach,
  rod,
  rodBody,
  rodLoads,
  rodsHere,
} from '../facts/index.ts'
import { below, check, long, panelAt } from '../given.ts'
import {
  areInOrder,
  beamOf,
  drawnAs,
  heldAt,
  hungRod,
  kilogramsOfLoad,
  nanometres,
  straightThrough,
  type Under,
  worstSag,
} from './rod-beam.ts'

type Held = ReturnType<typeof heldAt>
/** What loads and stiffness come from. */
const causes = ({ panelLoads, rodBody }: Under): readonly Term[] => [
  ...panelLoads.map(({ weight }) => plus('drapery/panel-load', weight)),
  plus('drapery/rod-weight', rodBody.weight),
  ...(rodBody.finial ? [plus('drapery/finial-weight', rodBody.finial)] : []),
]
const newtons = (name: string, what: string, value: number, terms: readonly Term[]): Reckoning => ({
  ...{ name, what, value: twelveDigits(value), unit: 'force', how: 'formula' },
  ...{ terms, source: 'drapery/continuous-beam' },
})
const carriedBy = (at: Place, under: Under, held: Held, { carried }: Hung): readonly CarriedLoad[] =>
  held.map(({ id, part, x }, i) => {
    const own = carried[i]
    const terms = [...causes(under), plus('drapery/along-the-wall', x)]
    return {
      ...{ bracket: id, part, x },
      most: newtons(`${at}#load-${id}`, 'drapery/bracket-load', own?.most ?? 0, terms),
      least: newtons(`${at}#load-least-${id}`, 'drapery/bracket-load-least', own?.least ?? 0, terms),
      when: drawnAs(own?.mostWhen ?? []),
    }
  })

/** How far the rod hangs between two brackets after years, and how far it may. */
function sagIn(at: Place, under: Under, [from, to]: readonly [Held[number], Held[number]], sag: Sag, part: Part): RodSag {
  const { creep, stiffness } = under.rodBody
  const name = `${at}#sag-${from.id}-${to.id}`
  const ends = [plus('drapery/bracket-x', from.x), plus('drapery/bracket-x', to.x)] as const
  const terms = [
    ...causes(under),
    ...ends,
    plus('drapery/stiffness', number(stiffness[0]?.ei ?? 0)),
    plus('drapery/creep', number(creep)),
  ]
  return {
    from: from.id,
    to: to.id,
    x: formula(`${name}-x`, 'drapery/sag-x', nanometres(sag.at), 'drapery/continuous-beam', ...ends),
    sag: formula(name, 'drapery/largest-sag', nanometres(creep * sag.value), 'drapery/continuous-beam', ...terms),
    most: formula(
      `${name}-most`,
      'drapery/sag-most',
      (to.x.value - from.x.value) / part.value,
      'drapery/part-of-span',
      ...ends,
      plus('drapery/sag-part', part),
    ),
    when: drawnAs(sag.when),
  }
}
type Part = ReturnType<typeof sagOf>
const sagsOf = (at: Place, under: Under, held: Held, { sags }: Hung, job: JobHead): readonly RodSag[] =>
  under.rodBody.stiffness.length === 0
    ? []
    : sags.map((sag, i) => sagIn(at, under, [held[i] as Held[number], held[i + 1] as Held[number]], sag, sagOf(job)))

/** The rod as it hangs where it hangs lowest, at even places along it. */
function lineOf(under: Under, { from, to, supports }: Beam, found: Hung, sags: readonly RodSag[]): RodLoads['line'] {
  const own = worstSag(sags)
  const worst = own && found.sags[sags.indexOf(own)]
  if (!worst) return []
  const lowest = found.bent(worst.when)
  // Years add to how far it bends, not to how its brackets stand.
  const bases = supports.slice(1).map((support, i) => [supports[i] ?? support, support] as const)
  const base = (x: number): number => {
    const bay = bases.find(([, end]) => x <= end.at) ?? bases.at(-1)
    return bay ? straightThrough(bay.map(({ at, down = 0 }) => [at, down] as const))(x) : 0
  }
  const places = Array.from({ length: 49 }, (_, i) => from + (i * (to - from)) / 48)
  const down = (x: number): number => base(x) + under.rodBody.creep * (downAt(lowest, x) - base(x))
  return places.map((x) => ({ x: nanometres(x), down: nanometres(down(x)) }))
}

/** Where a weight is missing. */
const unweighed = (it: Treatment, at: Place): Place => {
  const panel = it.panels.find(({ weight }) => weight === undefined)
  return panel ? below(panelAt(at, panel.id), 'weight') : at
}
/** What could not be worked out, and what is missing for it. */
const unknown = (at: Place, why: string): readonly Check[] => [
  { ...check('drapery/sag', 'unknown', at, {}), says: `drapery/sag.${why}` },
]

/** What a rod with its draperies puts on each bracket and how far it sags, drawn, stacked and between. */
export const rodLoadsRule = rule({
  id: 'rod-loads',
  on: 'treatment',
  needs: {
    ...{ rod: { maybe: rod }, coverage: { maybe: coverage }, hookMap: { maybe: hookMap }, rodBody: { maybe: rodBody } },
    reach: { maybe: reach },
    ...{ panelLoads: { maybe: panelLoads }, fixings: { maybe: fixings }, hungLine: { maybe: hungLine } },
    fasteners: { maybe: fasteners },
  },
  gives: { rodLoads, checks, reckonings },
  codes: ['drapery/sag', 'drapery/rod-lifts'],
}).run(({ it, at, job }, facts) => {
  const { panelLoads: panels, rodBody: body, rod: along, coverage: covered, hookMap: hooks, reach: tips } = facts
  // Of hardware that gives none of this nothing is said.
  if (!body || !along || !covered || !hooks || !tips) return {}
  // An order that says nothing of weights and fasteners asks for no answer, as with what one person may lift.
  const isAsked = facts.fasteners !== undefined || it.panels.some(({ weight }) => weight !== undefined)
  if (!panels && !isAsked) return {}
  if ((covered.corners ?? []).length > 0) return { checks: unknown(at, 'corner') }
  if (!panels) return { checks: unknown(unweighed(it, at), 'weights') }
  if (!body.weight) return { checks: unknown(at, 'rod') }
  const rodded = { rod: along, coverage: covered, hookMap: hooks, reach: tips, hungLine: facts.hungLine }
  const under: Under = { ...rodded, panelLoads: panels, rodBody: { ...body, weight: body.weight } }
  const held = heldAt(it, at, along)
  if (!areInOrder(held, along)) return { checks: unknown(at, 'places') }
  const beam = beamOf(it, at, under, held)
  const found = hungRod(it, under, beam)
  if (!found) return { checks: [{ ...check('drapery/sag', 'fail', at, {}, 'mount'), says: 'drapery/sag.folds' }] }
  const carried = carriedBy(at, under, held, found)
  const sags = sagsOf(at, under, held, found, job)
  return {
    rodLoads: { carried, sags, line: lineOf(under, beam, found, sags), assumes: body.assumes },
    checks: [...sagCheck(at, sags, along), ...liftCheck(at, carried, facts.fixings ?? [])],
    reckonings: [...carried.flatMap(({ most, least }) => [most, least]), ...sags.flatMap(({ x, sag, most }) => [x, sag, most])],
  }
})

/** Whether the maker's largest span is used more than the sag that is allowed. */
function strictOf({ held, span }: Rod, { sag, most }: RodSag) {
  const widest = Math.max(...held.slice(1).map((x, i) => x.value - (held[i]?.value ?? 0)))
  const isMakers = span !== undefined && widest / span.value > sag.value / most.value
  return { strict: isMakers ? 'maker' : 'sag', span: long(span ?? most) }
}
function sagCheck(at: Place, sags: readonly RodSag[], along: Rod): readonly Check[] {
  const worst = worstSag(sags)
  if (!worst) return unknown(at, 'stiffness')
  const { sag, most, x, when } = worst
  const values = { sag: long(sag), most: long(most), x: long(x), when: { code: when }, ways: { count: sags.length } }
  return [check('drapery/sag', sag.value > most.value ? 'warn' : 'pass', at, { ...values, ...strictOf(along, worst) })]
}
/** A rod that lies in open saddles lifts out of one that would have to hold it down. */
function liftCheck(at: Place, carried: readonly CarriedLoad[], all: readonly Fixing[]): readonly Check[] {
  const open = carried.filter((own) => !all.find(({ part }) => part === own.part)?.holdsDown)
  const first = [...open].sort((a, b) => a.least.value - b.least.value)[0]
  if (!first || first.least.value >= -0.5) return [check('drapery/rod-lifts', 'pass', at, {})]
  const bracket = first.part === 'support' ? 'support' : first.bracket
  const values = { bracket, mass: { mass: kilogramsOfLoad(-first.least.value) }, x: long(first.x) }
  return [check('drapery/rod-lifts', 'warn', at, values)]
}

/** The rods of a window. */
export const rodsHereRule = rule({
  id: 'rods-here',
  on: 'window',
  needs: { each: { each: rodLoads } },
  gives: { rodsHere },
}).run((_, facts) => ({
  rodsHere: facts.each.map(({ at, value }) => ({ treatment: at.slice(at.lastIndexOf('/') + 1), carried: value.carried })),
}))
