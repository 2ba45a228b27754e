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
import { coverage, hookMap, hungLine, projection, topOfRod } from '@evenhem/drapery/facts'
import type { Layer, Mark } from '@evenhem/drawing'
import { inch } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { along, plate, supportPlate } from './facts.ts'
import { rod } from './kind.ts'

/** Drawn when the entry does not say how big a thing is; no number is ever read from it. */
const unsaid = { finial: 2 * inch } as const

/** Rod, rings, finials and brackets, to scale, with the distance from bracket to bracket and the heights of rod and plate. */
export const picture = rule({
  id: 'picture',
  on: rod,
  needs: {
    along,
    coverage,
    plate,
    topOfRod,
    hookMap,
    projection,
    supportPlate: { maybe: supportPlate },
    hungLine: { maybe: hungLine },
  },
  gives: { layers, reckonings },
}).run(({ it, hardware, hardwareAt, at }, facts) =>
  filled(
    {
      diameter: member(hardwareAt, ['rod', 'diameter'], hardware.rod.diameter),
      eyeDrop: member(hardwareAt, ['ring', 'eyeDrop'], hardware.ring.eyeDrop),
      ringWidth: member(hardwareAt, ['ring', 'width'], hardware.ring.width),
    },
    ({ diameter, eyeDrop, ringWidth }) => {
      const { left, right, supports } = facts.along
      const top = mm(facts.topOfRod.value)
      const middle = (top + mm(facts.topOfRod.value - diameter.value)) / 2
      const stand = { left: left.bracket, right: right.bracket, supports }
      const tops = { bracket: facts.plate, support: facts.supportPlate }
      const between = bracketToBracket(at, stand)
      const tip = mm(hardware.finial?.length ?? unsaid.finial)
      const finial = (x: number, outward: 1 | -1, y = middle): Mark =>
        ellipse('finial', [x + (outward * tip) / 2, y], tip / 2, mm(hardware.finial?.radius ?? unsaid.finial / 2))
      const by = hungBy(facts.hungLine)
      const ends = [mm(left.rodEnd.value), mm(right.rodEnd.value)] as const
      const hardwareMarks: readonly Mark[] = [
        ...platesOn(stand, tops, hardware, facts.hungLine),
        rodAlong(ends, top, mm(diameter.value), facts.hungLine),
        finial(ends[0], -1, middle + by(ends[0])),
        finial(ends[1], 1, middle + by(ends[1])),
      ]
      /** A ring hangs on the rod: its top a little above it, its eye at the hang line. */
      const rings = (state: 'drawn' | 'stacked'): Layer => ({
        view: 'elevation',
        state,
        depth: 45,
        marks: facts.hookMap.places
          .filter((place) => place.number !== undefined)
          .map((place) =>
            ellipse(
              'ring',
              [mm(place[state]), top + by(mm(place[state])) - mm(eyeDrop.value) / 2 + mm(ringWidth.value) / 4],
              mm(ringWidth.value),
              (mm(eyeDrop.value) + mm(ringWidth.value) / 2) / 2,
            ),
          ),
      })
      const rows = [rowOf('above', top, stand.left, stand.right, between)]
      const out = outAt(it, at, facts.coverage, facts.projection)
      const half = mm(diameter.value) / 2
      /** The same from above: rings hang across the rod. */
      const ringsAbove = (state: 'drawn' | 'stacked'): Layer => ({
        view: 'plan',
        state,
        depth: 42,
        marks: facts.hookMap.places
          .filter((place) => place.number !== undefined)
          .map((place) =>
            box(
              'ring',
              [mm(place[state]) - mm(ringWidth.value) / 2, out(mm(place[state])) - 1.15 * half],
              [mm(place[state]) + mm(ringWidth.value) / 2, out(mm(place[state])) + 1.15 * half],
            ),
          ),
      })
      const heights = heightsBeside(stand.left, heightsAtLeft(facts.topOfRod, facts.plate, facts.hungLine))
      /** How many rings go on before each bracket and support: bars stand for those. */
      const counts = facts.hookMap.threading.map(({ count }) => `${count}`).join(' | ')
      /** Low on the wall, where nothing is marked. */
      const low: readonly [number, number] = [mm(left.bracket.value + 2 * inch), mm(11 * inch)]
      // The counts first: where there is room for one line only, it is theirs.
      const threaded: readonly Mark[] = [
        { kind: 'caption', role: 'dimension', at: low, anchor: 'start', text: counts },
        { kind: 'caption', role: 'dimension', at: low, anchor: 'start', code: 'rod-and-ring/threading' },
      ]
      return {
        reckonings: [between],
        layers: [
          {
            view: 'elevation',
            depth: 40,
            marks: [{ kind: 'group', id: 'hardware', words: 'rod-and-ring/words', marks: hardwareMarks }],
          },
          rings('drawn'),
          rings('stacked'),
          { view: 'elevation', depth: 60, marks: [...rows, ...heights] },
          {
            view: 'marks',
            depth: 40,
            marks: centresOn(stand, tops, facts.hungLine),
          },
          { view: 'marks', depth: 60, marks: [...rows, ...threaded] },
          {
            view: 'plan',
            depth: 41,
            marks: [rodFromAbove(ends, out, half), finial(ends[0], -1, out(ends[0])), finial(ends[1], 1, out(ends[1]))],
          },
          ringsAbove('drawn'),
          ringsAbove('stacked'),
          { view: 'plan', depth: 60, marks: [rowOf('below', Math.min(...ends.map(out)), stand.left, stand.right, between)] },
        ],
      }
    },
  ),
)
