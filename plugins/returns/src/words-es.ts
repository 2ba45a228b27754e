import type { Words } from '@evenhem/plugin'
import type { ReturnsCode } from './words.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

/** The same codes as in English: one that is missing does not compile. */
export const es: Readonly<Record<ReturnsCode, Words[string]>> = {
  'returns/hole': one('escuadra'),
  'returns/hole-left': one('escuadra izquierda'),
  'returns/hole-right': one('escuadra derecha'),
  'returns/eye': one('armella'),
  'returns/eye-left': one('armella izquierda'),
  'returns/eye-right': one('armella derecha'),
  'returns/mark': one(
    'Marque con lápiz {count, plural, one {la cruz} other {las cruces}} de {by, select, eye {{count, plural, one {la armella} other {las armellas}}} angle {{count, plural, one {la escuadra} other {las escuadras}}} other {la escuadra y la armella}}.',
  ),
  'returns/mark.why': one(
    'Detrás de la anilla que descansa por fuera del soporte, para que el último gancho cargue a nivel con los demás.',
  ),
  'returns/mark.done': one('Retornos marcados'),
  'returns/fix': one(
    'Taladre y atornille {by, select, eye {{count, plural, one {la armella} other {las armellas}}} angle {{count, plural, one {la escuadra} other {las escuadras}}} other {la escuadra y la armella}}.',
  ),
  'returns/fix.why': one(
    'El dobladillo está comprobado, y con él la altura de su gancho. {count, plural, one {Este es el último agujero} other {Estos son los últimos agujeros}}.',
  ),
  'returns/fix.done': one('Fijaciones puestas'),
  'returns/hook': one('Sujete {count, plural, one {el retorno} other {los dos retornos}} a la pared.'),
  'returns/hook.why': one('Así se cierra el lado hasta la pared. Allí el último gancho no necesita anilla.'),
  'returns/hook.done': one('Retornos sujetos'),
  'returns/part-angle': one('escuadra'),
  'returns/part-eye': one('armella'),
  'returns/entry': one('Retornos: {count}, hasta la pared'),
}
