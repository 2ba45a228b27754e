import { rule } from '@evenhem/plugin'
import { type BracketTold, type CarriedLoad, type Fixing, fixings, type Held, held, loadsTold, rodLoads } from '../facts/index.ts'
import { strictest, tooShort } from './held-check.ts'
import { worstSag } from './rod-beam.ts'

/** How a bracket is called. */
function nameOf({ bracket, part }: CarriedLoad, carried: readonly CarriedLoad[]): string {
  if (part === 'bracket') return `drapery/bracket-${bracket}`
  const ids = carried.filter((each) => each.part === 'support').map((each) => each.bracket)
  return ids.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(ids.indexOf(bracket) + 1, 9)}`
}
/** Whether a bracket holds what hangs on it, by what is known; one in another treatment's double brackets is told of there. */
function verdictOf(own: Held | undefined, lifts: boolean): BracketTold['verdict'] {
  const share = own && strictest(own)?.share
  if (own?.lacks === tooShort || (share ?? 0) > 1) return 'fail'
  if (lifts) return 'warn'
  return own?.used === undefined || own.lacks !== undefined ? 'unknown' : 'pass'
}

function told(one: CarriedLoad, carried: readonly CarriedLoad[], all: readonly Held[], open: readonly Fixing[]): BracketTold {
  const { bracket, part, x, most, least } = one
  const own = all.find((each) => each.bracket === bracket)
  const holdsDown = open.find((each) => each.part === part)?.holdsDown ?? false
  const lifts = least.value < -0.5 && !holdsDown
  return {
    ...{ bracket, name: nameOf(one, carried), x, load: own?.load ?? most, verdict: verdictOf(own, lifts) },
    ...(own ? { behind: `drapery/behind-${own.behind}` } : {}),
    ...(own?.fastener === undefined ? {} : { fastener: own.fastener }),
    ...(own?.used ? { used: own.used } : {}),
    ...(own?.byOne ? { byOne: own.byOne } : {}),
    ...(own?.ofRated ? { ofRated: own.ofRated } : {}),
    ...(own?.lacks === undefined ? {} : { lacks: own.lacks }),
  }
}

/** What is taken for granted of every rod, and of what holds it. */
const always = ['drapery/assume-all', 'drapery/assume-even', 'drapery/assume-line', 'drapery/assume-not']
const ofScrews = ['drapery/assume-screws', 'drapery/assume-ground']
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
      assumes: [...assumes, ...always, ...(all.length > 0 ? ofScrews : [])],
    },
  }
})
