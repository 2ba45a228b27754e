import type { Hole, HookMap, HookPlace } from '@evenhem/drapery/facts'
import { captionOf, type Figure, type Mark, ownersOf, withOwners } from '@evenhem/drawing'
import { type Job, nameOf, type Place, type PlacedWindow, placeInWords } from '@evenhem/job'
import type { PlannedStep, WindowPlan } from '@evenhem/planner'
import { stages } from '@evenhem/plugin'
import { findingLines } from './findings.ts'
import { loadLines } from './loads.ts'
import type { Speech } from './speech.ts'
import { plain, table } from './table.ts'
import { clothIn, clothLines } from './takeoff.ts'
import type { Voice } from './voice.ts'

/** How a plan is written for people: sections of lines, an empty one left out. */
type Write = (plan: WindowPlan, speech: Speech, place: (at: Place) => string) => string

const flat = (marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]))
const factsOf = <T>(plan: WindowPlan, id: string): readonly T[] =>
  plan.facts.filter((fact) => fact.id === id).map((fact) => fact.value as T)

/** Heights above the level line, from the top down, as the elevation shows them. */
const heights: Write = (plan, { say, length }) => {
  const marks = flat(
    withOwners(plan.layers)
      .filter(({ view }) => view === 'elevation')
      .flatMap((layer) => layer.marks),
  )
  const figures = marks.flatMap((mark): Figure[] => (mark.kind === 'height' && mark.role === 'dimension' ? [mark.figure] : []))
  const once = [...new Map(figures.map((figure) => [figure.of, figure])).values()]
  const rows = once
    .flatMap((figure) => (figure.value === undefined ? [] : [{ what: captionOf(figure, say), value: figure.value }]))
    .sort((a, b) => b.value - a.value)
  return table(rows.map(({ what, value }) => [what, length(value)]))
}

/** From where a place along the wall is measured. */
const alongFrom = (side: Hole['side'], corner: Hole['fromCorner']) => {
  if (corner) return corner.what === 'drapery/from-left-corner' ? 'from-left-corner' : 'from-right-corner'
  return side === 'middle' ? 'from-left-edge' : 'from-casing'
}

/** What to pencil: each hole from the floor below it, one in the ceiling from the wall, and from the nearer edge of the casing. */
const marks: Write = (plan, { say, length, voice }) => {
  const owners = ownersOf(plan.layers)
  return table(
    factsOf<readonly Hole[]>(plan, 'drapery/holes@1')
      .flat()
      .sort((a, b) => a.side.localeCompare(b.side) || b.height.value - a.height.value)
      .map(({ side, what, height, fromFloor, fromCasing, fromCorner, fromWall }) => [
        ...(owners.size > 0 ? [say(owners.get(height.name.split('#')[0] ?? '') ?? '')] : []),
        say(`drapery/${side}`),
        say(what),
        fromWall
          ? voice('from-wall', { length: length(fromWall.value) })
          : voice('from-floor', { length: length(fromFloor.value) }),
        voice(alongFrom(side, fromCorner), { length: length((fromCorner ?? fromCasing).value) }),
      ]),
  )
}

/** Neighbours that go to the same kind of bearer, one after the other, as one. */
const runsOf = (places: readonly HookPlace[]): readonly (readonly HookPlace[])[] =>
  places.reduce<HookPlace[][]>((runs, place) => {
    const last = runs.at(-1)
    const before = last?.at(-1)
    const isNext = (before?.number ?? 0) + 1 === (place.number ?? 1)
    if (last && before?.to === place.to && before.note === place.note && isNext) last.push(place)
    else runs.push([place])
    return runs
  }, [])
const span = (numbers: readonly (number | undefined)[], voice: Voice): string => {
  const [first, last] = [numbers[0], numbers.at(-1)]
  return first === undefined ? '' : first === last ? `${first}` : voice('span', { first: `${first}`, last: `${last}` })
}
const hooksOf = ({ places, threading }: HookMap, { say, voice }: Speech): string => {
  const panels = [...new Set(places.map(({ panel }) => panel))]
  const named = (id: string): string => (id === 'left' || id === 'right' ? say(`drapery/${id}`) : id)
  const rows = panels.flatMap((panel) =>
    runsOf(places.filter((place) => place.panel === panel)).map((run, n) => [
      n === 0 ? voice('hook-panel', { panel: named(panel) }) : '',
      voice('hook', {
        numbers: span(
          run.map(({ hook }) => hook.n),
          voice,
        ),
      }),
      [
        say(run[0]?.to ?? ''),
        span(
          run.map(({ number }) => number),
          voice,
        ),
      ]
        .filter(Boolean)
        .join(' '),
      run[0]?.note ? say(run[0].note) : '',
    ]),
  )
  const rod = threading.map(({ what, count }) => `${count} ${say(what)}`).join(', ')
  return `${table(rows)}${rod ? `  ${voice('threading', { rod })}\n` : ''}`
}
const hooks: Write = (plan, speech) =>
  factsOf<HookMap>(plan, 'drapery/hook-map@1')
    .map((map) => hooksOf(map, speech))
    .join('')

