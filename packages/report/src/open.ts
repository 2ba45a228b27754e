import { type Job, placeInWords } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import type { Verdict } from '@evenhem/plugin'
import type { Said, Voice } from './voice.ts'

/** Something that was checked, or that nobody could check yet. */
export interface Point {
  readonly verdict: Verdict
  readonly says: Said
  readonly help?: Said
  /** The work went on all the same: why. Such a point is struck, and never left out. */
  readonly setAside?: Said
}

type Check = WindowPlan['checks'][number]

function pointOf({ verdict, code, says = code, values, override }: Check, voice: Voice): Point {
  const help = verdict === 'pass' ? undefined : voice.help(says, values)
  return {
    verdict,
    says: voice.said(says, values),
    ...(help ? { help } : {}),
    ...(override === undefined ? {} : { setAside: voice.said('report/set-aside', { reason: override }) }),
  }
}

/** Every check of a window with one of these verdicts, in the order of the verdicts. */
const checked = (plan: WindowPlan, verdicts: readonly Verdict[], voice: Voice): readonly Point[] =>
  verdicts.flatMap((verdict) => plan.checks.filter((check) => check.verdict === verdict)).map((check) => pointOf(check, voice))

/** What is open at a window: what failed, is not known or wants a look, what is not measured (checks that wait for it are not told again), and what nobody here could work out. */
export function openPoints(plan: WindowPlan, found: Job, voice: Voice): readonly Point[] {
  const unknown = (code: string, values: Record<string, string>): Point => {
    const help = voice.help(code, values)
    return { verdict: 'unknown', says: voice.said(code, values), ...(help ? { help } : {}) }
  }
  const named = (place: string): string => placeInWords(found, place, plan.window, voice.language)
  return [
    ...checked({ ...plan, checks: plan.checks.filter((check) => check.because !== 'waits') }, ['fail', 'unknown', 'warn'], voice),
    ...plan.asks.map(({ at }) => unknown('report/to-measure', { place: named(at) })),
    ...plan.unread.map(({ what, name }) => unknown(`host/unread.${what}`, { name })),
    ...plan.faults.map(({ plugin, rule, at }) => unknown('report/could-not', { rule: `${plugin}/${rule}`, place: named(at) })),
  ]
}

/** What was checked at a window and is well; what was checked of several panels alike is said once. */
export const passedPoints = (plan: WindowPlan, voice: Voice): readonly Point[] =>
  checked(plan, ['pass'], voice).filter(({ says }, i, all) => all.findIndex((other) => same(other.says, says)) === i)
const same = (a: Said, b: Said): boolean => JSON.stringify(a) === JSON.stringify(b)
