import {
  type Entry,
  type EventId,
  eventId,
  fold,
  type Line,
  lastOf,
  missingIn,
  readLogFile,
  type Site,
  withLines,
  write,
  wrong,
} from '../src/index.ts'
import { chances } from './simulated-disk.ts'

// Tablets that put, put over and withdraw, and hear of one another late, in pieces, twice and out of order. What must come out is worked out here a
// second time, from who had heard of what when they wrote, and not from what the events say.

const clock = '2026-11-25T09:12:00Z'
const places = ['/rooms/r/a', '/rooms/r/b']
const values = [84, 85, { deep: 84 }, 'refused']

interface Tablet {
  readonly device: string
  readonly own: Line[]
  /** What it has heard of, in the order in which it did. */
  readonly heard: Map<EventId, Line>
}
/** What was meant by an event: what stood at its place for whoever wrote it. */
type Meant = Map<EventId, readonly EventId[]>

export const entryOf = ({ event }: Line): Entry =>
  event.value === 'refused' ? { event, refused: wrong('job/refused') } : { event, read: event.value }
const siteOf = (lines: Iterable<Line>): Site => fold([...lines].map(entryOf))
const isValue = ({ event: { value } }: Line): boolean => value !== undefined && value !== 'refused'

export interface Schedule {
  readonly tablets: readonly Tablet[]
  readonly meant: Meant
  readonly all: readonly Line[]
}
const pick = <T>(list: readonly T[], chance: () => number): T => list[Math.floor(chance() * list.length)] as T

function standing(heard: Iterable<Line>, place: string, meant: Meant): readonly Line[] {
  const there = [...heard].filter(({ event }) => event.place === place)
  // What is left out takes nothing away.
  const counted = there.filter(({ event }) => event.value !== 'refused')
  const gone = new Set(counted.flatMap(({ event }) => meant.get(eventId(event)) ?? []))
  return there.filter((line) => isValue(line) && !gone.has(eventId(line.event)))
}

function put(tablet: Tablet, meant: Meant, chance: () => number): void {
  const { device, own, heard } = tablet
  const place = pick(places, chance)
  const value = chance() < 0.2 ? undefined : pick(values, chance)
  const before = standing(heard.values(), place, meant).map(({ event }) => eventId(event))
  const draft = value === undefined ? { place } : { place, value }
  for (const line of write({ device, last: lastOf(own), clock }, [draft as never], siteOf(heard.values()))) {
    meant.set(eventId(line.event), before)
    own.push(line)
    heard.set(eventId(line.event), line)
  }
}

/** Some of what another one has heard of: each line perhaps, perhaps twice, in any order. Its own are never news. */
function hear(tablet: Tablet, from: Tablet, chance: () => number): void {
  const share = chance() < 0.4 ? 1 : chance()
  const news = [...from.heard.values()].filter(() => chance() < share)
  if (chance() < 0.5) news.reverse()
  if (chance() < 0.2) news.push(...news)
  for (const line of news) if (!tablet.heard.has(eventId(line.event))) tablet.heard.set(eventId(line.event), line)
}

/** What happens on site, from a seed. */
export function scheduleOf(seed: number): Schedule {
  const chance = chances(seed)
  const tablets: readonly Tablet[] = Array.from({ length: 2 + (seed % 7) }, (_, i) => ({
    device: `t${i}`,
    own: [],
    heard: new Map(),
  }))
  const meant: Meant = new Map()
  for (let steps = 3 + Math.floor(chance() * 2 * tablets.length); steps > 0; steps--) {
    const tablet = pick(tablets, chance)
    while (chance() < 0.5) hear(tablet, pick(tablets, chance), chance)
    put(tablet, meant, chance)
  }
  return { tablets, meant, all: tablets.flatMap(({ own }) => own) }
}

/** What must stand at each place, in words of its own: `value by t0:1, value by t1:2`. */
function expected(lines: readonly Line[], meant: Meant): string {
  const said = places.map((place) => {
    const live = standing(lines, place, meant)
    const sorted = [...live].sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1))
    const shown = sorted.map(({ event }) => `${JSON.stringify(event.value)} by ${eventId(event)}`)
    const different = new Set(live.map(({ event }) => JSON.stringify(event.value))).size > 1
    return shown.length === 0
      ? ''
      : `${place}: ${shown.join(', ')}${different ? ' in conflict' : ''} reads ${JSON.stringify(sorted.at(-1)?.event.value)}`
  })
  return said.filter((each) => each !== '').join('\n')
}
const keyOf = ({ event: { count, by, n } }: Line): string => `${`${count}`.padStart(6, '0')} ${by} ${`${n}`.padStart(6, '0')}`

