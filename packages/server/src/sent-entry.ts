import { sayIn } from '@evenhem/job'
import { sayEnglish, saySpanish } from '@evenhem/job/read'
import { type Entry, logWords, spanishLogWords, type Wrong } from '@evenhem/site-log'

const sayLog = { en: sayIn(logWords), es: sayIn(spanishLogWords) }
const sayJob = { en: sayEnglish, es: saySpanish }

/** An entry as it is sent: why it was refused is said in every language of the sheet, since the tablet has no reader. */
export type SentEntry = Omit<Entry, 'refused'> & {
  readonly refused?: Entry['refused'] & { readonly says: Readonly<Record<'en' | 'es', string>> }
}

export const sent = ({ refused, ...entry }: Entry): SentEntry =>
  refused ? { ...entry, refused: { ...refused, says: said(refused) } } : entry

/** What is wrong with an entry or a line, in every language of the sheet. */
export const said = ({ code, values }: Wrong): Readonly<Record<'en' | 'es', string>> => {
  const by = code.startsWith('log/') ? sayLog : sayJob
  return { en: by.en(code, values).says, es: by.es(code, values).says }
}
