import { below, type Obstacle, type Place } from '@evenhem/job'
import { inch, type Known, type Length, type LengthReckoning } from '@evenhem/length'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import { type Block, blocksApart, clearOf } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { bearingDrop, type HookPlace, hangLine, holes, hookMap, plates, projection, reach, topOfRod } from '../facts/index.ts'
import { check, filled, magnitude, member, projectionAt, windowOf } from '../given.ts'

/** Seattle Fire Department, Heating Safety: curtains at least 12 in (30 cm) from an electric baseboard heater, and never across it; read. */
const electricGap = (12 * inch) as Length
const covers: readonly string[] = [
  'switch',
  'thermostat',
  'detector',
  'sprinkler head',
  'diffuser',
  'grille',
  'register',
  'door swing',
]

interface Things {
  /** What is screwed on or lies on it: rod, finials, plates, holes in the wall. */
  readonly hardware: readonly Block[]
  /** The cloth, when it is drawn and when it is drawn aside. */
  readonly cloth: readonly Block[]
}

/** One thing on the wall against hardware and cloth. */
function judged(obstacle: Obstacle, at: Place, treatment: Place, things: Things, gap: Known<Length>, heater: Known<Length>) {
  const of = (name: 'left' | 'bottom' | 'width' | 'height') => ({ value: obstacle[name] as Length, from: below(at, name) })
  const edges = { left: of('left'), bottom: of('bottom'), width: of('width'), height: of('height') }
  const block: Block = {
    left: edges.left.value,
    right: (edges.left.value + edges.width.value) as Length,
    bottom: edges.bottom.value,
    top: (edges.bottom.value + edges.height.value) as Length,
    near: 0 as Length,
    far: obstacle.depth ?? (0 as Length),
  }
  const nearest = (others: readonly Block[]) => [...others].sort((a, b) => blocksApart(block, a) - blocksApart(block, b))[0]
  const [metal, cloth] = [nearest(things.hardware), nearest(things.cloth.map((each) => inFront(each)))]
  const reckoned = (name: string, other: Block | undefined) =>
    other && clearOf(`${treatment}#${obstacle.id}-${name}`, block, other, edges)
  const [fromHardware, fromCloth] = [reckoned('from-hardware', metal), reckoned('from-cloth', cloth)]
  const keep = obstacle.keepOff ?? gap.value
  const what = { thing: { code: `drapery/obstacle-${obstacle.kind.replaceAll(' ', '-')}` }, name: obstacle.name ?? 'none' }
  const found: Check[] = []
  if (fromHardware) {
    const verdict = fromHardware.value < keep ? 'fail' : 'pass'
    found.push(
      check(
        'drapery/obstacle',
        verdict,
        at,
        {
          ...what,
          apart: magnitude(fromHardware),
          inside: fromHardware.value < 0 ? 'yes' : 'no',
          keep: { length: keep },
          away: keep > 0 ? 'yes' : 'no',
        },
        'mark',
      ),
    )
  }
  if (fromCloth && obstacle.kind.endsWith('heater')) found.push(ofHeater(obstacle, at, fromCloth, heater, what))
  else if (fromCloth && covers.includes(obstacle.kind))
    found.push(check('drapery/covered', fromCloth.value < 0 ? 'warn' : 'pass', at, { ...what, apart: magnitude(fromCloth) }))
  return { checks: found, working: [fromHardware, fromCloth].filter((each) => each !== undefined) }
}
/** Cloth covers what is behind it, however far from the wall it hangs. */
const inFront = (block: Block): Block => ({ ...block, near: 0 as Length })

function ofHeater(obstacle: Obstacle, at: Place, apart: LengthReckoning, hydronic: Known<Length>, what: object): Check {
  const isElectric = obstacle.kind === 'electric heater'
  const keep = obstacle.keepOff ?? (isElectric ? electricGap : hydronic.value)
  const verdict = apart.value >= keep ? 'pass' : isElectric ? 'fail' : 'warn'
  const values = {
    ...what,
    apart: magnitude(apart),
    over: apart.value < 0 ? 'yes' : 'no',
    keep: { length: keep },
    electric: isElectric ? 'yes' : 'no',
  }
  return check('drapery/heater', verdict, at, values, 'mark')
}

