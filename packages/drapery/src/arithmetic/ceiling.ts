import {
  given,
  type Known,
  known,
  type Length,
  type LengthReckoning,
  least,
  minus,
  number,
  plus,
  sum,
  times,
} from '@evenhem/length'
import { ceilingAt, type FloorPoint, floorAt } from './floor.ts'
import { clearsBase, type HemBase, type PanelLength } from './heights.ts'

/** A panel under a ceiling: what it covers, from the left end to the right. */
export interface HungPanel extends PanelLength {
  readonly left: Known<Length>
  readonly right: Known<Length>
}
/** What hangs from a ceiling that is not level, at its tightest place and at three places of what is covered. */
export interface UnderCeiling {
  readonly working: readonly LengthReckoning[]
  readonly hem: LengthReckoning
  readonly top: LengthReckoning
  readonly hangLine: LengthReckoning
  /** The panel whose hem clears the least. */
  readonly sets: string
  readonly panels: readonly { readonly panel: string; readonly hem: LengthReckoning; readonly clears: LengthReckoning }[]
  readonly left: LengthReckoning
  readonly middle: LengthReckoning
  readonly right: LengthReckoning
}
interface Place {
  readonly key: string
  readonly x: Known<Length>
}
interface Clear {
  readonly panel: HungPanel
  readonly place: Place
  readonly bears: LengthReckoning
  readonly hem: LengthReckoning
  readonly clears: LengthReckoning
}

/**
 * Fixed to a ceiling, the height is not free: hem = ceiling − drop to where the hooks bear + pin setting − finished length, and what it clears is taken at
 * each place from its own floor (from the same stool or apron), for ceiling and floor are straight between their points and so the least is at an end or at
 * one of them. The hang line is taken where the hem clears the least. `base`: undefined means the floor.
 */
export function underCeiling(
  at: string,
  ends: { readonly left: Known<Length>; readonly right: Known<Length> },
  drop: Known<Length>,
  ceiling: readonly FloorPoint[],
  floor: readonly FloorPoint[],
  base: HemBase | undefined,
  panels: readonly HungPanel[],
): UnderCeiling {
  const [width, half, middle] = middleOf(at, ends)
  const between = [...ceiling, ...floor].filter(({ x }) => x.value > ends.left.value && x.value < ends.right.value)
  const places: readonly Place[] = [
    { key: 'left', x: ends.left },
    { key: 'middle', x: known(middle) },
    { key: 'right', x: ends.right },
    ...between.map(({ x }, i) => ({ key: `point-${i + 1}`, x })),
  ]
  const overhead = places.map((place) => bearingAt(at, place, drop, ceiling))
  const floors = base ? [] : places.map(({ key, x }) => floorAt(`${at}#floor-${key}-under`, floor, x))
  const clears = panels.flatMap((panel) =>
    places.flatMap((place, i): readonly Clear[] => {
      if (place.x.value < panel.left.value || place.x.value > panel.right.value) return []
      const [, bears] = overhead[i] as Overhead
      const under = base ?? { at: 'floor' as const, height: known(floors[i] as LengthReckoning) }
      return [{ panel, place, bears, ...hemUnder(at, panel, place, bears, under) }]
    }),
  )
  const tightest = (list: readonly Clear[]): Clear => list.reduce((a, b) => (b.clears.value < a.clears.value ? b : a))
  const all = tightest(clears)
  const hangLine = given(`${at}#hang-line`, 'drapery/hang-line', plus('drapery/bears', all.bears))
  const top = sum(`${at}#top`, 'drapery/top', plus('drapery/hang-line', hangLine), plus('drapery/pin', all.panel.pin))
  const hem = given(`${at}#hem`, 'drapery/hem', plus('drapery/hem-panel', all.hem))
  const each = panels.map((panel) => {
    const own = clears.filter((one) => one.panel === panel)
    return { panel: panel.panel, hem: hemAt(at, panel, hangLine), clears: leastOf(`${at}#clears-${panel.panel}`, own) }
  })
  const here = (key: string) =>
    leastOf(
      `${at}#clears-at-${key}`,
      clears.filter(({ place }) => place.key === key),
    )
  const [left, mid, right] = [here('left'), here('middle'), here('right')]
  return {
    working: [
      width,
      half,
      middle,
      ...overhead.flat(),
      ...floors,
      ...clears.flatMap((one) => [one.hem, one.clears]),
      hangLine,
      top,
      hem,
      ...each.flatMap((one) => [one.hem, one.clears]),
      left,
      mid,
      right,
    ],
    hem,
    top,
    hangLine,
    sets: all.panel.panel,
    panels: each,
    left,
    middle: mid,
    right,
  }
}

/** The middle of what is covered, after its width and half of that. */
function middleOf(at: string, { left, right }: { readonly left: Known<Length>; readonly right: Known<Length> }) {
  const width = sum(`${at}#covered`, 'drapery/covers', plus('drapery/cover-right', right), minus('drapery/cover-left', left))
  const half = times(
    `${at}#covered-half`,
    'drapery/half-covered',
    plus('drapery/covers', width),
    plus('drapery/half', number(0.5)),
  )
  return [
    width,
    half,
    sum(`${at}#covered-middle`, 'drapery/along-the-wall', plus('drapery/cover-left', left), plus('drapery/half-covered', half)),
  ] as const
}

/** The hem of a panel where the hang line is taken. */
const hemAt = (at: string, { panel, pin, finishedLength }: HungPanel, hangLine: LengthReckoning): LengthReckoning =>
  sum(
    `${at}#hem-${panel}`,
    'drapery/hem-panel',
    plus('drapery/hang-line', hangLine),
    plus('drapery/pin', pin),
    minus('drapery/finished-length', finishedLength),
  )

/** The ceiling over a place, and where the hooks bear under it. */
type Overhead = readonly [ceiling: LengthReckoning, bears: LengthReckoning]
function bearingAt(at: string, { key, x }: Place, drop: Known<Length>, ceiling: readonly FloorPoint[]): Overhead {
  const over = ceilingAt(`${at}#ceiling-${key}`, ceiling, x)
  return [over, sum(`${at}#bears-${key}`, 'drapery/bears', plus('drapery/ceiling', over), minus('drapery/ceiling-drop', drop))]
}

function hemUnder(at: string, panel: HungPanel, { key }: Place, bears: LengthReckoning, base: HemBase) {
  const hem = sum(
    `${at}#hem-${panel.panel}-${key}`,
    'drapery/hem-panel',
    plus('drapery/bears', bears),
    plus('drapery/pin', panel.pin),
    minus('drapery/finished-length', panel.finishedLength),
  )
  return { hem, clears: clearsBase(`${at}#clears-${panel.panel}-${key}`, base, hem) }
}

const leastOf = (name: string, list: readonly Clear[]): LengthReckoning =>
  least(name, 'drapery/clears-panel', ...list.map(({ clears }) => plus('drapery/clears-panel', clears)))
