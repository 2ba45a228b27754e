import type { Place } from '@evenhem/job'
import { comesTo, type Known, type Length, metre, number, plus, type Reckoning, twelveDigits } from '@evenhem/length'
import type { Forces } from '@evenhem/mechanics'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import { type CarriedLoad, type Fixing, fasteners, fixings, type Held, held, rodLoads, rodsHere } from '../facts/index.ts'
import { below, check, long, wallUnder, windowOf } from '../given.ts'
import { type Around, type Fixed, fixedAt, forcesOf, type Hangs } from './fixed.ts'
import { gravity, partOf } from './rod-beam.ts'
import type { Used } from './screw.ts'

/** What one bracket carries at its own projection, and of a double one what the rod behind does at its. */
interface Burden {
  readonly load: Reckoning
  readonly parts: readonly (Hangs & { readonly from: Known<Length> | undefined; readonly of: Reckoning })[]
}
type RodsHere = readonly { readonly host?: string | undefined; readonly carried: readonly CarriedLoad[] }[]

const metres = (length: number): number => length / metre
const formed = (
  name: string,
  what: string,
  value: number,
  unit: Reckoning['unit'],
  source: string,
  ...terms: Reckoning['terms']
): Reckoning => ({
  ...{ name, what, value: twelveDigits(value), unit, how: 'formula', terms, source },
})

