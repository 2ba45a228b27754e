import {
  below,
  type Job,
  lay,
  type Place,
  type PlacedWindow,
  type Readings,
  type Signature,
  valueAt,
  windowsOf,
} from '@evenhem/job'
import { type Extensions, readEntry } from '@evenhem/job/read'
import { inch, type Length, millimetre } from '@evenhem/length'
import {
  inTheWay,
  nextStep,
  overridePlace,
  type PlannedCheck,
  type PlannedStep,
  type Planner,
  type WindowPlan,
} from '@evenhem/planner'
import type { Capture, WayOut } from '@evenhem/plugin'
import {
  type Entry,
  fold,
  foundWith,
  type Line,
  lastOf,
  type Put,
  type Site,
  sealed,
  signaturesAt,
  write,
} from '@evenhem/site-log'

/** What is done about a finding: the way out by its code, or a reason to go on all the same. */
export type Answer = { readonly way: string } | { readonly reason: string }
/** What goes otherwise than ordered at one window. Places are below the window, values as somebody enters them. */
export interface Otherwise {
  /** What a capture reads, the first time, the second, …; after that what is expected. */
  readonly reads?: Readonly<Record<string, readonly unknown[]>>
  /** Entries that no step asks for, before the step (`plugin/id`) is put done. */
  readonly also?: Readonly<Record<string, readonly Aside[]>>
  /** What is read anew once a check that stopped was answered. */
  readonly again?: readonly (readonly [code: string, at: string, value: unknown])[]
  /** What is done about a check, by its code, the first time, the second, … */
  readonly answers?: Readonly<Record<string, readonly Answer[]>>
}
/** An entry, of the other tablet where it says so; `unseen`: written without having seen what stands there. */
export interface Aside {
  readonly at: string
  readonly value?: unknown
  readonly other?: true
  readonly unseen?: true
}
export interface Tablet {
  readonly device: string
  readonly who: string
}
export interface Day {
  readonly order: Job
  readonly readings: Readings
  readonly known: Extensions
  readonly planner: Planner
  /** The clock of the first entry; each later one is a minute further. */
  readonly from: string
  /** Two tablets, room by room in turns. */
  readonly tablets: readonly [Tablet, Tablet]
  readonly otherwise: Readonly<Record<Place, Otherwise>>
  /** The hash of the order's bytes, and who signs in the evening, on the first tablet. */
  readonly hash: string
  readonly signed: readonly Omit<Signature, 'seal'>[]
}
/** What a day leaves. */
export interface Done {
  readonly lines: readonly Line[]
  readonly entries: readonly Entry[]
  readonly site: Site
}

/** The whole day, window by window in walking order. */
export function replay(day: Day): Done {
  const state = { entries: [] as Entry[], lines: [] as Line[], site: fold([]) }
  for (const window of windowsOf(day.order)) workAt(day, state, window)
  for (const [i, each] of day.signed.entries())
    put(day, state, day.tablets[0], { place: below(signaturesAt, `s${i + 1}`), value: sealed(each, day.hash, state.lines) })
  return state
}
interface State {
  readonly entries: Entry[]
  readonly lines: Line[]
  site: Site
}

/** The job as found so far. */
export const foundOf = ({ order, readings }: Pick<Day, 'order' | 'readings'>, site: Site): Job =>
  lay(order, foundWith(readings, site)).job
export const planAt = (day: Day, { site }: Pick<State, 'site'>, at: Place): WindowPlan =>
  day.planner.window(foundOf(day, site), day.order, at)

/** One line of a log: written, read as its place takes it, folded, planned. */
function put(day: Day, state: State, by: Tablet, entry: Put, seen: Site = state.site): void {
  const own = state.lines.filter(({ event }) => event.by === by.device)
  const clock = new Date(Date.parse(day.from) + state.lines.length * 60_000).toISOString().replace('.000', '')
  const [line] = write({ ...by, last: lastOf(own), clock }, [entry], { ...seen, count: state.site.count })
  if (!line) return
  const read = line.event.value === undefined ? {} : readEntry(day.order, line.event.place, line.event.value, day.known)
  if ('refused' in read) throw new Error(`Unexpected ${JSON.stringify(entry)}, refused: ${JSON.stringify(read.refused)}`)
  state.lines.push(line)
  state.entries.push({ event: line.event, ...('value' in read ? { read: read.value } : {}) })
  state.site = fold(state.entries)
}

