import type { WindowPlan } from '@evenhem/planner'
import type { HouseWindow, Link } from './house.ts'
import { linkTo } from './house.ts'
import type { Section } from './outline.ts'
import type { Said, Voice } from './voice.ts'

/** A sentence that holds at several windows; `windows`: at which, when that is not everywhere. */
export interface Note {
  readonly says: Said
  readonly where?: string
  readonly windows: readonly Link[]
}

/** Sentences of a house's windows: each once, with where it holds. */
export function notesOf(
  windows: readonly HouseWindow[],
  saidAt: (window: HouseWindow) => readonly Said[],
  voice: Voice,
): readonly Note[] {
  const said = new Map<string, { says: Said; windows: HouseWindow[] }>()
  for (const window of windows)
    for (const says of saidAt(window)) {
      const key = JSON.stringify(says)
      const note = said.get(key) ?? { says, windows: [] }
      if (note.windows.at(-1) !== window) note.windows.push(window)
      said.set(key, note)
    }
  return [...said.values()].map(({ says, windows: at }) => {
    const everywhere = at.length === windows.length
    return {
      says,
      ...(windows.length > 1 ? { where: voice.text(everywhere ? 'report/every-window' : 'report/at-windows') } : {}),
      windows: everywhere ? [] : at.map(linkTo),
    }
  })
}

/** What was done with the customer at the hand-over, and what it proves. */
export const shownAt = ({ steps }: WindowPlan, voice: Voice): readonly Said[] =>
  steps
    .filter(({ stage, done }) => stage === 'hand-over' && done)
    .map(({ code, values }) => {
      const why = voice.said(`${code}.why`, values)
      return [...voice.said(code, values), ...(why[0] === `[${code}.why]` ? [] : [' ', ...why])]
    })

/** What was shown at the hand-over; `instead` is said while nothing is recorded as shown. */
export function shownOf(windows: readonly HouseWindow[], voice: Voice): Section<Note> & { readonly instead?: string } {
  const of = notesOf(windows, ({ shown }) => shown, voice)
  return { title: voice.text('report/shown'), of, ...(of.length === 0 ? { instead: voice.text('report/nothing-shown') } : {}) }
}
