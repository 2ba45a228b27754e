import { type Entry, entries, rule } from '@evenhem/plugin'
import type { FabricCare } from './fabric.generated.ts'
import { steaming, wanted } from './facts.ts'
import type { Cloth } from './steaming.ts'
import { firstWord, valuesOf } from './steps.ts'

/** How the customer has the draperies cared for: what the labels of their cloths say, and how the whole is steamed. */
export const careEntries = rule({
  id: 'care-entries',
  on: 'treatment',
  needs: { wanted: { maybe: wanted }, steaming: { maybe: steaming } },
  gives: { entries },
}).run(({ fabric }, { wanted: wish, steaming: how }) => {
  if (!wish || !how || how.by === 'unnamed') return {}
  const values = { ...valuesOf(how), name: fabric?.name ?? how.cloth, steam: how.steam ? 'yes' : 'no' }
  const whole: Entry = { section: 'care', code: 'finishing/entry-steam', values }
  return { entries: [whole, ...wish.cloths.flatMap(labelEntries)] }
})

function labelEntries({ name, care }: Cloth): readonly Entry[] {
  if (!care?.iron && !care?.steam && !care?.dryCleaning && !care?.wetCleaning)
    return [{ section: 'care', code: 'finishing/entry-no-label', values: { name } }]
  const said = (code: string, value: string): readonly Entry[] => [
    { section: 'care', code: `finishing/entry-${code}`, values: { name, says: firstWord(value) } },
  ]
  return [...(care.iron ? said('iron', care.iron) : []), ...((care.dryCleaning ?? care.wetCleaning) ? cleaning(name, care) : [])]
}
function cleaning(name: string, { dryCleaning, wetCleaning, mildness }: FabricCare): readonly Entry[] {
  const values = {
    name,
    dry: firstWord(dryCleaning ?? 'unsaid'),
    wet: firstWord(wetCleaning ?? 'unsaid'),
    mildness: firstWord(mildness ?? 'usual'),
  }
  return [{ section: 'care', code: 'finishing/entry-cleaning', values }]
}
