import type { Job, Readings } from '@evenhem/job'
import { type ReadingUnit, type Tape, tapes } from '@evenhem/length'
import { createPlanner } from '@evenhem/planner'
import { wordsOf } from '@evenhem/planner/say'
import type { Plugin } from '@evenhem/plugin'
import {
  type Paper,
  type Photos,
  type Pictures,
  type ReportOrder,
  type ReportPage,
  reportLanguages,
  reportOf,
} from '@evenhem/report'

const tapeOf: Readonly<Record<ReadingUnit, Tape>> = {
  in: tapes.sixteenths,
  'ft-in': tapes.feetAndSixteenths,
  mm: tapes.wholeMillimetres,
  cm: tapes.centimetresToTheMillimetre,
}

/** The tape of a reader: of the unit that was asked for, else of the job's. */
export const tapeFor = (job: Job, unit?: ReadingUnit): Tape => tapeOf[unit ?? job.units]

/** What prints where the job is: Letter in North America, A4 elsewhere. */
export const paperFor = ({ job: { country } }: Job): Paper => (['US', 'CA', 'MX'].includes(country) ? 'letter' : 'a4')

/** What a report may be asked for; what is left out follows from the job. */
export interface ReportWishes {
  readonly unit?: ReadingUnit
  readonly paper?: Paper
  /** BCP 47; left out: English, since an order does not say what its customer reads. */
  readonly language?: string
}

/** The photos that a report shows, and where its page may take them from. Left out: there are none. */
export interface ReportPhotos {
  readonly photos?: Photos
  readonly pictures?: Pictures
}

/** What was wished for in an address; in words what is wrong with it. */
export function wishesIn({ units, paper, lang }: Readonly<Record<string, unknown>>): ReportWishes | string {
  if (units !== undefined && !Object.hasOwn(tapeOf, String(units)))
    return `Unexpected units ${String(units).slice(0, 20)}, expected one of ${Object.keys(tapeOf).join(', ')}; write one of them.`
  if (paper !== undefined && paper !== 'a4' && paper !== 'letter')
    return `Unexpected paper ${String(paper).slice(0, 20)}, expected a4 or letter; write one of them.`
  const language = lang === undefined ? undefined : reportLanguages.find((one) => one === lang)
  if (lang !== undefined && language === undefined)
    return `Unexpected lang ${String(lang).slice(0, 20)}, expected one of ${reportLanguages.join(', ')}; write one of them.`
  return { unit: units as ReadingUnit | undefined, paper, language }
}

type About<T> = (ordered: Job, readings: Readings, wishes?: ReportWishes, photos?: ReportPhotos) => T
export type Reporter = About<ReportPage>

/** What a report is made of, with these plugins, arranged once. */
export function reportOrders(plugins: readonly Plugin[]): About<ReportOrder> {
  const planner = createPlanner(plugins)
  const words = wordsOf(plugins)
  return (ordered, readings, { unit, paper = paperFor(ordered), language = 'en' } = {}, photos = {}) => ({
    ...{ ordered, readings, planner, words, language, tape: tapeFor(ordered, unit), paper },
    ...photos,
  })
}

/** Writes customers' reports as pages. */
export function reporter(plugins: readonly Plugin[]): Reporter {
  const orderOf = reportOrders(plugins)
  return (...about) => reportOf(orderOf(...about))
}
