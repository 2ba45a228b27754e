import { below, type Job } from '@evenhem/job'
import { mergedAsks, walkingOrder } from './asks.ts'
import type { Head } from './heads.ts'
import { type Item, jobItem, roomItem, twin } from './item.ts'
import { type Below, read } from './outcome.ts'
import type { JobPlan, Results, Unread, WindowSummary } from './plan.ts'
import { resultsOf, unreadOf } from './results.ts'
import { type Ground, runAll } from './running.ts'
import type { Kept } from './window-planning.ts'

interface PlannedRoom {
  readonly item: Item
  readonly windows: readonly Kept[]
}

/** Runs the rules of job and rooms, all of them, over what was kept of the windows of each room. */
export function planJob(ground: Ground, found: Job, ordered: Job, head: Head, windows: readonly (readonly Kept[])[]): JobPlan {
  const top = jobItem(found, ordered)
  const rooms = found.rooms.map((room, at) => ({
    item: roomItem(top, room, twin(ordered.rooms, room.id, at)),
    windows: windows[at] ?? [],
  }))
  const items = [top, ...rooms.map(({ item }) => item)]
  const rules = ground.arrangement.order.filter((node) => node.level === 'job' || node.level === 'room')
  const faults = runAll(ground, rules, items, head.asleep, (item) =>
    fromWindows(item.level === 'job' ? rooms : rooms.filter((room) => room.item === item)),
  )
  const unread = [...versionsUnread(head), ...unreadOf(ground.arrangement, items, head.asleep)]
  const results = resultsOf(ground.arrangement, items, faults, unread, found)
  return together(
    results,
    windows.flat().map(({ summary }) => summary),
    found,
  )
}

const fromWindows =
  (rooms: readonly PlannedRoom[]): Below =>
  ({ fact, givers }) =>
    rooms.flatMap(({ item, windows }) =>
      fact.of === 'room'
        ? [{ at: item.at, reading: read(fact, givers.get('room') ?? [], item.outcomes) }]
        : windows.flatMap((kept) => kept.gathered.get(fact.id) ?? []),
    )

const versionsUnread = ({ asleep }: Head): readonly Unread[] =>
  [...asleep].sort().map((name) => ({ at: below('/uses', name), what: 'version', name }))

/** The asks, faults and what is unread of job and rooms, with those of every window. */
function together(own: Results, windows: readonly WindowSummary[], job: Job): JobPlan {
  const order = walkingOrder(job)
  const asks = mergedAsks([own.asks, ...windows.map((window) => window.asks)])
  return {
    windows,
    ...own,
    asks: [...asks].sort((a, b) => order(a.at, b.at)),
    unread: [...own.unread, ...windows.flatMap((window) => window.unread)],
    faults: [...own.faults, ...windows.flatMap((window) => window.faults)],
  }
}
