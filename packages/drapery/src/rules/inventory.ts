import { below, type Place, type Treatment } from '@evenhem/job'
import { count, minus, plus, type Reckoning } from '@evenhem/length'
import { type Capture, type Check, checks, reckonings, rule, type WayOut } from '@evenhem/plugin'
import { compareCount } from '../arithmetic/index.ts'
import { decided, deciding } from '../decisions.ts'
import { type Packed, packed, type Surplus, surplus } from '../facts/index.ts'
import { check } from '../given.ts'
import { packedOnce } from '../packed.ts'

const cameOf = ({ found }: Treatment, { what }: Packed): number | undefined => found?.came?.[what]
const cameAt = (at: Place, what: string): Place => below(at, 'found', 'came', what)
/** Whoever counts a part in a place of its own judges it, too. */
const countedHere = (all: readonly Packed[]): readonly Packed[] => packedOnce(all).filter(({ counted }) => !counted)

/** Where what came is counted, and how much of it is expected. */
export const countsOf = (at: Place, all: readonly Packed[]): readonly Capture[] =>
  packedOnce(all).flatMap(({ what, needed, counted = [{ at: cameAt(at, what), needed: needed.value }] }) =>
    counted.map((each): Capture => ({ at: each.at, as: 'count', expected: { count: each.needed } })),
  )

/** What was counted at a window beyond what each of its layers needs. */
export const surplusRule = rule({ id: 'surplus', on: 'window', needs: { packed: { each: packed } }, gives: { surplus } }).run(
  ({ it, at }, facts) => ({
    surplus: facts.packed.flatMap(({ at: treatmentAt, value }) => {
      const treatment = it.treatments.find(({ id }) => below(at, 'treatments', id) === treatmentAt)
      return countedHere(value).flatMap((part): readonly Surplus[] => {
        const came = treatment && cameOf(treatment, part)
        const { spare } = compareCount(part.needed.value, came ?? 0)
        const { what, hardware } = part
        return came === undefined || spare === 0
          ? []
          : [{ treatment: treatmentAt, what, ...(hardware === undefined ? {} : { hardware }), came, spare }]
      })
    }),
  }),
)

/** What came against what is needed. A count that nobody made yet is no fault; missing parts stop, and more than needed is information. */
export const came = rule({
  id: 'came',
  on: 'treatment',
  needs: { packed: { maybe: packed }, surplus: { maybe: surplus } },
  gives: { checks, reckonings },
  codes: ['drapery/came'],
}).run(({ it, at }, facts) => {
  const all = countedHere(facts.packed ?? [])
  const counted = all.filter((part) => cameOf(it, part) !== undefined)
  if (counted.length === 0) return {}
  const missing = counted.flatMap((part) => missingOf(it, at, part, facts.surplus ?? []))
  const open = all.filter((part) => !counted.includes(part))
  const rest = open[0]
    ? [check('drapery/came', 'unknown', at, { part: { code: open[0].what }, left: { count: open.length } })]
    : missing.length === 0
      ? [wellOf(it, at, counted)]
      : []
  return { checks: [...missing.map((one) => one.check), ...rest], reckonings: missing.map((one) => one.missing) }
})

function wellOf(it: Treatment, at: Place, counted: readonly Packed[]): Check {
  const over = counted.filter((part) => (cameOf(it, part) ?? 0) > part.needed.value)
  const [first] = over
  const values = {
    kinds: { count: counted.length },
    over: { count: over.length },
    spare: { count: first ? compareCount(first.needed.value, cameOf(it, first) ?? 0).spare : 0 },
    part: { code: (first ?? (counted[0] as Packed)).what },
  }
  return check('drapery/came', 'pass', at, values)
}

function missingOf(
  it: Treatment,
  at: Place,
  part: Packed,
  all: readonly Surplus[],
): readonly { readonly check: Check; readonly missing: Reckoning }[] {
  const { what, needed } = part
  const own = cameOf(it, part) ?? 0
  if (compareCount(needed.value, own).enough) return []
  const place = cameAt(at, what)
  const missing = count(
    `${at}#missing-${what.replace('/', '-')}`,
    'drapery/missing',
    plus('drapery/needed', needed),
    minus('drapery/counted', { value: own, from: place }),
  )
  const difference = `${own} of ${needed.value}`
  const values = {
    part: { code: what },
    came: { count: own },
    needed: { count: needed.value },
    missing: { count: missing.value },
  }
  const isCalled = decided(it, what, difference) === 'call the workroom'
  const call: WayOut = { code: 'drapery/way-call', values: {}, put: [deciding(at, what, 'call the workroom', difference)] }
  const found: Check = {
    ...check('drapery/came', 'fail', place, values, 'mark'),
    ...(isCalled ? { says: 'drapery/came.called' } : {}),
    about: `${what} ${difference}`,
    ways: [...spares(at, part, own, missing.value, all), ...(isCalled ? [] : [call])],
  }
  return [{ check: found, missing }]
}

/** The spare ones of another layer on the same hardware. */
const spares = (
  at: Place,
  { what, hardware }: Packed,
  own: number,
  missing: number,
  all: readonly Surplus[],
): readonly WayOut[] =>
  all
    .filter((each) => each.treatment !== at && each.what === what && each.hardware === hardware)
    .map((each): WayOut => {
      const taken = Math.min(missing, each.spare)
      return {
        code: 'drapery/way-spare',
        values: { count: { count: taken }, part: { code: what }, spare: { count: each.spare } },
        put: [
          { at: cameAt(at, what), value: { count: own + taken } },
          { at: cameAt(each.treatment, what), value: { count: each.came - taken } },
        ],
      }
    })
