import { bearingLine, box, ellipse, filled, member, mm, outline, projectionAt } from '@evenhem/drapery'
import { coverage, hookMap, projection, topOfRod } from '@evenhem/drapery/facts'
import type { Layer, Mark } from '@evenhem/drawing'
import { inch, minus, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { along, plate, supportPlate } from './facts.ts'
import { rod } from './kind.ts'

/** Drawn when the entry does not say how big a thing is; no number is ever read from it. */
const unsaid = { finial: 2 * inch, plateWidth: inch, plateHeight: 3 * inch } as const

/** A plate on the wall, by the middle of its upper edge. */
const plateOn = (x: number, top: number, { width, height }: { readonly width?: number; readonly height?: number }): Mark =>
  box(
    'bracket',
    [mm(x - (width ?? unsaid.plateWidth) / 2), mm(top)],
    [mm(x + (width ?? unsaid.plateWidth) / 2), mm(top - (height ?? unsaid.plateHeight))],
  )
const centreOn = (x: number, top: number): Mark => ({
  kind: 'line',
  role: 'centre',
  from: [mm(x), mm(top) + 60],
  to: [mm(x), mm(top) - 140],
})

/** Rod, rings, finials and brackets, to scale, with the distance from bracket to bracket and the heights of rod and plate. */
export const picture = rule({
  id: 'picture',
  on: rod,
  needs: { along, coverage, plate, topOfRod, hookMap, projection, supportPlate: { maybe: supportPlate } },
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
      const supportTop = facts.supportPlate
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
        ...[left, right].map((end) => plateOn(end.bracket.value, facts.plate.value, hardware.bracket)),
        ...(supportTop ? supports.map(({ x }) => plateOn(x.value, supportTop.value, hardware.support ?? {})) : []),
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
      const projections = [
        projectionAt(it, at, 'left', facts.projection),
        projectionAt(it, at, 'right', facts.projection),
      ] as const
      const bears = bearingLine(
        [mm(facts.coverage.left.value), mm(facts.coverage.right.value)],
        [mm(projections[0].value), mm(projections[1].value)],
      )
      /** In a section what is nearer to the room lies lower. */
      const out = (x: number): number => -bears(x)
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
              [mm(place[state]) - mm(ringWidth.value) / 2, out(mm(place[state])) - 1.15 * half],
              [mm(place[state]) + mm(ringWidth.value) / 2, out(mm(place[state])) + 1.15 * half],
            ),
          ),
      })
      const heights: readonly Mark[] = [facts.topOfRod, facts.plate].map((reckoning) => ({
        kind: 'height',
        role: 'dimension',
        at: [mm(left.bracket.value), mm(reckoning.value)],
        figure: { value: reckoning.value, of: reckoning.name, what: reckoning.what, state: 'computed' },
      }))
      /** How many rings go on before each bracket and support: bars stand for those. */
      const counts = facts.hookMap.threading.map(({ count }) => `${count}`).join(' | ')
      /** Low on the wall, where nothing is marked. */
      const low: readonly [number, number] = [mm(left.bracket.value + 2 * inch), mm(14 * inch)]
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
            marks: [
              ...[left, right].map((end) => centreOn(end.bracket.value, facts.plate.value)),
              ...(supportTop ? supports.map(({ x }) => centreOn(x.value, supportTop.value)) : []),
            ],
          },
          { view: 'marks', depth: 60, marks: [...rows, ...threaded] },
          {
            view: 'plan',
            depth: 41,
            marks: [
              outline('rod', [
                [ends[0], out(ends[0]) - half],
                [ends[1], out(ends[1]) - half],
                [ends[1], out(ends[1]) + half],
                [ends[0], out(ends[0]) + half],
              ]),
              finial(ends[0], -1, out(ends[0])),
              finial(ends[1], 1, out(ends[1])),
            ],
          },
          ringsAbove('drawn'),
          ringsAbove('stacked'),
          { view: 'plan', depth: 60, marks: [row('below', Math.min(...ends.map(out)))] },
        ],
      }
    },
  ),
)
