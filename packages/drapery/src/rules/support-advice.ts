import { below, type JobHead, type Place, type Treatment } from '@evenhem/job'
import { inch, type Length, percentUp } from '@evenhem/length'
import type { Hung } from '@evenhem/mechanics'
import { type Check, checks, rule, type WayOut } from '@evenhem/plugin'
import { ruleOf, sagOf } from '../defaults.ts'
import {
  coverage,
  type Fixing,
  fasteners,
  fixings,
  held,
  hookMap,
  panelLoads,
  reach,
  rod,
  rodBody,
  rodLoads,
  supportPlaces,
  topOfRod,
  units,
} from '../facts/index.ts'
import { check } from '../given.ts'
import { supportsOf } from '../hardware/index.ts'
import { type Around, shareHeld } from './fixed.ts'
import { strictest, tooShort } from './held-check.ts'
import { beamOf, hungRod, type Under, worstSag } from './rod-beam.ts'
import { between, evenPlaces, isNear, type Places, type Stretch, studPlaces } from './support-places.ts'

/** A way to support the rod, and which part of what sag, span and fasteners allow it uses. `holds` is left out where nothing is known of what holds it. */
interface Tried {
  readonly places: Places
  readonly onStuds: boolean
  readonly sag: number
  readonly holds: number | undefined
  readonly worst: number
}
interface Search {
  readonly it: Treatment
  readonly at: Place
  readonly job: JobHead
  readonly under: Under
  readonly around: Around
  readonly fixings: readonly Fixing[]
  readonly stretches: readonly Stretch[]
  readonly isMetric: boolean
  readonly top: Length | undefined
}
interface Standing {
  readonly id: string
  readonly part: 'bracket' | 'support'
  readonly x: { readonly value: Length }
}

/** Which part of what is allowed supports at these places would use; undefined when the rod folds up. Endless where it would lift out of an open saddle. */
function tried(search: Search, places: Places, onStuds: boolean): Tried | undefined {
  const { it, at, under } = search
  const [left, right] = [under.rod.held[0], under.rod.held.at(-1)]
  if (!left || !right) return undefined
  const own = places.map((value, i): Standing => ({ id: `s${i + 1}`, part: 'support', x: { value } }))
  const held: readonly Standing[] = [{ id: 'left', part: 'bracket', x: left }, ...own, { id: 'right', part: 'bracket', x: right }]
  const found = hungRod(it, under, beamOf(it, at, under, held), 4)
  if (!found) return undefined
  const [sag, holds] = [sagShare(search, found), holdShare(search, held, found)]
  const span = under.rod.span?.value
  const widest = Math.max(...held.slice(1).map(({ x }, i) => x.value - (held[i]?.x.value ?? 0)))
  const lifts = held.some(({ part }, i) => (found.carried[i]?.least ?? 0) < -0.5 && !fixingOf(search, part)?.holdsDown)
  const worst = lifts ? Number.POSITIVE_INFINITY : Math.max(sag, holds ?? 0, span === undefined ? 0 : widest / span)
  return { places, onStuds, sag, holds, worst }
}
const fixingOf = ({ fixings }: Search, part: Fixing['part']): Fixing | undefined => fixings.find((each) => each.part === part)
const sagShare = ({ under: { rodBody }, job }: Search, { sags }: Hung): number =>
  rodBody.stiffness.length === 0
    ? 0
    : Math.max(...sags.map(({ value, from, to }) => (rodBody.creep * value * sagOf(job).value) / (to - from)))
function holdShare(search: Search, held: readonly Standing[], { carried }: Hung): number | undefined {
  const shares = held.map(({ id, part, x }, i) => {
    const fixing = fixingOf(search, part)
    return fixing && shareHeld(search.around, fixing, id, x.value, carried[i]?.most ?? 0)
  })
  const known = shares.filter((share) => share !== undefined)
  return known.length === 0 ? undefined : Math.max(...known)
}

/** Whether every splice that can turn keeps a support or a bracket near it. */
function holdSplices({ it, under: { rod: along }, job }: Search, places: Places): boolean {
  const most = ruleOf(job, 'splicePlace').value
  const ends = [along.held[0], along.held.at(-1)].flatMap((each) => (each ? [each.value] : []))
  return (it.rod?.splices ?? []).every(({ fromLeft }) =>
    isNear([...ends, ...places], (along.left.value + fromLeft) as Length, most),
  )
}
/** How far around the rod a support's plate may reach: an obstacle there is in its way. From memory, no source. */
const plateReach = 6 * inch
const isClear = ({ around: { window }, top }: Search, x: Length): boolean =>
  window.walls
    .flatMap(({ obstacles = [] }) => obstacles)
    .every(({ left, width, bottom, height }) => {
      if (left === undefined || width === undefined) return true
      const isBeside = x < left - 2 * inch || x > left + width + 2 * inch
      if (isBeside || top === undefined || bottom === undefined || height === undefined) return isBeside
      return bottom > top + plateReach || bottom + height < top - plateReach
    })

