/**
 * What is said, in English, about text that is no length or quantity. By code; ICU message form, filled with the problem's `values`.
 * `help` says why it is refused, or how else to write it.
 */
export const lengthWords = {
  'length/empty': { says: 'Unexpected empty text, expected a number; write it like {example}.' },
  'length/too-long': { says: 'Unexpected {count} characters, expected at most {most}; write the number alone.' },
  'length/not-finite': { says: 'Unexpected {got}, expected a finite number; write it like {example}.' },
  'length/number-expected': { says: 'Unexpected {got}, expected a number; write it like {example}.' },
  'length/unfinished': { says: 'Unexpected end after {before}, expected a number; write the rest of it.' },
  'length/other-digits': {
    says: 'Unexpected {got}, expected the digits 0 to 9; write it with those.',
    help: 'Digits of other scripts, and raised or lowered digits, are easily taken for one another.',
  },
  'length/character': { says: 'Unexpected {got}, expected a number and its unit only; take it out.' },
  'length/exponent': { says: 'Unexpected {got}, expected plain digits; write the number out.' },
  'length/comma': { says: 'Unexpected comma in {got}, expected a point before decimals and no other mark; write {meant}.' },
  'length/comma-either': {
    says: 'Unexpected comma in {got}, expected a point before decimals and no other mark; write {point} or {plain}, whichever is meant.',
    help: 'Some countries write a comma before decimals, others between thousands, so it is not guessed.',
  },
  'length/point': { says: 'Unexpected point in {got}, expected a digit after it; write the decimals or take the point out.' },
  'length/second-point': { says: 'Unexpected second point in {got}, expected one; write one number.' },
  'length/two-numbers': {
    says: 'Unexpected {got} after {before}, expected a fraction, a unit or nothing; write one number, like {example}.',
    help: 'Digits are not set apart in groups, and feet need their mark: 7 ft 2.',
  },
  'length/left-over': { says: 'Unexpected {got} after {before}, expected nothing more; take it out.' },
  'length/range': { says: 'Unexpected {got} after {before}, expected one number; write the one that holds.' },
  'length/minus-inside': {
    says: 'Unexpected {got} after {before}, expected a space or a hyphen without spaces; write {meant} if nothing is to be taken away.',
    help: 'A minus sign stands only in front, and then counts for the whole: −7 ft 2 in is 86 inches below zero.',
  },
  'length/second-sign': {
    says: 'Unexpected second sign {got}, expected one in front; leave one.',
    help: 'A sign in front counts for the whole: −7 ft 2 in is 86 inches below zero.',
  },
  'length/fraction-unfinished': { says: 'Unexpected fraction {got}, expected whole digits above and below; write it like 1/2.' },
  'length/second-slash': { says: 'Unexpected second slash after {before}, expected one; write one fraction.' },
  'length/zero-denominator': {
    says: 'Unexpected 0 below the slash in {got}, expected 1 or more; write the fraction that was read.',
  },
  'length/denominator': { says: 'Unexpected {got} below the slash, expected at most {most}; write decimals instead.' },
  'length/decimal-in-fraction': {
    says: 'Unexpected point in the fraction {got}, expected whole digits above and below; write decimals or a fraction.',
  },
  'length/decimal-and-fraction': {
    says: 'Unexpected fraction {got} after {before}, expected decimals or a fraction, not both; write one of them.',
  },
  'length/improper-fraction': { says: 'Unexpected {got}, expected a fraction less than one; write {meant} if that is meant.' },
  'length/lost-space': {
    says: 'Unexpected {got}, expected a fraction less than one; write {split} with its space, or {meant} if that is meant.',
    help: 'A copied 86½ often arrives as 861/2.',
  },
  'length/unit-missing': { says: 'Unexpected {got} without a unit, expected one of {units}; write the unit behind it.' },
  'length/unknown-unit': { says: 'Unexpected unit {got}, expected one of {units}; write one of these.' },
  'length/unit-misspelt': { says: 'Unexpected unit {got}, expected one of {units}; did you mean {meant}?' },
  'length/linear-weight': {
    says: 'Unexpected {got}, expected the weight of an area, one of {units}; did you mean {meant}?',
    help: 'Cloth sold by the weight of a running length has no weight of an area until its width is known: divide by the width.',
  },
  'length/mixed-units': {
    says: 'Unexpected {got} after {before}, expected one unit; write the whole in one unit.',
    help: 'Only inches go with feet, and ounces with pounds.',
  },
  'length/first-not-whole': {
    says: 'Unexpected {got} before {unit}, expected a whole number there; write the fraction with the {unit}.',
  },
  'length/carry': {
    says: 'Unexpected {got} after {before}, expected less than {limit}; look at the reading again, or carry it over.',
  },
  'length/too-large': { says: 'Unexpected {got}, expected no more than {most} either way; look at the number and its unit.' },
} as const satisfies Readonly<Record<string, { readonly says: string; readonly help?: string }>>

/** A code that `lengthWords` has a sentence for. */
export type LengthCode = keyof typeof lengthWords
