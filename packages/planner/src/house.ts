import type { Job, Place, Room, Window } from '@evenhem/job'
import { below, tokens } from '@evenhem/job'
import type { Arrangement, Node } from './arrangement.ts'
import { mergedAsks, walkingOrder } from './asks.ts'
import type { Item, Kinds } from './item.ts'
import { byId, jobItem, roomItem, treatmentItem, twin, windowItem } from './item.ts'
import type { Below, CheckFact, Reading } from './outcome.ts'
import { read, run } from './outcome.ts'
import type { Fault, JobPlan, Unread, WindowPlan, WindowSummary } from './plan.ts'
import { type Extent, factsOf, resultsOf, unreadOf } from './results.ts'

/** How many whole sheets are kept; of the other windows only a summary is. */
const sheetsKept = 8

/** What windows of a job share. `asleep`: plugins older than their part of this job; their rules don't run. */
interface Head {
  readonly item: Item
  readonly asleep: ReadonlySet<string>
  readonly kinds: Kinds
  readonly shared: readonly unknown[]
}
interface RoomHead {
  readonly head: Head
  readonly item: Item
}
interface Site {
  readonly head: RoomHead
  readonly job: Job
  readonly window: Window
  readonly ordered: Window | undefined
}
interface Kept {
  readonly summary: WindowSummary
  readonly gathered: ReadonlyMap<string, readonly { readonly at: Place; readonly reading: Reading }[]>
}

/** Plans windows and jobs, and keeps what it planned while the objects that were read are the same ones. */
export function createHouse(arrangement: Arrangement, checkFact?: CheckFact) {
  const isAbove = (node: Node): boolean => node.level === 'job' || node.level === 'room'
  const above = arrangement.order.filter(isAbove)
  const windowNodes = arrangement.order.filter((node) => !isAbove(node))
  const jobIsRead = above.some((node) => node.level === 'job' && !node.gathers)
  const runs = memo<readonly Node[]>()
  const heads = memo<Head>()
  const roomHeads = memo<RoomHead>()
  const sheets = memo<WindowPlan>(sheetsKept)
  let summaries = memo<Kept>()

  const execute = (
    nodes: readonly Node[],
    items: readonly Item[],
    asleep: ReadonlySet<string>,
    belowOf: (item: Item) => Below,
  ): readonly Fault[] => {
    const faults: Fault[] = []
    for (const node of nodes)
      for (const item of items) {
        if (item.profile !== node.profile || asleep.has(node.plugin.id)) continue
        if (node.onAddition && item.it.with?.[node.plugin.id] === undefined) continue
        item.outcomes[node.slot] = run(node, item, belowOf(item), faults, checkFact)
      }
    return faults
  }

  const headOf = (found: Job, ordered: Job): Head =>
    heads('', [...ownMembers(found, 'rooms'), ...ownMembers(ordered, 'rooms')], () => {
      const asleep = new Set(
        arrangement.plugins.filter((plugin) => (found.uses?.[plugin.id] ?? 0) > plugin.format).map((plugin) => plugin.id),
      )
      const item = jobItem(found, ordered)
      execute(
        above.filter((node) => node.level === 'job' && !node.gathers),
        [item],
        asleep,
        () => () => [],
      )
      return { item, asleep, kinds: awake(arrangement.kinds, asleep), shared: [found.job, found.uses, jobIsRead && item] }
    })
  const roomHeadOf = (head: Head, room: Room, ordered: Room | undefined): RoomHead =>
    roomHeads(room.id, [...head.shared, ...ownMembers(room, 'windows'), ...ownMembers(ordered ?? {}, 'windows')], () => {
      const item = roomItem(head.item, room, ordered)
      execute(
        above.filter((node) => node.level === 'room' && !node.gathers),
        [item],
        head.asleep,
        () => () => [],
      )
      return { head, item }
    })

  const plan = (site: Site, extent: Extent): { readonly plan: WindowPlan; readonly kept: Kept } => {
    const {
      head: { head, item: room },
      job,
    } = site
    const top = windowItem(room, site.window, site.ordered)
    const treatments = site.window.treatments.map((treatment, at) =>
      treatmentItem(top, job, treatment, twin(site.ordered?.treatments, treatment.id, at), head.kinds),
    )
    const items = [top, ...treatments]
    const faults = execute(
      nodesFor(items),
      items,
      head.asleep,
      () =>
        ({ givers, fact }) =>
          treatments.map((item) => ({ at: item.at, reading: read(fact, givers.get(item.profile) ?? [], item.outcomes) })),
    )
    const whole: WindowPlan = {
      window: top.at,
      ...resultsOf(arrangement, items, faults, unreadOf(arrangement, items, head.asleep), job, extent),
    }
    return { plan: whole, kept: keptOf(arrangement, whole, items) }
  }
  const nodesFor = (items: readonly Item[]): readonly Node[] => {
    const profiles = new Set(items.map((item) => item.profile))
    return runs([...profiles].sort().join(' '), [], () => windowNodes.filter((node) => profiles.has(node.profile)))
  }
  /** The objects that a window's plan reads. */
  const keyOf = ({ head, job, window, ordered }: Site): readonly unknown[] => [
    head,
    window,
    ordered,
    ...window.treatments.flatMap((treatment) => [
      byId(job.hardware, treatment.hardware),
      treatment.fabric === undefined ? undefined : byId(job.fabrics, treatment.fabric),
    ]),
  ]

  const window = (found: Job, ordered: Job, place: Place): WindowPlan => {
    const site = siteOf(found, ordered, place, (room, twinRoom) => roomHeadOf(headOf(found, ordered), room, twinRoom))
    const key = keyOf(site)
    return sheets(place, key, () => {
      const { plan: sheet, kept } = plan(site, 'sheet')
      summaries(place, key, () => kept)
      return sheet
    })
  }

  const job = (found: Job, ordered: Job): JobPlan => {
    const head = headOf(found, ordered)
    const top = jobItem(found, ordered)
    const used = memo<Kept>()
    const rooms = found.rooms.map((room, at) => {
      const orderedRoom = twin(ordered.rooms, room.id, at)
      const roomHead = roomHeadOf(head, room, orderedRoom)
      const windows = room.windows.map((each, number) => {
        const site: Site = { head: roomHead, job: found, window: each, ordered: twin(orderedRoom?.windows, each.id, number) }
        const place = below(roomHead.item.at, 'windows', each.id)
        const key = keyOf(site)
        return used(place, key, () => summaries(place, key, () => plan(site, 'summary').kept))
      })
      return { item: roomItem(top, room, orderedRoom), windows }
    })
    summaries = used
    const items = [top, ...rooms.map((room) => room.item)]
    const belowOf =
      (item: Item): Below =>
      ({ fact, givers }) => {
        const inside = rooms.filter((room) => item.level === 'job' || room.item === item)
        if (fact.of === 'room')
          return inside.map((room) => ({ at: room.item.at, reading: read(fact, givers.get('room') ?? [], room.item.outcomes) }))
        return inside.flatMap((room) => room.windows.flatMap((kept) => kept.gathered.get(fact.id) ?? []))
      }
    const faults = execute(above, items, head.asleep, belowOf)
    return jobPlanOf(
      arrangement,
      found,
      items,
      faults,
      rooms.flatMap((room) => room.windows.map((kept) => kept.summary)),
      head.asleep,
    )
  }
  return { window, job }
}

