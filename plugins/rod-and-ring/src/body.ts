import { fixingsOf, rodBodyOf } from '@evenhem/drapery'
import { coverage, fixings, rodBody, rod as wholeRod } from '@evenhem/drapery/facts'
import { reckonings, rule } from '@evenhem/plugin'
import { rod } from './kind.ts'

/** The rod as a beam and what its brackets are held by: a round rod or tube, unless its section says otherwise. */
export const body = rule({
  id: 'body',
  on: rod,
  needs: { rod: wholeRod, coverage },
  gives: { rodBody, fixings, reckonings },
}).run(({ hardware, hardwareAt, it, at }, facts) => {
  const { diameter, wall, section } = hardware.rod
  const round = diameter === undefined ? undefined : { shape: 'round' as const, height: diameter, ...(wall ? { wall } : {}) }
  const weights = { bearer: hardware.ring.weight, finial: hardware.finial }
  return {
    ...rodBodyOf(at, hardwareAt, { ...hardware.rod, section: section ?? round }, facts, it, weights),
    fixings: fixingsOf(it, at, hardware, hardwareAt),
  }
})
