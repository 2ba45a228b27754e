import { mm, openingsOf } from '@evenhem/drapery'
import { coverage, type Hole, type HookPlace, hangLine, holes, hookMap } from '@evenhem/drapery/facts'
import type { Layer, Mark, Point } from '@evenhem/drawing'
import { layers, type Place, type Read, rule, type Window } from '@evenhem/plugin'
import { atWindow } from './additions.ts'
import { type PunchPoint, windowPoints } from './points.ts'

type State = 'drawn' | 'stacked'
interface At<T> {
  readonly at: Place
  readonly value: T
}
/** One layer of drapery, in what a pin needs of it. All of it is there, or the layer is not drawn. */
interface Hung {
  readonly at: Place
  readonly top: number
  readonly hem: number
  readonly left: number
  readonly right: number
  readonly hooks: readonly HookPlace[]
  readonly holes: readonly Hole[]
}

const middle = (xs: readonly number[]): number => (Math.min(...xs) + Math.max(...xs)) / 2
const isIn = (place: Place, whole: Place): boolean =>
  place === whole || place.startsWith(`${whole}/`) || place.startsWith(`${whole}#`)

/** A number of a hole is at the hole. */
function holeAt(place: Place, all: readonly Hole[]): Point | undefined {
  const hole = all.find((each) => [each.x, each.height, each.fromFloor, each.fromCasing].some(({ name }) => name === place))
  return hole && [mm(hole.x.value), mm(hole.height.value)]
}
/** A panel's middle, wherever it hangs. */
function panelPoint(id: string, { hooks, top, hem }: Hung, state: State): Point | undefined {
  const own = hooks.filter(({ panel }) => panel === id)
  return own.length === 0 ? undefined : [middle(own.map((hook) => mm(hook[state]))), (top + hem) / 2]
}
/** A bracket at an end, or a support by its name: at its highest hole. */
function bracketPoint(rest: string, all: readonly Hole[]): Point | undefined {
  const id = /\/(?:brackets|supports)\/([^/#]+)/.exec(rest)?.[1]
  const own = all.filter(({ on, side, support }) => on !== 'return' && (support ?? side) === id)
  const top = own.toSorted((one, other) => other.height.value - one.height.value)[0]
  return top && [mm(top.x.value), mm(top.height.value)]
}
/** What belongs to the whole of a layer is at the middle of its rod. */
function hungPoint(place: Place, hung: Hung, state: State): Point {
  const rest = place.slice(hung.at.length)
  const panel = /^\/panels\/([^/#]+)/.exec(rest)?.[1]
  const own = panel === undefined ? bracketPoint(rest, hung.holes) : panelPoint(panel, hung, state)
  return holeAt(place, hung.holes) ?? own ?? [middle([hung.left, hung.right]), hung.top]
}
/** The middle of an opening; undefined while its casing is not measured. */
function openingPoint(place: Place, window: Window, windowAt: Place): Point | undefined {
  const { x = 0, casing } = openingsOf(window, windowAt).find(({ openingAt }) => isIn(place, openingAt))?.opening ?? {}
  if (casing?.width === undefined || casing.top === undefined) return undefined
  return [mm(x + casing.width / 2), mm((casing.top + (casing.bottom ?? 0)) / 2)]
}

/** The sign of a point, and its number beside it. */
function pin({ number, isUnsafe, state }: PunchPoint, at: Point): readonly Mark[] {
  const isSettled = state === 'looked at' || (state !== 'open' && !isUnsafe)
  const verdict = isSettled ? 'pass' : isUnsafe && state !== 'mended' ? 'fail' : 'warn'
  return [
    { kind: 'finding', verdict, at, code: `punch-list/pin-${number < 10 ? number : 'more'}` },
    { kind: 'caption', role: 'mark', at, text: String(number) },
  ]
}

const ofTreatment = <T>(all: readonly At<T>[], at: Place): T | undefined => all.find((each) => each.at === at)?.value

const needs = {
  windowPoints,
  coverage: { each: coverage },
  hangLine: { each: hangLine },
  hookMap: { each: hookMap },
  holes: { each: holes },
} as const
type Facts = { readonly [K in keyof typeof needs]: Read<(typeof needs)[K]> }

/** The layers of a window of which enough is known to stand a pin on them. */
const hungOf = (facts: Facts): readonly Hung[] =>
  facts.coverage.flatMap(({ at, value: { left, right } }) => {
    const line = ofTreatment(facts.hangLine, at)
    if (!line) return []
    return [
      {
        at,
        top: mm(line.hangLine.value),
        hem: mm(line.hem.value),
        left: mm(left.value),
        right: mm(right.value),
        hooks: ofTreatment(facts.hookMap, at)?.places ?? [],
        holes: ofTreatment(facts.holes, at) ?? [],
      },
    ]
  })

/** Pins on the elevation, where what a point is about stands on it; a point about the window as a whole, or about what is not drawn, has none. */
export const pins = rule({ id: 'pins', on: atWindow, needs, gives: { layers } }).run(({ it, at }, facts) => {
  const all = hungOf(facts)
  const spotOf = (about: Place, state: State): Point | undefined => {
    const hung = all.find((each) => isIn(about, each.at))
    return hung ? hungPoint(about, hung, state) : openingPoint(about, it, at)
  }
  const drawn = (['drawn', 'stacked'] as const).map((state): Layer => {
    const marks = facts.windowPoints.flatMap((point) => {
      const spot = spotOf(point.at ?? '', state)
      return spot ? pin(point, spot) : []
    })
    return { view: 'elevation', state, depth: 80, marks }
  })
  return { layers: drawn.filter(({ marks }) => marks.length > 0) }
})
