import { createHash } from 'node:crypto'
import type { Job, Readings } from '@evenhem/job'
import { byOwner, isToMend, type ListedPoint, ownerKey, ownerOf } from '@evenhem/report'
import type { Visit } from './calendar.ts'
import { pointName } from './punch-rows.ts'
import type { Speech } from './speech.ts'

/** When a member of a point was last put; undefined for a point that nobody put on site. */
function lastPut(points: readonly ListedPoint[], readings: Readings): string | undefined {
  const clocks = Object.entries(readings).flatMap(([place, { when }]) =>
    // A second more in a day is written as 60, which no clock here knows.
    when !== undefined && !Number.isNaN(Date.parse(when)) && points.some((point) => place.startsWith(`${point.place}/`))
      ? [when]
      : [],
  )
  return clocks.toSorted((a, b) => Date.parse(a) - Date.parse(b)).at(-1)
}

const uidOf = ({ number, name }: Job['job'], key: string, day: string): string =>
  `${createHash('sha256')
    .update(JSON.stringify([number, name, key, day]))
    .digest('hex')
    .slice(0, 32)}@evenhem.example`

/** A visit for each owner and day on which something is to be mended. Points of nobody or of no day have none. */
export function visitsOf(job: Job, points: readonly ListedPoint[], readings: Readings, speech: Speech): readonly Visit[] {
  return byOwner(points.filter((point) => isToMend(point) && point.owner !== undefined)).flatMap((own) => {
    const days = [...new Set(own.flatMap(({ by }) => by ?? []))].sort()
    return days.map((day) =>
      visitOf(
        job,
        own.filter(({ by }) => by === day),
        day,
        readings,
        speech,
      ),
    )
  })
}

function visitOf({ job }: Job, own: readonly ListedPoint[], day: string, readings: Readings, speech: Speech): Visit {
  const [first] = own as readonly [ListedPoint]
  const { voice, say } = speech
  const owner = ownerOf(first, say)
  return {
    uid: uidOf(job, ownerKey(first), day),
    // What stands in the order has no clock: the day itself is as good, and is the same each time.
    stamp: lastPut(own, readings) ?? `${day}T00:00:00Z`,
    day,
    summary: voice('punch.visit', { owner, count: own.length, job: job.name }),
    description: own.map((point) => `${pointName(point, speech)}: ${voice('punch.is', whatOf(point, speech))}`).join('\n'),
    ...(job.site?.address ? { place: job.site.address } : {}),
  }
}
const whatOf = ({ what, isUnsafe }: ListedPoint, { voice }: Speech) => ({
  what: what ?? voice('punch.not-said'),
  unsafe: isUnsafe ? 'yes' : 'no',
})
