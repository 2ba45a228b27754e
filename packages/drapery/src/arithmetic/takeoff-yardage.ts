import {
  comesTo,
  formula,
  given,
  type Known,
  type Length,
  type LengthReckoning,
  metre,
  most,
  plus,
  type Reckoning,
  sum,
  times,
  twelveDigits,
  yard,
} from '@evenhem/length'
import { type Size, stepsUp } from './takeoff-widths.ts'

/** All cuts of a treatment, one after the other. */
export const cutsTogether = (name: string, cut: Size, cuts: Reckoning): LengthReckoning =>
  times(name, 'drapery/cuts-together', plus('drapery/cut-length', cut), plus('drapery/cuts', cuts))

/** What is needed of a fabric for one treatment: its cuts, and what a half drop adds. */
export const clothNeeded = (name: string, cuts: Size, halfDrop?: Size): LengthReckoning =>
  sum(
    name,
    'drapery/cloth-needed',
    plus('drapery/cuts-together', cuts),
    ...(halfDrop ? [plus('drapery/half-drop-extra', halfDrop)] : []),
  )

export type Placing = 'nothing' | 'one repeat' | 'a yard or a repeat'
/**
 * What is added once to an order, so that the pattern can be placed: one repeat (sewing and fabric how-to, case repeat-01; read), or the longer of a yard and
 * a repeat (Woodcock and DiGuglielmo, workroom training article, case repeat-09; read). Undefined for nothing.
 */
export function placingExtra(name: string, rule: Placing, repeat: Size): LengthReckoning | undefined {
  if (rule === 'nothing') return undefined
  const terms = rule === 'one repeat' ? [] : [plus('drapery/yard', { value: yard, from: `number:${yard}` })]
  return most(name, 'drapery/placing-extra', ...terms, plus('drapery/repeat', repeat))
}

/** The steps in which cloth is sold; undefined: any length. */
export const soldSteps = {
  'any length': undefined,
  'quarter yard': (yard / 4) as Length,
  'third of a yard': (yard / 3) as Length,
  'half yard': (yard / 2) as Length,
  yard,
  'half metre': (metre / 2) as Length,
  metre,
} as const
export type SoldBy = keyof typeof soldSteps

/** What is ordered: rounded up to what the supplier sells, never down. */
export const clothOrdered = (name: string, wanted: Size, step: Length | undefined): LengthReckoning =>
  step === undefined
    ? given(name, 'drapery/cloth-ordered', plus('drapery/cloth-wanted', wanted))
    : formula(
        name,
        'drapery/cloth-ordered',
        stepsUp(wanted.value / step) * step,
        'drapery/sold-up',
        plus('drapery/cloth-wanted', wanted),
        plus('drapery/sold-step', { value: step, from: `number:${step}` }),
      )

/** What a piece of cloth weighs, kg, from its weight by area, kg/m², and the size that it is cut to, hems and all. */
export const clothWeight = (name: string, areal: Known<number>, width: Size, length: Size): Reckoning => ({
  name,
  what: 'drapery/cloth-weight',
  value: twelveDigits(areal.value * (width.value / metre) * (length.value / metre)),
  unit: 'mass',
  how: 'formula',
  terms: [plus('drapery/areal-weight', areal), plus('drapery/cut-width', width), plus('drapery/length-needed', length)],
  source: 'drapery/weight-of-area',
})
/** What a panel weighs with its lining and interlining. */
export const panelWeight = (name: string, cloths: readonly Reckoning[]): Reckoning => {
  const terms = cloths.map((each) => plus(each.what, each))
  const value = comesTo('sum', terms, 'mass') as number
  return { name, what: 'drapery/panel-weight', value, unit: 'mass', how: 'sum', terms }
}
