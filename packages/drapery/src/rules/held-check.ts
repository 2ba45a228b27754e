import type { Place } from '@evenhem/job'
import { percentUp } from '@evenhem/length'
import type { Check, Values, WayOut } from '@evenhem/plugin'
import type { Held } from '../facts/index.ts'
import { below, check, long, wallUnder, windowOf } from '../given.ts'
import type { Around } from './fixed.ts'
import type { Working } from './held.ts'
import { kilogramsOfLoad } from './rod-beam.ts'

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

/** Of all brackets one whose screw reaches too little, else the one that is used the most, or one that nobody can tell of. `enough`: a usual screw that would hold all in wood. */
export function holdsCheck(around: Around, all: readonly Working[], enough: string | undefined): Check {
  const { at } = around
  const short = all.find(({ lacks }) => lacks === tooShort)
  if (short)
    return {
      ...fails(at, short, enough, {}),
      says: `drapery/holds.${short.isThin ? 'thin' : 'short'}`,
      ...waysOf(at, all, enough),
    }
  const first = [...all].sort((a, b) => shareOf(b) - shareOf(a))[0] as Held
  const open = all.find(({ used, lacks }) => !used || lacks !== undefined)
  const share = shareOf(first)
  if (share <= 1 && open) return notKnown(around, open)
  const used = { used: { count: percentUp(share) }, by: { code: strictest(first)?.by ?? 'drapery/by-fasteners' } }
  if (share <= 1) return check('drapery/holds', 'pass', at, { ...told(first), ...used })
  const about = `${first.bracket} ${Math.round(kilogramsOfLoad(first.load.value))} kg`
  return { ...fails(at, first, enough, used), about, ...waysOf(at, all, enough) }
}
const fails = (at: Place, own: Held, enough: string | undefined, more: Values): Check =>
  check('drapery/holds', 'fail', at, { ...told(own), enough: enough ?? 'none', ...more }, 'drill')
function notKnown(around: Around, own: Held): Check {
  const values = { ...told(own), lacks: { code: own.lacks ?? 'drapery/lacks-no-fastener' } }
  return { ...check('drapery/holds', 'unknown', placeOf(around, own), values), says: 'drapery/holds.lacks' }
}
/** Other screws help where no maker's rating is in their way: every bracket in wood gets them. */
function waysOf(at: Place, all: readonly Working[], screw: string | undefined): { readonly ways?: readonly WayOut[] } {
  if (screw === undefined || all.some(({ ofRated }) => (ofRated?.value ?? 0) > 1)) return {}
  const inWood = all.filter(({ would }) => would !== undefined)
  const put = inWood.map(({ bracket }) => ({ at: below(at, 'found', 'brackets', bracket, 'screw'), value: screw }))
  return { ways: [{ code: 'drapery/way-screws', values: { screw }, put }] }
}
/** Where somebody can say what lacks. */
function placeOf({ at, window }: Around, { lacks, bracket, x }: Held): Place {
  if (lacks === 'drapery/lacks-wall') return below(at, 'found', 'brackets', bracket, 'behind')
  return lacks === 'drapery/lacks-board' ? below(wallUnder(window, windowOf(at), x.value).wallAt, 'buildUp', 'board') : at
}
const told = ({ bracket, part, load, x, behind, fastener }: Held) => ({
  ...{ mass: { mass: kilogramsOfLoad(load.value) }, x: long(x), behind: { code: `drapery/behind-${behind}` } },
  ...{ bracket: part === 'support' ? 'support' : bracket, fastener: fastener ?? 'none' },
})
