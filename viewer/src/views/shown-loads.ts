import { percentUp, type Reckoning } from '@evenhem/length'
import { loadOf } from '../data/amount.ts'
import { factsOf, type LoadsTold } from '../data/facts.ts'
import { layerAt } from '../data/holes.ts'
import type { Sheet } from '../data/sheet.ts'
import type { ShownBracket, ShownRod } from '../elements/load-list.ts'
import { capital, fill, words } from '../words.ts'

function shownBracket(sheet: Sheet, one: LoadsTold['brackets'][number]): ShownBracket {
  const { name, load, behind, fastener, used, byOne, ofRated, lacks, verdict } = one
  const share = (of: Reckoning | undefined, says: string, isLimit = true) =>
    of ? [{ of: of.name, says: fill(says, { used: String(percentUp(of.value)) }), isOver: isLimit && of.value > 1 }] : []
  const where = behind === undefined ? '' : sheet.say(behind)
  return {
    name: capital(sheet.say(name)),
    load: loadOf(load.value, sheet),
    of: load.name,
    // What holds a rod in another one's brackets is told there.
    ...(behind === undefined && verdict === 'unknown' ? {} : { verdict }),
    fixed: where && fill(fastener === undefined ? words.fixedWith : words.fixedIn, { behind: where, fastener: fastener ?? '' }),
    // Where one screw alone would not hold, all are driven before anything hangs: nothing is wrong then.
    shares: [...share(used, words.used), ...share(byOne, words.usedByOne, false), ...share(ofRated, words.usedOfRated)],
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
