import type { Hole, HookMap, HookPlace } from '@evenhem/drapery/facts'
import type { Figure, Mark } from '@evenhem/drawing'
import type { Job, PlacedWindow } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import { stages, type Verdict } from '@evenhem/plugin'
import type { Speech } from './speech.ts'
import { plain, table } from './table.ts'

/** How a plan is written for people: sections of lines, an empty one left out. */
type Write = (plan: WindowPlan, speech: Speech) => string

const flat = (marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]))
const factsOf = <T>(plan: WindowPlan, id: string): readonly T[] =>
  plan.facts.filter((fact) => fact.id === id).map((fact) => fact.value as T)

/** Heights above the level line, from the top down, as the elevation shows them. */
const heights: Write = (plan, { say, length }) => {
  const marks = flat(plan.layers.filter(({ view }) => view === 'elevation').flatMap((layer) => layer.marks))
  const figures = marks.flatMap((mark): Figure[] => (mark.kind === 'height' && mark.role === 'dimension' ? [mark.figure] : []))
  const once = [...new Map(figures.map((figure) => [figure.of, figure])).values()]
  const rows = once.flatMap(({ what, value }) => (value === undefined ? [] : [{ what, value }])).sort((a, b) => b.value - a.value)
  return table(rows.map(({ what, value }) => [say(what), length(value)]))
}

/** What to pencil on the wall: each hole from the floor below it and from the nearer edge of the casing. */
const marks: Write = (plan, { say, length }) =>
  table(
    factsOf<readonly Hole[]>(plan, 'drapery/holes@1')
      .flat()
      .sort((a, b) => a.side.localeCompare(b.side) || b.height.value - a.height.value)
      .map(({ side, what, fromFloor, fromCasing }) => [
        say(`drapery/${side}`),
        say(what),
        `${length(fromFloor.value)} from the floor`,
        `${length(fromCasing.value)} from the casing`,
      ]),
  )

/** Neighbours that go to the same kind of bearer, as one. */
const runsOf = (places: readonly HookPlace[]): readonly (readonly HookPlace[])[] =>
  places.reduce<HookPlace[][]>((runs, place) => {
    const last = runs.at(-1)
    if (last?.[0]?.to === place.to && last[0].note === place.note) last.push(place)
    else runs.push([place])
    return runs
  }, [])
const span = (numbers: readonly (number | undefined)[]): string => {
  const [first, last] = [numbers[0], numbers.at(-1)]
  return first === undefined ? '' : first === last ? `${first}` : `${first} to ${last}`
}
const hooksOf = ({ places, threading }: HookMap, { say }: Speech): string => {
  const panels = [...new Set(places.map(({ panel }) => panel))]
  const rows = panels.flatMap((panel) =>
    runsOf(places.filter((place) => place.panel === panel)).map((run, n) => [
      n === 0 ? `panel ${panel}` : '',
      `hook ${span(run.map(({ hook }) => hook.n))}`,
      [say(run[0]?.to ?? ''), span(run.map(({ number }) => number))].filter(Boolean).join(' '),
      run[0]?.note ? say(run[0].note) : '',
    ]),
  )
  const rod = threading.map(({ what, count }) => `${count} ${say(what)}`).join(', ')
  return `${table(rows)}${rod ? `  On the rod from left to right: ${rod}\n` : ''}`
}
const hooks: Write = (plan, speech) =>
  factsOf<HookMap>(plan, 'drapery/hook-map@1')
    .map((map) => hooksOf(map, speech))
    .join('')

const worstFirst: readonly Verdict[] = ['fail', 'unknown', 'warn', 'pass']
const checks: Write = ({ checks: all }, { say, help }) =>
  [...all]
    .sort((a, b) => worstFirst.indexOf(a.verdict) - worstFirst.indexOf(b.verdict))
    .map(({ verdict, code, says = code, values, stops, override }) => {
      const todo = verdict === 'pass' ? undefined : help(says, values)
      const lines = [
        todo,
        verdict === 'fail' && stops && override === undefined ? `Stops everything from ${stops} on.` : undefined,
        override && `Set aside: ${override}`,
      ]
      return `  ${verdict.padEnd(7)}  ${say(says, values)}\n${lines
        .filter(Boolean)
        .map((line) => `           ${line}\n`)
        .join('')}`
    })
    .join('')

const steps: Write = ({ steps: all }, { say, length }) =>
  stages
    .flatMap((stage) => {
      const here = all.filter((step) => step.stage === stage)
      return here.map(({ code, values, numbers = [], cautions = [], closed }, n) => {
        const shown = numbers.map(({ what, value }) => `${say(what)} ${length(value)}`).join(', ')
        const lines = [
          shown,
          ...cautions.map((caution) => `Caution: ${say(caution)}`),
          closed.length > 0 && `Closed by ${closed.join(', ')}`,
        ]
        return `  ${(n === 0 ? stage : '').padEnd(9)}  ${say(code, values)}\n${lines
          .filter(Boolean)
          .map((line) => `             ${line}\n`)
          .join('')}`
      })
    })
    .join('')

const parts: Write = (plan, { say, length }) =>
  table(
    plan.parts.map((part) => [
      String(part.count).padStart(4),
      say(part.what),
      part.length === undefined ? '' : length(part.length),
    ]),
  )
const asks: Write = (plan) =>
  table(plan.asks.map(({ at, holds }) => [at, `${holds} ${holds === 1 ? 'rule waits' : 'rules wait'} for it`]))
const notRead: Write = (plan, { say }) =>
  plan.unread.map(({ what, name, at }) => `  ${say(`host/unread.${what}`, { name })}  ${at}\n`).join('')
const faults: Write = (plan) => plan.faults.map(({ message, at }) => `  ${message}  ${at}\n`).join('')

const sections: Readonly<Record<string, Write>> = {
  'Heights above the level line': heights,
  'Marks on the wall': marks,
  Hooks: hooks,
  Checks: checks,
  'To measure': asks,
  Steps: steps,
  Parts: parts,
  'Not read by any plugin here': notRead,
  'Faults of plugins': faults,
}

/** The plan of a window for people: what to mark, hang and check, each length in the reader's unit. */
export function sheetOf(job: Job, { room, window, place }: PlacedWindow, plan: WindowPlan, speech: Speech): string {
  const written = Object.entries(sections)
    .map(([title, write]) => ({ title, text: write(plan, speech) }))
    .filter(({ text }) => text !== '')
  const body = written.map(({ title, text }) => `\n${title}\n${text}`).join('')
  return plain(`${job.job.name}, ${room.name}, ${window.name}\n${place}\n${body}`)
}
