import type { WindowPlan } from '@evenhem/planner'
import type { Verdict } from '@evenhem/plugin'
import type { Voice } from './voice.ts'

/** How a window stands, worst first: it stops, is not measured, could not be checked, wants a look, or has nothing open. */
export const standings = ['fail', 'measure', 'unknown', 'warn', 'pass'] as const
export type Standing = (typeof standings)[number]

/** The sign of a standing. */
export const signOf = (standing: Standing): Verdict => (standing === 'measure' ? 'unknown' : standing)

/** How a window stands and how much of it is open, in words. */
export interface Stands {
  readonly standing: Standing
  /** What has to be known before one reads on; empty when nothing has to be. */
  readonly says: readonly string[]
  /** In a few words, for a list of windows. */
  readonly short: string
}

type Counts = Readonly<Record<Exclude<Standing, 'pass'>, number>>

/** A failed check that was set aside with a reason stops nothing, and is looked at. What only waits for a measurement is counted there. */
function countsOf({ checks, asks, unread, faults }: WindowPlan): Counts {
  const having = (verdict: Verdict) => checks.filter((check) => check.verdict === verdict)
  const failed = having('fail')
  const stops = failed.filter(({ override }) => override === undefined)
  const unknown = having('unknown').filter(({ because }) => because !== 'waits')
  return {
    fail: stops.length,
    measure: asks.length,
    unknown: unknown.length + unread.length + faults.length,
    warn: having('warn').length + failed.length - stops.length,
  }
}

export function standsOf(plan: WindowPlan, voice: Voice): Stands {
  const counts = countsOf(plan)
  const open = (['fail', 'measure', 'unknown', 'warn'] as const).filter((standing) => counts[standing] > 0)
  const grave = open.filter((standing) => standing !== 'warn')
  return {
    standing: open[0] ?? 'pass',
    says: grave.map((standing) => voice.text(`report/stands-${standing}`)),
    short:
      open.map((standing) => voice.text(`report/short-${standing}`, { count: { count: counts[standing] } })).join('; ') ||
      voice.text('report/short-pass'),
  }
}
