import { type Length, type Tape, tapes } from '@evenhem/length'
import fc from 'fast-check'
import {
  type ComposeOptions,
  type Dimension,
  type Figure,
  type Layer,
  type Mark,
  type NumberState,
  type Point,
  paper,
  phone,
  screen,
} from '../../src/index.ts'
import { onTablet } from './options.ts'

const states: readonly NumberState[] = ['ordered', 'computed', 'measured', 'off', 'unknown', 'decided']
const captions = [
  '',
  'frame',
  'top hole',
  'left panel',
  'from the corner to the bracket',
  'Pfosten über der Fensterbank, außen',
  'a'.repeat(60),
]
const nanometres = (mm: number): Length => Math.round(mm * 1_000_000) as Length

interface Drawn {
  readonly state: NumberState
  readonly what: string
  readonly n: number
}
const drawn = fc.record({ state: fc.constantFrom(...states), what: fc.constantFrom(...captions), n: fc.nat(1_000_000) })
const figure = ({ state, what, n }: Drawn, mm: number): Figure => ({
  ...(state === 'unknown' ? {} : { value: nanometres(mm) }),
  of: `/of/${n}`,
  what,
  state,
  ...(state === 'off' || state === 'decided' ? { off: nanometres(9.5) } : {}),
})

/** Places on a wall, on a grid of eighths of an inch, so that marks often share a line or an end. */
const place = (most: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constantFrom(0, most / 2, most),
    fc.nat(Math.round(most / 3.175)).map((n) => n * 3.175),
  )

const dimension = (width: number, height: number): fc.Arbitrary<Dimension> =>
  fc
    .record({
      side: fc.constantFrom<Dimension['side']>('above', 'below', 'left', 'right', 'inside'),
      x: place(width),
      y: place(height),
      toX: place(width),
      toY: place(height),
      isFlat: fc.boolean(),
      drawn,
      isMark: fc.boolean(),
    })
    .map(({ side, x, y, toX, toY, isFlat, drawn: look, isMark }): Dimension => {
      const isAcross = side === 'inside' ? isFlat : side === 'above' || side === 'below'
      const [from, to]: readonly [Point, Point] = isAcross
        ? [
            [x, y],
            [toX, y],
          ]
        : [
            [x, y],
            [x, toY],
          ]
      return {
        kind: 'dimension',
        role: isMark ? 'mark' : 'dimension',
        side,
        from,
        to,
        figure: figure(look, isAcross ? Math.abs(toX - x) : Math.abs(toY - y)),
      }
    })

const other = (width: number, height: number): fc.Arbitrary<Mark> =>
  fc.oneof(
    fc.record({ x: place(width), y: place(height), drawn, isMark: fc.boolean(), side: fc.constantFrom('left', 'right') }).map(
      ({ x, y, drawn: look, isMark, side }): Mark => ({
        kind: 'height',
        role: isMark ? 'mark' : 'dimension',
        side,
        at: [x, y],
        figure: figure(look, y),
      }),
    ),
    fc
      .record({
        x: place(width),
        y: place(height),
        text: fc.constantFrom(...captions),
        anchor: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
      })
      .map(({ x, y, text, anchor }): Mark => ({ kind: 'caption', role: 'dimension', at: [x, y], text, anchor })),
    fc
      .record({
        x: place(width),
        y: place(height),
        verdict: fc.constantFrom('pass' as const, 'warn' as const, 'fail' as const, 'unknown' as const),
      })
      .map(({ x, y, verdict }): Mark => ({ kind: 'finding', verdict, at: [x, y], code: `finding ${verdict}` })),
    fc
      .record({ x: place(width), y: place(height) })
      .map(({ x, y }): Mark => ({ kind: 'cross', role: 'mark', at: [x, y], of: '/cross' })),
    fc.record({ x: place(width), y: place(height), drawn }).map(
      ({ x, y, drawn: look }): Mark => ({
        kind: 'detail',
        id: `${x}`,
        code: 'bracket',
        from: [x - 80, y - 80],
        to: [x + 80, y + 80],
        marks: [
          { kind: 'dimension', role: 'dimension', side: 'inside', from: [x, y], to: [x, y + 40], figure: figure(look, 40) },
          { kind: 'caption', role: 'dimension', at: [x, y], code: 'frame' },
        ],
      }),
    ),
  )

/** A wall with anything on it, and a page to draw it on. */
export const randomScene: fc.Arbitrary<{ readonly layers: readonly Layer[]; readonly options: ComposeOptions }> = fc
  .record({ width: fc.integer({ min: 300, max: 6000 }), height: fc.integer({ min: 500, max: 4000 }) })
  .chain(({ width, height }) =>
    fc
      .record({
        dimensions: fc.array(dimension(width, height), { maxLength: 12 }),
        others: fc.array(other(width, height), { maxLength: 16 }),
        page: fc.constantFrom(
          { width: 820, height: 726, sizes: screen },
          { width: 1180, height: 700, sizes: screen },
          { width: 390, height: 380, sizes: phone },
          { width: 176, height: 150, sizes: paper },
        ),
        tape: fc.constantFrom<Tape>(
          tapes.sixteenths,
          tapes.feetAndEighths,
          tapes.wholeMillimetres,
          tapes.centimetresToTheMillimetre,
        ),
        view: fc.constantFrom('elevation' as const, 'marks' as const, 'plan' as const),
      })
      .map(({ dimensions, others, page, tape, view }) => ({
        layers: [
          { view, depth: 0, marks: [{ kind: 'rect', role: 'wall', at: [0, 0], width, height }] },
          { view, depth: 60, marks: [...dimensions, ...others] },
        ],
        options: onTablet({ ...page, view }, tape),
      })),
  )
