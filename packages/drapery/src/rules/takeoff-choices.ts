import type { JobHead, Rules } from '@evenhem/job'
import { type Known, number } from '@evenhem/length'

/** What holds where the workroom does not choose. Published sources differ on most of these; DEVELOPERS.md and the schema say which are most usual. */
const standard = {
  fullnessOf: 'finished width',
  percentMeans: 'of the width',
  widthsRounded: 'up',
  widthsOf: 'each panel',
  repeatOf: 'cut length',
  repeatBy: 'whole repeats',
  halfDrop: 'half a repeat once',
  placing: 'nothing',
  soldBy: 'any length',
} as const satisfies Partial<Rules>
type Choice = keyof typeof standard

/** What the workroom chose, or what holds where it does not say. */
export const choiceOf = <N extends Choice>(job: JobHead, name: N): NonNullable<Rules[N]> =>
  job.workroom?.rules?.[name] ?? standard[name]

/** In how many layers the workroom turns hems and headings: two where it does not say (double hems; common practice). */
export function layersOf(job: JobHead, name: 'hemTurns' | 'headingTurns' | 'sideHemTurns'): Known<number> {
  const own = job.workroom?.rules?.[name]
  return own === undefined ? number(2) : { value: own, from: `/job/workroom/rules/${name}` }
}
