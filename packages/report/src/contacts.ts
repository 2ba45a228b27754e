import type { Job } from '@evenhem/job'
import type { Line, Section } from './outline.ts'
import type { Voice } from './voice.ts'

type Text = string | undefined
type Named = { readonly name: string; readonly phone?: string; readonly email?: string } | undefined

const partyOf = (party: Named): readonly Text[] => [party?.name, party?.phone, party?.email]

/** Lines of which something is known. */
const known = (lines: readonly (readonly [code: string, ...texts: readonly Text[]])[], voice: Voice): readonly Line[] =>
  lines
    .map(([code, ...texts]): Line => ({ name: [voice.text(code)], says: texts.flatMap((text) => (text ? [[text]] : [])) }))
    .filter(({ says }) => says.length > 0)

/** For whom, by whom and when: what stands on a report's first page. */
export function aboutOf({ job }: Job, voice: Voice): readonly Line[] {
  return known(
    [
      ['report/for', job.customer?.name, job.site?.address],
      ['report/made-by', job.workroom?.name],
      ['report/measured-by', job.measured?.by, job.measured?.date && voice.day(job.measured.date)],
      ['report/installation', job.install && voice.day(job.install)],
    ],
    voice,
  )
}

/** Whom to call about what, and what was agreed and left at the hand-over. */
export function contactsOf({ job }: Job, voice: Voice): Section<Line> & { readonly instead?: string } {
  const { approved, handOver } = job
  const of = known(
    [
      ['report/for', ...partyOf(job.customer), job.site?.address],
      ['report/opens-the-door', ...partyOf(job.site?.contact)],
      ['report/made-by', ...partyOf(job.workroom)],
      ['report/measured-by', job.measured?.by, job.measured?.date && voice.day(job.measured.date)],
      ['report/approved-by', approved?.by, approved?.date && voice.day(approved.date)],
      ['report/installation', job.install && voice.day(job.install)],
      ['report/open-points-with', handOver?.openPoints],
      ['report/spares', ...(handOver?.spares ?? [])],
      ['report/remotes', handOver?.remotes === undefined ? undefined : String(handOver.remotes)],
      ['report/may-use', handOver?.mayUse],
    ],
    voice,
  )
  return {
    title: voice.text('report/contacts'),
    of,
    ...(of.length === 0 ? { instead: voice.text('report/no-contacts') } : {}),
  }
}
