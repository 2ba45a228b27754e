import type { Place, Readings } from '@evenhem/job'
import { type Event, type EventId, eventId, type Wrong } from './event.ts'

/** An event with its value as its place takes it (a length is a `Length`), or why the place refuses it. */
export interface Entry {
  readonly event: Event
  readonly read?: unknown
  readonly refused?: Wrong
}
/** What stands at a place. */
export interface PlaceState {
  readonly place: Place
  /** Values that nobody put anything over, the latest last. Several that differ are a conflict. */
  readonly live: readonly Entry[]
  /** Nothing stands here any more: what did was withdrawn. */
  readonly withdrawn: boolean
}
/** What all devices found, together. A function of the set of events: in which order they came changes nothing. */
export interface Site {
  readonly places: ReadonlyMap<Place, PlaceState>
  /** The value of every place that has one; of a conflict the latest. */
  readonly readings: Readings
  readonly conflicts: readonly PlaceState[]
  readonly refused: readonly Entry[]
  /** The highest count: the next event passes it. */
  readonly count: number
}

/** Order in which events are shown: by count, then by device and number, the same on every device. */
export const inOrder = (a: Event, b: Event): number => a.count - b.count || (a.by < b.by ? -1 : a.by > b.by ? 1 : a.n - b.n)

const reading = ({ event: { by, who, clock }, read }: Entry): Readings[Place] => ({ value: read, by: who ?? by, when: clock })
const same = (a: Entry, b: Entry | undefined): boolean => JSON.stringify(a.read) === JSON.stringify(b?.read)

/** Folds events into what stands at each place: those that no other event at the same place was put over. */
export function fold(entries: readonly Entry[]): Site {
  const byPlace = new Map<Place, Entry[]>()
  const once = [...new Map(entries.map((each) => [eventId(each.event), each])).values()]
  for (const entry of once) {
    const { place } = entry.event
    const there = byPlace.get(place)
    if (there) there.push(entry)
    else byPlace.set(place, [entry])
  }
  const places = new Map([...byPlace].map(([place, all]) => [place, stateOf(place, all)]))
  const states = [...places.values()]
  const latest = states.flatMap(({ place, live }) => (live.length > 0 ? [[place, reading(live.at(-1) as Entry)] as const] : []))
  return {
    places,
    readings: Object.fromEntries(latest),
    conflicts: states.filter(isConflict),
    refused: once.filter(({ refused }) => refused !== undefined).sort((a, b) => inOrder(a.event, b.event)),
    count: once.reduce((most, { event }) => Math.max(most, event.count), 0),
  }
}
/** Whether two values stand at one place that differ. */
export const isConflict = ({ live }: PlaceState): boolean => live.some((entry) => !same(entry, live[0]))

function stateOf(place: Place, all: readonly Entry[]): PlaceState {
  // A value that is left out takes nothing away either.
  const over = new Set<EventId>(all.flatMap(({ event, refused }) => (refused ? [] : (event.over ?? []))))
  const left = all.filter(({ event }) => !over.has(eventId(event))).sort((a, b) => inOrder(a.event, b.event))
  const live = left.filter(({ event, refused }) => event.value !== undefined && refused === undefined)
  return { place, live, withdrawn: live.length === 0 && left.some(({ event }) => event.value === undefined) }
}

/** Everything that was ever put at a place, the latest last. */
export const historyOf = <E extends Entry>(entries: readonly E[], place: Place): readonly E[] =>
  entries.filter(({ event }) => event.place === place).toSorted((a, b) => inOrder(a.event, b.event))

/** The readings of an order with what the site found laid over them: what was withdrawn is gone. */
export function foundWith(ordered: Readings, { places, readings }: Site): Readings {
  const kept = Object.entries(ordered).filter(([place]) => !places.get(place)?.withdrawn)
  return { ...Object.fromEntries(kept), ...readings }
}
