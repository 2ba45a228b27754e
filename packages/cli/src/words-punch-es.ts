import type { punchEnglish } from './words-punch.ts'

/** The same in Spanish. */
export const punchSpanish: Readonly<Record<keyof typeof punchEnglish, string>> = {
  'punch-list': 'Lista lo que queda por corregir: por ventana, por quién lo corrige y por fecha.',
  'punch-list.more':
    'Lo resuelto no aparece: lo que se volvió a revisar, y lo que se aceptó como está si no puede lastimar a nadie. --csv es para una hoja de cálculo, --ics para un calendario (un día por persona y fecha), --html una página para imprimir, para el taller o para otro oficio, con las fotos que ya están aquí.',
  '--owner': 'Solo lo que le toca a este: taller, instalador, otro oficio o cliente.',
  '--by': 'Solo lo que hay que corregir a más tardar este día: 2026-12-04.',
  '--all.points': 'También lo resuelto.',
  '--ics': 'Escribir un calendario (iCalendar) con un día por persona y fecha.',
  '--html': 'Escribir en este archivo una página para imprimir, una hoja por cada quien.',
  'not-a-day': 'Inesperado {option} {got}; se esperaba un día del calendario. Escríbalo así: 2026-12-04',
  'punch.nothing': 'No queda nada por corregir de lo que se pidió.',
  'punch.no-day': 'sin fecha',
  'punch.not-said': 'aún nadie ha dicho qué está mal',
  'punch.is': '{unsafe, select, yes {PELIGRO: {what}} other {{what}}}',
  'punch.point': '{window}, pendiente {n}',
  'punch.visit': '{owner}: {count, plural, one {# pendiente} other {# pendientes}} por corregir, {job}',
  'punch.yes': 'sí',
  'csv.point': 'pendiente',
  'csv.where': 'dónde',
  'csv.unsafe': 'peligro',
  'csv.cause': 'causa',
  'csv.owner': 'quién lo corrige',
  'csv.trade': 'oficio',
  'csv.who': 'persona',
  'csv.by': 'a más tardar',
  'csv.state': 'estado',
  'csv.note': 'nota',
  'csv.photos': 'fotos',
}