/** What the cloth takes up, drawn and drawn aside: from edge to edge of each panel. */
function clothBlocks(
  places: readonly HookPlace[],
  hung: { readonly top: Length; readonly hem: Length },
  out: Length,
): readonly Block[] {
  const ids = [...new Set(places.map((place) => place.panel))]
  return (['drawn', 'stacked'] as const).flatMap((state) =>
    ids.map((id): Block => {
      const xs = places.filter((place) => place.panel === id).map((place) => place[state])
      return {
        left: Math.min(...xs) as Length,
        right: Math.max(...xs) as Length,
        bottom: hung.hem,
        top: hung.top,
        near: 0 as Length,
        far: out,
      }
    }),
  )
}

/** Switches, detectors, heaters and the like against the hardware and the cloth. */
export const obstacles = rule({
  id: 'obstacles',
  on: 'treatment',
  needs: { topOfRod, bearingDrop, projection, hangLine, hookMap, holes, reach: { maybe: reach }, plates: { maybe: plates } },
  gives: { checks, reckonings },
  codes: ['drapery/obstacle', 'drapery/covered', 'drapery/heater'],
}).run(({ it, at, window, job }, facts) => {
  const listed = window.walls.flatMap((wall) =>
    (wall.obstacles ?? []).map((obstacle) => ({ obstacle, at: below(windowOf(at), 'walls', wall.id, 'obstacles', obstacle.id) })),
  )
  const members = Object.fromEntries(
    listed.flatMap(({ obstacle, at: place }) =>
      (['left', 'bottom', 'width', 'height'] as const).map((name) => [`${place}/${name}`, member(place, [name], obstacle[name])]),
    ),
  )
  return filled(members, () => {
    const out = Math.max(
      projectionAt(it, at, 'left', facts.projection).value,
      projectionAt(it, at, 'right', facts.projection).value,
    ) as Length
    const things = {
      hardware: hardwareBlocks(facts, out),
      cloth: clothBlocks(facts.hookMap.places, { top: facts.hangLine.top.value, hem: facts.hangLine.hem.value }, out),
    }
    const each = listed.map(({ obstacle, at: place }) =>
      judged(obstacle, place, at, things, ruleOf(job, 'obstacleGap'), ruleOf(job, 'heaterGap')),
    )
    return { checks: each.flatMap((one) => one.checks), reckonings: each.flatMap((one) => one.working) }
  })
})

type Hung = {
  readonly topOfRod: LengthReckoning
  readonly bearingDrop: Known<Length>
  readonly reach?: { readonly left: LengthReckoning; readonly right: LengthReckoning } | undefined
  readonly holes: readonly { readonly x: LengthReckoning; readonly height: LengthReckoning }[]
  readonly plates?:
    | readonly {
        readonly x: LengthReckoning
        readonly top: LengthReckoning
        readonly width: Known<Length>
        readonly height: Known<Length>
      }[]
    | undefined
}
/** Rod with rings from tip to tip, from half its way out, so that flat things under it do not count; every plate; every hole. */
function hardwareBlocks(
  { topOfRod: top, bearingDrop: drop, reach: ends, holes: drilled, plates: screwed }: Hung,
  out: Length,
): readonly Block[] {
  const rod = ends
    ? [
        {
          left: ends.left.value,
          right: ends.right.value,
          bottom: (top.value - drop.value) as Length,
          top: top.value,
          near: (out / 2) as Length,
          far: out,
        },
      ]
    : []
  const points = drilled.map(({ x, height }) => ({
    left: x.value,
    right: x.value,
    bottom: height.value,
    top: height.value,
    near: 0 as Length,
    far: out,
  }))
  const boxes = (screwed ?? []).map((plate) => ({
    left: (plate.x.value - plate.width.value / 2) as Length,
    right: (plate.x.value + plate.width.value / 2) as Length,
    bottom: (plate.top.value - plate.height.value) as Length,
    top: plate.top.value,
    near: 0 as Length,
    far: out,
  }))
  return [...rod, ...points, ...boxes]
}
