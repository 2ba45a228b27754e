import type { Place, Window } from '@evenhem/job'
import {
  comesTo,
  inch,
  type Known,
  kilogramForce,
  type Length,
  metre,
  minus,
  number,
  plus,
  type Reckoning,
  twelveDigits,
} from '@evenhem/length'
import type { Forces } from '@evenhem/mechanics'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { type CarriedLoad, type Fixing, fasteners, fixings, type Held, held, rodLoads, rodsHere } from '../facts/index.ts'
import { type Around, alone, type Fixed, fixedAt, forcesOf, type Hangs } from './fixed.ts'
import { holdsCheck, tooShort } from './held-check.ts'
import { type Used, usualAs } from './screw.ts'

/** What hangs on one bracket, each at its own projection. */
interface Burden {
  readonly load: Reckoning
  readonly parts: readonly (Hangs & { readonly from: Known<Length> | undefined; readonly of: Reckoning })[]
}
/** A bracket with its working, and in wood whether other screws would hold it. */
export type Working = Held & {
  readonly working: readonly Reckoning[]
  readonly would?: ((name: string) => boolean) | undefined
}

const metres = (length: number): number => length / metre
const formed = (
  name: string,
  what: string,
  value: number,
  unit: Reckoning['unit'],
  source: string,
  ...terms: Reckoning['terms']
): Reckoning => ({ ...{ name, what, value: twelveDigits(value), unit }, ...{ how: 'formula', terms, source } })

/** A bracket that holds a rod down may have to hold more up than down. */
const strongest = ({ most, least }: CarriedLoad, { holdsDown }: Fixing): Reckoning =>
  holdsDown && -least.value > most.value ? least : most
function burdenOf(at: Place, own: CarriedLoad, fixing: Fixing, guests: readonly CarriedLoad[]): Burden {
  const { projection, inner } = fixing
  const loads = [strongest(own, fixing), ...guests.map(({ most }) => most)]
  const terms = loads.map((each) => (each.value < 0 ? minus : plus)('drapery/bracket-load', each))
  const value = comesTo('sum', terms, 'force') as number
  const part = (of: Reckoning, from: Known<Length> | undefined) => ({
    ...{ force: Math.abs(of.value), projection: metres(from?.value ?? 0) },
    ...{ from, of },
  })
  const [first, ...others] = loads as [Reckoning, ...Reckoning[]]
  return {
    load: { name: `${at}#holds-${own.bracket}`, what: 'drapery/bracket-holds', value, unit: 'force', how: 'sum', terms },
    parts: [part(first, projection), ...others.map((each) => part(each, inner ?? projection))],
  }
}

function forceWorking(at: Place, { bracket }: CarriedLoad, burden: Burden, { height, holes }: Fixing, forces: Forces) {
  const outs = burden.parts.flatMap(({ from, of }) => [
    plus('drapery/bracket-load', of),
    ...(from ? [plus('drapery/projection', from)] : []),
  ])
  const plate = [
    ...(height ? [plus('drapery/plate-height', height)] : []),
    ...holes.map((each) => plus('drapery/hole-down', each)),
  ]
  const shared = [plus('drapery/bracket-load', burden.load), plus('drapery/hole-count', number(holes.length))]
  return {
    pull: formed(`${at}#pull-${bracket}`, 'drapery/screw-pull', forces.pull, 'force', 'drapery/plate-tilts', ...outs, ...plate),
    shear: formed(`${at}#shear-${bracket}`, 'drapery/screw-shear', forces.shear, 'force', 'drapery/plate-tilts', ...shared),
  }
}
type ForceWorking = ReturnType<typeof forceWorking>

/** Which part of what its fasteners hold is used, by all and by the top one alone; or why that is not known. */
function sharesOf(
  at: Place,
  bracket: string,
  { use }: Fixed,
  forces: Forces,
  one: Forces,
  working: ForceWorking,
  load: Reckoning,
) {
  const [both, top] = [use(forces), use(one)]
  const share = (name: string, what: string, used: Used, ...terms: Reckoning['terms']) =>
    used.ok ? formed(`${at}#${name}-${bracket}`, what, used.value, 'ratio', 'drapery/screw-holds', ...terms) : undefined
  const used = share(
    'used',
    'drapery/used',
    both,
    plus('drapery/screw-pull', working.pull),
    plus('drapery/screw-shear', working.shear),
  )
  const byOne = share(
    'used-by-one',
    'drapery/used-by-one',
    top,
    plus('drapery/screw-pull', working.pull),
    plus('drapery/bracket-load', load),
  )
  return { used, byOne, why: both.ok ? undefined : both.why }
}
const ratedShare = (at: Place, bracket: string, { rated }: Fixing, load: Reckoning): Reckoning | undefined => {
  if (!rated) return undefined
  const terms = [plus('drapery/bracket-load', load), plus('drapery/rated', rated)]
  return formed(
    `${at}#of-rated-${bracket}`,
    'drapery/of-rated',
    load.value / (kilogramForce * rated.value),
    'ratio',
    'drapery/load-over-rated',
    ...terms,
  )
}

