import type { Place } from '@evenhem/job'
import { fold, type Line, lastOf, type Put, write } from '@evenhem/site-log'
import { type LogWriter, logWriter, readSiteLog } from '@evenhem/site-log/folder'
import { Trouble } from './command.ts'
import { photoPlace } from './photos.ts'

/** How whoever sits at this machine is called in a log. */
const desk = 'desk'
const mostTries = 5

/** Records what a photo shows at a window, and answers when that is on the disk. What stands there already stays. */
export type Recorder = (hash: string, shows: string) => Promise<void>

/** Writes into the log of a job's folder as its desk. */
export function recorder(folder: string, window: Place): Recorder {
  const writer = logWriter(folder)
  return (hash, shows) => add(writer, folder, { place: photoPlace(window, hash), value: shows })
}

/** Another process may write as this desk too: then the line is written anew, behind what that one wrote. */
async function add(writer: LogWriter, folder: string, put: Put): Promise<void> {
  for (let tries = 1; ; tries++) {
    const added = await writer.add(desk, await linesFor(folder, put)).catch(({ code, message }: NodeJS.ErrnoException) => {
      throw new Trouble('photos-not-kept', { folder, error: code ?? message })
    })
    if (added.is === 'kept') return
    if (tries === mostTries)
      throw new Trouble('photos-not-recorded', { folder, why: { refused: added.wrong.code, values: added.wrong.values } })
  }
}

/** Behind all that the log holds now; none where something stands at the place. */
async function linesFor(folder: string, put: Put): Promise<readonly Line[]> {
  const { files } = await readSiteLog(folder)
  const site = fold(files.flatMap(({ lines }) => lines).map(({ event }) => ({ event, read: event.value })))
  if (site.places.get(put.place)?.live.length) return []
  const own = files.find(({ device }) => device === desk)
  return write({ device: desk, last: lastOf(own?.lines ?? []), clock: new Date().toISOString() }, [put], site)
}
