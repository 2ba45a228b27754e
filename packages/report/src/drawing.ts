import { compose, figuresOf, type Layer, type Mark, paper as paperSizes, type Scene, type Sizes } from '@evenhem/drawing'
import type { Place, Readings } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { asMeasured, type WindowPlan } from '@evenhem/planner'
import { narrow, type Paper, papers } from './paper.ts'
import type { NumberPiece, Voice } from './voice.ts'

/** What a number's look means, with one of the drawing's own numbers; one that is not known has none. */
export interface Key {
  readonly state: 'measured' | 'computed' | 'unknown'
  readonly number?: NumberPiece
  readonly says: string
}
/** A drawing with what is said about it. */
export interface Drawing {
  readonly scene: Scene
  /** The same with the same type, for a screen that is too narrow for the paper's. */
  readonly small: Scene
  /** For who cannot see it. */
  readonly alternative: string
  readonly key: readonly Key[]
  /** The unit, and whether numbers are rounded. */
  readonly note: string
}

/** What is pencilled, drilled, enlarged and read off a tape is the installer's; the customer's drawing shows what hangs and how large it is. */
const isForTheCustomer = (mark: Mark): boolean =>
  mark.kind !== 'cross' &&
  mark.kind !== 'height' &&
  mark.kind !== 'detail' &&
  !('role' in mark && (mark.role === 'mark' || mark.role === 'centre'))
const shown = (mark: Mark): readonly Mark[] =>
  mark.kind === 'group' ? [{ ...mark, marks: mark.marks.flatMap(shown) }] : isForTheCustomer(mark) ? [mark] : []

/** Numbers a little smaller than on a marks sheet, and rows nearer: the picture comes first. */
const sizes: Sizes = { ...paperSizes, row: { ...paperSizes.row, size: 3.4 }, gap: 4.2, tick: 1 }

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?…]$/.test(text) ? '' : '.'}`

/** What was read, and on which days. */
export interface Read {
  readonly readings: Readings
  readonly days: DaysRead
}

/** The window as it hangs, with the drapery closed; undefined while the plan has nothing to draw. */
export function drawingOf(plan: WindowPlan, read: Read, name: string, paper: Paper, voice: Voice): Drawing | undefined {
  const layers = asMeasured(plan.layers, read.readings, plan.reckonings).map(
    (layer): Layer => ({ ...layer, marks: layer.marks.flatMap(shown) }),
  )
  const speak = (length: Length): string => voice.number(length).spoken ?? voice.number(length).written.text
  const composed = (size: { readonly width: number; readonly height: number }): Scene =>
    compose(layers, {
      view: 'elevation',
      state: 'drawn',
      hasTape: false,
      ...size,
      sizes,
      write: (length) => voice.number(length).written,
      say: (code) => voice.text(code),
      speak,
    })
  const scene = composed(papers[paper].drawing)
  if (scene.items.length === 0) return undefined
  const alternative = [voice.text('report/drawing', { window: name }), ...scene.words].map(sentence).join(' ')
  return {
    scene,
    small: composed(narrow),
    alternative,
    key: keyOf(scene, inWords(read.days, plan.window, voice), voice),
    note: noteOf(scene, voice),
  }
}

/** The days on which something of a window was read, by its place, the first first. */
export type DaysRead = ReadonlyMap<Place, readonly string[]>

/** Looks through the readings once for all windows: a house has thousands. */
export function daysReadIn(readings: Readings): DaysRead {
  const days = new Map<Place, Set<string>>()
  for (const [place, { when }] of Object.entries(readings)) {
    const window = /^\/rooms\/[^/]+\/windows\/[^/]+(?=\/)/.exec(place)?.[0]
    if (window !== undefined && when) days.set(window, (days.get(window) ?? new Set()).add(when.slice(0, 10)))
  }
  return new Map([...days].map(([window, all]) => [window, [...all].sort()]))
}
function inWords(days: DaysRead, window: Place, voice: Voice): string {
  const all = days.get(window) ?? []
  const [first, last] = [all[0], all.at(-1)]
  if (first === undefined || last === undefined) return ''
  return first === last ? voice.day(first) : voice.text('report/days', { first: voice.day(first), last: voice.day(last) })
}

function keyOf(scene: Scene, days: string, voice: Voice): readonly Key[] {
  const read = days ? voice.text('report/read-from-a-tape', { days }) : voice.text('report/read-from-a-tape-undated')
  const says = { measured: read, computed: voice.text('report/worked-out'), unknown: voice.text('report/not-known') }
  return (['measured', 'computed', 'unknown'] as const).flatMap((state) => {
    const figure = figuresOf(scene).find(({ tag }) => tag.state === state)?.figure
    const number = figure?.value === undefined || state === 'unknown' ? {} : { number: voice.number(figure.value) }
    return figure ? [{ state, ...number, says: says[state] }] : []
  })
}

/** The unit, and whether the tape's step rounds a number of the drawing. */
function noteOf(scene: Scene, voice: Voice): string {
  const isRounded = figuresOf(scene).some(
    ({ figure }) => figure.value !== undefined && voice.number(figure.value).written.off !== 0,
  )
  return voice.text(`report/${voice.tape.unit}`, { rounded: isRounded ? 'yes' : 'no' })
}
