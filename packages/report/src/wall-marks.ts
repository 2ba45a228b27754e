import { captionOf, type Mark, withOwners } from '@evenhem/drawing'
import type { WindowPlan } from '@evenhem/planner'
import type { Line, Section } from './outline.ts'
import type { Standing } from './standing.ts'
import type { Voice } from './voice.ts'

/** What is pencilled on the wall: the height of each mark above the floor under it. `instead` is said in place of them. */
export interface WallMarks extends Section<Line> {
  readonly instead?: string
}

const flat = (mark: Mark): readonly Mark[] => (mark.kind === 'group' ? mark.marks.flatMap(flat) : [mark])

/** The heights of a marks sheet that are put on the wall; undefined when the plan marks nothing. While a window stops nothing is marked. */
export function wallMarksOf(plan: WindowPlan, standing: Standing, voice: Voice): WallMarks | undefined {
  const title = voice.text('report/marks')
  if (standing === 'fail') return { title, of: [], instead: voice.text('report/marks-stopped') }
  const marks = withOwners(plan.layers)
    .filter(({ view }) => view === 'marks')
    .flatMap((layer) => layer.marks.flatMap(flat))
  const of = marks.flatMap((mark): readonly Line[] => {
    if (mark.kind !== 'height' || mark.role !== 'mark' || mark.figure.value === undefined) return []
    const side = mark.owner ? voice.text(mark.owner) : voice.text(`drawing/${mark.side ?? 'left'}-short`)
    const name = voice.text('report/mark', { mark: captionOf(mark.figure, voice.text), side })
    return [{ name: [capital(name)], says: [[voice.number(mark.figure.value)]] }]
  })
  return of.length > 0 ? { title, of } : undefined
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
