import type { Plugin } from '@evenhem/plugin'
import { atJob, atWindow } from './additions.ts'
import { listed, listedOfJob, toldAll, toldAllOfJob, unsafeInHouse } from './checks.ts'
import { pins } from './pins.ts'
import { words } from './words.ts'
import { work } from './work.ts'

/** What is left to mend, at windows and of the whole job: who mends it and by when, and what nobody is handed over with. */
export const punchList: Plugin = {
  contract: 1,
  id: 'punch-list',
  format: 1,
  kinds: [],
  additions: [atWindow, atJob],
  upgrades: [],
  rules: [listed, listedOfJob, toldAll, toldAllOfJob, unsafeInHouse, pins, work],
  words,
}