function jobPlanOf(
  arrangement: Arrangement,
  found: Job,
  items: readonly Item[],
  faults: readonly Fault[],
  windows: readonly WindowSummary[],
  asleep: ReadonlySet<string>,
): JobPlan {
  const versions = [...asleep].sort().map((name): Unread => ({ at: below('/uses', name), what: 'version', name }))
  const unread = [...versions, ...unreadOf(arrangement, items, asleep), ...windows.flatMap((each) => each.unread)]
  const own = resultsOf(arrangement, items, faults, unread, found)
  const order = walkingOrder(found)
  const asks = [...mergedAsks([own.asks, ...windows.map((each) => each.asks)])].sort((a, b) => order(a.at, b.at))
  return { windows, ...own, asks, faults: [...own.faults, ...windows.flatMap((each) => each.faults)] }
}

function keptOf(arrangement: Arrangement, plan: WindowPlan, items: readonly Item[]): Kept {
  const verdicts = { pass: 0, warn: 0, fail: 0, unknown: 0 }
  for (const { verdict } of plan.checks) verdicts[verdict] += 1
  const gathered = new Map(
    [...arrangement.gathered].map((id) => [
      id,
      items.flatMap((item) => {
        const known = arrangement.facts.get(item.profile)?.find(({ fact }) => fact.id === id)
        const reading = known && read(known.fact, known.givers, item.outcomes)
        return reading ? [{ at: item.at, reading }] : []
      }),
    ]),
  )
  const { window, parts, asks, unread, faults } = plan
  return {
    summary: { window, verdicts, parts, asks, unread, faults, facts: factsOf(arrangement, items, arrangement.gathered) },
    gathered,
  }
}

function siteOf(found: Job, ordered: Job, place: Place, headOf: (room: Room, ordered: Room | undefined) => RoomHead): Site {
  const [rooms, roomId = '', windows, windowId = '', ...more] = tokens(place)
  const room = rooms === 'rooms' && windows === 'windows' && more.length === 0 ? byId(found.rooms, roomId) : undefined
  const window = byId(room?.windows, windowId)
  if (!room || !window)
    throw new RangeError(
      `Unexpected place ${JSON.stringify(place)}, expected a window of this job, such as ${JSON.stringify(firstWindow(found))}`,
    )
  const orderedRoom = byId(ordered.rooms, roomId)
  return { head: headOf(room, orderedRoom), job: found, window, ordered: byId(orderedRoom?.windows, windowId) }
}
const firstWindow = (job: Job): Place | undefined => {
  const room = job.rooms.find(({ windows }) => windows.length > 0)
  return room && below('/rooms', room.id, 'windows', room.windows[0]?.id ?? '')
}

const awake = (kinds: Kinds, asleep: ReadonlySet<string>): Kinds =>
  asleep.size === 0 ? kinds : new Map([...kinds].filter(([, owner]) => !owner || !asleep.has(owner.id)))

/** Names and values of an object's members but one: what is the same while nobody changed them. */
const ownMembers = (object: object, but: string): readonly unknown[] =>
  Object.entries(object)
    .filter(([name]) => name !== but)
    .flat()

/** Keeps one value a name while its key holds the same things; the oldest names go when there are more than `most`. */
function memo<T>(most = Number.POSITIVE_INFINITY) {
  const kept = new Map<string, { readonly key: readonly unknown[]; readonly value: T }>()
  return (name: string, key: readonly unknown[], make: () => T): T => {
    const known = kept.get(name)
    const entry = known && isSame(known.key, key) ? known : { key, value: make() }
    kept.delete(name)
    kept.set(name, entry)
    if (kept.size > most) kept.delete(kept.keys().next().value as string)
    return entry.value
  }
}
const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, at) => item === b[at])
