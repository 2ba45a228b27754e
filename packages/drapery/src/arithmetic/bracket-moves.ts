import { type Length, wholeNanometres } from '@evenhem/length'
import { straight } from './floor.ts'
import { type ChainHook, type PinRange, type PinsSet, trueUp } from './pins.ts'

/** A bracket or support: where it is, and the least that it can be moved so that a new hole holds beside the old one. */
export interface Movable {
  readonly x: Length
  readonly least: Length
}
export interface Held {
  readonly left: Movable
  readonly right: Movable
  readonly supports: readonly Movable[]
}
/** How far each end bracket moves, up positive, and what then remains at the hook that is furthest off. */
export interface BracketMove {
  readonly left: Length
  readonly right: Length
  readonly remains: Length
}

/** How far the rod rises at a place when its ends do: it stays straight, beyond its brackets too. */
export const riseAt = ({ left, right }: Held, move: { readonly left: Length; readonly right: Length }, x: Length): Length =>
  wholeNanometres(straight(x, left.x, move.left, right.x, move.right))

/** The moves of a bracket: none, or up or down by steps from the least that a new hole allows to `most`. */
export function movesOf({ least }: Movable, step: Length, most: Length): readonly Length[] {
  const first = Math.ceil(least / step)
  const ups = Array.from({ length: Math.max(0, Math.floor(most / step) - first + 1) }, (_, i) => ((first + i) * step) as Length)
  return [0 as Length, ...ups.flatMap((up) => [up, -up as Length])]
}

/** Every way to move the two ends in which each support stays within `inLine` of the rod or moves far enough for a new hole. */
function allMoves(held: Held, step: Length, most: Length, inLine: Length) {
  const pairs = movesOf(held.left, step, most).flatMap((left) =>
    movesOf(held.right, step, most).map((right) => ({ left, right })),
  )
  const canFollow = (move: { readonly left: Length; readonly right: Length }): boolean =>
    held.supports.every(({ x, least }) => {
      const rise = Math.abs(riseAt(held, move, x))
      return rise <= inLine || rise >= least
    })
  return pairs.filter((move) => (move.left !== 0 || move.right !== 0) && canFollow(move))
}

/** The work of a move: brackets, then how far. */
const brackets = ({ left, right }: { readonly left: Length; readonly right: Length }): number =>
  (left === 0 ? 0 : 1) + (right === 0 ? 0 : 1)
const way = ({ left, right }: { readonly left: Length; readonly right: Length }): number => Math.abs(left) + Math.abs(right)

type Rank = readonly number[]
/** What is inside the tolerance by the fewest brackets comes before all else, then what leaves the least, then the shortest way. */
const rankOf = (move: BracketMove, tolerance: Length): Rank => [
  Math.max(0, move.remains - tolerance),
  brackets(move),
  move.remains,
  way(move),
]
const isBefore = (a: Rank, b: Rank): boolean => (a.map((value, n) => value - (b[n] ?? 0)).find((apart) => apart !== 0) ?? 0) < 0

/** How the moves are looked for. `most`: the furthest that a bracket may go; `inLine`: how far a support may be off the rod. */
export interface MoveRules {
  readonly step: Length
  readonly most: Length
  readonly inLine: Length
  readonly tolerance: Length
}

/** The best move of brackets with the pins as they are. Hooks with their places along the wall. Undefined when none is allowed. */
export function moveBrackets(
  hooks: readonly { readonly x: Length; readonly lift: Length }[],
  held: Held,
  { step, most, inLine, tolerance }: MoveRules,
): BracketMove | undefined {
  let best: BracketMove | undefined
  for (const move of allMoves(held, step, most, inLine)) {
    const left = hooks.map(({ x, lift }) => Math.abs(lift - riseAt(held, move, x)))
    const found = { ...move, remains: Math.max(...left) as Length }
    if (!best || isBefore(rankOf(found, tolerance), rankOf(best, tolerance))) best = found
  }
  return best
}

/** The least that can remain when every pin may go to the end of its range: what pins of a chain leave is no less. */
export const leastLeft = (chain: readonly ChainHook[], { least, most }: PinRange): Length =>
  Math.max(
    0,
    ...chain.map(({ pin, lift }) => Math.max(lift - (Math.max(most, pin) - pin), -lift - (pin - Math.min(least, pin)))),
  ) as Length

/** The best move of brackets with pins set to it. `places`: where the hooks of the chain are. */
export function moveBoth(
  chain: readonly ChainHook[],
  places: readonly Length[],
  held: Held,
  range: PinRange,
  { step, most, inLine, tolerance }: MoveRules,
): (BracketMove & PinsSet) | undefined {
  let best: (BracketMove & PinsSet) | undefined
  for (const move of allMoves(held, step, most, inLine)) {
    const moved = chain.map((hook, i) => ({ ...hook, lift: (hook.lift - riseAt(held, move, places[i] as Length)) as Length }))
    const hoped = rankOf({ ...move, remains: leastLeft(moved, range) }, tolerance)
    // What cannot become the best is not worked out.
    if (best && !isBefore(hoped, rankOf(best, tolerance))) continue
    const found = { ...move, ...trueUp(moved, range, tolerance) }
    if (!best || isBefore(rankOf(found, tolerance), rankOf(best, tolerance))) best = found
  }
  return best
}
