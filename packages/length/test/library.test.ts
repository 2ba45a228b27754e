import { furthest, type QuantityKind, readLength, readQuantity } from '@evenhem/length'
import fc from 'fast-check'
import { all, type BigNumber, create, type FactoryFunctionMap } from 'mathjs'
import { describe, expect, test } from 'vitest'

// Somebody else's conversions: mathjs, a general-purpose mathematics and units library, with 64 digits.
const math = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 64 })
const theirs = (value: BigNumber, from: string, to: string): BigNumber =>
  math.unit(value as never, from).toNumeric(to) as BigNumber

const lengths = [
  ['in', 'inch'],
  ['ft', 'foot'],
  ['yd', 'yard'],
  ['mm', 'mm'],
  ['cm', 'cm'],
  ['m', 'm'],
] as const
describe.each(lengths)('lengths in %s agree to the nanometre with the library’s', (ours, name) => {
  const nanometres = (value: BigNumber) => theirs(value, name, 'nm').toDecimalPlaces(0, 4).toNumber()
  const ourLength = (text: string) => {
    const read = readLength(text, 'in')
    return read.ok ? read.value : Number.NaN
  }
  const digits = fc.array(fc.constantFrom(...'0123456789'), { minLength: 1, maxLength: 28 }).map((list) => list.join(''))
  test('as decimals of any number of places', () => {
    fc.assert(
      fc.property(fc.nat(4000), digits, (whole, decimals) => {
        expect(ourLength(`${whole}.${decimals} ${ours}`)).toBe(nanometres(math.bignumber(`${whole}.${decimals}`)))
      }),
      { numRuns: 500 },
    )
  })
  test('as fractions of any denominator', () => {
    fc.assert(
      fc.property(fc.nat(4000), fc.integer({ min: 2, max: 9999 }), fc.nat(9999), (whole, below, n) => {
        const value = math.add(
          math.bignumber(whole),
          math.divide(math.bignumber(n % below), math.bignumber(below)) as BigNumber,
        ) as BigNumber
        expect(ourLength(`${whole} ${n % below}/${below} ${ours}`)).toBe(nanometres(value))
      }),
    )
  })
  test('to the furthest length', () => {
    const most = Math.floor(furthest / nanometres(math.bignumber(1)))
    fc.assert(
      fc.property(fc.integer({ min: 0, max: most }), (n) => {
        expect(ourLength(`${n} ${ours}`)).toBe(nanometres(math.bignumber(n)))
      }),
    )
  })
})

const quantities: readonly (readonly [unit: string, kind: QuantityKind, theirs: string, si: string])[] = [
  ['g', 'mass', 'gram', 'kg'],
  ['kg', 'mass', 'kg', 'kg'],
  ['oz', 'mass', 'ounce', 'kg'],
  ['lb', 'mass', 'poundmass', 'kg'],
  ['g/m2', 'arealWeight', 'gram/m^2', 'kg/m^2'],
  ['oz/yd2', 'arealWeight', 'ounce/yard^2', 'kg/m^2'],
  ['oz/yd', 'linearWeight', 'ounce/yard', 'kg/m'],
  ['g/m', 'linearWeight', 'gram/m', 'kg/m'],
  ['N', 'force', 'N', 'N'],
  ['kN', 'force', 'kN', 'N'],
  ['lbf', 'force', 'poundforce', 'N'],
  ['kgf', 'force', 'kilogramforce', 'N'],
  ['lbf/ft', 'lineLoad', 'poundforce/foot', 'N/m'],
  ['lbf/in', 'lineLoad', 'poundforce/inch', 'N/m'],
  ['N/mm', 'lineLoad', 'N/mm', 'N/m'],
  ['lbf·in', 'moment', 'poundforce inch', 'N m'],
  ['lbf·ft', 'moment', 'poundforce foot', 'N m'],
  ['N·mm', 'moment', 'N mm', 'N m'],
  ['psi', 'pressure', 'poundforce/inch^2', 'Pa'],
  ['psf', 'pressure', 'poundforce/foot^2', 'Pa'],
  ['kPa', 'pressure', 'kPa', 'Pa'],
  ['N/mm2', 'pressure', 'N/mm^2', 'Pa'],
  ['deg', 'angle', 'deg', 'rad'],
  ['rad', 'angle', 'rad', 'rad'],
]
describe('quantities agree to twelve digits with the library’s', () => {
  test.each(quantities)('%s', (unit, kind, name, si) => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.nat(999), (whole, thousandths) => {
        const text = `${whole}.${String(thousandths).padStart(3, '0')}`
        const read = readQuantity(`${text} ${unit}`, kind)
        const other = theirs(math.bignumber(text), name, si).toNumber()
        expect(Math.abs((read.ok ? read.value : Number.NaN) - other)).toBeLessThanOrEqual(Math.abs(other) * 5.1e-12)
      }),
    )
  })
})
