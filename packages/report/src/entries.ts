import { ownersOf } from '@evenhem/drawing'
import type { WindowPlan } from '@evenhem/planner'
import type { Entry } from '@evenhem/plugin'
import type { Line, Section } from './outline.ts'
import type { Said, Voice } from './voice.ts'

/** What a plan has for a section of the report. */
export const entriesOf = ({ entries }: WindowPlan, section: Entry['section'], voice: Voice): readonly Said[] =>
  entries.filter((entry) => entry.section === section).map(({ code, values }) => voice.said(code, values))

/** Facts of a window; where several layers hang, those of each under a title of its own. */
export function byLayer(plan: WindowPlan, code: Entry['section'], voice: Voice): readonly Section<Line>[] {
  const owners = ownersOf(plan.layers)
  const title = voice.text(`report/${code}`)
  const of = (place?: string): readonly Line[] =>
    entriesOf(
      { ...plan, entries: plan.entries.filter(({ on }) => (owners.has(on) ? on : undefined) === place) },
      code,
      voice,
    ).map(named)
  return [
    { title, of: of() },
    ...[...owners].map(([place, layer]) => ({ title: `${title}, ${voice.text(layer)}`, of: of(place) })),
  ]
}

/** A sentence that begins with a name and a colon, `Rod: ash`, is a fact with that name. */
function named(sentence: Said): Line {
  const [first, ...rest] = sentence
  const found = typeof first === 'string' ? /^([^:]+): ?(.*)$/s.exec(first) : null
  if (!found) return { says: [sentence] }
  return { name: [found[1] as string], says: [[found[2] as string, ...rest].filter((part) => part !== '')] }
}
