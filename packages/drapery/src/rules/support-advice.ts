import { below, type JobHead, type Place, type Treatment } from '@evenhem/job'
import { type Length, millimetre } from '@evenhem/length'
import type { Hung } from '@evenhem/mechanics'
import { type Check, checks, rule, type WayOut } from '@evenhem/plugin'
import { sagOf } from '../defaults.ts'
import {
  coverage,
  type Fixing,
  fasteners,
  fixings,
  held,
  hookMap,
  hungLine,
  panelLoads,
  type Rod,
  reach,
  rod,
  rodBody,
  rodLoads,
  rodsHere,
  supportPlaces,
} from '../facts/index.ts'
import { check } from '../given.ts'
import { supportsOf } from '../hardware/index.ts'
import { type Around, shareHeld } from './fixed.ts'
import { strictest, tooShort } from './held.ts'
import { beamOf, hungRod, partOf, type Under } from './rod-beam.ts'
import { worstSag } from './rod-loads.ts'
import { between, evenPlaces, type Places, type Stretch, studPlaces } from './support-places.ts'

/** A way to support the rod, and which part of what sag, span and fasteners allow it uses. */
interface Tried {
  readonly places: Places
  readonly onStuds: boolean
  readonly sag: number
  readonly holds: number
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
}

/** Which part of what is allowed supports at these places would use; undefined when the rod folds up. A bracket of which nothing is known counts as holding. */
function tried(search: Search, places: Places, onStuds: boolean): Tried | undefined {
  const { it, at, under, around } = search
  const [left, right] = [under.rod.held[0], under.rod.held.at(-1)]
  if (!left || !right) return undefined
  const held = [
    { id: 'left', x: left },
    ...places.map((value, i) => ({ id: `s${i + 1}`, x: { value } })),
    { id: 'right', x: right },
  ]
  const found = hungRod(it, under, beamOf(it, at, under, held), 4)
  if (!found) return undefined
  const [sag, holds] = [sagShare(search, found), holdShare(search, around, held, found)]
  const span = under.rod.span?.value
  const widest = Math.max(...held.slice(1).map(({ x }, i) => x.value - (held[i]?.x.value ?? 0)))
  return { places, onStuds, sag, holds, worst: Math.max(sag, holds, span === undefined ? 0 : widest / span) }
}
const sagShare = ({ under: { rodBody }, job }: Search, { sags }: Hung): number =>
  rodBody.stiffness.length === 0
    ? 0
    : Math.max(...sags.map(({ value, from, to }) => (rodBody.creep * value * sagOf(job).value) / (to - from)))
function holdShare(
  { fixings }: Search,
  around: Around,
  held: readonly { readonly id: string; readonly x: { readonly value: Length } }[],
  { carried }: Hung,
): number {
  const shares = held.map(({ id, x }, i) => {
    const fixing = fixings.find(({ part }) => part === partOf(id)) ?? fixings[0]
    return fixing ? (shareHeld(around, fixing, id, x.value, carried[i]?.most ?? 0) ?? 0) : 0
  })
  return Math.max(...shares)
}

/** The ways that hold with so many supports, the one that uses the least first. */
function holding(search: Search, n: number): readonly Tried[] {
  const [left, right] = [search.under.rod.held[0]?.value as Length, search.under.rod.held.at(-1)?.value as Length]
  const stretches = between(search.stretches, [left, right])
  const studs = studPlaces(n, search.around.window.walls, stretches)
  const all = studs.length > 0 ? studs : evenPlaces(n, [left, right], stretches, search.isMetric)
  return all
    .flatMap((places) => tried(search, places, studs.length > 0) ?? [])
    .filter(({ worst }) => worst <= 1)
    .sort((a, b) => a.worst - b.worst)
}
/** The fewest supports that hold, never fewer than are ordered, and the best way without the first one's places, in case one of those is not what it seems. */
function advised(search: Search): readonly Tried[] {
  const ordered = search.it.rod?.supports?.length ?? 0
  for (let n = Math.max(1, ordered); n <= ordered + 3; n++) {
    const [first, ...others] = holding(search, n)
    if (!first) continue
    const other = others.find(({ places }) => places.some((x) => !first.places.includes(x)))
    return [first, ...(other ? [other] : [])]
  }
  return []
}

/** What stands where once supports are put so: ordered ones are moved, others added. */
function wayOf({ it, at }: Search, { places, sag, holds, onStuds }: Tried): WayOut {
  const ordered = supportsOf(it, at)
  const put = places.map((value, i) => {
    const own = ordered[i]
    const place = own ? placeOf(it, at, own.id) : below(at, 'found', 'supports', `s${i + 1}`, 'x')
    return { at: place, value: { length: value } }
  })
  const [a, b = a, c = b, d = c] = places as readonly [Length, ...Length[]]
  return {
    code: 'drapery/way-supports',
    values: {
      ...{ count: { count: places.length }, on: onStuds ? 'studs' : 'even', sag: percent(sag), holds: percent(holds) },
      ...{ a: { length: a }, b: { length: b as Length }, c: { length: c as Length }, d: { length: d as Length } },
    },
    put,
  }
}
/** Nobody says here in which units the order is written: inches meet whole millimetres at both ends by chance only. */
const isOnMillimetres = ({ held }: Rod): boolean =>
  [held[0], held.at(-1)].every((x) => x !== undefined && x.value % millimetre === 0)
const percent = (share: number) => ({ count: Math.ceil(100 * share - 1e-9) })
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
    ...{ reach: { maybe: reach }, panelLoads: { maybe: panelLoads }, fixings: { maybe: fixings }, hungLine: { maybe: hungLine } },
    ...{ rodLoads: { maybe: rodLoads }, held: { maybe: held }, rodsHere: { maybe: rodsHere } },
    ...{ fasteners: { maybe: fasteners }, supportPlaces: { maybe: supportPlaces } },
  },
  gives: { checks },
  codes: ['drapery/supports'],
}).run(({ it, at, job, window }, facts) => {
  const { rod: along, coverage: covered, hookMap: hooks, rodBody: body, reach: tips, panelLoads: panels, rodLoads: loads } = facts
  if (!along || !covered || !hooks || !body?.weight || !tips || !panels || !loads || it.bracketsOf !== undefined) return {}
  const worst = worstSag(loads.sags)
  const sags = worst !== undefined && worst.sag.value > worst.most.value
  const gives = (facts.held ?? []).some((own) => own.lacks === tooShort || (strictest(own)?.share ?? 0) > 1)
  if (!sags && !gives) return { checks: [check('drapery/supports', 'pass', at, { count: { count: loads.carried.length - 2 } })] }
  if (isFixed(it) || (facts.rodsHere ?? []).some(({ host }) => host !== undefined)) return {}
  const search: Search = {
    ...{ it, at, job, isMetric: isOnMillimetres(along), fixings: facts.fixings ?? [], stretches: facts.supportPlaces ?? [] },
    under: {
      rod: along,
      coverage: covered,
      hookMap: hooks,
      rodBody: { ...body, weight: body.weight },
      reach: tips,
      panelLoads: panels,
    },
    around: { it, at, window, all: facts.fasteners ?? [] },
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
    : { ...check('drapery/supports', 'warn', at, { ways: { count: ways.length } }), ways }
