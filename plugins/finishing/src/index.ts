import type { Plugin } from '@evenhem/plugin'
import { ofFabric, ofTreatment, ofWindow } from './additions.ts'
import { careChecks, recordChecks } from './checks.ts'
import { fabricsRule, headingRule, steamingRule, wantedRule } from './cloths.ts'
import { careEntries } from './entries.ts'
import { work } from './steps.ts'
import { words } from './words.ts'

/** Dressing, steaming and tying the folds, by the cloth and on any hardware. */
export const finishing: Plugin = {
  contract: 1,
  id: 'finishing',
  format: 1,
  kinds: [],
  additions: [ofTreatment, ofWindow, ofFabric],
  upgrades: [],
  rules: [fabricsRule, wantedRule, steamingRule, headingRule, work, careChecks, recordChecks, careEntries],
  words,
}
