import type { Detail, Mark } from '@evenhem/drawing'
import { inch, type Known, type Length } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import { coverage, type Hole, heldAtWall, holes, makeUp, projection, reach, type Side } from '../facts/index.ts'
import { member, projectionAt, windowOf } from '../given.ts'
import { wideOf } from './openings.ts'
import { outFromWall, standsOut } from './section.ts'
import { bearingLine, box, mm } from './shapes.ts'

/** Drawn alike for every hardware; no number is read from it. */
const arm = mm(0.25 * inch)
const plate = { half: mm(0.6 * inch), thick: mm(0.25 * inch) }
const angle = { half: mm(0.35 * inch), out: mm(0.6 * inch) }

/** From the wall out to the hardware, at every place with holes for a bracket. */
const bracketAt = (x: number, out: number): readonly Mark[] => [
  box('bracket', outFromWall(x - arm, 0), outFromWall(x + arm, out)),
  box('bracket', outFromWall(x - plate.half, 0), outFromWall(x + plate.half, plate.thick)),
]
/** What is screwed to the ceiling over the line of the hooks: nothing of it reaches the wall. */
const overheadAt = (x: number, out: number): readonly Mark[] => [
  box('bracket', outFromWall(x - plate.half, out - plate.half), outFromWall(x + plate.half, out + plate.half)),
]
const angleAt = (x: number): Mark => box('bracket', outFromWall(x - angle.half, 0), outFromWall(x + angle.half, angle.out))

const places = (all: readonly Hole[], on: Hole['on']): readonly number[] => [
  ...new Set(all.filter((hole) => hole.on === on).map((hole) => mm(hole.x.value))),
]

interface End {
  readonly side: Side
  /** The outermost and the innermost thing of this end, along the wall. */
  readonly outer: number
  readonly bracket: number
  readonly cover: number
  readonly out: Known<Length>
  readonly return?: Known<Length> | undefined
  readonly stool?: Known<Length> | undefined
  /** The edge of the casing on this side. */
  readonly casing: number
}

/** One end of the hardware, enlarged: how far it stands out, how wide the return is, how deep the stool. */
function detailOf({ side, outer, bracket, cover, out, casing, ...sizes }: End): Detail {
  const inward = side === 'left' ? 1 : -1
  const far = Math.max(mm(out.value), mm(sizes.return?.value ?? 0), mm(sizes.stool?.value ?? 0))
  const inner = casing + inward * mm(3.2 * inch)
  const beyond = outer - inward * mm(inch)
  const edge = beyond - inward * mm(1.2 * inch)
  const wide = inward * Math.min(mm(26 * inch), Math.max(mm(14 * inch), inward * (inner - edge)))
  const marks = [
    standsOut(bracket + inward * mm(3 * inch), out, 'drapery/projection'),
    ...(sizes.return && sizes.return.value > 0
      ? [
          standsOut(beyond, sizes.return, 'drapery/return-width'),
          {
            kind: 'line',
            role: 'dimension',
            from: outFromWall(cover, mm(sizes.return.value)),
            to: outFromWall(beyond, mm(sizes.return.value)),
          } as const,
        ]
      : []),
    ...(sizes.stool ? [standsOut(casing + inward * mm(1.6 * inch), sizes.stool, 'drapery/stool-depth')] : []),
  ]
  return {
    kind: 'detail',
    id: `section-${side}`,
    code: `drapery/end-${side}`,
    from: [Math.min(edge, edge + wide), -far - mm(2 * inch)],
    to: [Math.max(edge, edge + wide), mm(1.5 * inch)],
    marks,
  }
}

/** Hardware seen from above, from what any hardware says of itself: brackets from the wall out to where the hooks bear, and what returns are held by. */
export const hardwareSection = rule({
  id: 'hardware-section',
  on: 'treatment',
  needs: { coverage, projection, makeUp, holes: { maybe: holes }, reach: { maybe: reach }, heldAtWall: { maybe: heldAtWall } },
  gives: { layers },
}).run(({ it, at, window }, facts) => {
  const { openings } = wideOf(window, windowOf(at))
  const [first, last] = [openings[0], openings.at(-1)]
  const all = facts.holes ?? []
  const outAt = (side: Side): Known<Length> => projectionAt(it, at, side, facts.projection)
  const brackets = places(all, 'bracket')
  const from = mm((facts.reach ?? facts.coverage).left.value)
  const to = mm((facts.reach ?? facts.coverage).right.value)
  const bears = bearingLine(
    [mm(facts.coverage.left.value), mm(facts.coverage.right.value)],
    [mm(outAt('left').value), mm(outAt('right').value)],
  )
  const rod: Mark = { kind: 'line', role: 'rod', from: outFromWall(from, bears(from)), to: outFromWall(to, bears(to)) }
  const depth = first && member(first.openingAt, ['sill', 'depth'], first.opening.sill?.depth)
  const detail = (side: Side): Detail => {
    const own = brackets.filter((x) => all.some((hole) => hole.side === side && mm(hole.x.value) === x))
    const cover = mm(facts.coverage[side].value)
    return detailOf({
      side,
      outer: side === 'left' ? Math.min(from, cover) : Math.max(to, cover),
      bracket: own[0] ?? cover,
      cover,
      out: outAt(side),
      casing: (side === 'left' ? first?.left : last?.right) ?? 0,
      return: facts.makeUp.panels.find((panel) => panel.outer === side)?.return,
      stool: side === 'left' && depth?.value !== undefined ? (depth as Known<Length>) : undefined,
    })
  }
  const supports = places(all, 'support')
  const isOverhead = all.some((hole) => hole.fromWall)
  const held = [...brackets, ...supports].flatMap((x) => (isOverhead ? overheadAt : bracketAt)(x, bears(x)))
  const marks = [...held, ...places(all, 'return').map(angleAt), rod]
  return {
    layers: [
      { view: 'plan', depth: 40, marks: [{ kind: 'group', id: 'hardware', words: 'drapery/section-hardware', marks }] },
      { view: 'plan', depth: 60, marks: [detail('left'), detail('right')] },
    ],
  }
})
