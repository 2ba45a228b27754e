export { type Disk, disk, makeSure, noneThere, type OpenFile, replaceFile, syncFolder, writeSynced } from './disk.ts'
