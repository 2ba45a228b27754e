import type { Plugin } from '@evenhem/plugin'
import { alongWall, bearing, bracketHoles, tops } from './heights.ts'
import { rod } from './kind.ts'
import { picture } from './picture.ts'
import { map, ringCount, wallSpace, wanted } from './rings.ts'
import { words } from './words.ts'
import { hangsHere, pullList, work } from './work.ts'

export type { RodAndRing } from './hardware.generated.ts'
export { rod } from './kind.ts'

/** Decorative rods with rings. */
export const rodAndRing: Plugin = {
  contract: 1,
  id: 'rod-and-ring',
  format: 1,
  kinds: [rod],
  additions: [],
  upgrades: [],
  rules: [bearing, tops, alongWall, bracketHoles, map, ringCount, wallSpace, wanted, picture, work, pullList, hangsHere],
  words,
}