const checks: Write = ({ checks: all }, speech, place) => findingLines(all, speech, place)

/** What closes a step, as the failing check says it. */
const closing = ({ checks }: WindowPlan, { say, voice }: Speech, codes: readonly string[]): string => {
  const failing = codes.map((code) =>
    checks.find((each) => each.code === code && each.stops && (each.verdict === 'fail' || each.verdict === 'unknown')),
  )
  const says = failing.map((check, n) => (check ? say(check.says ?? check.code, check.values) : codes[n])).join(' ')
  return voice('closed-by', { says })
}
const stepLines = (plan: WindowPlan, step: PlannedStep, speech: Speech): readonly string[] => {
  const { numbers = [], cautions = [], closed } = step
  const { say, length, voice } = speech
  const shown = numbers.map(({ what, value }) => `${say(what)} ${length(value)}`).join(', ')
  return [
    ...(shown ? [shown] : []),
    ...cautions.map((caution) => voice('caution', { says: say(caution) })),
    ...(closed.length > 0 ? [closing(plan, speech, closed)] : []),
  ]
}
const steps: Write = (plan, speech) => {
  const { say, voice } = speech
  const width = Math.max(...stages.map((stage) => voice(`stage.${stage}`).length))
  const owners = ownersOf(plan.layers)
  return plan.steps
    .map((step, n) => {
      const stage = plan.steps[n - 1]?.stage === step.stage ? '' : voice(`stage.${step.stage}`)
      const below = stepLines(plan, step, speech).map((line) => `${' '.repeat(width + 6)}${line}\n`)
      const owner = owners.get(step.on)
      return `  ${stage.padEnd(width)}  ${owner === undefined ? '' : `(${say(owner)}) `}${say(step.code, step.values)}\n${below.join('')}`
    })
    .join('')
}

const parts: Write = (plan, { say, length }) =>
  table(
    plan.parts.map((part) => [
      String(part.count).padStart(4),
      say(part.what),
      part.length === undefined ? '' : length(part.length),
    ]),
  )
const takeoff: Write = (plan, speech, place) => clothLines(clothIn(plan.facts), speech, place)
const loads: Write = (plan, speech) => loadLines(plan.facts, speech)
const asks: Write = (plan, { voice }, place) =>
  plan.asks.map(({ at, holds }) => `  ${voice('waits', { place: place(at), count: holds })}\n`).join('')
const unread: Write = (plan, { say }, place) =>
  plan.unread.map(({ what, name, at }) => `  ${place(at)}: ${say(`host/unread.${what}`, { name })}\n`).join('')
const faults: Write = (plan, _, place) => plan.faults.map(({ message, at }) => `  ${place(at)}: ${message}\n`).join('')

const sections = { heights, marks, hooks, checks, asks, steps, parts, takeoff, loads, unread, faults } satisfies Readonly<
  Record<string, Write>
>
const titles = Object.keys(sections) as readonly (keyof typeof sections)[]

/** The plan of a window for people: what to mark, hang and check, each length in the reader's unit. */
export function sheetOf(job: Job, window: PlacedWindow, plan: WindowPlan, speech: Speech): string {
  const place = (at: Place): string => placeInWords(job, at, at.startsWith(`${plan.window}/`) ? plan.window : '', speech.language)
  const body = titles
    .map((title) => ({ title, text: sections[title](plan, speech, place) }))
    .filter(({ text }) => text !== '')
    .map(({ title, text }) => `\n${speech.voice(`section.${title}`)}\n${text}`)
  return plain(`${job.job.name}, ${window.room.name}, ${window.window.name}\n${nameOf(window)}\n${body.join('')}`)
}
