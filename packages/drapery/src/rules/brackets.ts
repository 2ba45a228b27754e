import type { Place, Treatment, Window } from '@evenhem/job'
import type { Held, Hole } from '../facts/index.ts'
import { kilogramsOf, wallUnder } from '../given.ts'

/** The brackets in the order in which they are marked, from left to right: the left one, the supports, the right one. */
export function brackets(all: readonly Hole[]): readonly (readonly Hole[])[] {
  const ids = ['left', ...new Set(all.flatMap((hole) => hole.support ?? [])), 'right']
  const ofId = (id: string) => all.filter((hole) => (hole.on === 'bracket' && hole.side === id) || hole.support === id)
  return ids.map(ofId).filter((own) => own.length > 0)
}

/** One screw a bracket may carry until the hem is proven: in wood, while no panel is heavier than 10 kg (common practice, no source; the weight from memory), and where it is worked out that the top screws alone hold. */
export function holdsByOneScrew(
  it: Treatment,
  all: readonly (readonly Hole[])[],
  window: Window,
  windowAt: Place,
  held: readonly Held[] = [],
): boolean {
  const inWood =
    it.mount !== 'ceiling' &&
    all.every((own) => wallUnder(window, windowAt, own[0]?.x.value ?? 0).wall.buildUp?.behind === 'wood')
  if (held.some(({ byOne }) => byOne !== undefined && byOne.value > 1)) return false
  return inWood && it.panels.every((panel) => (kilogramsOf(panel.weight) ?? 0) <= 10)
}
