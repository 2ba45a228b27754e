import { type ComposeOptions, compose, words as drawingWords, type Layer, type Scene, screen } from '@evenhem/drawing'
import type { Place } from '@evenhem/job'
import { tapes } from '@evenhem/length'
import { asMeasured, createPlanner, type WindowPlan } from '@evenhem/planner'
import { createSay, type Say, wordsOf } from '@evenhem/planner/say'
import { plugins } from '@evenhem/plugins'
import type { Example } from '../tools/examples.ts'
import { factsIn, type HookMap } from './facts.ts'

const planner = createPlanner(plugins)

/** How an example's numbers and words are read: millimetres where it is written in them, else sixteenths of an inch. */
export const sayFor = ({ found }: Example, language: 'en' | 'es' = 'en'): Say =>
  createSay({
    words: [...wordsOf(plugins), drawingWords],
    language,
    tape: found.units === 'mm' ? tapes.wholeMillimetres : tapes.sixteenths,
  })

/** What a golden scene shows. */
export const shown = [
  { view: 'elevation', state: 'drawn', title: 'Elevation, drawn' },
  { view: 'elevation', state: 'stacked', title: 'Elevation, stacked' },
  { view: 'plan', state: 'drawn', title: 'From above, drawn' },
  { view: 'plan', state: 'stacked', title: 'From above, stacked' },
  { view: 'marks', state: 'stacked', title: 'Marks' },
  { view: 'hem', state: 'drawn', title: 'Hem' },
  { view: 'pins', state: 'drawn', title: 'Pins' },
  { view: 'level', state: 'stacked', title: 'Level' },
  { view: 'loads', state: 'drawn', title: 'Loads' },
] as const
export type Shown = (typeof shown)[number]

export interface Window {
  readonly place: Place
  readonly plan: WindowPlan
  readonly layers: readonly Layer[]
  readonly hooks: readonly HookMap[]
}
/** The windows of an example, planned as found. */
export const windowsIn = ({ ordered, found, read, places }: Example): readonly Window[] =>
  places.map((place) => {
    const plan = planner.window(found, ordered, place)
    return { place, plan, layers: asMeasured(plan.layers, read.readings, plan.reckonings), hooks: factsIn(plan) }
  })

/** How a tablet asks for a scene. */
export const askedFor = ({ view, state }: Shown, say: Say, more: Partial<ComposeOptions> = {}): ComposeOptions => ({
  view,
  state,
  width: 820,
  height: 726,
  sizes: screen,
  write: say.length,
  say: (code) => say.say(code),
  weigh: (mass) => say.quantity({ mass }),
  ...more,
})
/** One scene. */
export const sceneOf = (layers: readonly Layer[], each: Shown, say: Say, more: Partial<ComposeOptions> = {}): Scene =>
  compose(layers, askedFor(each, say, more))
