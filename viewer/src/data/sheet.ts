import type { Job, PlacedWindow, Place, Room, Window } from '@evenhem/job'
import type { Length, ReadingUnit, Reckoning, Written } from '@evenhem/length'
import type { WindowPlan } from '@evenhem/planner'
import type { Reading } from './served.ts'
import type { Ground } from './working.ts'

type Values = WindowPlan['checks'][number]['values']

/** Everything that the sheet of one window is drawn from, for one reader: their unit is in `write` and in the sentences. */
export interface Sheet extends Ground {
  readonly ordered: Job
  readonly readings: Readonly<Record<Place, Reading>>
  readonly reckonings: ReadonlyMap<string, Reckoning>
  readonly place: Place
  readonly room: Room
  readonly window: Window
  readonly plan: WindowPlan
  readonly unit: ReadingUnit
  readonly write: (length: Length) => Written
  readonly say: (code: string, values?: Values) => string
  readonly help: (code: string, values?: Values) => string | undefined
}
export type Found = PlacedWindow
