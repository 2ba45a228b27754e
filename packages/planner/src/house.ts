import { below, type Job, type Place } from '@evenhem/job'
import { createHeads } from './heads.ts'
import { twin } from './item.ts'
import { planJob } from './job-planning.ts'
import { keeping } from './kept.ts'
import type { JobPlan, WindowPlan } from './plan.ts'
import type { Ground } from './running.ts'
import { readAt, type Site, siteAt } from './site.ts'
import { createWindowPlanning, type Kept } from './window-planning.ts'

/** How many whole sheets are kept; of the other windows only a summary is. */
const sheetsKept = 8

/** Plans windows and jobs, and keeps what it planned while the objects that were read are the same ones. */
export function createHouse(ground: Ground) {
  const heads = createHeads(ground)
  const plan = createWindowPlanning(ground)
  const sheets = keeping<WindowPlan>(sheetsKept)
  let summaries = keeping<Kept>()

  const window = (found: Job, ordered: Job, place: Place): WindowPlan => {
    const site = siteAt(found, ordered, place, (room, twinRoom) => heads.ofRoom(heads.ofJob(found, ordered), room, twinRoom))
    const key = readAt(site)
    return sheets(place, key, () => {
      const { plan: sheet, kept } = plan(site, 'sheet')
      summaries(place, key, () => kept)
      return sheet
    })
  }

  const job = (found: Job, ordered: Job): JobPlan => {
    const used = keeping<Kept>()
    const keptAt = (site: Site): Kept => {
      const key = readAt(site)
      return used(site.place, key, () => summaries(site.place, key, () => plan(site, 'summary').kept))
    }
    const head = heads.ofJob(found, ordered)
    const windows = found.rooms.map((room, at) => {
      const orderedRoom = twin(ordered.rooms, room.id, at)
      const roomHead = heads.ofRoom(head, room, orderedRoom)
      return room.windows.map((each, number) => {
        const place = below(roomHead.item.at, 'windows', each.id)
        return keptAt({ place, head: roomHead, job: found, window: each, ordered: twin(orderedRoom?.windows, each.id, number) })
      })
    })
    // What this job no longer has is let go.
    summaries = used
    return planJob(ground, found, ordered, head, windows)
  }
  return { window, job }
}
