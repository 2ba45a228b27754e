import type { Place, Readings } from '@evenhem/job'
import type { WindowPlan } from '@evenhem/planner'
import type { Entered, SentEntry } from './site.ts'
import type { SitePhoto } from './site-photos.ts'

export type HowTold = 'quietly' | 'untold'

/** What a sheet may do about what was found on site. */
export interface SiteTools {
  /** Puts values; resolves when they are kept on this tablet and the plan has followed, with false when there was no room for them, which is said on the page. Quietly: it is only told when the plan changed; untold: whoever put it sees it where they put it. */
  readonly put: (entered: readonly Entered[], how?: HowTold) => Promise<boolean>
  /** Puts what stood before the last values over them. */
  readonly undo: () => Promise<void>
  /** What the last values changed was read. */
  readonly read: () => void
  /** The plan of a window with these readings too; nothing is kept. */
  readonly tryOut: (window: Place, more: Readings) => Promise<WindowPlan>
  /** Everything that was put at a place, the latest last. */
  readonly history: (place: Place) => readonly SentEntry[]
  /** What stands at a place and nobody put anything over; several that differ are a conflict. */
  readonly live: (place: Place) => readonly SentEntry[]
  /** Places below a place at which values stand against each other. */
  readonly conflicts: (below: Place) => readonly Place[]
  /** The photos of a window, in the order in which they were taken. */
  readonly photos: (window: Place) => readonly SitePhoto[]
  /** Keeps pictures as photos of a window; resolves with the names of those that were kept. That there was no room is said on the page. */
  readonly takePhotos: (window: Place, files: readonly Blob[], says: string) => Promise<readonly string[]>
  /** Entries below a place whose values were left out. */
  readonly refused: (below: Place) => readonly SentEntry[]
}
