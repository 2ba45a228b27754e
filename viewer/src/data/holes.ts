import { ownersOf } from '@evenhem/drawing'
import { capital, words } from '../words.ts'
import { factsOf, type Hole } from './facts.ts'
import type { Sheet } from './sheet.ts'

/** Every hole of the window. */
export const holesOf = (sheet: Sheet): readonly Hole[] => factsOf(sheet.plan, 'drapery/holes@1').flatMap(({ value }) => value)

/** Which support a hole between the ends belongs to, numbered from the left where there are several, as on the marks. */
export function supportOf(sheet: Sheet, { support = '' }: Hole): string {
  const ids = [...new Set(holesOf(sheet).flatMap((hole) => hole.support ?? []))]
  return sheet.say(ids.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(ids.indexOf(support) + 1, 9)}`)
}

/** Which layer of drapery a hole is for, where there are several. */
export const layerOf = (sheet: Sheet, { fromFloor }: Hole): string | undefined =>
  layerAt(sheet, fromFloor.name.split('#')[0] ?? '')
/** The layer of drapery at a place, where there are several. */
export function layerAt(sheet: Sheet, place: string): string | undefined {
  const code = ownersOf(sheet.plan.layers).get(place)
  return code === undefined ? undefined : sheet.say(code)
}

/** A hole's name with its place, so that no two of a window have the same. */
export const holeName = (sheet: Sheet, hole: Hole): string =>
  capital(
    [
      sheet.say(hole.what),
      hole.support === undefined ? words.sideNames[hole.side].toLowerCase() : supportOf(sheet, hole),
      layerOf(sheet, hole),
    ]
      .filter(Boolean)
      .join(', '),
  )
