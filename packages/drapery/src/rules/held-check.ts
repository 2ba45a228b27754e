import type { Place } from '@evenhem/job'
import type { Check } from '@evenhem/plugin'
import type { Held } from '../facts/index.ts'
import { below, check, long, wallUnder, windowOf } from '../given.ts'
import type { Around } from './fixed.ts'
import { gravity } from './rod-beam.ts'

/** Why a screw holds nothing that is published. */
export const tooShort = 'drapery/lacks-penetration'
/** The stricter of what is known of a bracket; undefined while nothing is. */
export const strictest = ({ used, ofRated }: Held): { readonly share: number; readonly by: string } | undefined => {
  const both = [
    ...(used ? [{ share: used.value, by: 'drapery/by-fasteners' }] : []),
    ...(ofRated ? [{ share: ofRated.value, by: 'drapery/by-maker' }] : []),
  ]
  return both.sort((a, b) => b.share - a.share)[0]
}
const shareOf = (own: Held): number => strictest(own)?.share ?? 0

/** Of all brackets one whose screw reaches too little, else the one that is used the most, or one that nobody can tell of. */
export function holdsCheck(around: Around, all: readonly Held[]): Check {
  const { at } = around
  const short = all.find(({ lacks }) => lacks === tooShort)
  if (short)
    return {
      ...check('drapery/holds', 'fail', at, told(short), 'drill'),
      says: `drapery/holds.${short.isThin ? 'thin' : 'short'}`,
    }
  const first = [...all].sort((a, b) => shareOf(b) - shareOf(a))[0] as Held
  const open = all.find(({ used, lacks }) => !used || lacks !== undefined)
  const share = shareOf(first)
  if (share <= 1 && open) {
    const lacks = { code: open.lacks ?? 'drapery/lacks-no-fastener' }
    return { ...check('drapery/holds', 'unknown', placeOf(around, open), { ...told(open), lacks }), says: 'drapery/holds.lacks' }
  }
  const by = { code: strictest(first)?.by ?? 'drapery/by-fasteners' }
  const values = { ...told(first), used: { count: Math.ceil(100 * share - 1e-9) }, by }
  if (share <= 1) return check('drapery/holds', 'pass', at, values)
  const about = `${first.bracket} ${Math.round(first.load.value / gravity)} kg`
  return { ...check('drapery/holds', 'fail', at, values, 'drill'), about }
}
/** Where somebody can say what lacks. */
function placeOf({ at, window }: Around, { lacks, bracket, x }: Held): Place {
  if (lacks === 'drapery/lacks-wall') return below(at, 'found', 'brackets', bracket, 'behind')
  return lacks === 'drapery/lacks-board' ? below(wallUnder(window, windowOf(at), x.value).wallAt, 'buildUp', 'board') : at
}
const told = ({ bracket, part, load, x, behind, fastener, enough }: Held) => ({
  ...{ mass: { mass: load.value / gravity }, x: long(x), behind: { code: `drapery/behind-${behind}` } },
  ...{ bracket: part === 'support' ? 'support' : bracket, fastener: fastener ?? 'none', enough: enough ?? 'none' },
})
