import type { Plugin } from '@evenhem/plugin'
import { alongWall } from './along.ts'
import { body } from './body.ts'
import { goesIn, pinRange, reachOfPins, supportsPass, wanted, whereSupports } from './fit.ts'
import { bearing, bracketHoles, marks, plateSizes, supportTops, tops } from './heights.ts'
import { rod } from './kind.ts'
import { picture } from './picture.ts'
import { map, ringCount } from './rings.ts'
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
  rules: [
    bearing,
    tops,
    supportTops,
    alongWall,
    body,
    marks,
    bracketHoles,
    plateSizes,
    map,
    ringCount,
    wanted,
    supportsPass,
    whereSupports,
    reachOfPins,
    pinRange,
    goesIn,
    picture,
    work,
    pullList,
    hangsHere,
  ],
  words,
}
