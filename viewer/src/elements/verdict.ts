import type { WindowPlan } from '@evenhem/planner'
import { css, html, svg } from 'lit'
import type { Standing } from '../data/house.ts'
import { words } from '../words.ts'

export type Verdict = WindowPlan['checks'][number]['verdict']

/** The sign of how a window stands. */
export const verdictOf: Readonly<Record<Standing, Verdict>> = {
  fail: 'fail',
  measure: 'unknown',
  warn: 'warn',
  unknown: 'unknown',
  pass: 'pass',
}

const shapes = {
  pass: svg`<circle r="10.5" class="ring" /><path d="M-4.7.2l3.4 3.8 6-7.8" class="tick" />`,
  warn: svg`<path d="M0-12.6L12.6 0 0 12.6-12.6 0z" class="lozenge" /><path d="M0-12.6V12.6L-12.6 0z" class="half" />`,
  fail: svg`<path d="M-11-11h22v22h-22z" class="square" /><path d="M-5.5 0h11" class="bar" />`,
  unknown: svg`<circle r="10.5" class="broken" /><text y="5.3" text-anchor="middle" class="ask">?</text>`,
}

/** A finding's sign. They differ by shape first, so that a grey copy still tells them apart. */
export const verdictSign = (verdict: Verdict) =>
  html`<svg class="verdict" width="26" height="26" viewBox="-14 -14 28 28" role="img" aria-label=${words.verdicts[verdict]}>${shapes[verdict]}</svg>`

export const verdictStyle = css`
  .verdict { flex: none; overflow: visible }
  .verdict .ring { fill: none; stroke: var(--pass); stroke-width: 2 }
  .verdict .tick { fill: none; stroke: var(--pass); stroke-width: 2.4; stroke-linecap: round; stroke-linejoin: round }
  .verdict .lozenge { fill: var(--sheet); stroke: var(--warn); stroke-width: 2 }
  .verdict .half { fill: var(--warn) }
  .verdict .square { fill: var(--fail) }
  .verdict .bar { stroke: var(--sheet); stroke-width: 3; fill: none }
  .verdict .broken { fill: var(--sheet); stroke: var(--ink); stroke-width: 1.8; stroke-dasharray: 3.4 2.6 }
  .verdict .ask { fill: var(--ink); font: 700 15px inherit }
`
