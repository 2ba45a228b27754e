import { below, type Place, tokens } from '@evenhem/job'
import type { Check } from '@evenhem/plugin'
import type { PlannedCheck } from './plan.ts'

/** The name under `found/overrides` that means this check and no other of its code. */
export const overrideKey = ({ code, about }: Pick<Check, 'code' | 'about'>): string =>
  about === undefined ? code : `${code} ${about}`

/** Where a reason goes that lifts this check, and only this one; undefined for a firm one, and for a check of a room or of the job, where nothing is found. */
export function overridePlace(check: Pick<PlannedCheck, 'code' | 'about' | 'on' | 'isFirm'>): Place | undefined {
  if (check.isFirm) return undefined
  const levels = tokens(check.on).length / 2
  return levels < 2 ? undefined : below(check.on, 'found', 'overrides', overrideKey(check))
}
