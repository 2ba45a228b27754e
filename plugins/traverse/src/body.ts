import { fixingsOf, rodBodyOf } from '@evenhem/drapery'
import { coverage, fixings, rod, rodBody } from '@evenhem/drapery/facts'
import { reckonings, rule } from '@evenhem/plugin'
import { traverseRod } from './kind.ts'

/** The rod as a beam and what its brackets are held by. A rod with a slot has no section here: how stiff it is only its maker knows. */
export const body = rule({
  id: 'body',
  on: traverseRod,
  needs: { rod, coverage },
  gives: { rodBody, fixings, reckonings },
}).run(({ hardware, hardwareAt, it, at }, facts) => ({
  ...rodBodyOf(at, hardwareAt, hardware.rod, facts, it, { bearer: hardware.carrier.weight, finial: hardware.finial }),
  fixings: fixingsOf(it, at, hardware, hardwareAt),
}))
