import { box, ellipse, filled, member, mm } from '@evenhem/drapery'
import { hookMap, projection, topOfRod } from '@evenhem/drapery/facts'
import type { Layer, Mark } from '@evenhem/drawing'
import { inch, minus, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { along, plate } from './facts.ts'
import { rod } from './kind.ts'

/** Drawn when the entry does not say how big a thing is; no number is ever read from it. */
const unsaid = { finial: 2 * inch, plateWidth: inch, plateHeight: 3 * inch } as const

/** Rod, rings, finials and brackets, to scale, with the distance from bracket to bracket and the heights of rod and plate. */
export const picture = rule({
  id: 'picture',
  on: rod,
  needs: { along, plate, topOfRod, hookMap, projection },
  gives: { layers, reckonings },
}).run(({ hardware, hardwareAt, at }, facts) =>
  filled(
    {
      diameter: member(hardwareAt, ['rod', 'diameter'], hardware.rod.diameter),
      eyeDrop: member(hardwareAt, ['ring', 'eyeDrop'], hardware.ring.eyeDrop),
      ringWidth: member(hardwareAt, ['ring', 'width'], hardware.ring.width),
    },
    ({ diameter, eyeDrop, ringWidth }) => {
      const { left, right } = facts.along
      const [top, bottom] = [mm(facts.topOfRod.value), mm(facts.topOfRod.value - diameter.value)]
      const middle = (top + bottom) / 2
      const between = sum(
        `${at}#bracket-to-bracket`,
        'rod-and-ring/bracket-to-bracket',
        plus('drapery/bracket-right', right.bracket),
        minus('drapery/bracket-left', left.bracket),
      )
      const tip = mm(hardware.finial?.length ?? unsaid.finial)
      const finial = (x: number, outward: 1 | -1, y = middle): Mark =>
        ellipse('finial', [x + (outward * tip) / 2, y], tip / 2, mm(hardware.finial?.radius ?? unsaid.finial / 2))
      const hardwareMarks: readonly Mark[] = [
        ...[left, right].map((end) =>
          box(
            'bracket',
            [mm(end.bracket.value - (hardware.bracket.width ?? unsaid.plateWidth) / 2), mm(facts.plate.value)],
            [
              mm(end.bracket.value + (hardware.bracket.width ?? unsaid.plateWidth) / 2),
              mm(facts.plate.value - (hardware.bracket.height ?? unsaid.plateHeight)),
            ],
          ),
        ),
        box('rod', [mm(left.rodEnd.value), bottom], [mm(right.rodEnd.value), top]),
        finial(mm(left.rodEnd.value), -1),
        finial(mm(right.rodEnd.value), 1),
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
              [mm(place[state]), top - mm(eyeDrop.value) / 2 + mm(ringWidth.value) / 4],
              mm(ringWidth.value),
              (mm(eyeDrop.value) + mm(ringWidth.value) / 2) / 2,
            ),
          ),
      })
      const row = (side: 'above' | 'below', y: number): Mark => ({
        kind: 'dimension',
        role: 'dimension',
        side,
        from: [mm(left.bracket.value), y],
        to: [mm(right.bracket.value), y],
        figure: { value: between.value, of: between.name, what: between.what, state: 'computed' },
      })
      const rows = [row('above', top)]
      const out = -mm(facts.projection.value)
      const [ends, half] = [[mm(left.rodEnd.value), mm(right.rodEnd.value)] as const, mm(diameter.value) / 2]
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
              [mm(place[state]) - mm(ringWidth.value) / 2, out - 1.15 * half],
              [mm(place[state]) + mm(ringWidth.value) / 2, out + 1.15 * half],
            ),
          ),
      })
      const heights: readonly Mark[] = [facts.topOfRod, facts.plate].map((reckoning) => ({
        kind: 'height',
        role: 'dimension',
        at: [mm(left.bracket.value), mm(reckoning.value)],
        figure: { value: reckoning.value, of: reckoning.name, what: reckoning.what, state: 'computed' },
      }))
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
            marks: [left, right].map(
              (end): Mark => ({
                kind: 'line',
                role: 'centre',
                from: [mm(end.bracket.value), mm(facts.plate.value) + 60],
                to: [mm(end.bracket.value), mm(facts.plate.value) - 140],
              }),
            ),
          },
          { view: 'marks', depth: 60, marks: rows },
          {
            view: 'plan',
            depth: 41,
            marks: [box('rod', [ends[0], out - half], [ends[1], out + half]), finial(ends[0], -1, out), finial(ends[1], 1, out)],
          },
          ringsAbove('drawn'),
          ringsAbove('stacked'),
          { view: 'plan', depth: 60, marks: [row('below', out)] },
        ],
      }
    },
  ),
)
