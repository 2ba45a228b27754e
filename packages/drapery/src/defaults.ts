import { inch, type Known, type Length } from '@evenhem/length'

/** A default of the trade: what holds where the workroom says nothing. */
export interface Default {
  readonly value: Length
  readonly basis: 'read' | 'memory' | 'common practice'
  readonly source: string
}
const eighths = (n: number): Length => ((n * inch) / 8) as Length

/** Defaults by the name of the workroom's rule that replaces them. A reckoning names them `trade:<name>`. */
export const defaults = {
  heightsAgree: { value: eighths(1), basis: 'common practice', source: 'no source' },
  returnShort: { value: eighths(1), basis: 'common practice', source: 'no source' },
  returnOver: { value: eighths(8), basis: 'common practice', source: 'no source' },
  widthOff: { value: eighths(4), basis: 'common practice', source: 'no source' },
  lengthOff: {
    value: eighths(2),
    basis: 'read',
    source: 'UFGS 12 22 00, paragraph 2.2.1.1, US Department of Defense: plus or minus 1/4 in (6 mm) after tabling',
  },
  returnUnder: { value: eighths(1), basis: 'common practice', source: 'no source' },
  returnWider: { value: eighths(4), basis: 'common practice', source: 'no source' },
  pinRange: {
    value: eighths(4),
    basis: 'memory',
    source: 'pins on rods with rings between 1/4 and 3/4 in; from memory, no source',
  },
  pinOff: { value: (inch / 16) as Length, basis: 'common practice', source: 'no source' },
  pairOff: { value: eighths(1), basis: 'common practice', source: 'no source' },
} as const satisfies Readonly<Record<string, Default>>
export type RuleName = keyof typeof defaults

/** What a rule of the workroom comes to for this job: its own value, or the trade's default. */
export function ruleOf(
  job: { readonly workroom?: { readonly rules?: Readonly<Partial<Record<RuleName, Length>>> } },
  name: RuleName,
): Known<Length> {
  const own = job.workroom?.rules?.[name]
  return own === undefined
    ? { value: defaults[name].value, from: `trade:${name}` }
    : { value: own, from: `/job/workroom/rules/${name}` }
}
