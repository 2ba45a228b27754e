import type { PlannedCheck } from '@evenhem/planner'
import type { Verdict } from '@evenhem/plugin'
import type { Speech } from './speech.ts'

const worstFirst: readonly Verdict[] = ['fail', 'unknown', 'warn', 'pass']

/** A check that fails and that nobody set aside. */
export const isStanding = ({ verdict, override }: PlannedCheck): boolean => verdict === 'fail' && override === undefined

/** Checks for people, the worst first: verdict and sentence, below it what to do and what it stops. */
export function findingLines(checks: readonly PlannedCheck[], speech: Speech): string {
  const width = Math.max(7, ...worstFirst.map((verdict) => speech.voice(`verdict.${verdict}`).length))
  return checks
    .toSorted((a, b) => worstFirst.indexOf(a.verdict) - worstFirst.indexOf(b.verdict))
    .map((check) => {
      const { verdict, code, says = code, values } = check
      const first = `  ${speech.voice(`verdict.${verdict}`).padEnd(width)}  ${speech.say(says, values)}\n`
      return (
        first +
        below(check, speech)
          .map((line) => `${' '.repeat(width + 4)}${line}\n`)
          .join('')
      )
    })
    .join('')
}

function below(check: PlannedCheck, { help, voice }: Speech): readonly string[] {
  const { verdict, code, says = code, values, stops, override } = check
  const todo = verdict === 'pass' ? undefined : help(says, values)
  return [
    ...(todo ? [todo] : []),
    ...(isStanding(check) && stops ? [voice('stops', { stage: voice(`stage.${stops}`) })] : []),
    ...(override === undefined ? [] : [voice('set-aside', { reason: override })]),
  ]
}
