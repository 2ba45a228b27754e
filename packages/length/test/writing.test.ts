import { foot, inch, type Length, millimetre, spokenLength, type Tape, tapes, writeLength } from '@evenhem/length'
import { describe, expect, test } from 'vitest'

const sixteenth = inch / 16
const written: readonly (readonly [nanometres: number, tape: Tape, text: string, off: number])[] = [
  [86.5 * inch, tapes.sixteenths, '86 1/2', 0],
  [86 * inch, tapes.sixteenths, '86', 0],
  [0, tapes.sixteenths, '0', 0],
  [(-5 / 8) * inch, tapes.eighths, '−5/8', 0],
  [-86.5 * inch, tapes.eighths, '−86 1/2', 0],
  [inch - 1, tapes.eighths, '1', 1],
  [86 * inch + (31 * inch) / 32, tapes.thirtySeconds, '86 31/32', 0],
  [86 * inch + (31 * inch) / 32, tapes.sixteenths, '87', inch / 32],
  [86 * inch + (1 * inch) / 32, tapes.sixteenths, '86 1/16', inch / 32],
  [86 * inch + (1 * inch) / 32 - 1, tapes.sixteenths, '86', 1 - inch / 32],
  [-(86 * inch + (1 * inch) / 32), tapes.sixteenths, '−86 1/16', -inch / 32],
  [-sixteenth / 2 + 1, tapes.sixteenths, '0', sixteenth / 2 - 1],
  [-sixteenth / 2, tapes.sixteenths, '−1/16', -sixteenth / 2],
  [-0, tapes.sixteenths, '0', 0],
  [(inch / 64) * 3, tapes.sixtyFourths, '3/64', 0],
  [7 * foot + 2.5 * inch, tapes.feetAndSixteenths, '7 ft 2 1/2 in', 0],
  [7 * foot, tapes.feetAndSixteenths, '7 ft 0 in', 0],
  [7 * foot + inch / 2, tapes.feetAndSixteenths, '7 ft 0 1/2 in', 0],
  [2.5 * inch, tapes.feetAndSixteenths, '2 1/2 in', 0],
  [inch / 2, tapes.feetAndSixteenths, '1/2 in', 0],
  [0, tapes.feetAndSixteenths, '0 in', 0],
  [-(7 * foot + 2.5 * inch), tapes.feetAndSixteenths, '−7 ft 2 1/2 in', 0],
  [11 * inch + (31 * inch) / 32, tapes.feetAndSixteenths, '1 ft 0 in', inch / 32],
  [7 * foot + 11 * inch + (31 * inch) / 32, tapes.feetAndSixteenths, '8 ft 0 in', inch / 32],
  [2197 * millimetre, tapes.wholeMillimetres, '2197 mm', 0],
  [86.5 * inch, tapes.wholeMillimetres, '2197 mm', -100_000],
  [1_500_000, tapes.wholeMillimetres, '2 mm', 500_000],
  [-1_500_000, tapes.wholeMillimetres, '−2 mm', -500_000],
  [-499_999, tapes.wholeMillimetres, '0 mm', 499_999],
  [1_500_000, tapes.halfMillimetres, '1.5 mm', 0],
  [2_000_000, tapes.halfMillimetres, '2.0 mm', 0],
  [86.5 * inch, tapes.tenthsOfMillimetres, '2197.1 mm', 0],
  [2197 * millimetre, tapes.centimetresToTheMillimetre, '219.7 cm', 0],
  [2200 * millimetre, tapes.centimetresToTheMillimetre, '220.0 cm', 0],
  [5 * millimetre, tapes.centimetresToTheMillimetre, '0.5 cm', 0],
  [-3 * millimetre, tapes.centimetresToTheMillimetre, '−0.3 cm', 0],
  [inch / 16, { unit: 'mm', step: sixteenth as Length }, '1.5875 mm', 0],
  [1, { unit: 'cm', step: 1 as Length }, '0.0000001 cm', 0],
  [2197 * millimetre, { unit: 'mm', step: (5 * millimetre) as Length }, '2195 mm', -2 * millimetre],
  [9_000_000_000_000_000, tapes.wholeMillimetres, '9000000000 mm', 0],
]
describe('a length is written as its tape shows it, and says what rounding added', () => {
  test.each(written)('%d on %j is %s', (length, tape, text, off) => {
    expect(writeLength(length as Length, tape)).toMatchObject({ text, off })
  })
})

