import { below, type Place, type Treatment } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import { type Capture, rule, type Step, steps } from '@evenhem/plugin'
import type { HookMap, HookPlace, Side } from '../facts/index.ts'
import { type TrueUp, trueUp } from '../facts/true-up.ts'
import { outerSide } from '../given.ts'
import { decisionOn, moveIn } from './hem-decided.ts'

/** The hooks below which a hem is read: at the leading edge, the middle pleat and the outer edge; with a return at the last pleat, where the cloth turns. */
export function hooksToRead(it: Treatment, panel: string, places: readonly HookPlace[]): readonly number[] {
  const own = places.filter((place) => place.panel === panel).map(({ hook }) => hook)
  const pleats = own.filter(({ on }) => on === 'pleat')
  const hasReturn = it.panels.find(({ id }) => id === panel)?.return !== 0
  const outer = hasReturn ? pleats.at(-1) : own.at(-1)
  const some = [own[0], pleats[Math.floor(pleats.length / 2)], outer]
  return [...new Set(some.flatMap((hook) => hook?.n ?? []))]
}

/** The hem of each panel, to be read below three hooks; what is expected is what was ordered, or what a correction should have made of it. */
export const hemCaptures = (
  it: Treatment,
  at: Place,
  map: HookMap,
  clearance: Known<Length>,
  tolerance: Known<Length>,
): readonly Capture[] =>
  it.panels.flatMap(({ id }) =>
    hooksToRead(it, id, map.places).map((n) => ({
      at: below(at, 'found', 'hemsRead', id, String(n)),
      as: 'length' as const,
      expected: { length: decisionOn(it, id)?.meant[n] ?? clearance.value },
      tolerance: { length: tolerance.value },
    })),
  )

/** The hooks to read as words: alike for all panels, or of the left and of the right. */
export function hooksSaid(it: Treatment, map: HookMap) {
  const of = (side: Side) => it.panels.find(({ id }) => outerSide(it, id) === side)?.id
  const said = (side: Side): string => hooksToRead(it, of(side) ?? '', map.places).join(', ')
  const [left, right] = [said('left'), said('right')]
  return { alike: !left || !right || left === right ? 'yes' : 'no', left: left || right, right }
}

type Numbers = NonNullable<Step['numbers']>
const word = (panel: TrueUp['panels'][number], n: number): string => `drapery/hook-${panel.outer}-${Math.min(n, 99)}`

/** Pins that have to be set, hook by hook: those that are worked out, or else those that were decided. */
function pinsToSet(
  { it, at }: { it: Treatment; at: Place },
  up: TrueUp,
): { readonly how: 'meant' | 'decided'; readonly numbers: Numbers } {
  // Pins that do not bring the hem where it should be are one way among others, and wait until somebody takes it.
  const areEnough = up.panels.every(
    ({ state, hooks }) =>
      state !== 'read' || hooks.every(({ lift, set, pin }) => Math.abs(lift - (set.value - pin.value)) <= up.tolerance.value),
  )
  const meant = (areEnough ? up.panels : []).flatMap((panel) =>
    panel.hooks
      .filter(({ set, pin }) => set.value !== pin.value)
      .map(({ n, set }) => ({ what: word(panel, n), value: set.value, of: set.name })),
  )
  if (meant.length > 0) return { how: 'meant', numbers: meant }
  const decided = up.panels.flatMap((panel) =>
    panel.hooks
      .filter(({ n }) => it.found?.pins?.[panel.panel]?.[n] !== undefined)
      .map(({ n, pin }) => ({ what: word(panel, n), value: pin.value, of: below(at, 'found', 'pins', panel.panel, String(n)) })),
  )
  return { how: 'decided', numbers: decided }
}

/** Brackets that were decided to move: how far, and where their top hole then is. */
const movesOf = (it: Treatment) =>
  (['left', 'right'] as const).flatMap((side) => {
    const move = moveIn(it.found?.decided?.[`bracket-${side}`] ?? '')
    return move ? [{ side, ...move }] : []
  })

/** What is done about a hem that is not even: pins, and brackets that move. */
export const truing = rule({ id: 'truing', on: 'treatment', needs: { trueUp }, gives: { steps } }).run(({ it, at }, facts) => {
  const { how, numbers } = pinsToSet({ it, at }, facts.trueUp)
  const pins: readonly Step[] =
    numbers.length === 0
      ? []
      : [
          {
            id: 'set-pins',
            stage: 'true-up',
            after: ['read-hem', 'move-bracket-left', 'move-bracket-right'],
            code: 'drapery/set-pins',
            values: { count: { count: numbers.length }, how },
            numbers,
            tools: ['drapery/tape'],
          },
        ]
  const moves = movesOf(it).map(
    ({ side, by, to }): Step => ({
      id: `move-bracket-${side}`,
      stage: 'true-up',
      after: ['read-hem'],
      code: 'drapery/move-bracket',
      values: {
        side: { code: `drapery/${side}` },
        by: { length: Math.abs(by) as Length },
        way: by > 0 ? 'up' : 'down',
        to: { length: to },
      },
      cautions: ['drapery/caution-ladder', 'drapery/caution-drill'],
      tools: ['drapery/tape', 'drapery/pencil', 'drapery/level', 'drapery/drill-tool', 'drapery/goggles'],
      captures: [{ at: below(at, 'found', 'brackets', side, 'floorToHole'), as: 'length', expected: { length: to } }],
    }),
  )
  return { steps: [...moves, ...pins] }
})
