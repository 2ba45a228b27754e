import type { Words } from '@evenhem/plugin'

const en: Words = {
  'plain-pole/long-enough': { says: 'Length of the pole' },
  'plain-pole/long-enough.pass': { says: 'The pole is {cut} long and carries the drapery, which covers {covers}.' },
  'plain-pole/long-enough.fail': {
    says: 'The pole is {cut} long, expected at least {covers}, what the closed drapery covers.',
    help: 'Have a longer pole cut before anything is mounted.',
  },
  'plain-pole/long-enough.unknown': { says: 'Not known yet whether the pole is long enough.' },
  'plain-pole/top': { says: 'top of the pole' },
  'plain-pole/bears': { says: 'hang line' },
  'plain-pole/drop': { says: 'from the top of the pole down to the hooks' },
  'plain-pole/pole': { says: 'pole' },
  'plain-pole/covers': { says: 'drapery covers' },
  'plain-pole/right': { says: 'right cover end' },
  'plain-pole/left': { says: 'left cover end' },
  'plain-pole/cut': { says: 'pole' },
  'plain-pole/spare': { says: 'pole to spare' },
}
const es: Words = {
  'plain-pole/long-enough': { says: 'Largo de la barra' },
  'plain-pole/long-enough.pass': { says: 'La barra mide {cut} y lleva la cortina, que cubre {covers}.' },
  'plain-pole/long-enough.fail': {
    says: 'La barra mide {cut}; se esperaban al menos {covers}, lo que cubre la cortina cerrada.',
    help: 'Mande cortar una barra más larga antes de montar nada.',
  },
  'plain-pole/long-enough.unknown': { says: 'Aún no se sabe si la barra es bastante larga.' },
  'plain-pole/top': { says: 'parte superior de la barra' },
  'plain-pole/bears': { says: 'línea de colgado' },
  'plain-pole/drop': { says: 'de la parte superior de la barra a los ganchos' },
  'plain-pole/pole': { says: 'barra' },
  'plain-pole/covers': { says: 'lo que cubre la cortina' },
  'plain-pole/right': { says: 'extremo derecho de lo cubierto' },
  'plain-pole/left': { says: 'extremo izquierdo de lo cubierto' },
  'plain-pole/cut': { says: 'barra' },
  'plain-pole/spare': { says: 'barra de sobra' },
}
export const words: Readonly<Record<string, Words>> = { en, es }
