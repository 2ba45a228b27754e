import type { Words } from '@evenhem/plugin'

const en: Words = {
  'plain-pole/long-enough': { says: 'Length of the pole' },
  'plain-pole/long-enough.pass': { says: 'The pole is {cut} long and carries the drapery, which covers {covers}.' },
  'plain-pole/long-enough.fail': {
    says: 'The pole is {cut} long, expected at least {covers}, what the closed drapery covers.',
    help: 'Have a longer pole cut before anything is mounted.',
  },
  'plain-pole/covers': { says: 'drapery covers' },
  'plain-pole/right': { says: 'right cover end' },
  'plain-pole/left': { says: 'left cover end' },
  'plain-pole/cut': { says: 'pole' },
  'plain-pole/spare': { says: 'pole to spare' },
}
export const words: Readonly<Record<string, Words>> = { en }