function heldAt(around: Around, own: CarriedLoad, fixing: Fixing, guests: readonly CarriedLoad[] | 'not known'): Working {
  const { at } = around
  const burden = burdenOf(at, own, fixing, guests === 'not known' ? [] : guests)
  const { ground, fixed } = fixedAt(around, fixing, own.bracket, own.x.value)
  const [forces, one] = [forcesOf(burden.parts, fixing), alone(burden.parts, fixing)]
  const working = forces && forceWorking(at, own, burden, fixing, forces)
  const shares =
    working && one && 'use' in fixed && guests !== 'not known'
      ? sharesOf(at, own.bracket, fixed, forces, one, working, burden.load)
      : undefined
  const rated = guests === 'not known' ? undefined : ratedShare(at, own.bracket, fixing, burden.load)
  const unfixed = 'use' in fixed || fixed.ok ? undefined : fixed.why
  const why = guests === 'not known' ? 'second-rod' : forces ? (shares?.why ?? unfixed) : 'holes'
  return {
    ...{ bracket: own.bracket, part: own.part, x: own.x, load: burden.load, behind: ground.behind },
    ...(working ?? {}),
    ...('use' in fixed ? { fastener: fixed.name } : {}),
    ...(forces && 'use' in fixed && fixed.would ? { would: (name: string) => fixed.would?.(name, forces) ?? false } : {}),
    ...(Number.isFinite(ground.wood) ? { isThin: true } : {}),
    ...(shares?.used ? { used: shares.used } : {}),
    ...(shares?.byOne ? { byOne: shares.byOne } : {}),
    ...(rated ? { ofRated: rated } : {}),
    ...(why === undefined ? {} : { lacks: `drapery/lacks-${why}` }),
    working: [
      burden.load,
      ...Object.values(working ?? {}),
      ...[shares?.used, shares?.byOne, rated].flatMap((each) => each ?? []),
    ],
  }
}
/** A bracket of which its hardware says nothing. */
function bare(at: Place, own: CarriedLoad): Working {
  const { load } = burdenOf(at, own, { ...{ part: own.part, on: 'wall', holes: [], holdsDown: false } }, [])
  const { bracket, part, x } = own
  return { ...{ bracket, part, x, load, behind: 'unknown', lacks: 'drapery/lacks-holes' }, working: [load] }
}

/** Whether a bracket's screws reach too little or hold too little. */
const isOver = ({ lacks, used }: Held): boolean => lacks === tooShort || (used?.value ?? 0) > 1
/** The first usual screw that would hold every bracket in wood; undefined when none does, or all hold already. */
function usualFor(all: readonly Working[]): string | undefined {
  const over = all.filter(isOver)
  const like = over[0]?.fastener
  if (like === undefined || !over.every(({ would }) => would)) return undefined
  return usualAs(like).find((name) => all.every(({ would }) => !would || would(name)))
}

type RodsHere = readonly { readonly treatment: string; readonly carried: readonly CarriedLoad[] }[]
/** An end of a rod behind lies in the same end bracket; a support of it stands where its host's does. */
const near = inch
/** What the rods behind put on each bracket of their host; `not known` while one of them is not worked out, or stands on something else. */
function guestsOf(host: string, { treatments }: Window, own: readonly CarriedLoad[], rods: RodsHere) {
  const guests = treatments.filter(({ bracketsOf }) => bracketsOf === host)
  const loads = guests.map(({ id }) => rods.find(({ treatment }) => treatment === id)?.carried)
  const isAt = (a: CarriedLoad) => (b: CarriedLoad) =>
    a.part === b.part && (a.part === 'bracket' ? a.bracket === b.bracket : Math.abs(a.x.value - b.x.value) <= near)
  const isKnown = loads.every((carried) => carried?.every((each) => own.some(isAt(each))) ?? false)
  return (bracket: CarriedLoad): readonly CarriedLoad[] | 'not known' =>
    isKnown ? loads.flatMap((carried) => carried?.filter(isAt(bracket)) ?? []) : 'not known'
}

/** What the screws of each bracket are pulled and sheared with, and which part of what they hold that is; of the maker's rating and ours the stricter counts. */
export const heldRule = rule({
  id: 'held',
  on: 'treatment',
  needs: {
    rodLoads: { maybe: rodLoads },
    fixings: { maybe: fixings },
    rodsHere: { maybe: rodsHere },
    fasteners: { maybe: fasteners },
  },
  gives: { held, checks, reckonings },
  codes: ['drapery/holds'],
}).run(({ it, at, window }, facts) => {
  // In the double brackets of another treatment, those hold it.
  if (it.bracketsOf !== undefined || !facts.rodLoads) return {}
  const around: Around = { it, at, window, all: facts.fasteners ?? [] }
  const { carried } = facts.rodLoads
  const guests = guestsOf(at.slice(at.lastIndexOf('/') + 1), window, carried, facts.rodsHere ?? [])
  const each = carried.map((own) => {
    const fixing = facts.fixings?.find(({ part }) => part === own.part)
    return fixing ? heldAt(around, own, fixing, guests(own)) : bare(at, own)
  })
  return {
    held: each.map(({ working, would, ...own }) => own),
    checks: [holdsCheck(around, each, usualFor(each))],
    reckonings: each.flatMap(({ working }) => working),
  }
})
