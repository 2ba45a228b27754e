import {
  comesTo,
  type Known,
  type Length,
  type LengthReckoning,
  minus,
  number,
  plus,
  type Reckoning,
  sum,
  type Term,
  times,
} from '@evenhem/length'

/** Widths and repeats are sums and quotients of rounded lengths: less than this part of one more is none. */
const hair = 1e-6
/** The whole number of steps that holds all of it. */
export const stepsUp = (value: number): number => Math.ceil(value - hair)

/** A length that knows where it stands. */
export type Size = Known<Length> | LengthReckoning

/** A reckoning whose value is a plain number. */
const ratio = (name: string, what: string, how: 'sum' | 'divided', ...terms: readonly Term[]): Reckoning => ({
  name,
  what,
  value: comesTo(how, terms, 'ratio') as number,
  unit: 'ratio',
  how,
  terms,
})
/** A number found by a rule that its words tell. */
const byRule = (
  name: string,
  what: string,
  unit: 'ratio' | 'count',
  value: number,
  source: string,
  ...terms: readonly Term[]
): Reckoning => ({ name, what, value, unit, how: 'formula', terms, source })

export type PercentMeans = 'of the width' | 'beyond the width'
/**
 * Fullness from per cent. 200 per cent of the width is 2 (UFGS-12491N, 2.2.1.1; read), 200 per cent beyond it 3 (interior design study cards; read).
 */
export const fullnessOfPercent = (name: string, percent: Known<number>, means: PercentMeans): Reckoning =>
  means === 'of the width'
    ? ratio(name, 'drapery/fullness', 'divided', plus('drapery/fullness-percent', percent), plus('drapery/hundred', number(100)))
    : byRule(
        name,
        'drapery/fullness',
        'ratio',
        1 + percent.value / 100,
        'drapery/percent-beyond',
        plus('drapery/fullness-percent', percent),
      )

/** How wide a panel is finished: what it covers of the rod, half the overlap with it, and its own return (UFGS-12491N, 2.2.1.1; Woodcock, 2019; both read). */
export const finishedOfShare = (name: string, share: Size, back: Size): LengthReckoning =>
  sum(name, 'drapery/finished-width', plus('drapery/share', share), plus('drapery/return-width', back))

/** What a width of cloth gives: its width less a joining seam on each edge (Merrick & Day, Encyclopaedia of Curtains, 1996, pp. 116-117; read). */
export const usableWidth = (name: string, width: Size, seam: Size): LengthReckoning =>
  sum(
    name,
    'drapery/usable-width',
    plus('drapery/fabric-width', width),
    minus('drapery/seam-edge', seam),
    minus('drapery/seam-edge', seam),
  )

/** The flat width that fullness asks for, last, after what leads to it. Of the whole finished width: UFGS-12491N, 2.2.1.1; read. */
export const flatOfFinished = (at: string, finished: Size, fullness: Known<number>): readonly [LengthReckoning] => [
  times(`${at}#flat-asked`, 'drapery/flat-asked', plus('drapery/finished-width', finished), plus('drapery/fullness', fullness)),
]
/** The same when fullness is only of what a panel covers and its return is added as it is (general how-to article, case widths-04; read). */
export function flatOfCovered(
  at: string,
  finished: Size,
  back: Size,
  fullness: Known<number>,
): readonly [LengthReckoning, LengthReckoning, LengthReckoning] {
  const face = sum(
    `${at}#face-width`,
    'drapery/face-width',
    plus('drapery/finished-width', finished),
    minus('drapery/return-width', back),
  )
  const full = times(`${at}#face-full`, 'drapery/face-full', plus('drapery/face-width', face), plus('drapery/fullness', fullness))
  const flat = sum(`${at}#flat-asked`, 'drapery/flat-asked', plus('drapery/face-full', full), plus('drapery/return-width', back))
  return [face, full, flat]
}

/** What both side hems of a panel take of the cloth: each so many layers. */
export const sideHemsOf = (name: string, sideHem: Size, layers: Known<number>): LengthReckoning =>
  times(
    name,
    'drapery/side-hems',
    plus('drapery/side-hem', sideHem),
    plus('drapery/both-sides', number(2)),
    plus('drapery/cloth-layers', layers),
  )

/** How wide the cloth of a panel is cut: its flat width, and what its side hems and edges take. */
export const cutWidth = (name: string, flat: Size, ...allowances: readonly Term[]): LengthReckoning =>
  sum(name, 'drapery/cut-width', plus('drapery/flat-width', flat), ...allowances)

/** How many widths that is, not rounded. */
export const widthsExact = (name: string, cut: Size, usable: Size): Reckoning =>
  ratio(name, 'drapery/widths-exact', 'divided', plus('drapery/cut-width', cut), plus('drapery/usable-width', usable))
/** The widths of several panels together. */
export const widthsTogether = (name: string, what: string, each: readonly Reckoning[]): Reckoning =>
  ratio(name, what, 'sum', ...each.map((one) => plus(one.what, one)))

export type WidthsRounded = 'up' | 'half up' | 'nearest'
const roundings: Readonly<Record<WidthsRounded, { readonly by: (exact: number) => number; readonly source: string }>> = {
  up: { by: stepsUp, source: 'drapery/widths-up' },
  'half up': { by: (exact) => stepsUp(exact * 2) / 2, source: 'drapery/widths-half-up' },
  nearest: { by: (exact) => Math.max(1, Math.round(exact)), source: 'drapery/widths-nearest' },
}
/**
 * Widths as they are used. Up to the whole: most sources. Up to the half: full or half widths, UFGS-12491N, 2.2.1.1. To the nearest whole, a half
 * upward and at least one: Johnston, New Zealand Department of Agriculture, 1955. All read.
 */
export function roundedWidths(name: string, exact: Reckoning, rule: WidthsRounded): Reckoning {
  const { by, source } = roundings[rule]
  return byRule(name, 'drapery/widths', 'ratio', by(exact.value), source, plus('drapery/widths-exact', exact))
}

/** How many lengths are cut for so many widths: a half width is cut off a whole length, and two halves come from one. */
export const cutsFor = (name: string, widths: Reckoning): Reckoning =>
  byRule(name, 'drapery/cuts', 'count', stepsUp(widths.value), 'drapery/cuts-for-widths', plus('drapery/widths', widths))
