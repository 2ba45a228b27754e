import type { Place } from '@evenhem/job'
import type { Arrangement, Node } from './arrangement.ts'
import { type Item, treatmentItem, twin, windowItem } from './item.ts'
import { keeping } from './kept.ts'
import { type Below, type Reading, read } from './outcome.ts'
import type { WindowPlan, WindowSummary } from './plan.ts'
import { type Extent, factsOf, resultsOf, unreadOf } from './results.ts'
import { type Ground, runAll } from './running.ts'
import type { Site } from './site.ts'

/** What is kept of a window for the job's plan: its summary, and the facts that room and job rules gather, those that wait too. */
export interface Kept {
  readonly summary: WindowSummary
  readonly gathered: ReadonlyMap<string, readonly { readonly at: Place; readonly reading: Reading }[]>
}
interface Planned {
  readonly plan: WindowPlan
  readonly kept: Kept
}

/** Runs the rules of a window and its treatments. */
export function createWindowPlanning(ground: Ground): (site: Site, extent: Extent) => Planned {
  const { arrangement } = ground
  const rules = arrangement.order.filter((node) => node.level === 'window' || node.level === 'treatment')
  const rulesFor = keeping<readonly Node[]>()
  const rulesOf = (items: readonly Item[]): readonly Node[] => {
    const profiles = new Set(items.map((item) => item.profile))
    return rulesFor([...profiles].sort().join(' '), [], () => rules.filter((node) => profiles.has(node.profile)))
  }
  return (site, extent) => {
    const [window, ...treatments] = itemsOf(site)
    const items = [window, ...treatments]
    const { asleep } = site.head.head
    const faults = runAll(ground, rulesOf(items), items, asleep, () => fromTreatments(treatments))
    const unread = unreadOf(arrangement, items, asleep)
    const plan = { window: window.at, ...resultsOf(arrangement, items, faults, unread, site.job, extent) }
    return { plan, kept: keptOf(arrangement, plan, items) }
  }
}

function itemsOf({ head: { head, item: room }, job, window, ordered }: Site): readonly [Item, ...Item[]] {
  const top = windowItem(room, window, ordered)
  const treatments = window.treatments.map((treatment, at) =>
    treatmentItem(top, job, treatment, twin(ordered?.treatments, treatment.id, at), head.kinds),
  )
  return [top, ...treatments]
}

const fromTreatments =
  (treatments: readonly Item[]): Below =>
  ({ givers, fact }) =>
    treatments.map((item) => ({ at: item.at, reading: read(fact, givers.get(item.profile) ?? [], item.outcomes) }))

function keptOf(arrangement: Arrangement, plan: WindowPlan, items: readonly Item[]): Kept {
  const verdicts = { pass: 0, warn: 0, fail: 0, unknown: 0 }
  for (const { verdict, override } of plan.checks) if (override === undefined) verdicts[verdict] += 1
  const { window, parts, asks, unread, faults } = plan
  const facts = factsOf(arrangement, items, arrangement.gathered)
  const gathered = new Map([...arrangement.gathered].map((id) => [id, readingsOf(arrangement, id, items)]))
  return { summary: { window, verdicts, parts, asks, unread, faults, facts }, gathered }
}

const readingsOf = (arrangement: Arrangement, id: string, items: readonly Item[]) =>
  items.flatMap((item) => {
    const known = arrangement.facts.get(item.profile)?.find(({ fact }) => fact.id === id)
    const reading = known && read(known.fact, known.givers, item.outcomes)
    return reading ? [{ at: item.at, reading }] : []
  })
