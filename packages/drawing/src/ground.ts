import { type Box, holds, overlap } from './space.ts'

/** What is taken of a drawing by labels and what they must not cover. */
export interface Ground {
  readonly within: Box
  readonly taken: readonly Box[]
  readonly isFree: (box: Box) => boolean
  readonly take: (...boxes: readonly Box[]) => void
}

export function ground(within: Box, ...first: readonly Box[]): Ground {
  const taken: Box[] = [...first]
  return {
    within,
    taken,
    isFree: (box) => holds(within, box) && taken.every((other) => !overlap(other, box)),
    take: (...boxes) => {
      taken.push(...boxes)
    },
  }
}
