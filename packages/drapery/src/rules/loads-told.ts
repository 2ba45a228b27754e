import { rule } from '@evenhem/plugin'
import { type BracketTold, type CarriedLoad, type Fixing, fixings, type Held, held, loadsTold, rodLoads } from '../facts/index.ts'
import { strictest } from './held.ts'
import { partOf } from './rod-beam.ts'
import { worstSag } from './rod-loads.ts'

/** How a bracket is called. */
function nameOf(bracket: string, carried: readonly CarriedLoad[]): string {
  if (partOf(bracket) === 'bracket') return `drapery/bracket-${bracket}`
  const ids = carried.map((each) => each.bracket).filter((each) => partOf(each) === 'support')
  return ids.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(ids.indexOf(bracket) + 1, 9)}`
}
/** Whether a bracket holds what hangs on it, by what is known; one in another treatment's double brackets is told of there. */
function foundAt(own: Held | undefined, lifts: boolean): BracketTold['found'] {
  const share = own && strictest(own)?.share
  if (own?.lacks === 'drapery/lacks-penetration' || (share ?? 0) > 1) return 'over'
  if (lifts) return 'lifts'
  return own?.used === undefined ? 'not-known' : 'holds'
}

function told(one: CarriedLoad, carried: readonly CarriedLoad[], all: readonly Held[], open: readonly Fixing[]): BracketTold {
  const { bracket, x, most, least } = one
  const own = all.find((each) => each.bracket === bracket)
  const holdsDown = open.find(({ part }) => part === partOf(bracket))?.holdsDown ?? false
  const lifts = carried.length > 2 && least.value < -0.5 && !holdsDown
  return {
    ...{ bracket, name: nameOf(bracket, carried), x, load: own?.load ?? most, found: foundAt(own, lifts) },
    ...(own ? { behind: `drapery/behind-${own.behind}` } : {}),
    ...(own?.fastener === undefined ? {} : { fastener: own.fastener }),
    ...(own?.used ? { used: own.used } : {}),
    ...(own?.byOne ? { byOne: own.byOne } : {}),
    ...(own?.ofRated ? { ofRated: own.ofRated } : {}),
    ...(own?.lacks === undefined ? {} : { lacks: own.lacks }),
  }
}

/** Loads as sheet, report and command line tell them: bracket by bracket, the largest sag, and what was taken for granted. */
export const loadsToldRule = rule({
  id: 'loads-told',
  on: 'treatment',
  needs: { rodLoads, held: { maybe: held }, fixings: { maybe: fixings } },
  gives: { loadsTold },
}).run((_, { rodLoads: { carried, sags, assumes }, held: all = [], fixings: open = [] }) => {
  const worst = worstSag(sags)
  return {
    loadsTold: {
      brackets: carried.map((each) => told(each, carried, all, open)),
      ...(worst ? { sag: { sag: worst.sag, most: worst.most, when: worst.when } } : {}),
      assumes: [...assumes, 'drapery/assume-all', ...(all.length > 0 ? ['drapery/assume-screws'] : [])],
    },
  }
})
