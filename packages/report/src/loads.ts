import { compose, paper as paperSizes, type Scene } from '@evenhem/drawing'
import type { PlacedWindow } from '@evenhem/job'
import { kilogramForce, type LengthReckoning, percentUp, type Reckoning } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import type { Line, Section } from './outline.ts'
import type { Said, Voice } from './voice.ts'

/** What a report reads of loads, by the name of the fact. */
interface LoadsTold {
  readonly brackets: readonly BracketTold[]
  readonly sag?: { readonly sag: LengthReckoning; readonly most: LengthReckoning; readonly when: string }
  readonly assumes: readonly string[]
}
interface BracketTold {
  readonly name: string
  /** N. */
  readonly load: Reckoning
  readonly behind?: string
  readonly fastener?: string
  readonly used?: Reckoning
  readonly byOne?: Reckoning
  readonly ofRated?: Reckoning
  readonly lacks?: string
}

/** What the brackets of a window carry, for whoever works there next. */
export interface LoadsShown {
  readonly brackets: Section<Line>
  /** What was taken for granted. */
  readonly granted: { readonly title: string; readonly says: string }
  readonly estimate: string
  /** Composed whenever they are read and then let go, as the drawing of a window is. */
  readonly drawing: Scene
  /** For a screen that is too narrow for the paper's. */
  readonly small: Scene
  /** For who cannot see it. */
  readonly alternative: string
}

const percent = ({ value }: Reckoning) => ({ used: { count: percentUp(value) } })
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

function bracketLine({ name, load, behind, fastener, used, byOne, ofRated, lacks }: BracketTold, voice: Voice): Line {
  const share = (of: Reckoning | undefined, code: string) => (of ? [voice.text(code, percent(of))] : [])
  const where = behind
    ? [voice.text('report/load-held', { behind: { code: behind }, isWith: fastener ? 'yes' : 'no', fastener: fastener ?? '' })]
    : []
  const shares = [
    ...share(used, 'report/load-used'),
    ...share(byOne, 'report/load-by-one'),
    ...share(ofRated, 'report/load-of-rated'),
    ...(lacks ? [voice.text('report/load-lacks', { lacks: { code: lacks } })] : []),
  ]
  const says = [[voice.weigh(load.value / kilogramForce), ...where].join(', '), shares.join('; ')].filter((text) => text !== '')
  return { name: [capital(voice.text(name))], says: says.map((text): Said => [text]) }
}
const sagLine = ({ sag, most, when }: NonNullable<LoadsTold['sag']>, voice: Voice): Line => ({
  name: [capital(voice.text('report/load-sag'))],
  says: [voice.said('report/load-sag-of', { sag: { length: sag.value }, most: { length: most.value }, when: { code: when } })],
})
const linesOf = ({ brackets, sag }: LoadsTold, voice: Voice): readonly Line[] => [
  ...brackets.map((one) => bracketLine(one, voice)),
  ...(sag ? [sagLine(sag, voice)] : []),
]

/** Sizes in mm: beside a drawing of a window it is as wide, and lower. */
const wide = { width: 121, height: 66 }
const narrow = { width: 92, height: 56 }

/** What brackets carry and how far rods hang; undefined where nobody knows it. */
export function loadsAt({ room, window }: PlacedWindow, plan: WindowPlan, voice: Voice): LoadsShown | undefined {
  const all = plan.facts.filter(({ id }) => id === 'drapery/loads-told@1').map(({ value }) => value as LoadsTold)
  if (all.length === 0) return undefined
  const composed = (size: { readonly width: number; readonly height: number }): Scene =>
    compose(plan.layers, {
      ...{ view: 'loads', state: 'drawn', hasTape: false, ...size, sizes: paperSizes },
      write: (length) => voice.number(length).written,
      say: (code) => voice.text(code),
      weigh: voice.weigh,
      speak: (length) => voice.number(length).spoken ?? voice.number(length).written.text,
    })
  const name = voice.text('report/window', { room: room.name, window: window.name })
  const codes = [...new Set(all.flatMap(({ assumes }) => assumes))]
  return {
    brackets: { title: voice.text('report/loads'), of: all.flatMap((told) => linesOf(told, voice)) },
    granted: { title: voice.text('report/granted'), says: codes.map((code) => voice.text(code)).join(' ') },
    estimate: voice.text('drapery/estimate'),
    get drawing() {
      return composed(wide)
    },
    get small() {
      return composed(narrow)
    },
    get alternative() {
      return [voice.text('report/loads-drawing', { window: name }), ...composed(wide).words].join('. ').replaceAll('..', '.')
    },
  }
}
