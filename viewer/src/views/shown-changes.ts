import type { Length } from '@evenhem/length'
import type { ChangedCheck, ChangedNumber, Changes } from '../data/changes.ts'
import type { Sheet } from '../data/sheet.ts'
import { capital, fill, words } from '../words.ts'

const bare = (said: string): string => said.replace(/\.$/, '')

function numberLine(sheet: Sheet, { what, step, from, to }: ChangedNumber): string {
  const name = `${bare(sheet.say(step.code, step.values))}: ${sheet.say(what)}`
  const written = (value: number | undefined): string => (value === undefined ? '–' : sheet.write(value as Length).text)
  if (from === undefined) return fill(words.numberNow, { name, to: written(to) })
  if (to === undefined) return fill(words.numberGone, { name, from: written(from) })
  return fill(words.numberChanged, { name, from: written(from), to: written(to), by: difference(sheet, to - from) })
}
const difference = (sheet: Sheet, by: number): string =>
  fill(by > 0 ? words.more_ : words.less_, { by: sheet.write(Math.abs(by) as Length).text }).replace(/\.$/, '')

function checkLine(sheet: Sheet, { check, from }: ChangedCheck): string {
  const says = sheet.say(check.says ?? check.code, check.values)
  const verdict = words.verdicts[check.verdict]
  return from === undefined
    ? `${verdict}: ${says}`
    : fill(words.verdictChanged, { from: words.verdicts[from], to: verdict, says })
}

/** What changed, a line each: what stops first, then marks with by how much, then counts, then the other checks and steps. */
export function changeLines(sheet: Sheet, { numbers, checks, parts, added, gone }: Changes): readonly string[] {
  const grave = checks.filter(({ check }) => check.verdict === 'fail')
  const title = (step: (typeof added)[number]): string => bare(sheet.say(step.code, step.values))
  return [
    ...grave.map((each) => checkLine(sheet, each)),
    ...numbers.map((each) => numberLine(sheet, each)),
    ...parts.map(({ what, from, to }) => fill(words.countChanged, { name: capital(sheet.say(what)), from, to })),
    ...checks.filter((each) => !grave.includes(each)).map((each) => checkLine(sheet, each)),
    ...added.map((step) => fill(words.stepAdded, { step: title(step) })),
    ...gone.map((step) => fill(words.stepGone, { step: title(step) })),
  ]
}
