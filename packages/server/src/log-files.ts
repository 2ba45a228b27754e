import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { disk } from '@evenhem/disk'
import { isDevice, type LogFile, readLogFile } from '@evenhem/site-log'
import { largestFile, logFolder, logPath } from '@evenhem/site-log/folder'
import { readKept } from './looks.ts'

/** What every device wrote in the log of a job's folder, a file read again only when it changed. Throws what the file system throws. */
export type LogFiles = (folder: string) => Promise<readonly LogFile[]>

const ending = '.jsonl'

export function logFiles(): LogFiles {
  const read = readKept(async (file, { size }) =>
    size > largestFile ? undefined : readLogFile(basename(file, ending), await readFile(file)),
  )
  return async (folder) => {
    const names = await disk.list(logFolder(folder))
    const devices = names.flatMap((name) => (name.endsWith(ending) ? [name.slice(0, -ending.length)] : [])).filter(isDevice)
    const files = await Promise.all(devices.sort().map((device) => read(logPath(folder, device)).catch(gone)))
    return files.filter((file) => file !== undefined)
  }
}

/** A file that was taken away since its folder was read is none. */
function gone(error: NodeJS.ErrnoException): undefined {
  if (error.code !== 'ENOENT') throw error
}
