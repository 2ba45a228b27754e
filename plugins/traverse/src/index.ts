import type { Plugin } from '@evenhem/plugin'
import { alongWall } from './along.ts'
import { body } from './body.ts'
import { foldRoom, goesIn, isLongEnough, pins, reachOfPins, suits, supportsPass, whereSupports } from './fit.ts'
import { bearing, fromCeiling, marks, overhead, plateSizes, tops, topsOfPlates, wallHoles } from './heights.ts'
import { carrierCount, held, map } from './hooks.ts'
import { traverseRod } from './kind.ts'
import { picture } from './picture.ts'
import { words } from './words.ts'
import { hangsHere, pullList, work } from './work.ts'

export type { TraverseRod } from './hardware.generated.ts'
export { traverseRod } from './kind.ts'

/** Traverse rods and tracks. */
export const traverse: Plugin = {
  contract: 1,
  id: 'traverse',
  format: 1,
  kinds: [traverseRod],
  additions: [],
  upgrades: [],
  rules: [
    bearing,
    fromCeiling,
    tops,
    topsOfPlates,
    alongWall,
    body,
    marks,
    wallHoles,
    plateSizes,
    overhead,
    held,
    map,
    carrierCount,
    suits,
    isLongEnough,
    reachOfPins,
    pins,
    foldRoom,
    goesIn,
    supportsPass,
    whereSupports,
    picture,
    work,
    pullList,
    hangsHere,
  ],
  words,
}
