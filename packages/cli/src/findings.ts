import type { PlannedCheck } from '@evenhem/planner'
import type { Place, Verdict } from '@evenhem/plugin'
import type { Speech } from './speech.ts'

const worstFirst: readonly Verdict[] = ['fail', 'unknown', 'warn', 'pass']

/** A check that fails and that nobody set aside. */
export const isStanding = ({ verdict, override }: PlannedCheck): boolean => verdict === 'fail' && override === undefined

/** Checks for people, the worst first: verdict and sentence, below it what to do, what it stops, and one value that would do it. */
export function findingLines(checks: readonly PlannedCheck[], speech: Speech, place: (at: Place) => string): string {
  const width = Math.max(7, ...worstFirst.map((verdict) => speech.voice(`verdict.${verdict}`).length))
  return checks
    .toSorted((a, b) => worstFirst.indexOf(a.verdict) - worstFirst.indexOf(b.verdict))
    .map((check) => {
      const { verdict, code, says = code, values, override } = check
      const said = speech.say(says, values)
      const line = override === undefined ? said : `~~${said}~~`
      const first = `  ${speech.voice(`verdict.${verdict}`).padEnd(width)}  ${line}\n`
      return (
        first +
        below(check, speech, place)
          .map((line) => `${' '.repeat(width + 4)}${line}\n`)
          .join('')
      )
    })
    .join('')
}

function below(check: PlannedCheck, { help, voice, length, say }: Speech, place: (at: Place) => string): readonly string[] {
  const { verdict, code, says = code, values, stops, override, put = [], ways = [] } = check
  const todo = verdict === 'pass' ? undefined : help(says, values)
  return [
    ...(todo ? [todo] : []),
    ...(stops && override === undefined && (verdict === 'fail' || verdict === 'unknown')
      ? [voice('stops', { stage: voice(`stage.${stops}`) })]
      : []),
    ...put.map(({ at, value }) =>
      voice('one-value', { place: place(at), value: 'length' in value ? length(value.length) : shown(value) }),
    ),
    ...ways.map((way) => `- ${say(way.code, way.values)}`),
    ...(override === undefined ? [] : [voice('set-aside', { reason: override })]),
  ]
}

/** A quantity that is no length, as it is. */
const shown = (value: object): string => String(Object.values(value)[0])