/** The ways that hold with so many supports, the one that uses the least first. */
function holding(search: Search, n: number): readonly Tried[] {
  const [left, right] = [search.under.rod.held[0]?.value as Length, search.under.rod.held.at(-1)?.value as Length]
  const stretches = between(search.stretches, [left, right])
  const studs = studPlaces(n, search.around.window.walls, stretches)
  const all = studs.length > 0 ? studs : evenPlaces(n, [left, right], stretches, search.isMetric)
  return all
    .filter((places) => holdSplices(search, places) && places.every((x) => isClear(search, x)))
    .flatMap((places) => tried(search, places, studs.length > 0) ?? [])
    .filter(({ worst }) => worst <= 1)
    .sort((a, b) => a.worst - b.worst)
}
/** The fewest supports that hold, never fewer than stand there, and the best way without the first one's places, in case one of those is not what it seems. */
function advised(search: Search): readonly Tried[] {
  const there = supportsOf(search.it, search.at).length
  for (let n = Math.max(1, there); n <= there + 3; n++) {
    const [first, ...others] = holding(search, n)
    if (!first) continue
    const other = others.find(({ places }) => places.some((x) => !first.places.includes(x)))
    return [first, ...(other ? [other] : [])]
  }
  return []
}

/** What stands where once supports are put so: those that are there are moved, others added under names that are free. */
function wayOf({ it, at }: Search, { places, sag, holds, onStuds }: Tried): WayOut {
  const there = supportsOf(it, at)
  const free = ['s1', 's2', 's3', 's4', 's5', 's6', 's7', 's8'].filter((id) => !there.some((own) => own.id === id))
  const put = places.map((value, i) => ({
    at: placeOf(it, at, there[i]?.id ?? free[i - there.length] ?? `s${i + 1}`),
    value: { length: value },
  }))
  const [a, b = a, c = b, d = c] = places as readonly [Length, ...Length[]]
  return {
    code: 'drapery/way-supports',
    values: {
      ...{ count: { count: places.length }, on: onStuds ? 'studs' : 'even', known: holds === undefined ? 'no' : 'yes' },
      ...{ sag: percent(sag), holds: percent(holds ?? 0) },
      ...{ a: { length: a }, b: { length: b as Length }, c: { length: c as Length }, d: { length: d as Length } },
    },
    put,
  }
}
const percent = (share: number) => ({ count: percentUp(share) })
const placeOf = (it: Treatment, at: Place, id: string): Place =>
  it.rod?.supports?.some((each) => each.id === id)
    ? below(at, 'rod', 'supports', id, 'x')
    : below(at, 'found', 'supports', id, 'x')

/** Whether anything of the rod's support is fixed already: then holes are there, and nothing is advised. */
const isFixed = ({ found }: Treatment): boolean => Object.values(found?.brackets ?? {}).some(({ fixed }) => fixed === true)

/** How many supports the rod wants and where, on studs where they are known and clear of what travels: the fewest holes with which sag, span, ratings and fasteners hold. */
export const supportAdvice = rule({
  id: 'support-advice',
  on: 'treatment',
  needs: {
    ...{ rod: { maybe: rod }, coverage: { maybe: coverage }, hookMap: { maybe: hookMap }, rodBody: { maybe: rodBody } },
    ...{ reach: { maybe: reach }, panelLoads: { maybe: panelLoads }, fixings: { maybe: fixings } },
    ...{ rodLoads: { maybe: rodLoads }, held: { maybe: held }, topOfRod: { maybe: topOfRod } },
    ...{ fasteners: { maybe: fasteners }, supportPlaces: { maybe: supportPlaces }, units: { maybe: units } },
  },
  gives: { checks },
  codes: ['drapery/supports'],
}).run(({ it, at, job, window }, facts) => {
  const { rod: along, coverage: covered, hookMap: hooks, rodBody: body, reach: tips, panelLoads: panels, rodLoads: loads } = facts
  if (!along || !covered || !hooks || !body?.weight || !tips || !panels || !loads || it.bracketsOf !== undefined) return {}
  const worst = worstSag(loads.sags)
  const sags = worst !== undefined && worst.sag.value > worst.most.value
  const gives = (facts.held ?? []).some((own) => (strictest(own)?.share ?? 0) > 1)
  // More supports make no screw longer.
  if ((facts.held ?? []).some(({ lacks }) => lacks === tooShort)) return {}
  if (!sags && !gives) return { checks: [check('drapery/supports', 'pass', at, { count: { count: loads.carried.length - 2 } })] }
  if (isFixed(it) || window.treatments.some(({ bracketsOf }) => bracketsOf !== undefined)) return {}
  const search: Search = {
    ...{ it, at, job, isMetric: facts.units !== 'in', fixings: facts.fixings ?? [], stretches: facts.supportPlaces ?? [] },
    under: {
      rod: along,
      coverage: covered,
      hookMap: hooks,
      rodBody: { ...body, weight: body.weight },
      reach: tips,
      panelLoads: panels,
    },
    around: { it, at, window, all: facts.fasteners ?? [] },
    top: facts.topOfRod?.value,
  }
  return {
    checks: [
      adviceCheck(
        at,
        advised(search).map((each) => wayOf(search, each)),
      ),
    ],
  }
})
const adviceCheck = (at: Place, ways: readonly WayOut[]): Check =>
  ways.length === 0
    ? { ...check('drapery/supports', 'warn', at, {}), says: 'drapery/supports.none' }
    : { ...check('drapery/supports', 'warn', at, { ways: { count: ways.length }, on: ways[0]?.values.on ?? 'even' }), ways }
