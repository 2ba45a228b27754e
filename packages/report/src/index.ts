export type { Closing, FabricCare, SafetyNotes } from './closing.ts'
export type { Drawing, Key } from './drawing.ts'
export type { Fingerprint } from './fingerprint.ts'
export { fingerprintOf, fingerprintWords } from './fingerprint.ts'
export { fontsFor } from './fonts.ts'
export type { House, HouseWindow, Link } from './house.ts'
export { type Pictures, pageOf, type ReportPage } from './html.ts'
export type { LeftOpen } from './left-open.ts'
export type { Point } from './open.ts'
export {
  type Line,
  type Outline,
  type OutlineOrder,
  outlineOf,
  type PlannedWindow,
  type Points,
  type Section,
  type WindowPage,
} from './outline.ts'
export type { Paper } from './paper.ts'
export { type PictureSize, sizeOfJpeg } from './photo-size.ts'
export { type PhotoCopy, type Photos, photoHashes, type ShownPhoto } from './photos.ts'
export { type PunchOrder, punchListOf } from './punch-list.ts'
export {
  aboutOf as aboutOfPoint,
  byOwner,
  inOrder as pointsInOrder,
  isSettled,
  isToMend,
  type ListedPoint,
  ownerKey,
  ownerOf,
  photosOf,
  pointsOfJob,
  pointsOfWindow,
} from './punch-points.ts'
export { type ReportOrder, reportOf, type Stage } from './report.ts'
export type { Note } from './shown.ts'
export type { ShownSignature, Signed } from './signatures.ts'
export type { Standing, Stands } from './standing.ts'
export type { Technical, TechnicalWindow } from './technical.ts'
export { createVoice, type NumberPiece, type Said, type Voice } from './voice.ts'
export { type ReportLanguage, reportLanguages, words } from './words.ts'
