import type { Plugin } from '@evenhem/plugin'
import { marksPicture } from './pictures/marks.ts'
import { coveragePicture, panelsPicture } from './pictures/panels.ts'
import { wallPicture } from './pictures/wall.ts'
import { coverageCheck, coverageRule, makeUpRule, panelWidth } from './rules/along.ts'
import { asOrdered, hemsAlike, returnHeld } from './rules/check-in.ts'
import { floorRule, hangLineRule, rodHeight } from './rules/heights.ts'
import { arrival, hanging, hangsHere, lead, marking, panelParts } from './rules/work.ts'
import { words } from './words.ts'

export { type Default, defaults, ruleOf } from './defaults.ts'
export * from './given.ts'
export { box, ellipse, mm, outline, through } from './pictures/shapes.ts'

/** The trade: what every window and every hardware shares. A plugin like any other, only always on. */
export const drapery: Plugin = {
  contract: 1,
  id: 'drapery',
  format: 1,
  kinds: [],
  additions: [],
  upgrades: [],
  rules: [
    floorRule,
    coverageRule,
    makeUpRule,
    hangLineRule,
    coverageCheck,
    panelWidth,
    rodHeight,
    hemsAlike,
    asOrdered,
    returnHeld,
    arrival,
    marking,
    hanging,
    panelParts,
    lead,
    hangsHere,
    wallPicture,
    panelsPicture,
    coveragePicture,
    marksPicture,
  ],
  words,
}
