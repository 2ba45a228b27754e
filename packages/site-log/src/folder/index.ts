export { type Held, type Lock, lockFile } from './lock.ts'
export { type Merged, mergeFolders } from './merging.ts'
export { type LogWrong, largestFile, logFolder, logPath, readSiteLog, type SiteLog } from './reading.ts'
export { type Added, type LogWriter, logWriter } from './writing.ts'
