import type { reportEnglish } from './words-report.ts'

/** The same in Spanish. */
export const reportSpanish: Readonly<Record<keyof typeof reportEnglish, string>> = {
  'report-copied': 'Copiadas {done} de {total} fotos',
  'report-drawn': 'Dibujadas {done} de {total} ventanas',
  'report-setting': 'Componiendo las páginas, {seconds} s',
}
