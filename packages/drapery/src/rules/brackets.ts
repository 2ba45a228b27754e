import type { Place, Treatment, Window } from '@evenhem/job'
import type { Held, Hole } from '../facts/index.ts'
import { kilogramsOf, wallUnder } from '../given.ts'

/** The brackets in the order in which they are marked, from left to right: the left one, the supports, the right one. */
export function brackets(all: readonly Hole[]): readonly (readonly Hole[])[] {
  const ids = ['left', ...new Set(all.flatMap((hole) => hole.support ?? [])), 'right']
  const ofId = (id: string) => all.filter((hole) => (hole.on === 'bracket' && hole.side === id) || hole.support === id)
  return ids.map(ofId).filter((own) => own.length > 0)
}

type Bracket = readonly Hole[]
/** Whether wood is behind every bracket: as the drill met it, where loads are worked out, else as the order says. */
const isInWood = (it: Treatment, all: readonly Bracket[], window: Window, windowAt: Place, held: readonly Held[]): boolean =>
  it.mount !== 'ceiling' &&
  held.every(({ behind }) => behind === 'wood') &&
  all.every((own) => wallUnder(window, windowAt, own[0]?.x.value ?? 0).wall.buildUp?.behind === 'wood')

/**
 * How many holes are drilled before the hem is proven. `wood`: one screw a bracket may carry until then, in wood, while no panel is heavier than 10 kg (common
 * practice, no source; the weight from memory), and where it is worked out that the top screws alone hold. `all`: wood is behind, but one screw is too little.
 */
export function drilling(
  it: Treatment,
  all: readonly Bracket[],
  window: Window,
  windowAt: Place,
  held: readonly Held[] = [],
): 'wood' | 'all' | 'other' {
  if (!isInWood(it, all, window, windowAt, held)) return 'other'
  const isLight = it.panels.every((panel) => (kilogramsOf(panel.weight) ?? 0) <= 10)
  return isLight && held.every(({ byOne }) => byOne !== undefined && byOne.value <= 1) ? 'wood' : 'all'
}
