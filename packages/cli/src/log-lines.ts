import { type Job, placeInWords } from '@evenhem/job'
import type { SiteRead } from '@evenhem/server'
import { eventId } from '@evenhem/site-log'
import { type Language, reader, type Voice } from './voice.ts'

/** What is to be said about the log of a job before its plan is believed: lines that are left out or odd, and values that stand against each other. */
export function logLines({ entries, site, wrong }: SiteRead, job: Job, language: Language, voice: Voice): string {
  const { say, labels } = reader[language]
  const inWords = (place: string): string => placeInWords(job, place, '', language)
  const lines = [
    ...wrong.map(({ file, line, code, values }) => `${file}${line === undefined ? '' : `:${line}`}: ${say(code, values).says}`),
    ...entries.flatMap(({ event, refused }) =>
      refused
        ? [
            `${eventId(event)}: ${voice('log-refused', { place: inWords(event.place), why: { refused: refused.code, values: refused.values } })}`,
          ]
        : [],
    ),
    ...site.conflicts.map(({ place, live }) =>
      voice('log-conflict', {
        place: inWords(place),
        count: live.length,
        who: live.map(({ event }) => event.who ?? event.by).join(', '),
      }),
    ),
  ]
  return lines.map((line) => `${labels.warning}: ${line}\n`).join('')
}
