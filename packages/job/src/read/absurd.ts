import { type BareUnit, type Length, readLength, type Tape, tapes, type Written, writeLength } from '@evenhem/length'
import { error, type Finding } from './finding.ts'
import type { Pointer } from './pointers.ts'

/** Between what a length of its place may be without being a mistake, and how the schema writes it. */
export interface Plausible {
  readonly least: Length
  readonly most: Length
  readonly says: readonly [string, string]
}

/** The range of a schema. Its lengths carry their unit; one that does not is refused by a TypeError, when the schema is taken in. */
export function plausible({ least, most }: { readonly least: string; readonly most: string }): Plausible {
  const [low, high] = [least, most].map((text) => {
    const read = readLength(text, 'in')
    if (!read.ok || !/[a-z]/.test(text))
      throw new TypeError(`Unexpected ${text} in x-evenhem-plausible, expected a length with its unit`)
    return read.value
  }) as [Length, Length]
  return { least: low, most: high, says: [least, most] }
}

const units = ['mm', 'cm', 'in', 'ft'] as const
// The first tape that shows it exactly; else the last.
const tapesOf = {
  in: [tapes.sixteenths],
  mm: [tapes.wholeMillimetres, tapes.tenthsOfMillimetres],
  cm: [tapes.centimetresToTheMillimetre],
} as const satisfies Readonly<Record<BareUnit, readonly [...Tape[], Tape]>>

/** A length in the job's unit, and whether that is all of it. */
function shown(length: Length, units: BareUnit): { readonly text: string; readonly equals: '=' | '≈' } {
  const all = tapesOf[units].map((tape) => writeLength(length, tape))
  const { text, off } = all.find((one) => one.off === 0) ?? (all.at(-1) as Written)
  return { text: units === 'in' ? `${text} in` : text, equals: off === 0 ? '=' : '≈' }
}

/** The number of a length without its unit; undefined when it has two, as 7 ft 2 in. */
const bareNumber = (written: string | number): string | undefined =>
  /^\s*([-−+]?[\d\s./⁄-]*\d)\s*[^\d\s]*\s*$/u.exec(String(written))?.[1]

/** What the number would be in another unit, where that makes it plausible. */
function guesses(written: string | number, range: Plausible, ours: BareUnit): readonly string[] {
  const number = bareNumber(written)
  return units.flatMap((unit) => {
    const read = number === undefined ? undefined : readLength(`${number} ${unit}`, ours)
    if (!read?.ok || read.value < range.least || read.value > range.most) return []
    const { text, equals } = shown(read.value, ours)
    return unit === ours ? [text] : [`${number} ${unit} ${equals} ${text}`]
  })
}

/** That a length can hardly be meant for its place, with the unit that was probably forgotten. */
export function implausible(written: string | number, read: Length, range: Plausible, units: BareUnit, at: Pointer): Finding {
  const [guess, ...others] = guesses(written, range, units)
  const { text, equals } = shown(read, units)
  const values = { got: String(written), is: `${equals} ${text}`, least: range.says[0], most: range.says[1] }
  if (guess === undefined) return error('job/absurd-length', { value: at }, values)
  const code = others.length > 0 ? 'job/absurd-length-units' : 'job/absurd-length-unit'
  return error(code, { value: at }, { ...values, guess: [guess, ...others].join(', ') })
}
