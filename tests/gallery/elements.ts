import {
  compose,
  type Figure,
  type Layer,
  type Mark,
  type NumberState,
  type Role,
  type Scene,
  screen,
  words,
} from '@evenhem/drawing'
import { inches, tapes, writeLength } from '@evenhem/length'
import { createSay, wordsOf } from '@evenhem/planner/say'
import { plugins } from '@evenhem/plugins'

const say = createSay({ words: [...wordsOf(plugins), words], language: 'en', tape: tapes.sixteenths })

/** One element of drawing by itself, with what it is for. */
export interface Element {
  readonly name: string
  readonly says: string
  readonly scene: Scene
}

/** A sample needs no round scale. */
const { step: _, ...sizes } = screen
const ground: Mark = { kind: 'rect', role: 'wall-face', at: [0, 0], width: 500, height: 160 }
const alone = (marks: readonly Mark[], view: Layer['view'] = 'hooks'): Scene =>
  compose([{ view, depth: 0, marks: [ground, ...marks] }], {
    view,
    state: 'drawn',
    width: 380,
    height: 170,
    sizes,
    write: (length) => writeLength(length, tapes.sixteenths),
    say: (code) => say.say(code),
    hasTape: false,
  })

const figure = (state: NumberState): Figure => ({
  of: `/${state}`,
  what: `drawing/${state}`,
  state,
  ...(state === 'unknown' ? {} : { value: inches(17 + 5 / 16) }),
  ...(state === 'off' ? { off: inches(-3 / 8) } : state === 'decided' ? { off: inches(-1 / 4) } : {}),
})
const states = {
  ordered: 'Plain and upright: the order says so.',
  computed: '= before it: it adds up from others.',
  measured: 'On tape, its hook at the left end: somebody read it.',
  off: 'Tape in a heavy frame, the signed difference beside it: read, and out of tolerance.',
  unknown: 'A broken box with ?, its line dashed: a place to fill.',
  decided: 'Boxed, with the number that was set aside struck beside it.',
} as const satisfies Record<NumberState, string>

const numbers = Object.entries(states).map(([state, says]): Element => {
  const mark: Mark = {
    kind: 'dimension',
    role: 'dimension',
    side: 'inside',
    from: [30, 80],
    to: [30 + (17 + 5 / 16) * 25.4, 80],
    figure: figure(state as NumberState),
  }
  return { name: `number, ${state}`, says, scene: alone([mark]) }
})

const wave: Mark = {
  kind: 'path',
  role: 'fabric',
  d: [['M', 40, 30], ['C', 180, 190, 320, -40, 460, 130], ['L', 460, 30], ['Z']],
}
const shapes: Readonly<
  Record<Exclude<Mark['kind'], 'dimension' | 'finding' | 'group'>, readonly [says: string, marks: readonly Mark[]]>
> = {
  line: ['A straight line.', [{ kind: 'line', role: 'wall', from: [40, 40], to: [460, 120] }]],
  path: ['Lines and curves, open or closed.', [wave]],
  rect: ['A rectangle.', [{ kind: 'rect', role: 'casing', at: [60, 30], width: 380, height: 100 }]],
  circle: ['A circle.', [{ kind: 'circle', role: 'obstacle', at: [250, 80], radius: 50 }]],
  hatch: [
    'Strokes at 45°: what is cut.',
    [
      {
        kind: 'hatch',
        role: 'hatch',
        of: [
          [0, 0],
          [500, 0],
          [500, 160],
          [0, 160],
        ],
      },
    ],
  ],
  caption: ['Words at a point.', [{ kind: 'caption', role: 'dimension', at: [250, 80], text: 'Garden room', anchor: 'middle' }]],
  cross: ['To pencil on the wall.', [{ kind: 'cross', role: 'mark', at: [250, 80], of: '/cross' }]],
  height: [
    'A height above the floor, read off the tape beside the wall.',
    [
      { kind: 'rect', role: 'wall', at: [0, 0], width: 500, height: 160 },
      {
        kind: 'height',
        role: 'mark',
        at: [250, 101.6],
        figure: { value: inches(4), of: '/height', what: 'drapery/hole-height', state: 'computed' },
      },
    ],
  ],
  detail: [
    'A place where marks crowd, enlarged.',
    [
      { kind: 'cross', role: 'mark', at: [60, 130], of: '/a' },
      { kind: 'cross', role: 'mark', at: [60, 120], of: '/b' },
      { kind: 'detail', id: 'd', code: 'drapery/detail-left', from: [30, 105], to: [90, 145], marks: [] },
    ],
  ],
}
const marks = Object.entries(shapes).map(
  ([name, [says, of]]): Element => ({ name, says, scene: alone(of, name === 'height' ? 'elevation' : 'hooks') }),
)

const verdicts = (['pass', 'warn', 'fail', 'unknown'] as const).map(
  (verdict): Element => ({
    name: `finding, ${verdict}`,
    says: say.say(`drawing/${verdict}`),
    scene: alone([{ kind: 'finding', verdict, at: [250, 80], code: 'drapery/coverage' }]),
  }),
)

/** What a role says, and whether it is an area. */
const roles: Readonly<Record<Role, 'line' | 'area'>> = {
  wall: 'line',
  hatch: 'line',
  'wall-face': 'area',
  baseboard: 'line',
  casing: 'area',
  frame: 'area',
  glass: 'area',
  obstacle: 'area',
  rod: 'area',
  ring: 'area',
  bracket: 'area',
  finial: 'area',
  fabric: 'area',
  'fabric-shade': 'area',
  cloth: 'line',
  fold: 'line',
  pleat: 'line',
  mark: 'line',
  centre: 'line',
  hidden: 'line',
  level: 'line',
  dimension: 'line',
}
const looks = Object.entries(roles).map(([name, shape]): Element => {
  const role = name as Role
  const mark: Mark =
    shape === 'line'
      ? { kind: 'line', role, from: [30, 80], to: [470, 80] }
      : { kind: 'rect', role, at: [100, 40], width: 300, height: 80 }
  return { name: `role, ${role}`, says: shape === 'line' ? 'Drawn as a line.' : 'Drawn as an area.', scene: alone([mark]) }
})

/** Every element of drawing: how numbers are known, each mark, each finding, each role. */
export const elements: readonly Element[] = [...numbers, ...marks, ...verdicts, ...looks]
