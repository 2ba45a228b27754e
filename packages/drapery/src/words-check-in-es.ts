import type { Words } from '@evenhem/plugin'
import type { checkInWords } from './words-check-in.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

export const checkInWordsEs: Readonly<Record<keyof typeof checkInWords, Words[string]>> = {
  'drapery/rod-piece': one('pieza de la barra'),
  'drapery/missing': one('faltan'),
  'drapery/needed': one('hacen falta'),
  'drapery/counted': one('contados'),
  'drapery/came': one(
    'Llegó todo lo necesario: {kinds, plural, one {# clase de pieza contada} other {# clases de piezas contadas}}{over, plural, =0 {.} one {; sobran {spare} de: {part}.} other {; sobran de # clases.}}',
  ),
  'drapery/came.unknown': one(
    '{left, plural, one {Falta contar una clase de pieza: {part}.} other {Falta contar # clases de piezas; la primera: {part}.}}',
    'Cuente el resto antes de marcar nada.',
  ),
  'drapery/came.fail': one(
    'Faltan: {missing} × {part}. Llegaron {came} y hacen falta {needed}.',
    'Cuente otra vez y busque en las cajas de las otras ventanas. Lo que falta debe estar antes de marcar nada.',
  ),
  'drapery/came.called': one(
    'Faltan: {missing} × {part}. Llegaron {came} y hacen falta {needed}. El taller está avisado.',
    'No se marca nada hasta que llegue, o hasta que alguien dé una razón para seguir.',
  ),
  'drapery/way-spare': one('Tomar {count} × {part} de la otra capa, a la que le sobran {spare}.'),
  'drapery/way-call': one('Parar y llamar al taller.'),
}