test('the parts of what is written let a drawing build the fraction', () => {
  expect(writeLength((7 * foot + 2.5 * inch) as Length, tapes.feetAndEighths)).toEqual({
    text: '7 ft 2 1/2 in',
    negative: false,
    feet: 7,
    whole: '2',
    numerator: 1,
    denominator: 2,
    unit: 'ft-in',
    off: 0,
  })
  expect(writeLength((-inch / 2) as Length, tapes.eighths)).toEqual({
    text: '−1/2',
    negative: true,
    whole: '',
    numerator: 1,
    denominator: 2,
    unit: 'in',
    off: 0,
  })
  expect(writeLength((2197 * millimetre) as Length, tapes.centimetresToTheMillimetre)).toEqual({
    text: '219.7 cm',
    negative: false,
    whole: '219.7',
    unit: 'cm',
    off: 0,
  })
})
test('which way it was rounded follows from `off`: more is shown, less is shown, exactly', () => {
  const off = (nanometres: number) => Math.sign(writeLength(nanometres as Length, tapes.wholeMillimetres).off)
  expect([1_700_000, 1_300_000, 1_000_000].map(off)).toEqual([1, -1, 0])
})
test('a tape that fits no unit, and what is no length, are refused loudly', () => {
  const write = (length: number, unit: 'in' | 'mm', step: number) => () =>
    writeLength(length as Length, { unit, step: step as Length })
  expect(write(inch, 'in', 1_000_000)).toThrow(
    'Unexpected step of 1000000 nm, expected a whole part of an inch; use one of the tapes',
  )
  expect(write(inch, 'mm', 0.5)).toThrow('Unexpected step of 0.5 nm, expected whole nanometres; use one of the tapes')
  expect(write(inch, 'mm', 0)).toThrow('Unexpected step of 0 nm')
  expect(write(inch, 'in', 0)).toThrow('Unexpected step of 0 nm')
  expect(write(Number.NaN, 'in', inch)).toThrow('Unexpected length NaN')
  expect(write(9_000_000_000_000_001, 'mm', millimetre)).toThrow('within ±9000 km')
})

const spoken: readonly (readonly [nanometres: number, tape: Tape, words: string])[] = [
  [93 * inch + inch / 8, tapes.eighths, '93 and one eighth inches'],
  [93 * inch + (inch / 8) * 3, tapes.eighths, '93 and three eighths inches'],
  [86.5 * inch, tapes.eighths, '86 and one half inches'],
  [86.75 * inch, tapes.eighths, '86 and three quarters inches'],
  [(inch / 8) * -5, tapes.eighths, 'minus five eighths inch'],
  [(inch / 16) * 13, tapes.sixteenths, 'thirteen sixteenths inch'],
  [(inch / 32) * 21, tapes.thirtySeconds, 'twenty-one thirty-seconds inch'],
  [(inch / 64) * 43, tapes.sixtyFourths, 'forty-three sixty-fourths inch'],
  [inch, tapes.eighths, '1 inch'],
  [1.5 * inch, tapes.eighths, '1 and one half inches'],
  [0, tapes.eighths, '0 inches'],
  [7 * foot + 2.5 * inch, tapes.feetAndEighths, '7 feet 2 and one half inches'],
  [foot + inch, tapes.feetAndEighths, '1 foot 1 inch'],
  [7 * foot, tapes.feetAndEighths, '7 feet'],
  [7 * foot + inch / 2, tapes.feetAndEighths, '7 feet one half inch'],
  [inch / 2, tapes.feetAndEighths, 'one half inch'],
  [2197 * millimetre, tapes.wholeMillimetres, '2197 millimetres'],
  [-millimetre, tapes.wholeMillimetres, 'minus 1 millimetre'],
  [2197 * millimetre, tapes.centimetresToTheMillimetre, '219.7 centimetres'],
  [inch / 10, { unit: 'in', step: (inch / 10) as Length }, 'one over 10 inch'],
]
describe('a screen reader says a length in words', () => {
  test.each(spoken)('%d on %j is “%s”', (length, tape, words) => {
    expect(spokenLength(writeLength(length as Length, tape), 'en')).toBe(words)
  })
})

test.each([
  [93.125, '93 pulgadas y un octavo'],
  [1.5, '1 pulgada y media'],
  [0.5, 'media pulgada'],
  [-0.625, 'menos 5 octavos de pulgada'],
  [0, '0 pulgadas'],
])('%s inches are spoken in Spanish as “%s”', (inches, says) =>
  expect(spokenLength(writeLength((inches * inch) as Length, tapes.sixteenths), 'es')).toBe(says),
)
