import { factsOf, type PunchPoint } from '../data/facts.ts'
import { isSettled } from '../data/points.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SiteTools } from '../data/tools.ts'
import type { Leaf } from '../elements/title-block.ts'
import { counted, fill, words } from '../words.ts'

/** The drawings that decide something. */
export type Deciding = 'level' | 'hem' | 'loads'
export const isDeciding = (view: string): view is Deciding => Object.hasOwn(decided, view)
/** The checks that are decided on the drawing of level, of hem or of loads. */
const decided: Readonly<Record<Deciding, readonly string[]>> = {
  level: ['drapery/marks-agree', 'drapery/rod-level', 'drapery/fixed-mark', 'drapery/hung-hem', 'drapery/support-in-line'],
  hem: ['drapery/hem-even', 'drapery/look-again'],
  loads: ['drapery/sag', 'drapery/rod-lifts', 'drapery/holds', 'drapery/supports'],
}
export const checksOf = ({ plan }: Sheet, view: Deciding) => plan.checks.filter(({ code }) => decided[view].includes(code))

function choiceState(checks: ReturnType<typeof checksOf>): string {
  const open = checks.filter(({ verdict, override }) => verdict !== 'pass' && override === undefined)
  if (open.some(({ ways = [], verdict }) => ways.length > 0 || verdict === 'fail')) return words.toChoose
  return checks.every(({ verdict }) => verdict === 'unknown') ? words.notRead_ : words.settled
}

/** The worst that stands of what was checked of loads. */
function loadsState(checks: ReturnType<typeof checksOf>): string {
  const open = checks.filter(({ override }) => override === undefined).map(({ verdict }) => verdict)
  const worst = (['fail', 'warn', 'unknown', 'pass'] as const).find((verdict) => open.includes(verdict)) ?? 'pass'
  return words.loadsState[worst]
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
    ...(plan.layers.some(({ view }) => view === 'loads')
      ? [{ id: 'loads', name: words.loads, state: loadsState(checksOf(sheet, 'loads')) }]
      : []),
    {
      id: 'photos',
      name: words.photos,
      state: photosState(photos, points),
    },
    { id: 'report', name: words.report, state: words.reportState, href: `report?units=${unit}&lang=${language}` },
  ]
}
