import {
  box,
  bracketToBracket,
  centresOn,
  ellipse,
  filled,
  heightsAtLeft,
  heightsBeside,
  hungBy,
  member,
  mm,
  outAt,
  platesOn,
  rodAlong,
  rodFromAbove,
  rowOf,
} from '@evenhem/drapery'
import { coverage, hookMap, hungLine, plateTops, projection, rod, stand, topOfRod } from '@evenhem/drapery/facts'
import type { Layer, Mark } from '@evenhem/drawing'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { traverseRod } from './kind.ts'

type State = 'drawn' | 'stacked'
const states: readonly State[] = ['drawn', 'stacked']

/** Rod, carriers, end brackets and supports, to scale, with the distance from bracket to bracket and the heights of rod and plate. */
export const picture = rule({
  id: 'picture',
  on: traverseRod,
  needs: { stand, rod, coverage, topOfRod, hookMap, projection, plateTops: { maybe: plateTops }, hungLine: { maybe: hungLine } },
  gives: { layers, reckonings },
}).run(({ it, hardware, hardwareAt, at }, facts) => {
  const members = {
    height: member(hardwareAt, ['rod', 'height'], hardware.rod.height),
    drop: member(hardwareAt, ['carrier', 'drop'], hardware.carrier.drop),
    width: member(hardwareAt, ['carrier', 'width'], hardware.carrier.width),
  }
  return filled(members, (sizes) => {
    const [top, height, drop, width] = [
      mm(facts.topOfRod.value),
      mm(sizes.height.value),
      mm(sizes.drop.value),
      mm(sizes.width.value),
    ]
    const ends = [mm(facts.rod.left.value), mm(facts.rod.right.value)] as const
    const between = bracketToBracket(at, facts.stand)
    const out = outAt(it, at, facts.coverage, facts.projection)
    const tip = mm(hardware.finial?.length ?? 0)
    const radius = mm(hardware.finial?.radius ?? 0)
    const finials = (y: (x: number) => number): readonly Mark[] =>
      tip > 0 && radius > 0
        ? ends.map((x, i) => ellipse('finial', [x + ((i === 0 ? -1 : 1) * tip) / 2, y(x)], tip / 2, radius))
        : []
    const plates =
      facts.plateTops && it.bracketsOf === undefined ? platesOn(facts.stand, facts.plateTops, hardware, facts.hungLine) : []
    const by = hungBy(facts.hungLine)
    const runs = facts.hookMap.places.filter((place) => place.number !== undefined)
    /** A carrier reaches from the rod down to the hook; in front of the rod it lies on it. */
    const carriers = (state: State): Layer => ({
      view: 'elevation',
      state,
      depth: 45,
      marks: runs.map((place) => {
        const x = mm(place[state])
        return box(
          'ring',
          [x - width / 2, top + by(x) - drop],
          [x + width / 2, top + by(x) - (hardware.carrier.at === 'under' ? height : height / 2)],
        )
      }),
    })
    const carriersAbove = (state: State): Layer => ({
      view: 'plan',
      state,
      depth: 42,
      marks: runs.map((place) => {
        const x = mm(place[state])
        return box('ring', [x - width / 2, out(x) - width / 2], [x + width / 2, out(x) + width / 2])
      }),
    })
    const heights = heightsAtLeft(facts.topOfRod, facts.plateTops?.bracket, facts.hungLine)
    const row = (side: 'above' | 'below', y: number) => rowOf(side, y, facts.stand.left, facts.stand.right, between)
    return {
      reckonings: [between],
      layers: [
        {
          view: 'elevation' as const,
          depth: 40,
          marks: [
            {
              kind: 'group' as const,
              id: 'hardware',
              words: 'traverse/words',
              marks: [...plates, rodAlong(ends, top, height, facts.hungLine), ...finials((x) => top + by(x) - height / 2)],
            },
          ],
        },
        ...states.map(carriers),
        { view: 'elevation' as const, depth: 60, marks: [row('above', top), ...heightsBeside(facts.stand.left, heights)] },
        ...(facts.plateTops
          ? [{ view: 'marks' as const, depth: 40, marks: centresOn(facts.stand, facts.plateTops, facts.hungLine) }]
          : []),
        { view: 'marks' as const, depth: 60, marks: [row('above', top)] },
        { view: 'plan' as const, depth: 41, marks: [rodFromAbove(ends, out, height / 2), ...finials(out)] },
        ...states.map(carriersAbove),
        { view: 'plan' as const, depth: 60, marks: [row('below', Math.min(...ends.map(out)))] },
      ],
    }
  })
})
