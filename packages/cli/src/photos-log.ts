import type { Place } from '@evenhem/job'
import { type Line, lastOf, type Site, write } from '@evenhem/site-log'
import { type LogWriter, logWriter, readSiteLog } from '@evenhem/site-log/folder'
import { Trouble } from './command.ts'
import type { Opened } from './job.ts'
import { photoPlace } from './photos.ts'

/** How whoever sits at this machine is called in a log. */
const desk = 'desk'
const mostTries = 5

/** Records what a photo shows at a window, and answers when that is on the disk. What stands there already stays. */
export type Recorder = (hash: string, shows: string) => Promise<void>

/** Writes into the log of a job's folder as its desk. */
export async function recorder({ folder, found }: Opened & { readonly folder: string }, window: Place): Promise<Recorder> {
  const writer = logWriter(folder)
  return async (hash, shows) => {
    const place = photoPlace(window, hash)
    if (!found || found.site.places.get(place)?.live.length) return
    await add(writer, folder, found.site, { place, value: shows })
  }
}

/** Another process may write as this desk too: then the line is written anew, behind what that one wrote. */
async function add(writer: LogWriter, folder: string, site: Site, put: { readonly place: Place; readonly value: string }) {
  for (let tries = 1; ; tries++) {
    const added = await writer.add(desk, await linesFor(folder, site, put)).catch(({ code, message }: NodeJS.ErrnoException) => {
      throw new Trouble('photos-not-kept', { folder, error: code ?? message })
    })
    if (added.is === 'kept') return
    if (tries === mostTries)
      throw new Trouble('photos-not-recorded', { folder, why: { refused: added.wrong.code, values: added.wrong.values } })
  }
}

async function linesFor(
  folder: string,
  site: Site,
  put: { readonly place: Place; readonly value: string },
): Promise<readonly Line[]> {
  const { files } = await readSiteLog(folder)
  const own = files.find(({ device }) => device === desk)
  const clock = new Date().toISOString()
  return write({ device: desk, last: lastOf(own?.lines ?? []), clock }, [put], site)
}
