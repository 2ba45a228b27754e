import { factsOf, type PunchPoint } from '../data/facts.ts'
import { isSettled } from '../data/points.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SiteTools } from '../data/tools.ts'
import type { Leaf } from '../elements/title-block.ts'
import { counted, fill, words } from '../words.ts'

/** The checks that are decided on the drawing of level or of hem. */
const decided: Readonly<Record<'level' | 'hem', readonly string[]>> = {
  level: ['drapery/marks-agree', 'drapery/rod-level', 'drapery/fixed-mark', 'drapery/hung-hem', 'drapery/support-in-line'],
  hem: ['drapery/hem-even', 'drapery/look-again'],
}
export const checksOf = ({ plan }: Sheet, view: 'level' | 'hem') => plan.checks.filter(({ code }) => decided[view].includes(code))

function choiceState(checks: ReturnType<typeof checksOf>): string {
  const open = checks.filter(({ verdict, override }) => verdict !== 'pass' && override === undefined)
  if (open.some(({ ways = [], verdict }) => ways.length > 0 || verdict === 'fail')) return words.toChoose
  return checks.every(({ verdict }) => verdict === 'unknown') ? words.notRead_ : words.settled
}

const photosState = (photos: number, points: readonly PunchPoint[]): string => {
  const open = points.filter((point) => !isSettled(point)).length
  const taken = photos === 0 ? words.noPhotos : counted(photos, words.photosOne, words.photosMany)
  return open === 0 ? taken : fill(words.toMend, { n: open })
}

/** The sheets of a window that there is something for, each with its state in words. */
export function leavesOf(sheet: Sheet, tools: SiteTools, photos: number, points: readonly PunchPoint[]): readonly Leaf[] {
  const { plan, place, unit, language } = sheet
  const standing = plan.checks.filter(({ verdict, override }) => verdict !== 'pass' && override === undefined)
  const open = standing.length + plan.faults.length + tools.conflicts(place).length
  const holes = factsOf(plan, 'drapery/holes@1').flatMap(({ value }) => value)
  const maps = factsOf(plan, 'drapery/hook-map@1').map(({ value }) => value)
  const count = (add: (map: (typeof maps)[number]) => number) => maps.reduce((sum, map) => sum + add(map), 0)
  const hooks = { n: count(({ places }) => places.length), m: count(({ bearers }) => bearers.value) }
  const drawn = (['level', 'hem'] as const).filter((view) => plan.layers.some((layer) => layer.view === view))
  return [
    { id: 'drawing', name: words.drawing, state: open === 0 ? words.noneOpen : fill(words.open, { n: open }) },
    ...(holes.length > 0 ? [{ id: 'marks', name: words.marks, state: fill(words.holes, { n: holes.length }) }] : []),
    ...(maps.length > 0 ? [{ id: 'hooks', name: words.hooks, state: fill(words.hooksAndBearers, hooks) }] : []),
    ...drawn.map((view) => ({ id: view, name: words[view], state: choiceState(checksOf(sheet, view)) })),
    {
      id: 'photos',
      name: words.photos,
      state: photosState(photos, points),
    },
    { id: 'report', name: words.report, state: words.reportState, href: `report?units=${unit}&lang=${language}` },
  ]
}
