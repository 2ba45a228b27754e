import type { Layer, Mark, Point, Segment } from '@evenhem/drawing'
import { type Length, plus, sum } from '@evenhem/length'
import { layers, reckonings, rule } from '@evenhem/plugin'
import { coverage, type HookPlace, hangLine, hookMap, makeUp, type PanelMakeUp } from '../facts/index.ts'
import { panelAt } from '../given.ts'
import { mm, outline } from './shapes.ts'

type State = 'drawn' | 'stacked'
/** How deep the folds swing the hem line, as a share of a space. */
const swing = 0.04

/** One panel between its hooks: cloth, the shade beside each pleat, folds between pleats, pleats in the heading. */
function panelMarks(places: readonly HookPlace[], state: State, top: number, hem: number, heading: number): readonly Mark[] {
  const xs = places.filter((place) => place.hook.on !== 'outer-edge').map((place) => mm(place[state]))
  const [first, last] = [xs[0] ?? 0, xs.at(-1) ?? 0]
  const spaces = xs.slice(1).map((x, i) => [xs[i] ?? x, x] as const)
  const width = Math.abs(last - first) / Math.max(1, spaces.length)
  const shades = spaces.map(([a, b]) =>
    outline('fabric-shade', [
      [b, top],
      [b, hem],
      [b + (a - b) * 0.3, hem],
      [b + (a - b) * 0.16, top - heading],
    ]),
  )
  const folds = spaces.flatMap(([a, b], i): Mark[] =>
    [0.36, 0.7].map((share, j) => ({
      kind: 'line',
      role: 'fold',
      from: [a + (b - a) * share, top - heading * (1.1 + ((i + j) % 3) * 0.12)],
      to: [a + (b - a) * (share + 0.04), hem],
    })),
  )
  const pleats = xs.slice(1).map((x): Mark => ({ kind: 'line', role: 'pleat', from: [x, top], to: [x, top - heading] }))
  return [{ kind: 'path', role: 'fabric', d: cloth(xs, top, hem, width * swing) }, ...shades, ...folds, ...pleats]
}

/** The outline of the cloth: a straight top, and a hem that swings a little from fold to fold. */
function cloth(xs: readonly number[], top: number, hem: number, swings: number): readonly Segment[] {
  const back = [...xs].reverse()
  const waves = back.slice(1).map((x, i): Segment => {
    const from = back[i] ?? x
    return ['C', from + (x - from) * 0.35, hem + swings, from + (x - from) * 0.65, hem + swings, x, hem]
  })
  return [['M', xs[0] ?? 0, hem], ['L', xs[0] ?? 0, top], ['L', back[0] ?? 0, top], ['L', back[0] ?? 0, hem], ...waves, ['Z']]
}

/** What is longer than the way to the floor lies on it: how far to each side, and how high (drawn alike; no number is read from it). */
const lying = { beyond: 35, high: 40 } as const
function breakOn(places: readonly HookPlace[], state: State, floor: number): Mark {
  const xs = places.filter((place) => place.hook.on !== 'outer-edge').map((place) => mm(place[state]))
  const [left, right] = [Math.min(...xs) - lying.beyond, Math.max(...xs) + lying.beyond]
  const [inner, top] = [2 * lying.beyond, floor + lying.high]
  return {
    kind: 'path',
    role: 'fabric',
    d: [
      ['M', left, floor],
      ['C', left, top, left + lying.beyond, top, left + inner, top],
      ['L', right - inner, top],
      ['C', right - lying.beyond, top, right, top, right, floor],
      ['Z'],
    ],
  }
}

