import { below, type Job, type PlacedWindow } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import { panelInWords, runInWords, runsOf } from './corrections.ts'
import type { HouseWindow, Link } from './house.ts'
import { linkTo } from './house.ts'
import { type LoadsShown, loadsAt } from './loads.ts'
import type { Line, Section } from './outline.ts'
import type { Voice } from './voice.ts'
import type { WallMarks } from './wall-marks.ts'

/** What a report reads of a hook map, by the name of the fact: hardware that nobody here has seen gives the same. */
interface HookMap {
  readonly places: readonly HookPlace[]
  readonly threading: readonly { readonly what: string; readonly count: number }[]
}
interface HookPlace {
  readonly panel: string
  readonly hook: { readonly n: number }
  readonly to: string
  readonly number?: number
  readonly note?: string
}

/** A window for whoever works at it next. */
export interface TechnicalWindow {
  readonly window: Link
  readonly marks: readonly WallMarks[]
  /** Which hook goes where, and how the rod is threaded. */
  readonly hooks: Section<Line>
  /** From the top of the pin up to the top of the drapery, as it hangs. */
  readonly pins: Section<Line>
  /** Absent where nobody knows what brackets carry. */
  readonly loads?: LoadsShown | undefined
}
export interface Technical extends Section<TechnicalWindow> {
  readonly lead: string
}

type Treatment = PlacedWindow['window']['treatments'][number]

const isAfter = (before: number | undefined, number: number | undefined): boolean => before !== undefined && before + 1 === number
/** Neighbours that go to bearers of one sort, one after the other, as one. */
const together = (places: readonly HookPlace[]): readonly (readonly HookPlace[])[] =>
  places.reduce<HookPlace[][]>((runs, place) => {
    const last = runs.at(-1)
    const before = last?.at(-1)
    const isNext = before?.to === place.to && before.note === place.note && isAfter(before.number, place.number)
    if (last && isNext) last.push(place)
    else runs.push([place])
    return runs
  }, [])
const span = (first: number | undefined, last: number | undefined): string =>
  first === undefined ? '' : first === last ? `${first}` : `${first}–${last}`

function runLine(run: readonly HookPlace[], voice: Voice): string {
  const [first, last] = [run[0] as HookPlace, run.at(-1) as HookPlace]
  const to = [voice.text(first.to), span(first.number, last.number)].filter((text) => text !== '').join(' ')
  const hooks = { one: run.length === 1 ? 'yes' : 'no', first: { count: first.hook.n }, last: { count: last.hook.n } }
  return voice.text('report/hooks-to', {
    ...hooks,
    to,
    note: first.note ? voice.text(first.note) : '',
    noted: first.note ? 'yes' : 'no',
  })
}

function hookLines(plan: WindowPlan, named: (at: string, panel: string) => string, voice: Voice): readonly Line[] {
  return plan.facts
    .filter(({ id }) => id === 'drapery/hook-map@1')
    .flatMap(({ at, value }) => {
      const { places, threading } = value as HookMap
      const panels = [...new Set(places.map(({ panel }) => panel))]
      const rod = threading
        .filter(({ count }) => count > 0)
        .map(({ what, count }) => `${count} ${voice.text(what)}`)
        .join(', ')
      return [
        ...panels.map(
          (panel): Line => ({
            name: [named(at, panel)],
            says: together(places.filter((place) => place.panel === panel)).map((run) => [runLine(run, voice)]),
          }),
        ),
        ...(rod ? [{ name: [voice.text('report/threading')], says: [[rod]] }] : []),
      ]
    })
}

/** The pins of a panel as they hang: as the workroom set them, but where they were set again. */
function pinsOf(
  { panels = [], found }: Treatment,
  hooks: (panel: string) => readonly number[],
): readonly { readonly panel: string; readonly pins: Readonly<Record<string, Length>> }[] {
  return panels.map(({ id, pin }) => {
    const made = pin === undefined ? {} : Object.fromEntries(hooks(id).map((n) => [n, pin]))
    return { panel: id, pins: { ...made, ...found?.pins?.[id] } }
  })
}

function pinLines(
  placed: PlacedWindow,
  plan: WindowPlan,
  named: (at: string, panel: string) => string,
  voice: Voice,
): readonly Line[] {
  return placed.window.treatments.flatMap((treatment) => {
    const at = below(placed.place, 'treatments', treatment.id)
    const places = plan.facts
      .filter((fact) => fact.id === 'drapery/hook-map@1' && fact.at === at)
      .flatMap(({ value }) => (value as HookMap).places)
    const hooks = (panel: string) => places.filter((place) => place.panel === panel).map(({ hook }) => hook.n)
    return pinsOf(treatment, hooks)
      .filter(({ pins }) => Object.keys(pins).length > 0)
      .map(({ panel, pins }) => ({ name: [named(at, panel)], says: runsOf(pins).map((run) => runInWords(run, voice)) }))
  })
}

/** What the next installer needs to know of a window, but its marks, which its page has. */
export function technicalAt(
  placed: PlacedWindow,
  plan: WindowPlan,
  found: Job,
  voice: Voice,
): Pick<TechnicalWindow, 'hooks' | 'pins' | 'loads'> {
  const named = (at: string, panel: string): string => {
    const text = panelInWords(found, placed, at, panel, voice)
    return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
  }
  const loads = loadsAt(placed, plan, voice)
  return {
    ...(loads ? { loads } : {}),
    hooks: { title: voice.text('report/hooks'), of: hookLines(plan, named, voice) },
    pins: { title: voice.text('report/pins'), of: pinLines(placed, plan, named, voice) },
  }
}

/** The page for the next installer, window by window. */
export const technicalOf = (windows: readonly HouseWindow[], voice: Voice): Technical => ({
  title: voice.text('report/technical'),
  lead: voice.text('report/technical-lead'),
  of: windows.map((window) => ({
    window: linkTo(window),
    marks: [window.page.marks, window.page.ceiling].flatMap((marks) => marks ?? []),
    ...window.technical,
  })),
})
