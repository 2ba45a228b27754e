import { type BareUnit, type Length, readLength, type Tape, tapes, writeLength } from '@evenhem/length'
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
const tapeOf = {
  in: tapes.sixteenths,
  mm: tapes.tenthsOfMillimetres,
  cm: tapes.centimetresToTheMillimetre,
} as const satisfies Readonly<Record<BareUnit, Tape>>

const shown = (length: Length, units: BareUnit): string => {
  const { text, off } = writeLength(length, tapeOf[units])
  return `${off === 0 ? '' : '≈ '}${text}${units === 'in' ? ' in' : ''}`
}

/** The number of a length without its unit; undefined when it has two, as 7 ft 2 in. */
const bareNumber = (written: string | number): string | undefined =>
  /^\s*([-−+]?[\d\s./⁄-]*\d)\s*[^\d\s]*\s*$/u.exec(String(written))?.[1]

/** What the number would be in another unit, where that makes it plausible. */
function guesses(written: string | number, range: Plausible, in_: BareUnit): readonly string[] {
  const number = bareNumber(written)
  return units.flatMap((unit) => {
    const read = number === undefined ? undefined : readLength(`${number} ${unit}`, in_)
    return read?.ok && read.value >= range.least && read.value <= range.most
      ? [`${number} ${unit} = ${shown(read.value, in_)}`]
      : []
  })
}

/** That a length can hardly be meant for its place, with the unit that was probably forgotten. */
export function implausible(written: string | number, range: Plausible, units: BareUnit, at: Pointer): Finding {
  const [guess, ...others] = guesses(written, range, units)
  const read = readLength(written, units)
  const values = { got: String(written), is: read.ok ? shown(read.value, units) : '', least: range.says[0], most: range.says[1] }
  if (guess === undefined) return error('job/absurd-length', { value: at }, values)
  return error(
    others.length > 0 ? 'job/absurd-length-units' : 'job/absurd-length-unit',
    { value: at },
    { ...values, guess: [guess, ...others].join(', ') },
  )
}
