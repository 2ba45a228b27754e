import type { BracketTold, LoadsTold } from '@evenhem/drapery/facts'
import { kilogramForce, percentUp, type Reckoning } from '@evenhem/length'
import type { GivenFact } from '@evenhem/planner'
import type { Speech } from './speech.ts'
import { table } from './table.ts'

const percent = ({ value }: Reckoning): string => String(percentUp(value))

function row(one: BracketTold, { say, weight, voice }: Speech): readonly string[] {
  const { name, load, behind, fastener, used, byOne, ofRated, lacks } = one
  const held = behind === undefined ? '' : fastener ? voice('load.in', { behind: say(behind), fastener }) : say(behind)
  const shares = [
    used && voice('load.used', { used: percent(used) }),
    byOne && voice('load.one', { used: percent(byOne) }),
    ofRated && voice('load.rated', { used: percent(ofRated) }),
    lacks && voice('load.lacks', { lacks: say(lacks) }),
  ]
  return [say(name), weight(load.value / kilogramForce), held, shares.filter(Boolean).join(', ')]
}
const linesOf = ({ brackets, sag, assumes }: LoadsTold, speech: Speech): string => {
  const { say, length, voice } = speech
  const hangs = sag && `${voice('load.sag', { sag: length(sag.sag.value), most: length(sag.most.value) })} (${say(sag.when)})`
  const after = [hangs, ...assumes.map((code) => say(code)), say('drapery/estimate')]
  return table(brackets.map((one) => row(one, speech))) + after.flatMap((line) => (line ? [`  ${line}\n`] : [])).join('')
}

/** What each bracket carries and how far the rod hangs, for people, treatment by treatment. */
export const loadLines = (facts: readonly GivenFact[], speech: Speech): string =>
  facts
    .filter(({ id }) => id === 'drapery/loads-told@1')
    .map(({ value }) => linesOf(value as LoadsTold, speech))
    .join('')
