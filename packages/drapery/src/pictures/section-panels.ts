import type { Layer, Mark, Point, Segment } from '@evenhem/drawing'
import { inch } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import { coverage, type HookPlace, heldAtWall, hookMap, makeUp, type PanelMakeUp, projection } from '../facts/index.ts'
import { projectionAt } from '../given.ts'
import { bearingLine, mm } from './shapes.ts'

const ends = ['left', 'right'] as const

type State = 'drawn' | 'stacked'
/** How far a pleat stands out, and half its width; nothing in an order says so, no number is read from it. */
const pleat = { stands: mm(1.25 * inch), half: mm(0.3 * inch) }
/** Drawn cloth is never quite flat. */
const leastFold = mm(0.2 * inch)
/** What is kept clear between a fold and the wall. */
const clear = mm(0.25 * inch)

/** How deep cloth of a space's length folds between two hooks at a distance: the height of an equal-sided triangle over it. */
export const foldDepth = (space: number, apart: number): number => Math.sqrt(Math.max(0, space ** 2 - apart ** 2)) / 2

/** From hook to hook the cloth goes back toward the wall and comes forward again. */
function fold([from, y]: Point, [to, end]: Point, depth: number): Segment {
  return ['C', from, y + (4 / 3) * depth, to, end + (4 / 3) * depth, to, end]
}

/** A pleat stands forward of its hook, narrower where its neighbours are near. */
function pleatAt([x, y]: Point, apart: number): Mark {
  const half = Math.min(pleat.half, 0.42 * apart)
  const tip = y - pleat.stands
  return {
    kind: 'path',
    role: 'fabric',
    d: [
      ['M', x, y],
      ['C', x - 1.4 * half, y - 0.3 * pleat.stands, x - half, tip, x, tip],
      ['C', x + half, tip, x + 1.4 * half, y - 0.3 * pleat.stands, x, y],
      ['Z'],
    ],
  }
}

interface Hung {
  readonly panel: PanelMakeUp
  readonly places: readonly HookPlace[]
  /** How far from the wall the hooks bear, at a place along it. */
  readonly out: (x: number) => number
  readonly isHeld: boolean
}

/** The last hook of a return that is held goes to the wall; all others hang on the hardware. */
const onHardware = ({ places, isHeld }: Hung): readonly HookPlace[] =>
  places.filter((place) => !(isHeld && place.hook.on === 'outer-edge'))

/** From the last hook on the hardware to the wall, bulging by what the return is longer than the way. */
function returnTo({ panel, out: outAt }: Hung, x: number): readonly Segment[] {
  const out = outAt(x)
  const bulge = foldDepth(Math.max(out, mm(panel.return.value)), out) * (panel.outer === 'left' ? -1 : 1)
  return [['C', x + (4 / 3) * bulge, -out, x + (4 / 3) * bulge, 0, x, 0]]
}

/** A panel from its leading edge outward, as a line of cloth with its pleats, and its return to the wall. */
function panelMarks(hung: Hung, state: State): readonly Mark[] {
  const { panel, out } = hung
  const hooks = onHardware(hung)
  const xs = hooks.map((place) => mm(place[state]))
  const apart = Math.abs((xs.at(-1) ?? 0) - (xs[0] ?? 0)) / Math.max(1, xs.length - 1)
  const between = xs.slice(1).map((x, i): Segment => {
    const from = xs[i] ?? x
    const isSpace = hooks[i]?.hook.on === 'pleat' && hooks[i + 1]?.hook.on === 'pleat'
    const length = isSpace
      ? mm(panel.space.value)
      : Math.abs((hooks[i + 1]?.hook.across ?? 0) - (hooks[i]?.hook.across ?? 0)) / 1e6
    const least = Math.min(out(from), out(x))
    const depth = Math.min(Math.max(leastFold, foldDepth(length, Math.abs(x - from))), Math.max(0, least - clear))
    return fold([from, -out(from)], [x, -out(x)], depth)
  })
  const cloth: Mark = {
    kind: 'path',
    role: 'cloth',
    d: [['M', xs[0] ?? 0, -out(xs[0] ?? 0)], ...between, ...(hung.isHeld ? returnTo(hung, xs.at(-1) ?? 0) : [])],
  }
  const pleats = hooks
    .filter((place) => place.hook.on === 'pleat')
    .map((place) => pleatAt([mm(place[state]), -out(mm(place[state]))], apart))
  return [...pleats, cloth]
}

/** The panels seen from above, drawn and stacked: pleats forward, spaces back, and each return to the wall where it is held there. */
export const panelsSection = rule({
  id: 'panels-section',
  on: 'treatment',
  needs: { coverage, makeUp, hookMap, projection, heldAtWall: { maybe: heldAtWall } },
  gives: { layers },
}).run(({ it, at }, facts) => {
  const [left, right] = ends.map((side) => mm(projectionAt(it, at, side, facts.projection).value)) as [number, number]
  const out = bearingLine([mm(facts.coverage.left.value), mm(facts.coverage.right.value)], [left, right])
  const hung = facts.makeUp.panels.map(
    (panel): Hung => ({
      panel,
      places: facts.hookMap.places.filter((place) => place.panel === panel.panel),
      out,
      isHeld: (facts.heldAtWall ?? []).some((held) => held.side === panel.outer),
    }),
  )
  const layer = (state: State): Layer => ({
    view: 'plan',
    state,
    depth: 45,
    marks: hung.map((each): Mark => {
      const words = `drapery/${each.isHeld ? 'returns' : 'does-not-return'}-${each.panel.outer}`
      return { kind: 'group', id: each.panel.panel, words, marks: panelMarks(each, state) }
    }),
  })
  return { layers: [layer('drawn'), layer('stacked')] }
})
