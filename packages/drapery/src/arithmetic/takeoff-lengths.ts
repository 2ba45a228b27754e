import {
  formula,
  given,
  type Known,
  type LengthReckoning,
  minus,
  number,
  plus,
  type Reckoning,
  sum,
  type Term,
  times,
  wholeNanometres,
} from '@evenhem/length'
import { type Size, stepsUp } from './takeoff-widths.ts'

/** What a hem or a heading takes of the cloth: its height, once for each layer. */
export const turned = (name: string, what: string, height: Size, layers: Known<number>): LengthReckoning =>
  times(name, what, plus('drapery/turned-height', height), plus('drapery/cloth-layers', layers))

/** The length that must be cut: finished length and what is allowed beyond it. */
export const lengthNeeded = (name: string, finished: Size, ...allowances: readonly Term[]): LengthReckoning =>
  sum(name, 'drapery/length-needed', plus('drapery/finished-length', finished), ...allowances)

/** A lining is cut from the size of the fabric, so much shorter or narrower. */
export const lessThanFace = (name: string, what: string, face: Size, less: Size): LengthReckoning =>
  sum(name, what, plus('drapery/size-of-face', face), minus('drapery/less-than-face', less))

/** How many repeats hold a length: rounded up, never down (Merrick & Day, Encyclopaedia of Curtains, 1996, p. 116; read). */
export const repeatsIn = (name: string, length: Size, repeat: Size): Reckoning => ({
  name,
  what: 'drapery/repeats',
  value: stepsUp(length.value / repeat.value),
  unit: 'count',
  how: 'formula',
  terms: [plus('drapery/length-needed', length), plus('drapery/repeat', repeat)],
  source: 'drapery/repeats-up',
})
/** A cut of whole repeats. */
export const cutOfRepeats = (name: string, repeats: Reckoning, repeat: Size): LengthReckoning =>
  times(name, 'drapery/cut-length', plus('drapery/repeat', repeat), plus('drapery/repeats', repeats))
/** The quick way: each cut is one repeat longer, whatever its length (general sewing article, case repeat-05; read). */
export const cutAndRepeat = (name: string, needed: Size, repeat: Size): LengthReckoning =>
  sum(name, 'drapery/cut-length', plus('drapery/length-needed', needed), plus('drapery/repeat', repeat))
/** A cut of cloth without a repeat. */
export const cutAsNeeded = (name: string, needed: Size): LengthReckoning =>
  given(name, 'drapery/cut-length', plus('drapery/length-needed', needed))

/** What a cut is longer than what is needed of it; negative: it is too short. */
export const restOfCut = (name: string, cut: Size, needed: Size): LengthReckoning =>
  sum(name, 'drapery/rest-of-cut', plus('drapery/cut-length', cut), minus('drapery/length-needed', needed))

export type HalfDrop = 'half a repeat once' | 'one repeat once' | 'half a repeat on alternate cuts'
/**
 * What a half-drop match adds to the cuts of one treatment. Half a repeat once, where the rest of a cut is less than that: cut all A lengths, drop
 * half a repeat, cut the B lengths (soft-furnishing forum, cases half-drop-01 and -02; read). The other two rules are named in the same reference, without
 * a case that could be read. One cut alone is matched with nothing.
 */
export function halfDropExtra(
  name: string,
  rule: HalfDrop,
  { cuts, rest, repeat }: { readonly cuts: Reckoning; readonly rest: Size; readonly repeat: Size },
): LengthReckoning {
  const what = 'drapery/half-drop-extra'
  if (cuts.value < 2) return given(name, what, plus('drapery/nothing', number(0)))
  if (rule === 'one repeat once') return given(name, what, plus('drapery/repeat', repeat))
  const terms = [plus('drapery/repeat', repeat), plus('drapery/cuts', cuts)]
  const half = repeat.value / 2
  if (rule === 'half a repeat on alternate cuts')
    return formula(name, what, half * Math.floor(cuts.value / 2), 'drapery/half-drop-alternate', ...terms)
  const extra = rest.value >= wholeNanometres(half) ? 0 : half
  return formula(name, what, extra, 'drapery/half-drop-once', ...terms, plus('drapery/rest-of-cut', rest))
}
