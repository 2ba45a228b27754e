import { centimetre, foot, inch, type Length, millimetre } from './length.ts'
import type { ReadingUnit, Tape } from './written.ts'

const tape = (unit: ReadingUnit, of: Length, parts: number): Tape => ({ unit, step: (of / parts) as Length })

/** The tapes people read, by their smallest step. */
export const tapes = {
  quarters: tape('in', inch, 4),
  eighths: tape('in', inch, 8),
  sixteenths: tape('in', inch, 16),
  thirtySeconds: tape('in', inch, 32),
  sixtyFourths: tape('in', inch, 64),
  feetAndEighths: tape('ft-in', inch, 8),
  feetAndSixteenths: tape('ft-in', inch, 16),
  feetAndThirtySeconds: tape('ft-in', inch, 32),
  wholeMillimetres: tape('mm', millimetre, 1),
  halfMillimetres: tape('mm', millimetre, 2),
  tenthsOfMillimetres: tape('mm', millimetre, 10),
  centimetresToTheMillimetre: tape('cm', centimetre, 10),
} as const satisfies Readonly<Record<string, Tape>>

/** Nanometres in one of what a tape counts: inches on a tape of feet and inches too. */
export const unitOf = { in: inch, 'ft-in': inch, mm: millimetre, cm: centimetre } as const satisfies Readonly<
  Record<ReadingUnit, Length>
>
/** Inches in a foot. */
export const inchesInAFoot = foot / inch
