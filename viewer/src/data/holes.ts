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

/** A hole's name with its place, so that no two of a window have the same. */
export const holeName = (sheet: Sheet, hole: Hole): string =>
  capital(
    `${sheet.say(hole.what)}, ${hole.support === undefined ? words.sideNames[hole.side].toLowerCase() : supportOf(sheet, hole)}`,
  )
