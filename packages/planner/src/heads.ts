import type { Job, Room } from '@evenhem/job'
import type { Node } from './arrangement.ts'
import { type Item, jobItem, type Kinds, roomItem } from './item.ts'
import { keeping, membersBut } from './kept.ts'
import { type Ground, runAll } from './running.ts'

/** What all windows of a job share. */
export interface Head {
  readonly item: Item
  /** Plugins older than their part of this job; their rules don't run. */
  readonly asleep: ReadonlySet<string>
  /** The kinds of hardware that somebody knows and is awake. */
  readonly kinds: Kinds
  /** The objects of it that windows read. */
  readonly read: readonly unknown[]
}
/** What all windows of a room share. The same object while nothing that they read has changed. */
export interface RoomHead {
  readonly head: Head
  readonly item: Item
}

/** Runs the rules of job and room that windows may read, and keeps what they gave while the members of job and room are the same. */
export function createHeads(ground: Ground) {
  const { arrangement } = ground
  const ownRules = (level: 'job' | 'room'): readonly Node[] =>
    arrangement.order.filter((node) => node.level === level && !node.gathers)
  const [jobRules, roomRules] = [ownRules('job'), ownRules('room')]
  const heads = keeping<Head>()
  const roomHeads = keeping<RoomHead>()

  const ofJob = (found: Job, ordered: Job): Head =>
    heads('', [...membersBut('rooms', found), ...membersBut('rooms', ordered)], () => {
      const item = jobItem(found, ordered)
      const asleep = asleepIn(found, ground)
      runAll(ground, jobRules, [item], asleep)
      return { item, asleep, kinds: awake(arrangement.kinds, asleep), read: [found.job, found.uses, jobRules.length > 0 && item] }
    })
  const ofRoom = (head: Head, room: Room, ordered: Room | undefined): RoomHead =>
    roomHeads(room.id, [...head.read, ...membersBut('windows', room), ...membersBut('windows', ordered)], () => {
      const item = roomItem(head.item, room, ordered)
      runAll(ground, roomRules, [item], head.asleep)
      return { head, item }
    })
  return { ofJob, ofRoom }
}

const asleepIn = ({ uses }: Job, { arrangement }: Ground): ReadonlySet<string> =>
  new Set(arrangement.plugins.filter((plugin) => (uses?.[plugin.id] ?? 0) > plugin.format).map((plugin) => plugin.id))

const awake = (kinds: Kinds, asleep: ReadonlySet<string>): Kinds =>
  asleep.size === 0 ? kinds : new Map([...kinds].filter(([, owner]) => !owner || !asleep.has(owner.id)))
