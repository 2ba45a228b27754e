import type { Place } from '@evenhem/job'
import { hashOf } from './chain.ts'
import { type Event, eventId, writeEvent } from './event.ts'
import type { Site } from './fold.ts'
import type { Last, Line } from './log-file.ts'

/** Who writes: the device, the last line it wrote, and what its clock says. */
export interface Writer {
  readonly device: string
  readonly last: Last | undefined
  readonly clock: string
  readonly who?: string
}
/** A value to put, or without one a withdrawal. */
export interface Put {
  readonly place: Place
  readonly value?: unknown
}

/** The lines that put these values over whatever stands at their places, one after the other. */
export function write({ device: by, last, clock, who }: Writer, puts: readonly Put[], site: Site): readonly Line[] {
  const lines: Line[] = []
  const earlier = new Map<Place, Event>()
  let [n, count] = [last?.n ?? 0, Math.max(site.count, last?.count ?? 0)]
  for (const { place, value } of puts) {
    const stands = site.places.get(place)?.live ?? []
    const line = lines.at(-1)
    const before = line ? hashOf(line.text) : last?.hash
    const own = earlier.get(place)
    const over = own ? [eventId(own)] : stands.map(({ event }) => eventId(event))
    const event: Event = {
      ...{ by, n: ++n, count: ++count, clock },
      ...(who === undefined ? {} : { who }),
      ...(before === undefined ? {} : { before }),
      place,
      ...(value === undefined ? {} : { value }),
      ...(over.length > 0 ? { over } : {}),
    }
    lines.push({ text: writeEvent(event), event })
    earlier.set(place, event)
  }
  return lines
}