/** The draperies, drawn and stacked, from their hook map; and the finished length of each on its panel. */
export const panelsPicture = rule({
  id: 'panels-picture',
  on: 'treatment',
  needs: { hangLine, makeUp, hookMap },
  gives: { layers, reckonings },
}).run(({ it, at }, facts) => {
  const tops = facts.makeUp.panels.map((panel) =>
    sum(
      `${panelAt(at, panel.panel)}#top`,
      'drapery/top-panel',
      plus('drapery/hang-line', facts.hangLine.hangLine),
      plus('drapery/pin', panel.pin),
    ),
  )
  const rests = facts.hangLine.hemAt === 'floor' ? mm(facts.hangLine.highestFloor.value) : Number.NEGATIVE_INFINITY
  const layer = (state: State): Layer => ({
    view: 'elevation',
    state,
    depth: 30,
    marks: facts.makeUp.panels.map((panel, i): Mark => {
      const places = facts.hookMap.places.filter((place) => place.panel === panel.panel)
      const heading = mm(it.panels.find((each) => each.id === panel.panel)?.heading?.height ?? 100_000_000)
      return {
        kind: 'group',
        id: panel.panel,
        words: `drapery/panel-${panel.outer}`,
        marks: [
          ...panelMarks(places, state, mm(tops[i]?.value ?? 0), Math.max(mm(hemOf(facts.hangLine, panel)), rests), heading),
          ...(mm(hemOf(facts.hangLine, panel)) < rests ? [breakOn(places, state, rests)] : []),
        ],
      }
    }),
  })
  const lengths = (state: State): Layer => ({
    view: 'elevation',
    state,
    depth: 60,
    marks: facts.makeUp.panels.map((panel, i) =>
      lengthOf(panel, facts.hookMap.places, state, tops[i]?.value ?? (0 as Length), hemOf(facts.hangLine, panel)),
    ),
  })
  return { layers: [layer('drawn'), layer('stacked'), lengths('drawn'), lengths('stacked')], reckonings: tops }
})

const hemOf = (
  heights: { readonly panels: readonly { readonly panel: string; readonly hem: { readonly value: Length } }[] },
  panel: PanelMakeUp,
): Length => heights.panels.find((each) => each.panel === panel.panel)?.hem.value ?? (0 as Length)

function lengthOf(panel: PanelMakeUp, places: readonly HookPlace[], state: State, top: Length, hem: Length): Mark {
  const own = places.filter((place) => place.panel === panel.panel && place.hook.on !== 'outer-edge')
  const [inner, outer] = [mm(own[0]?.[state] ?? 0), mm(own.at(-1)?.[state] ?? 0)]
  const x = state === 'drawn' ? (inner + outer) / 2 : inner + Math.sign(inner - outer) * 190
  const ends: readonly [Point, Point] = [
    [x, mm(hem)],
    [x, mm(top)],
  ]
  return {
    kind: 'dimension',
    role: 'dimension',
    side: 'inside',
    from: ends[0],
    to: ends[1],
    figure: {
      value: panel.finishedLength.value,
      of: panel.finishedLength.from,
      what: `drapery/panel-${panel.outer}`,
      state: 'ordered',
    },
  }
}

/** What the closed drapery covers, and where it meets. */
export const coveragePicture = rule({
  id: 'coverage-picture',
  on: 'treatment',
  needs: { coverage, hangLine },
  gives: { layers, reckonings },
}).run(({ at }, facts) => {
  const { left, right, meets, corners = [] } = facts.coverage
  const y = mm(facts.hangLine.top.value)
  // Around corners the picture is unfolded along the walls, and the drapery on its rod is shorter or longer than they are.
  const what = corners.length > 0 ? 'drapery/along-the-walls' : 'drapery/covers'
  const width = sum(`${at}#covers`, what, plus('drapery/cover-right', right), {
    what: 'drapery/cover-left',
    sign: -1,
    value: left.value,
    from: left.name,
  })
  const covers = (y: number, side: 'above' | 'below'): Mark => ({
    kind: 'dimension',
    role: 'dimension',
    side,
    from: [mm(left.value), y],
    to: [mm(right.value), y],
    figure: { value: width.value, of: width.name, what: width.what, state: 'computed' },
  })
  return {
    reckonings: [width],
    layers: [
      { view: 'plan', state: 'drawn', depth: 60, marks: [covers(0, 'below')] },
      {
        view: 'elevation',
        state: 'drawn',
        depth: 60,
        marks: [covers(y, 'above')],
      },
      {
        view: 'elevation',
        state: 'drawn',
        depth: 50,
        marks: meets
          ? [{ kind: 'line', role: 'fold', from: [mm(meets.value), y], to: [mm(meets.value), mm(facts.hangLine.hem.value)] }]
          : [],
      },
    ],
  }
})
