import type { Plugin } from '@evenhem/plugin'
import { cornersPicture } from './pictures/corner.ts'
import { hemPicture } from './pictures/hem.ts'
import { loadsDrawnRule, loadsPicture } from './pictures/loads.ts'
import { marksPicture } from './pictures/marks.ts'
import { coveragePicture, panelsPicture } from './pictures/panels.ts'
import { wallSection } from './pictures/section.ts'
import { hardwareSection } from './pictures/section-hardware.ts'
import { panelsSection } from './pictures/section-panels.ts'
import { wallPicture } from './pictures/wall.ts'
import { coverageCheck, coverageRule, frameRule, overlapCheck } from './rules/along.ts'
import { arrival, clearing } from './rules/arrival.ts'
import { asOrdered } from './rules/as-ordered.ts'
import { hemsAlike, returnFits, returnHeld } from './rules/check-in.ts'
import { breaks, ceilingRead, ladder, lift, pinInHeading, pinsAlike, repeatReceived, settling, spaces } from './rules/cloth.ts'
import { aroundCorner, cornerRoom } from './rules/corner.ts'
import { hanging } from './rules/hanging.ts'
import { rodLength, span, splices, wallFits, wallWanted } from './rules/hardware.ts'
import { ceilingClears, ceilingRule, floorRule, hangLineRule, rodHeight } from './rules/heights.ts'
import { heldRule } from './rules/held.ts'
import { hemEven, lookAgain } from './rules/hem-even.ts'
import { came, surplusRule } from './rules/inventory.ts'
import { jobRule } from './rules/job.ts'
import { layerHems, linedRule } from './rules/layer-hems.ts'
import { doubleBracket, layersClear, returnClears, secondRodRule } from './rules/layers.ts'
import { loadsToldRule } from './rules/loads-told.ts'
import { marking } from './rules/marking.ts'
import { obstacles } from './rules/obstacles.ts'
import { openingRead } from './rules/openings.ts'
import { cordDevice, cordLength, operating, power, reach } from './rules/operation.ts'
import { panelLoadsRule } from './rules/panel-loads.ts'
import { panelWeightsRule } from './rules/panel-weights.ts'
import { makeUpRule, panelWidth } from './rules/panels.ts'
import { rodLoadsRule, rodsHereRule } from './rules/rod-loads.ts'
import { bagLabels, bagRule, patternRule, roomAlike } from './rules/rooms.ts'
import { clearGlass, glassRule, stackRule } from './rules/stack.ts'
import { supportAdvice } from './rules/support-advice.ts'
import {
  aboveCeiling,
  behindWall,
  casingEdge,
  finishedFloor,
  floorRead,
  headRoomRule,
  planned,
  sash,
  stool,
} from './rules/surroundings.ts'
import { bagsSwapped } from './rules/swapped.ts'
import { clothsRule, cutHolds, fabricSumsRule, fullnessHeld, takeoffRule } from './rules/takeoff.ts'
import { transfer } from './rules/transfer.ts'
import { trueUpRule } from './rules/true-up.ts'
import { truing } from './rules/true-up-steps.ts'
import { hangsHere, lead, panelParts } from './rules/what-hangs.ts'
import { words } from './words/index.ts'

export { type Default, defaults, ruleOf } from './defaults.ts'
export * from './given.ts'
export * from './hardware/index.ts'
export { packedPart, packedRod } from './packed.ts'
export * from './pictures/hardware.ts'
export { bearingLine, box, ellipse, mm, outline, through } from './pictures/shapes.ts'

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
    ceilingRule,
    frameRule,
    coverageRule,
    makeUpRule,
    hangLineRule,
    transfer,
    coverageCheck,
    overlapCheck,
    panelWidth,
    rodHeight,
    ceilingClears,
    bagsSwapped,
    hemsAlike,
    asOrdered,
    openingRead,
    surplusRule,
    came,
    returnHeld,
    returnFits,
    breaks,
    pinInHeading,
    pinsAlike,
    spaces,
    settling,
    lift,
    ladder,
    repeatReceived,
    ceilingRead,
    obstacles,
    sash,
    stool,
    headRoomRule,
    casingEdge,
    behindWall,
    aboveCeiling,
    floorRead,
    finishedFloor,
    planned,
    aroundCorner,
    cornerRoom,
    patternRule,
    roomAlike,
    layersClear,
    linedRule,
    layerHems,
    returnClears,
    secondRodRule,
    doubleBracket,
    glassRule,
    stackRule,
    clearGlass,
    cordDevice,
    cordLength,
    reach,
    power,
    operating,
    wallWanted,
    wallFits,
    rodLength,
    splices,
    span,
    bagRule,
    bagLabels,
    arrival,
    clearing,
    marking,
    hanging,
    panelParts,
    lead,
    hangsHere,
    clothsRule,
    takeoffRule,
    fabricSumsRule,
    fullnessHeld,
    cutHolds,
    trueUpRule,
    hemEven,
    lookAgain,
    truing,
    wallPicture,
    panelsPicture,
    coveragePicture,
    marksPicture,
    hemPicture,
    cornersPicture,
    wallSection,
    hardwareSection,
    panelsSection,
    jobRule,
    panelWeightsRule,
    panelLoadsRule,
    rodLoadsRule,
    rodsHereRule,
    heldRule,
    loadsToldRule,
    loadsDrawnRule,
    loadsPicture,
    supportAdvice,
  ],
  words,
}
