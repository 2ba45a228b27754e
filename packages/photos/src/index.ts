export { type Carried, carryPhotos } from './carried.ts'
export { type Cleaned, type Cleaner, cleaner } from './cleaner.ts'
export {
  type CopySize,
  copySizes,
  type FolderOptions,
  type Original,
  type PhotoFolder,
  photoFolder,
  type Taken,
} from './folder.ts'
export { type Format, formatOf } from './format.ts'
export { type Arrived, type Incoming, incoming, isHash, type Sent, type State } from './incoming.ts'
export { type Limits, usualLimits } from './limits.ts'
export { type Kept, keptIn } from './places.ts'
export { type PhotoCode, photoWords, type Refused, refusedFor, sayRefused } from './refused.ts'