/** Step by step, as long as one is open; what stands in the way is answered as the script says. */
function workAt(day: Day, state: State, { place, room }: PlacedWindow): void {
  const turn = day.order.rooms.findIndex(({ id }) => id === room.id) % 2
  const [by, other] = turn === 0 ? day.tablets : day.tablets.toReversed()
  const script = day.otherwise[place] ?? {}
  const times = new Map<string, number>()
  const next = <T>(key: string, list: readonly T[] = []): T | undefined => {
    const n = times.get(key) ?? 0
    times.set(key, n + 1)
    return list[n]
  }
  const enter = (entry: Put): void => put(day, state, by as Tablet, entry)
  for (;;) {
    const plan = planAt(day, state, place)
    const answered = plan.checks.some((check) => {
      const answer = isOpen(check, plan) ? next(check.code, script.answers?.[check.code]) : undefined
      for (const entry of answer ? putsOf(check, answer) : []) enter(entry)
      return answer !== undefined
    })
    if (answered) {
      for (const [code, at, value] of script.again ?? [])
        if (plan.checks.some((check) => check.code === code && isOpen(check, plan))) enter({ place: `${place}${at}`, value })
      continue
    }
    const step = nextStep(plan)
    if (!step) return
    for (const capture of step.captures ?? []) {
      const name = capture.at.slice(place.length)
      const value = next(name, script.reads?.[name]) ?? asExpected(day.order, capture)
      if (value !== undefined) enter({ place: capture.at, value })
    }
    for (const { at, value, other: isOther, unseen } of next(nameOf(step), [script.also?.[nameOf(step)]]) ?? [])
      put(day, state, (isOther ? other : by) as Tablet, { place: `${place}${at}`, value }, unseen ? fold([]) : state.site)
    enterDone(day, state, place, step, enter)
  }
}
const nameOf = ({ plugin, id }: PlannedStep): string => `${plugin}/${id}`

/** A step is put done only while nothing stands in its way; what its own readings opened is answered first. */
function enterDone(day: Day, state: State, at: Place, { doneAt }: PlannedStep, enter: (entry: Put) => void): void {
  const step = planAt(day, state, at).steps.find((each) => each.doneAt === doneAt)
  if (step && step.closed.length === 0 && !step.done) enter({ place: doneAt, value: true })
}
/** What fails is answered at once; what is not known, when it stands in the way of the next step. */
function isOpen(check: PlannedCheck, plan: WindowPlan): boolean {
  if (check.verdict === 'pass' || check.override !== undefined) return false
  const left = plan.steps.find(({ done }) => !done)
  return check.verdict !== 'unknown' || (left !== undefined && inTheWay(plan, left).includes(check))
}

function putsOf(check: PlannedCheck, answer: Answer): readonly Put[] {
  if ('reason' in answer) return [{ place: overridePlace(check) ?? '', value: answer.reason }]
  const way = check.ways?.find(({ code }) => code === answer.way)
  if (!way) throw new Error(`Unexpected way ${answer.way}, expected ${check.ways?.map(({ code }) => code)} of ${check.code}`)
  return way.put.map(({ at, value }) => ({ place: at, value: rawOf(value) }))
}

/** What somebody enters who finds things as they should be: what the order says, or else what the capture expects. */
function asExpected(order: Job, { at, as, expected }: Capture): unknown {
  if (as === 'tick') return true
  const ordered = valueAt(order, at)
  if (typeof ordered === 'number') return as === 'length' ? rawLength(ordered as Length) : ordered
  return expected && rawOf(expected)
}
const rawOf = (value: WayOut['put'][number]['value'] | NonNullable<Capture['expected']>): unknown => {
  if (typeof value !== 'object') return value
  if ('length' in value) return rawLength(value.length)
  return 'count' in value ? value.count : value
}

/** To the next sixteenth, as a tape is read, or to the millimetre where that is nearer. */
function rawLength(length: Length): string {
  const sixteenths = Math.round((length * 16) / inch)
  const isOnTape = Math.abs((sixteenths * inch) / 16 - length) <= millimetre / 4
  return isOnTape ? `${sixteenths / 16} in` : `${Math.round(length / millimetre)} mm`
}
/** The file of each tablet, by its name. */
export const filesOf = (lines: readonly Line[], tablets: readonly Tablet[]): ReadonlyMap<string, string> =>
  new Map(
    tablets.map(({ device }) => [
      `${device}.jsonl`,
      lines.flatMap(({ event, text }) => (event.by === device ? [`${text}\n`] : [])).join(''),
    ]),
  )
