import type { Reckoning } from '@evenhem/length'
import { loadOf } from '../data/amount.ts'
import { factsOf, type LoadsTold } from '../data/facts.ts'
import { layerAt } from '../data/holes.ts'
import type { Sheet } from '../data/sheet.ts'
import type { ShownBracket, ShownRod } from '../elements/load-list.ts'
import { capital, fill, words } from '../words.ts'

/** In percent, never less than it is. */
const percent = ({ value }: Reckoning): string => String(Math.ceil(100 * value - 1e-9))
const verdicts = { holds: 'pass', over: 'fail', lifts: 'warn', 'not-known': 'unknown' } as const

function shownBracket(sheet: Sheet, one: LoadsTold['brackets'][number]): ShownBracket {
  const { name, load, behind, fastener, used, byOne, ofRated, lacks, found } = one
  const share = (of: Reckoning | undefined, says: string) =>
    of ? [{ of: of.name, says: fill(says, { used: percent(of) }), isOver: of.value > 1 }] : []
  const where = behind === undefined ? '' : sheet.say(behind)
  return {
    name: capital(sheet.say(name)),
    load: loadOf(load.value, sheet),
    of: load.name,
    // What holds a rod in another one's brackets is told there.
    ...(behind === undefined && found === 'not-known' ? {} : { verdict: verdicts[found] }),
    fixed: where && fill(fastener === undefined ? words.fixedWith : words.fixedIn, { behind: where, fastener: fastener ?? '' }),
    shares: [...share(used, words.used), ...share(byOne, words.usedByOne), ...share(ofRated, words.usedOfRated)],
    lacks: lacks === undefined ? '' : fill(words.lacksTo, { lacks: sheet.say(lacks) }),
  }
}

/** What each bracket of each rod carries and is held by, and what was taken for granted. */
export const shownLoads = (sheet: Sheet): readonly ShownRod[] =>
  factsOf(sheet.plan, 'drapery/loads-told@1').map(({ at, value: { brackets, assumes } }) => ({
    name: capital(layerAt(sheet, at) ?? ''),
    brackets: brackets.map((one) => shownBracket(sheet, one)),
    assumes: assumes.map((code) => sheet.say(code)),
  }))
