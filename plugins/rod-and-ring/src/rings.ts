import { below, check, filled, hungPanels, type Member, member, stackOf, stacksOf, stackWidth, unbent } from '@evenhem/drapery'
import { type Inside, ringPlaces, ringsByBay, ringsNeeded, ringsOver } from '@evenhem/drapery/arithmetic'
import { coverage, drawnEnds, type HookPlace, heldAtWall, hookMap, makeUp, type Side, stackRules } from '@evenhem/drapery/facts'
import type { Length } from '@evenhem/length'
import { checks, type Place, reckonings, rule, type Treatment } from '@evenhem/plugin'
import { along } from './facts.ts'
import { rod } from './kind.ts'

/** Hook by hook: which ring takes it, which ring parks outside its bracket, and the order in which the rings go on the rod. */
export const map = rule({
  id: 'hook-map',
  on: rod,
  needs: { along, coverage, drawnEnds, makeUp, stackRules, heldAtWall: { maybe: heldAtWall } },
  gives: { hookMap, reckonings },
}).run(({ it, at, hardware, hardwareAt }, facts) =>
  filled({ ringWidth: member(hardwareAt, ['ring', 'width'], hardware.ring.width) }, ({ ringWidth }) => {
    const panels = hungPanels(it, at, facts)
    const rings = ringsNeeded(
      at,
      panels.map(({ panel, pleats, place, atWall }) => ({
        panel,
        atWall,
        pleats: { value: pleats, from: below(place, 'pleats') },
      })),
    )
    const stacks = panels.map((panel, i) => stackOf(it, at, panel, rings[i]?.value ?? 0, ringWidth, facts.stackRules))
    const { toRod, toWalls } = unbent(facts.coverage)
    const placed = panels.flatMap(({ share, ...panel }, i) => {
      const isLeading = facts.coverage.leadingEnd !== undefined
      const leading = isLeading ? facts.drawnEnds[facts.coverage.leadingEnd ?? 'left'] : share.leading
      return ringPlaces(
        { ...panel, leadingFlat: panel.leadingFlat.value, outerFlat: panel.outerFlat?.value },
        toRod(leading.value),
        toRod(share.end.value),
        stackWidth(stacks[i] ?? []),
        insideOf(panel.outer, toRod(facts.along[panel.outer].bracket.value), hardware.bracket.width, ringWidth.value),
      ).map((place) => ({ ...place, drawn: toWalls(place.drawn), stacked: toWalls(place.stacked) }))
    })
    const places = placed.map(
      ({ ring, parksOutside, ...place }): HookPlace =>
        ring === undefined
          ? { ...place, to: 'rod-and-ring/to-wall' }
          : {
              ...place,
              to: 'rod-and-ring/to-ring',
              number: ring,
              ...(parksOutside ? { note: 'rod-and-ring/past-bracket' } : {}),
            },
    )
    return {
      hookMap: {
        places,
        bearers: rings.at(-1) as (typeof rings)[number],
        stacks: stacksOf(panels, stacks),
        threading: threading(placed, facts.along, (id) => panels.find(({ panel }) => panel === id)?.outer ?? 'left'),
      },
      reckonings: [...rings, ...stacks.flat()],
    }
  }),
)

/** Half a bracket and half a ring inside its middle; where the bracket's width is not known nothing is said. */
const insideOf = (outer: Side, bracket: Length, plate: Length | undefined, ringWidth: Length): Inside | undefined =>
  plate === undefined
    ? undefined
    : { nearest: (bracket + ((outer === 'left' ? 1 : -1) * (plate + ringWidth)) / 2) as Length, ringWidth }

type Placed = ReturnType<typeof ringPlaces>
/** Outside the left bracket, in each bay between brackets and supports, outside the right bracket. */
function threading(
  placed: Placed,
  { left, right, supports }: { left: End; right: End; supports: readonly { x: { value: Length } }[] },
  outerOf: (panel: string) => Side,
) {
  const onRod = placed.filter((place) => place.ring !== undefined)
  const isLeft = (x: number) => Math.abs(x - left.bracket.value) < Math.abs(x - right.bracket.value)
  const outside = onRod.filter(
    (place) => place.parksOutside && (place.drawn < left.bracket.value || place.drawn > right.bracket.value),
  )
  const inside = onRod
    .filter((place) => !outside.includes(place))
    .map(({ panel, drawn }) => ({ x: drawn, outer: outerOf(panel) }))
  const bays = ringsByBay(
    inside,
    supports.map((support) => support.x.value),
  )
  return [
    { what: 'rod-and-ring/thread-outside-left', count: outside.filter((place) => isLeft(place.drawn)).length },
    ...bays.map((count, i) => ({
      what: bays.length === 1 ? 'rod-and-ring/thread-between' : `rod-and-ring/thread-bay-${Math.min(i + 1, 9)}`,
      count,
    })),
    { what: 'rod-and-ring/thread-outside-right', count: outside.filter((place) => !isLeft(place.drawn)).length },
  ]
}
interface End {
  readonly bracket: { readonly value: Length }
}

/** Rings that were packed against hooks that need one: missing ones stop the work, more are spare. */
export const ringCount = rule({
  id: 'rings',
  on: rod,
  needs: { hookMap },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/rings'],
}).run(({ it, mine, mineAt, at }, facts) =>
  filled({ rings: ringsThere(it, at, mine?.rings, mineAt) }, ({ rings }) => {
    const over = ringsOver(at, rings, facts.hookMap.bearers)
    const values = {
      needed: { count: facts.hookMap.bearers.value },
      ordered: { count: rings.value },
      over: { count: Math.abs(over.value) },
      hooks: { count: facts.hookMap.places.length },
    }
    return {
      checks: [check('rod-and-ring/rings', over.value < 0 ? 'fail' : 'pass', mineAt, values, 'mount')],
      reckonings: [over],
    }
  }),
)

/** How many rings there are: counted with the other parts, or as the order says and as it was read there. */
export const ringsThere = ({ found }: Treatment, at: Place, packed: number | undefined, mineAt: Place): Member =>
  found?.came?.[ring] === undefined ? member(mineAt, ['rings'], packed) : member(at, ['found', 'came', ring], found.came[ring])
const ring = 'rod-and-ring/part-ring'
