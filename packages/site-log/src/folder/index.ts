export { type Disk, disk, type OpenFile } from './disk.ts'
export { type Merged, mergeFolders } from './merging.ts'
export { type LogWrong, logFolder, logPath, readSiteLog, type SiteLog } from './reading.ts'
export { type Added, type Lock, type LogWriter, logWriter } from './writing.ts'
