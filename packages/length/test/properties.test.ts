import { furthest, type Length, readLength, readQuantity, spacesOf, spread, type Tape, tapes, writeLength } from '@evenhem/length'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

const kilometre = 1_000_000_000_000
const anyLength = fc.integer({ min: -furthest, max: furthest }) as fc.Arbitrary<Length>
const aLength = fc.oneof(fc.integer({ min: -kilometre, max: kilometre }) as fc.Arbitrary<Length>, anyLength)
const every = Object.entries(tapes) as readonly (readonly [string, Tape])[]
const read = (text: string): number => {
  const found = readLength(text, 'in')
  return found.ok ? found.value : Number.NaN
}

describe.each(every)('on the tape %s', (_, tape) => {
  test('what was written is read back within half a step, and `off` says by how much', () => {
    fc.assert(
      fc.property(aLength, (length) => {
        const written = writeLength(length, tape)
        fc.pre(Math.abs(length + written.off) <= furthest)
        expect(Math.abs(written.off) * 2).toBeLessThanOrEqual(tape.step)
        expect(read(written.text)).toBe(length + written.off)
      }),
    )
  })
  test('a whole number of steps is written exactly and read back the same', () => {
    const most = Math.floor(furthest / tape.step)
    fc.assert(
      fc.property(fc.integer({ min: -most, max: most }), (steps) => {
        const length = (steps * tape.step + 0) as Length
        const written = writeLength(length, tape)
        expect(written.off).toBe(0)
        expect(read(written.text)).toBe(length)
      }),
    )
  })
  test('a length and its negative are written alike but for the sign', () => {
    fc.assert(
      fc.property(aLength, (length) => {
        const one = writeLength(length, tape)
        const other = writeLength((-length + 0) as Length, tape)
        expect(other.text.replace('−', '')).toBe(one.text.replace('−', ''))
        expect(other.off + one.off).toBe(0)
      }),
    )
  })
  test('fractions are less than one and in lowest terms, inches after feet less than twelve, and nothing is −0', () => {
    fc.assert(
      fc.property(aLength, (length) => {
        const { text, numerator = 0, denominator = 1, feet, whole, off, negative } = writeLength(length, tape)
        expect(numerator < denominator && (numerator === 0 || numerator % 2 === 1)).toBe(true)
        if (feet !== undefined) expect(Number(whole)).toBeLessThan(12)
        expect([numerator, off].some((number) => Object.is(number, -0))).toBe(false)
        expect(negative).toBe(text.startsWith('−'))
        expect(text).not.toMatch(/^−0(\.0+)?( |$)/)
      }),
    )
  })
})

// Half of 1/64 in is no whole number of nanometres, so no length lies half-way on that tape.
describe.each(every.filter(([, { step }]) => step % 2 === 0))('on the tape %s', (_, tape) => {
  test('a half-way length is written away from zero', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.constantFrom(1, -1), (steps, sign) => {
        const half = (steps * tape.step + tape.step / 2) * sign
        expect(writeLength(half as Length, tape).off).toBe((sign * tape.step) / 2)
      }),
    )
  })
})

const pieces = [
  '86',
  '1/2',
  ' ',
  '-',
  '−',
  '+',
  "'",
  '"',
  'ft',
  'in',
  'mm',
  'cm',
  'm',
  '½',
  '/',
  '.',
  ',',
  '⁄',
  '”',
  '0',
  '12',
  'e',
  '\u00a0',
  'x',
  '#',
  '٨',
  '²',
]
const scribble = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((list) => list.join('')),
)
test('reading never throws, and answers a whole length or columns inside the text', () => {
  fc.assert(
    fc.property(scribble, fc.constantFrom('in' as const, 'mm' as const, 'cm' as const), (text, units) => {
      const found = readLength(text, units)
      if (found.ok) return Number.isSafeInteger(found.value) && !Object.is(found.value, -0) && Math.abs(found.value) <= furthest
      const { column, end } = found.problem
      return column >= 1 && end >= column && end <= text.length + 1
    }),
    { numRuns: 5000 },
  )
})
test('reading a quantity never throws', () => {
  const kinds = ['mass', 'arealWeight', 'linearWeight', 'force', 'lineLoad', 'moment', 'pressure', 'angle', 'ratio'] as const
  fc.assert(
    fc.property(scribble, fc.constantFrom(...kinds), (text, kind) => {
      const found = readQuantity(text, kind)
      return found.ok ? Number.isFinite(found.value) && !Object.is(found.value, -0) : found.problem.column >= 1
    }),
    { numRuns: 2000 },
  )
})
test('any number is read or refused', () => {
  fc.assert(
    fc.property(fc.double(), (number) => {
      const found = readLength(number, 'in')
      if (!found.ok) return !Number.isFinite(number) || Math.abs(number) > furthest / 25_400_000
      return Math.abs(found.value - number * 25_400_000) <= Math.max(0.5, Math.abs(found.value) * 1e-15)
    }),
  )
})
test('spaces around a number change nothing: the short way for common lengths agrees with the grammar', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 9_999_999 }),
      fc.nat(99),
      fc.constantFrom(2, 4, 8, 16, 32, 64),
      fc.constantFrom(' ', '-'),
      (whole, above, below, join) => {
        const text = `${whole}${join}${above}/${below}`
        const short = readLength(text, 'cm')
        const long = readLength(`${text} `, 'cm')
        expect(short).toEqual(long)
      },
    ),
  )
})
test('sums of what was read are exact, in any order', () => {
  const parts = fc.array(fc.tuple(fc.nat(200), fc.nat(63)), { minLength: 1, maxLength: 200 })
  fc.assert(
    fc.property(parts, (list) => {
      const lengths = list.map(([whole, above]) => read(`${whole} ${above}/64`))
      const sixtyFourths = list.reduce((total, [whole, above]) => total + whole * 64 + above, 0)
      expect(lengths.reduce((total, length) => total + length, 0)).toBe(sixtyFourths * 396_875)
      expect(lengths.toReversed().reduce((total, length) => total + length, 0)).toBe(sixtyFourths * 396_875)
    }),
  )
})

const spaces = fc.integer({ min: 1, max: 300 })
test('spread begins at 0, ends at the total, and its spaces add up to it', () => {
  fc.assert(
    fc.property(anyLength, spaces, (total, n) => {
      const positions = spread(total, n)
      expect([positions.length, positions[0], positions[n]]).toEqual([n + 1, 0, total])
      expect(spacesOf(positions).reduce((sum, space) => sum + space, 0)).toBe(total)
    }),
  )
})
test('spread never turns back, and its spaces differ by at most a nanometre', () => {
  fc.assert(
    fc.property(anyLength, spaces, (total, n) => {
      const found = spacesOf(spread(total, n))
      expect(found.every((space) => space * Math.sign(total) >= 0)).toBe(true)
      expect(Math.max(...found) - Math.min(...found)).toBeLessThanOrEqual(1)
    }),
  )
})
test('every position of spread is the nearest nanometre to its place', () => {
  fc.assert(
    fc.property(anyLength, spaces, (total, n) => {
      for (const [i, position] of spread(total, n).entries()) {
        const twiceOff = 2n * (BigInt(position) * BigInt(n) - BigInt(total) * BigInt(i))
        expect(twiceOff <= BigInt(n) && twiceOff >= -BigInt(n)).toBe(true)
        expect(Object.is(position, -0)).toBe(false)
      }
    }),
  )
})
