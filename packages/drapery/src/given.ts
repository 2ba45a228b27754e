import { below, type Opening, type Place, type Treatment, type Wall, type Window } from '@evenhem/job'
import { type Known, type Length, readQuantity } from '@evenhem/length'
import type { Ask, Check, Quantity, Values, Verdict } from '@evenhem/plugin'

/** The place below a place. */
export { below }

/** A member of the job that may not be filled yet, with its place. */
export interface Member<T extends number = number> {
  readonly value: T | undefined
  readonly from: Place
}
type Filled<M> = { readonly [K in keyof M]: M[K] extends Member<infer T> ? Known<T> : never }

/** A member below a place. */
export const member = <T extends number>(at: Place, tokens: readonly string[], value: T | undefined): Member<T> => ({
  value,
  from: below(at, ...tokens),
})
/** A member that the job may leave out, as a value that knows its place. */
export const perhaps = <T extends number>({ value, from }: Member<T>): Known<T> | undefined =>
  value === undefined ? undefined : { value, from }

/** Runs when all members are filled; otherwise asks for those that are not. */
export function filled<const M extends Readonly<Record<string, Member>>, R extends object>(
  members: M,
  run: (members: Filled<M>) => R,
): R | Ask {
  const empty = Object.values(members).filter((each) => each.value === undefined)
  return empty.length > 0 ? { ask: empty.map((each) => each.from) } : run(members as unknown as Filled<M>)
}

export interface PlacedOpening {
  readonly wall: Wall
  readonly opening: Opening
  readonly wallAt: Place
  readonly openingAt: Place
}
/** All openings of a window with their places, from left to right. */
export const openingsOf = (window: Window, windowAt: Place): readonly PlacedOpening[] =>
  window.walls.flatMap((wall) => {
    const wallAt = below(windowAt, 'walls', wall.id)
    return wall.openings.map((opening) => ({ wall, opening, wallAt, openingAt: below(wallAt, 'openings', opening.id) }))
  })
/** The openings that a treatment covers: those that it names, or all of its window. */
export const coveredBy = (treatment: Treatment, window: Window, windowAt: Place): readonly PlacedOpening[] =>
  openingsOf(window, windowAt).filter(({ opening }) => treatment.openings?.includes(opening.id) ?? true)

/** The first opening of a window, with its place; a wall without one has an empty opening. */
export function openingOf(window: Window, windowAt: Place): PlacedOpening {
  const first = openingsOf(window, windowAt)[0]
  if (first) return first
  const wall = window.walls[0] as Wall
  const wallAt = below(windowAt, 'walls', wall.id)
  return { wall, opening: { id: 'none' }, wallAt, openingAt: below(wallAt, 'openings') }
}
/** The wall under a place along it; walls stand from left to right. The last one that begins left of it, or the first. */
export function wallUnder(window: Window, windowAt: Place, x: number): { readonly wall: Wall; readonly wallAt: Place } {
  const wall = (window.walls.findLast((each) => each.left !== undefined && each.left <= x) ?? window.walls[0]) as Wall
  return { wall, wallAt: below(windowAt, 'walls', wall.id) }
}
/** The place of the window that a treatment hangs at. */
export const windowOf = (treatmentAt: Place): Place => treatmentAt.slice(0, treatmentAt.lastIndexOf('/treatments/'))

/** The place of a panel. */
export const panelAt = (treatmentAt: Place, panel: string): Place => below(treatmentAt, 'panels', panel)
/** On which side a panel has its outer edge: where the order says, else as the draw has it; of stationary panels the left half hangs on the left. */
export function outerSide({ panels, draw }: Treatment, panel: string): 'left' | 'right' {
  const n = panels.findIndex((each) => each.id === panel)
  const said = panels[n]?.outer
  if (said) return said
  if (draw === 'one-way left') return 'left'
  if (draw === 'one-way right') return 'right'
  return n < panels.length / 2 ? 'left' : 'right'
}
/** The place of the room of anything below it. */
export const roomOf = (at: Place): Place => at.slice(0, at.indexOf('/windows/'))

/** From the wall to where the hooks bear at one end: where the order sets it for this treatment, else what the hardware says. */
export const projectionAt = (treatment: Treatment, at: Place, side: 'left' | 'right', hardware: Known<Length>): Known<Length> =>
  perhaps(member(at, ['projection', side], treatment.projection?.[side])) ?? hardware

/** A check whose sentence depends on its verdict: `code` when it passes, else `code.fail`, `code.warn`, `code.unknown`. */
export const check = (code: string, verdict: Verdict, at: Place, values: Values, stops?: Check['stops']): Check => ({
  code,
  ...(verdict === 'pass' ? {} : { says: `${code}.${verdict}` }),
  verdict,
  at,
  values,
  ...(stops && verdict === 'fail' ? { stops } : {}),
})
/** A known length as a value for a sentence. */
export const long = (known: { readonly value: number }): Quantity => ({ length: known.value as never })
/** A length without its sign. */
export const magnitude = (known: { readonly value: number }): Quantity => ({ length: Math.abs(known.value) as never })

/** A weight as the order writes it, such as `4.2 kg` or `9 lb`, in kilograms; undefined when there is none. */
export function kilogramsOf(weight: string | undefined): number | undefined {
  const read = weight === undefined ? undefined : readQuantity(weight, 'mass')
  return read?.ok ? read.value : undefined
}
/** A force as the order writes it, such as `180 N` or `40 lbf`, in newtons; undefined when there is none above 0. */
export function forceOf(force: string | undefined): number | undefined {
  const read = force === undefined ? undefined : readQuantity(force, 'force')
  return read?.ok && read.value > 0 ? read.value : undefined
}