function burdenOf(at: Place, own: CarriedLoad, { projection, inner }: Fixing, behind: RodsHere): Burden {
  const others = behind.flatMap(({ carried }) => carried.find(({ bracket }) => bracket === own.bracket) ?? [])
  const terms = [own, ...others].map(({ most }) => plus('drapery/bracket-load', most))
  const name = `${at}#holds-${own.bracket}`
  const value = comesTo('sum', terms, 'force') as number
  const part = (out: Known<Length> | undefined) => (of: CarriedLoad) => ({
    force: Math.max(0, of.most.value),
    projection: metres(out?.value ?? 0),
    from: out,
    of: of.most,
  })
  return {
    load: { name, what: 'drapery/bracket-holds', value, unit: 'force', how: 'sum', terms },
    parts: [part(projection)(own), ...others.map(part(inner ?? projection))],
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
  return {
    pull: formed(`${at}#pull-${bracket}`, 'drapery/screw-pull', forces.pull, 'force', 'drapery/plate-tilts', ...outs, ...plate),
    shear: formed(
      `${at}#shear-${bracket}`,
      'drapery/screw-shear',
      forces.shear,
      'force',
      'drapery/plate-tilts',
      plus('drapery/bracket-load', burden.load),
      plus('drapery/hole-count', number(holes.length)),
    ),
  }
}

function heldAt(
  around: Around,
  own: CarriedLoad,
  fixing: Fixing,
  behind: RodsHere,
): Held & { readonly working: readonly Reckoning[] } {
  const { at } = around
  const burden = burdenOf(at, own, fixing, behind)
  const { ground, fixed } = fixedAt(around, fixing, own.bracket, own.x.value)
  const [forces, alone] = [forcesOf(burden.parts, fixing, false), forcesOf(burden.parts, fixing, true)]
  const working = forces && forceWorking(at, own, burden, fixing, forces)
  const shares = working && 'use' in fixed ? sharesOf(at, own.bracket, fixed, forces, alone ?? forces, working) : undefined
  const rated =
    fixing.rated &&
    formed(
      `${at}#of-rated-${own.bracket}`,
      'drapery/of-rated',
      burden.load.value / (gravity * fixing.rated.value),
      'ratio',
      'drapery/load-over-rated',
      plus('drapery/bracket-load', burden.load),
      plus('drapery/rated', fixing.rated),
    )
  const isOver = shares?.why === 'penetration' || (shares?.used?.value ?? 0) > 1
  const enough = forces && isOver && 'use' in fixed ? fixed.enough?.(forces) : undefined
  const why = !forces ? 'holes' : 'use' in fixed ? shares?.why : fixed.ok ? undefined : fixed.why
  return {
    ...{ bracket: own.bracket, x: own.x, load: burden.load, behind: ground.behind },
    ...(working ?? {}),
    ...('use' in fixed ? { fastener: fixed.name } : {}),
    ...(enough === undefined ? {} : { enough }),
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
function sharesOf(
  at: Place,
  bracket: string,
  { use }: Fixed,
  forces: Forces,
  alone: Forces,
  { pull, shear }: { readonly pull: Reckoning; readonly shear: Reckoning },
) {
  const [both, one] = [use(forces), use(alone)]
  const share = (name: string, what: string, used: Used) =>
    used.ok
      ? formed(
          `${at}#${name}-${bracket}`,
          what,
          used.value,
          'ratio',
          'drapery/screw-holds',
          plus('drapery/screw-pull', pull),
          plus('drapery/screw-shear', shear),
        )
      : undefined
  return {
    used: share('used', 'drapery/used', both),
    byOne: share('used-by-one', 'drapery/used-by-one', one),
    why: both.ok ? undefined : both.why,
  }
}

/** The fasteners of the job, for its treatments. */
export const fastenersRule = rule({ id: 'fasteners', on: 'job', needs: {}, gives: { fasteners } }).run(({ it }) =>
  it.fasteners ? { fasteners: it.fasteners } : {},
)

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
  const id = at.slice(at.lastIndexOf('/') + 1)
  const behind = (facts.rodsHere ?? []).filter(({ host }) => host === id)
  const around: Around = { it, at, window, all: facts.fasteners ?? [] }
  const each = facts.rodLoads.carried.flatMap((own) => {
    const fixing = facts.fixings?.find(({ part }) => part === partOf(own.bracket))
    return fixing ? [heldAt(around, own, fixing, behind)] : []
  })
  if (each.length === 0) return {}
  return {
    held: each.map(({ working, ...own }) => own),
    checks: [holdsCheck(around, each)],
    reckonings: each.flatMap(({ working }) => working),
  }
})

/** Why a screw holds nothing that is published. */
export const tooShort = 'drapery/lacks-penetration'
/** The stricter of what is known of a bracket; undefined while nothing is. */
export const strictest = ({ used, ofRated }: Held): { readonly share: number; readonly by: string } | undefined => {
  const both = [
    ...(used ? [{ share: used.value, by: 'drapery/by-fasteners' }] : []),
    ...(ofRated ? [{ share: ofRated.value, by: 'drapery/by-maker' }] : []),
  ]
  return both.sort((a, b) => b.share - a.share)[0]
}
/** Of all brackets one whose screw reaches too little, else the one that is used the most, or one that nobody can tell of. */
function holdsCheck(around: Around, all: readonly Held[]): Check {
  const { at } = around
  const short = all.find(({ lacks }) => lacks === tooShort)
  if (short) return { ...check('drapery/holds', 'fail', at, told(short), 'drill'), says: 'drapery/holds.short' }
  const first = all
    .map((own) => ({ own, found: strictest(own) }))
    .sort((a, b) => (b.found?.share ?? 0) - (a.found?.share ?? 0))[0]
  const open = all.find(({ used }) => !used)
  if (!first?.found || (first.found.share <= 1 && open)) {
    const own = open ?? (all[0] as Held)
    return check('drapery/holds', 'unknown', placeOf(around, own), {
      ...told(own),
      lacks: { code: own.lacks ?? 'drapery/lacks-no-fastener' },
    })
  }
  const { share, by } = first.found
  const values = { ...told(first.own), used: { count: Math.ceil(100 * share - 1e-9) }, by: { code: by } }
  const about = `${first.own.bracket} ${Math.round(first.own.load.value / gravity)} kg`
  return { ...check('drapery/holds', share > 1 ? 'fail' : 'pass', at, values, 'drill'), ...(share > 1 ? { about } : {}) }
}
/** Where somebody can say what lacks. */
function placeOf({ at, window }: Around, { lacks, bracket, x }: Held): Place {
  if (lacks === 'drapery/lacks-wall') return below(at, 'found', 'brackets', bracket, 'behind')
  return lacks === 'drapery/lacks-board' ? below(wallUnder(window, windowOf(at), x.value).wallAt, 'buildUp', 'board') : at
}
const told = ({ bracket, load, x, behind, fastener, enough }: Held) => ({
  ...{ mass: { mass: load.value / gravity }, x: long(x), behind: { code: `drapery/behind-${behind}` } },
  ...{ bracket: partOf(bracket) === 'support' ? 'support' : bracket, fastener: fastener ?? 'none', enough: enough ?? 'none' },
})
