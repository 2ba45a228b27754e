import { below, type Job, type Place, type PlacedWindow, placeInWords } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import { decisionLine } from './decided.ts'
import type { Line, Section } from './outline.ts'
import type { Said, Voice } from './voice.ts'

type Treatment = PlacedWindow['window']['treatments'][number]
type ByHook = Readonly<Record<string, Length>>

/** Hooks one after the other that have the same pin. */
export interface PinRun {
  readonly first: number
  readonly last: number
  readonly pin: Length
}
/** Pins by the number of the hook as runs, in the order of the hooks. */
export function runsOf(pins: ByHook): readonly PinRun[] {
  const sorted = Object.entries(pins)
    .map(([n, pin]) => ({ first: Number(n), last: Number(n), pin }))
    .sort((a, b) => a.first - b.first)
  return sorted.reduce<PinRun[]>((runs, one) => {
    const last = runs.at(-1)
    if (last && last.pin === one.pin && last.last + 1 === one.first) runs[runs.length - 1] = { ...last, last: one.last }
    else runs.push(one)
    return runs
  }, [])
}

/** Hooks and their pin: `hooks 4 to 7: 3/8`. */
export const runInWords = ({ first, last, pin }: PinRun, voice: Voice): Said =>
  voice.said('report/pins-at', {
    one: first === last ? 'yes' : 'no',
    first: { count: first },
    last: { count: last },
    pin: { length: pin },
  })

/** A panel by what it is; where several treatments hang at a window, with its own. */
export function panelInWords(job: Job, { window, place }: PlacedWindow, treatment: Place, panel: string, voice: Voice): string {
  const within = window.treatments.length > 1 ? place : treatment
  return placeInWords(job, below(treatment, 'panels', panel), within, voice.language)
}

/** Pins that were set otherwise than the workroom set them, panel by panel. */
function pinLines(at: Place, { found, panels }: Treatment, job: Job, placed: PlacedWindow, voice: Voice): readonly Line[] {
  return Object.entries(found?.pins ?? {}).flatMap(([id, pins]) => {
    const made = panels?.find((panel) => panel.id === id)?.pin
    const runs = runsOf(pins).filter(({ pin }) => pin !== made)
    if (runs.length === 0) return []
    const panel = panelInWords(job, placed, at, id, voice)
    const was = made === undefined ? [] : [voice.said('report/pins-were', { pin: { length: made } })]
    return [{ name: [voice.text('report/pins-of', { panel })], says: [...runs.map((run) => runInWords(run, voice)), ...was] }]
  })
}

/** A sentence that another follows after a semicolon: without its full stop. */
const withoutStop = (said: Said): Said => {
  const last = said.at(-1)
  return typeof last === 'string' ? [...said.slice(0, -1), last.replace(/\.$/, '')] : said
}

/** What was gone on with all the same: what it was, and the reason. */
const overrideLines = ({ checks }: WindowPlan, voice: Voice): readonly Line[] =>
  checks.flatMap(({ override, says, code, values }) =>
    override === undefined
      ? []
      : [
          {
            name: [voice.text('report/gone-on')],
            says: [withoutStop(voice.said(says ?? code, values)), voice.said('report/reason', { reason: override })],
          },
        ],
  )

/** What was done at a window otherwise than ordered: pins set anew, decisions about what differed, and what was gone on with for a reason; undefined when nothing was. */
export function correctionsOf(placed: PlacedWindow, plan: WindowPlan, found: Job, voice: Voice): Section<Line> | undefined {
  const { window, place } = placed
  const parts = [
    { at: place, found: window.found },
    ...window.treatments.map((one) => ({ at: below(place, 'treatments', one.id), found: one.found })),
  ]
  const pins = window.treatments.flatMap((one) => pinLines(below(place, 'treatments', one.id), one, found, placed, voice))
  const decisions = parts.flatMap(({ at, found: own }) =>
    Object.entries(own?.decided ?? {}).map(([key, text]) =>
      decisionLine({ at, key, text }, found, window.treatments.length > 1 ? place : at, voice),
    ),
  )
  const of = [...pins, ...decisions, ...overrideLines(plan, voice)]
  return of.length > 0 ? { title: voice.text('report/corrections'), of } : undefined
}
