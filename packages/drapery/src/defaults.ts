import type { JobHead } from '@evenhem/job'
import { inch, type Known, type Length, number } from '@evenhem/length'

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
  openingOff: { value: eighths(1), basis: 'common practice', source: 'no source' },
  returnUnder: { value: eighths(1), basis: 'common practice', source: 'no source' },
  returnWider: { value: eighths(4), basis: 'common practice', source: 'no source' },
  pinRange: {
    value: eighths(4),
    basis: 'memory',
    source: 'pins on rods with rings between 1/4 and 3/4 in; from memory, no source',
  },
  pinOff: { value: (inch / 16) as Length, basis: 'common practice', source: 'no source' },
  pairOff: { value: eighths(1), basis: 'common practice', source: 'no source' },
  obstacleGap: { value: eighths(0), basis: 'common practice', source: 'no source' },
  heaterGap: {
    value: eighths(48),
    basis: 'memory',
    source: "clear of a hydronic heater by 6 in; from memory, its maker's figure wins",
  },
  stoolGap: { value: eighths(8), basis: 'common practice', source: 'no source' },
  bracketEdge: { value: eighths(0), basis: 'common practice', source: 'no source' },
  liftIn: { value: eighths(3), basis: 'memory', source: '3/8 to 1/2 in above the rod; from memory, no source' },
  spaceMost: { value: eighths(40), basis: 'common practice', source: 'no source' },
  spacesAgree: { value: eighths(2), basis: 'common practice', source: 'no source' },
  roomHeights: { value: eighths(1), basis: 'common practice', source: 'no source' },
  splicePlace: {
    value: eighths(16),
    basis: 'memory',
    source: 'a splice belongs at a support; how near is from memory, no source',
  },
  ladderHeight: { value: eighths(960), basis: 'common practice', source: 'no source' },
  pinLeast: {
    value: eighths(2),
    basis: 'memory',
    source: 'pins on rods with rings between 1/4 and 3/4 in; from memory, no source',
  },
  pinMost: {
    value: eighths(6),
    basis: 'memory',
    source: 'pins on rods with rings between 1/4 and 3/4 in; from memory, no source',
  },
  hemEven: { value: eighths(1), basis: 'common practice', source: 'no source' },
  pinStep: { value: eighths(1), basis: 'memory', source: 'pins in steps of 1/8 in, 1/16 with patience; from memory, no source' },
  pinsNext: { value: eighths(1), basis: 'memory', source: 'neighbouring pins at most 1/8 in apart; from memory, no source' },
  pinsMeet: {
    value: (inch / 16) as Length,
    basis: 'memory',
    source: 'leading edges of a pair alike to 1/16 in; from memory, no source',
  },
  pinBelow: { value: eighths(4), basis: 'memory', source: 'pins to 1/2 in above the lower edge of the heading; from memory' },
  holeBeside: { value: eighths(3), basis: 'memory', source: 'a new screw hole 3/8 in from the old one; from memory, no source' },
  anchorHole: { value: eighths(4), basis: 'memory', source: "1/2 in for a toggle; from memory, the anchor's own figure wins" },
  anchorBeside: { value: eighths(2), basis: 'memory', source: 'a new anchor its hole and 1/4 in from the old one; from memory' },
  supportInLine: { value: (inch / 16) as Length, basis: 'common practice', source: 'no source' },
  layerGap: { value: eighths(16), basis: 'memory', source: 'inner front to outer back at least 2 in; from memory, no source' },
  hemAboveLeast: {
    value: eighths(2),
    basis: 'memory',
    source: "a sheer's hem 1/4 to 1/2 in higher than the drapery in front of it; common practice, how much from memory",
  },
  hemAboveMost: {
    value: eighths(4),
    basis: 'memory',
    source: "a sheer's hem 1/4 to 1/2 in higher than the drapery in front of it; common practice, how much from memory",
  },
  foldFree: {
    value: eighths(4),
    basis: 'read',
    source:
      'How to Hang Non-Pinch-Pleated Drapes on a Traverse Rod, general how-to article, step 2: wall to carrier front less 1/2 in',
  },
  seam: {
    value: eighths(4),
    basis: 'read',
    source: 'Merrick & Day, Encyclopaedia of Curtains, 1996, pp. 116-117: 1/2 in or 1.5 cm off each edge',
  },
  cutExtra: { value: eighths(0), basis: 'common practice', source: 'no source' },
  liningShorter: {
    value: eighths(24),
    basis: 'read',
    source: 'general question-and-answer article: lining cut 3 in (7.5 cm) shorter than the face fabric',
  },
  liningNarrower: { value: eighths(0), basis: 'common practice', source: 'no source; published: none, or 4 in' },
  interliningShorter: { value: eighths(0), basis: 'common practice', source: 'no source' },
  interliningNarrower: { value: eighths(0), basis: 'common practice', source: 'no source' },
  eyeReach: {
    value: eighths(96),
    basis: 'memory',
    source: 'an eye reads the rod against a line within about 12 in; from memory',
  },
  rodLevel: { value: eighths(4), basis: 'common practice', source: 'no source' },
  markOff: { value: (inch / 16) as Length, basis: 'common practice', source: 'no source' },
  flatShort: { value: eighths(16), basis: 'common practice', source: 'no source' },
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

/** The part of the way between two brackets that a rod may sag: the workroom's, else one in 240, a choice of ours; no published limit for rods was found. */
export const sagOf = (job: OfWorkroom): Known<number> => {
  const own = job.workroom?.rules?.sagOf
  return own === undefined ? number(240) : { value: own, from: '/job/workroom/rules/sagOf' }
}

type OfWorkroom = Pick<JobHead, 'workroom'>

/** How far a finished length may be off: the workroom's or the trade's 1/4 in, over 108 in its own rule or twice as much (common practice, no source). */
export const lengthAllowed = (job: OfWorkroom, ordered: Length): Length => {
  const usual = ruleOf(job, 'lengthOff').value
  return ordered > 108 * inch ? (job.workroom?.rules?.longOff ?? ((usual * 2) as Length)) : usual
}
/** How far a width may be off: the workroom's or the trade's 1/2 in up to 72 in, beyond that a hundredth of it (common practice, no source). */
export const widthAllowedFor = (job: OfWorkroom, ordered: Length): Length =>
  ordered > 72 * inch ? (Math.round(ordered / 100) as Length) : ruleOf(job, 'widthOff').value
/** How far the pins of a pair may be set apart: the workroom's own rule, else what it allows the lengths of a pair. */
export const pinsAllowed = (job: OfWorkroom): Known<Length> => {
  const own = job.workroom?.rules?.pinsPair
  return own === undefined ? ruleOf(job, 'pairOff') : { value: own, from: '/job/workroom/rules/pinsPair' }
}
