import type { Fabric, Hardware, Job, JobHead, Place, Room, Treatment, Window } from '@evenhem/job'
import { below } from '@evenhem/job'
import type { Level } from '@evenhem/plugin'
import type { Arrangement, Profile } from './arrangement.ts'
import { profileOfKind } from './arrangement.ts'
import type { Outcome } from './outcome.ts'

/** What every part of a job with plugins' parts has. */
interface WithParts {
  readonly with?: Readonly<Record<string, unknown>>
  readonly found?: unknown
}

/** A job, room, window or treatment while it is planned: what its rules see, and what they answered. */
export interface Item {
  readonly level: Level
  readonly profile: Profile
  readonly at: Place
  readonly it: WithParts
  readonly ordered: unknown
  readonly hardware: Hardware | undefined
  readonly hardwareAt: Place | undefined
  readonly fabric: Fabric | undefined
  readonly window: Window | undefined
  readonly room: Room | undefined
  readonly job: JobHead
  /** By slot of the rules of its profile; nothing where a rule does not run. */
  readonly outcomes: (Outcome | undefined)[]
  /** The item of each level that it lies in, itself included. */
  readonly line: Readonly<Partial<Record<Level, Item>>>
  readonly subjects: Map<string, object>
}

/** What a rule of this plugin sees of an item. Other plugins' parts are reached by nobody through `mine`. */
export function subjectOf(item: Item, plugin: string): object {
  const known = item.subjects.get(plugin)
  if (known) return known
  const { it, ordered, hardware, hardwareAt, fabric, window, room, job, at } = item
  const subject = {
    it,
    ordered,
    mine: it.with?.[plugin],
    hardware,
    fabric,
    window,
    room,
    job,
    at,
    hardwareAt,
    mineAt: below(at, 'with', plugin),
  }
  item.subjects.set(plugin, subject)
  return subject
}

const none = { hardware: undefined, hardwareAt: undefined, fabric: undefined }
const nest = (item: Omit<Item, 'line' | 'subjects'>, line: Item['line']): Item => {
  const nested: Item = { ...item, line: {}, subjects: new Map() }
  return Object.assign(nested, { line: { ...line, [item.level]: nested } })
}

/** A job by its own members: rooms are gathered from, never read. */
export const jobItem = (job: Job, ordered: Job): Item =>
  nest(
    {
      level: 'job',
      profile: 'job',
      at: '',
      it: { ...job, rooms: [] } as Job as WithParts,
      ordered: { ...ordered, rooms: [] },
      ...none,
      window: undefined,
      room: undefined,
      job: job.job,
      outcomes: [],
    },
    {},
  )

export function roomItem(up: Item, room: Room, ordered: Room | undefined): Item {
  const own = { ...room, windows: [] }
  return nest(
    {
      level: 'room',
      profile: 'room',
      at: below('/rooms', room.id),
      it: own as Room as WithParts,
      ordered: ordered && { ...ordered, windows: [] },
      ...none,
      window: undefined,
      room: own,
      job: up.job,
      outcomes: [],
    },
    up.line,
  )
}

export const windowItem = (up: Item, window: Window, ordered: Window | undefined): Item =>
  nest(
    {
      level: 'window',
      profile: 'window',
      at: below(up.at, 'windows', window.id),
      it: window as WithParts,
      ordered,
      ...none,
      window,
      room: up.room,
      job: up.job,
      outcomes: [],
    },
    up.line,
  )

/** A treatment with the hardware and fabric that it names. A kind that nobody here knows runs only rules for any hardware. */
export function treatmentItem(up: Item, job: Job, treatment: Treatment, ordered: Treatment | undefined, kinds: Kinds): Item {
  const hardware = byId(job.hardware, treatment.hardware)
  const fabric = treatment.fabric === undefined ? undefined : byId(job.fabrics, treatment.fabric)
  const profile = profileOfKind(hardware && kinds.has(hardware.kind) ? hardware.kind : '')
  return nest(
    {
      level: 'treatment',
      profile,
      at: below(up.at, 'treatments', treatment.id),
      it: treatment as WithParts,
      ordered,
      hardware,
      hardwareAt: below('/hardware', treatment.hardware),
      fabric,
      window: up.window,
      room: up.room,
      job: up.job,
      outcomes: [],
    },
    up.line,
  )
}
export type Kinds = Arrangement['kinds']

const indexes = new WeakMap<readonly object[], ReadonlyMap<string, object>>()
/** The item of a list by its id. */
export function byId<T extends { readonly id: string }>(list: readonly T[] | undefined, id: string): T | undefined {
  if (!list) return undefined
  if (list.length < 8) return list.find((item) => item.id === id)
  const index = indexes.get(list) ?? new Map(list.map((item) => [item.id, item]))
  indexes.set(list, index)
  return index.get(id) as T | undefined
}
/** The same item in the other job: most often at the same position. */
export const twin = <T extends { readonly id: string }>(
  list: readonly T[] | undefined,
  id: string,
  position: number,
): T | undefined => (list?.[position]?.id === id ? list[position] : byId(list, id))