/** The same of a site. */
function shown(site: Site): string {
  const said = places.map((place) => {
    const live = site.places.get(place as never)?.live ?? []
    const all = live.map(({ event, read }) => `${JSON.stringify(read)} by ${eventId(event)}`)
    const different = site.conflicts.some((each) => each.place === place)
    const reads = site.readings[place as never]
    return live.length === 0 && reads === undefined
      ? ''
      : `${place}: ${all.join(', ')}${different ? ' in conflict' : ''} reads ${JSON.stringify(reads?.value)}`
  })
  return said.filter((each) => each !== '').join('\n')
}

function shuffled<T>(list: readonly T[], chance: () => number): readonly T[] {
  const left = [...list]
  return list.map(() => left.splice(Math.floor(chance() * left.length), 1)[0] as T)
}

/** What is wrong with a schedule: what each tablet sees on the way, and what all see in the end, in any order. */
export function wrongIn(seed: number): string | undefined {
  const { tablets, meant, all } = scheduleOf(seed)
  const chance = chances(seed + 0.5)
  const { device, heard } = pick(tablets, chance)
  const [is, ought] = [shown(siteOf(heard.values())), expected([...heard.values()], meant)]
  if (is !== ought) return `seed ${seed}: ${device} sees\n${is}\nand should see\n${ought}`
  const must = expected(all, meant)
  const rest = new Set<string>()
  for (const order of [all, shuffled(all, chance), [...shuffled(all, chance), ...all.slice(0, 3)]]) {
    const site = siteOf(order)
    if (shown(site) !== must) return `seed ${seed}: in the end there is\n${shown(site)}\nand should be\n${must}`
    rest.add(besides(site))
  }
  return rest.size === 1 ? undefined : `seed ${seed}: another order gives another site: ${[...rest].join(' or ')}`
}
const besides = ({ places: map, count, refused }: Site): string => {
  const withdrawn = places.filter((place) => map.get(place as never)?.withdrawn)
  return `${withdrawn} withdrawn, ${refused.map(({ event }) => eventId(event))} refused, count ${count}`
}

type Folder = Map<string, Uint8Array>
const bytesOf = (lines: readonly Line[]): Uint8Array => withLines([], lines)

/** What comes from another copy of the folder, file by file, as `mergeFolders` does it. */
function merged(into: Folder, from: Folder): void {
  for (const [device, bytes] of from) {
    const mine = readLogFile(device, into.get(device) ?? new Uint8Array())
    into.set(device, withLines(mine.rows, missingIn(mine.lines, readLogFile(device, bytes).lines)))
  }
}

/** A copy that somebody made while files were written: each may end anywhere, lack a line or hold one twice. */
function copied(lines: readonly Line[], chance: () => number): Uint8Array {
  const some = lines.filter(() => chance() < 0.9)
  const twice = chance() < 0.3 ? [...some, ...some.slice(-1)] : some
  const bytes = bytesOf(twice)
  return chance() < 0.5 ? bytes : bytes.subarray(0, Math.floor(chance() * bytes.length))
}

/** What is wrong when the folders of a schedule are copied and merged as files. Every device's own file is whole. */
export function wrongInFolders(seed: number): string | undefined {
  const { tablets } = scheduleOf(seed)
  const chance = chances(seed + 0.25)
  const folders: Folder[] = tablets.map(({ device, own }) => new Map(own.length > 0 ? [[device, bytesOf(own)]] : []))
  for (let times = tablets.length * 2; times > 0; times--) {
    const [to, from] = [pick([...tablets.keys()], chance), pick([...tablets.keys()], chance)]
    const part: Folder = new Map(
      [...(folders[from] as Folder)].map(([d, bytes]) => [d, copied(readLogFile(d, bytes).lines, chance)]),
    )
    merged(folders[to] as Folder, part)
  }
  const ends = folders.map((own, i) => {
    const folder: Folder = new Map(own)
    for (const k of shuffled([...folders.keys()], chance)) if (k !== i) merged(folder, folders[k] as Folder)
    return folder
  })
  const text = (folder: Folder) =>
    [...folder]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([, bytes]) => Buffer.from(bytes).toString())
      .join('')
  const must = tablets.map(({ own }) => Buffer.from(bytesOf(own)).toString()).join('')
  const odd = ends.findIndex((folder) => text(folder) !== must)
  return odd < 0
    ? undefined
    : `seed ${seed}: the folder of t${odd} ends with\n${text(ends[odd] as Folder)}\nand should with\n${must}`
}
