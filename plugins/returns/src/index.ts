import type { Plugin } from '@evenhem/plugin'
import { addition } from './addition.ts'
import { held, wallHoles, work } from './rules.ts'
import { words } from './words.ts'

/** Draperies whose outer edges return to the wall, on any hardware. */
export const returns: Plugin = {
  contract: 1,
  id: 'returns',
  format: 1,
  kinds: [],
  additions: [addition],
  upgrades: [],
  rules: [held, wallHoles, work],
  words,
}
