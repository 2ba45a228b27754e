import { html, nothing } from 'lit'
import type { Sheet } from '../data/sheet.ts'
import type { SiteTools } from '../data/tools.ts'
import type { Working } from '../elements/working-panel.ts'
import { words } from '../words.ts'
import { checksOf, type Deciding } from './leaves.ts'
import { opened } from './opened.ts'
import { shownAsks, shownConflicts, shownFaults, shownFinding, shownPins, shownRefused, shownUnread } from './shown.ts'
import { shownLoads } from './shown-loads.ts'
import '../elements/findings-list.ts'
import '../elements/load-list.ts'
import '../elements/pin-cards.ts'

/** Everything that was checked at a window, what to measure, and what could not be read. */
export const findingsList = (sheet: Sheet, tools: SiteTools, embedded: boolean) =>
  html`<findings-list ?embedded=${embedded} .findings=${sheet.plan.checks.map(shownFinding(sheet))} .asks=${shownAsks(sheet)} .faults=${shownFaults(sheet)} .unread=${[...shownRefused(sheet, tools), ...shownUnread(sheet)]} .conflicts=${shownConflicts(sheet, tools)}></findings-list>`

/** What is decided on the drawing of level, hem or loads: its findings, with what may be done about each. */
export function choicesOn(sheet: Sheet, view: Deciding) {
  const findings = checksOf(sheet, view).map(shownFinding(sheet))
  if (view === 'loads')
    return html`<findings-list embedded .heading=${words.loads} .findings=${findings}></findings-list><load-list .rods=${shownLoads(sheet)} .estimate=${sheet.say('drapery/estimate')}></load-list>`
  if (findings.length === 0) return html`<p class="hint">${words.nothingRead}</p>`
  return html`${view === 'hem' ? html`<pin-cards .panels=${shownPins(sheet)}></pin-cards>` : nothing}<findings-list embedded .heading=${words[view]} .findings=${findings}></findings-list>`
}

/** The working of the last number of a trail, with the numbers that led to it. */
export function workingOf(sheet: Sheet, trail: readonly string[], tools: SiteTools, width?: number): Working | undefined {
  const steps = trail.map((of) => ({ of, working: opened(sheet, of, width, tools) }))
  const last = steps.at(-1)?.working
  return last && { ...last, trail: steps.slice(0, -1).map(({ of, working }) => ({ of, title: working?.title ?? '' })) }
}
