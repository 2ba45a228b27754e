import { ownersOf } from '@evenhem/drawing'
import type { Length } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import type { Line } from './outline.ts'
import type { Standing } from './standing.ts'
import type { Voice } from './voice.ts'
import type { WallMarks } from './wall-marks.ts'

/** What a report reads of a hole, by the name of the fact: hardware that nobody here has seen gives the same. */
interface Hole {
  readonly what: string
  readonly side: 'left' | 'middle' | 'right'
  readonly support?: string
  readonly fromCasing: { readonly value: Length }
  readonly fromCorner?: { readonly value: Length; readonly what: string }
  readonly fromWall?: { readonly value: Length }
}

/** The holes of a ceiling, told from the wall, and along it; undefined where nothing is fixed to one. While a window stops nothing is marked. */
export function ceilingMarksOf(plan: WindowPlan, standing: Standing, voice: Voice): WallMarks | undefined {
  const given = plan.facts
    .filter(({ id }) => id === 'drapery/holes@1')
    .map(({ at, value }) => ({ at, holes: (value as readonly Hole[]).filter(({ fromWall }) => fromWall) }))
    .filter(({ holes }) => holes.length > 0)
  if (given.length === 0 || standing === 'fail') return undefined
  const owners = ownersOf(plan.layers)
  return {
    title: voice.text('report/ceiling-marks'),
    of: given.flatMap(({ at, holes }) => holes.map((hole) => lineOf(hole, holes, owners.get(at), voice))),
  }
}

/** A hole by its name, its layer where several hang, and its end or support. */
function lineOf(hole: Hole, all: readonly Hole[], layer: string | undefined, voice: Voice): Line {
  const mark = layer ? `${voice.text(hole.what)}, ${voice.text(layer)}` : voice.text(hole.what)
  const name = voice.text('report/mark', { mark, side: voice.text(placeOf(hole, all)) })
  const { fromWall, fromCorner, fromCasing } = hole
  const values = { out: { length: fromWall?.value ?? fromCasing.value }, along: { length: (fromCorner ?? fromCasing).value } }
  const from = fromCorner ? fromCorner.what : hole.side === 'middle' ? 'report/from-left-casing' : 'drapery/from-casing'
  return { name: [capital(name)], says: [voice.said('report/ceiling-mark', { ...values, from: voice.text(from) })] }
}

/** A support by its number from the left, when there are several. */
function placeOf({ side, support }: Hole, all: readonly Hole[]): string {
  if (side !== 'middle') return `drawing/${side}-short`
  const ids = [...new Set(all.flatMap((one) => one.support ?? []))]
  return ids.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(ids.indexOf(support ?? '') + 1, 9)}`
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
