import { below, type Wall } from '@evenhem/job'
import { inch, type Known, known, type Length, type LengthReckoning, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { headRoom, isHalfOn, lowestCeiling, stoolRoom } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import {
  type Above,
  above,
  bearingDrop,
  ceiling,
  ceilingDrop,
  coverage,
  frame,
  hangLine,
  headRoomLeft,
  holes,
  plates,
  projection,
  reach,
  topOfRod,
} from '../facts/index.ts'
import { check, coveredBy, filled, long, magnitude, member, perhaps, projectionAt, wallUnder, windowOf } from '../given.ts'

/** A sash or door that swings in must pass under the rod. */
export const sash = rule({
  id: 'sash',
  on: 'treatment',
  needs: { topOfRod, bearingDrop },
  gives: { checks, reckonings },
  codes: ['drapery/sash'],
}).run(({ it, at, window }, facts) => {
  const swinging = coveredBy(it, window, windowOf(at)).filter(({ opening }) => opening.opens === 'in')
  const members = Object.fromEntries(
    swinging.map(({ opening, openingAt }) => [openingAt, member(openingAt, ['swing', 'top'], opening.swing?.top)]),
  )
  return filled(members, (tops) => {
    const bottom = sum(`${at}#bottom-of-rings`, 'drapery/bottom-of-rings', plus('drapery/top-of-rod', facts.topOfRod), {
      ...plus('drapery/eye-drop', facts.bearingDrop),
      sign: -1,
    })
    const each = swinging.map(({ opening, openingAt }) => {
      const top = tops[openingAt] as Known<Length>
      const room = headRoom(
        `${at}#sash-room-${opening.id}`,
        known(bottom),
        sumOf(`${at}#sash-top-${opening.id}`, 'drapery/sash-top', top),
      )
      return {
        working: [sumOf(`${at}#sash-top-${opening.id}`, 'drapery/sash-top', top), room],
        check: check(
          'drapery/sash',
          room.value < 0 ? 'fail' : 'pass',
          top.from,
          { room: magnitude(room), top: long(top) },
          'mark',
        ),
      }
    })
    return {
      checks: each.map((one) => one.check),
      reckonings: swinging.length > 0 ? [bottom, ...each.flatMap((one) => one.working)] : [],
    }
  })
})
const sumOf = (name: string, what: string, value: Known<Length>): LengthReckoning => sum(name, what, plus(what, value))

/** A hem that passes a stool needs room in front of it. */
export const stool = rule({
  id: 'stool',
  on: 'treatment',
  needs: { projection, hangLine },
  gives: { checks, reckonings },
  codes: ['drapery/stool'],
}).run(({ it, at, window, job }, facts) => {
  const least = ruleOf(job, 'stoolGap')
  const each = coveredBy(it, window, windowOf(at)).flatMap(({ opening, openingAt }) => {
    const { top, depth } = opening.sill ?? {}
    if (top === undefined || depth === undefined || facts.hangLine.hem.value >= top || it.draw === 'stationary') return []
    const side =
      projectionAt(it, at, 'left', facts.projection).value <= projectionAt(it, at, 'right', facts.projection).value
        ? 'left'
        : 'right'
    const room = stoolRoom(`${at}#stool-room-${opening.id}`, projectionAt(it, at, side, facts.projection), {
      value: depth,
      from: below(openingAt, 'sill', 'depth'),
    })
    const values = { room: magnitude(room), least: long(least), inside: room.value < 0 ? 'yes' : 'no' }
    return [
      {
        working: room,
        check: check(
          'drapery/stool',
          room.value < 0 ? 'fail' : room.value < least.value ? 'warn' : 'pass',
          below(openingAt, 'sill', 'depth'),
          values,
          'mark',
        ),
      },
    ]
  })
  return { checks: each.map((one) => one.check), reckonings: each.map((one) => one.working) }
})

/** Rod and finials under ceiling and crown: room to lift the rod into its brackets, and for the finials' radius. */
export const headRoomRule = rule({
  id: 'head-room',
  on: 'treatment',
  needs: { topOfRod, ceiling, coverage, projection: { maybe: projection }, above: { maybe: above }, reach: { maybe: reach } },
  gives: { checks, reckonings, headRoomLeft },
  codes: ['drapery/head-room'],
}).run(({ it, at, window, job }, facts) => {
  // What is fixed to the ceiling is not lifted into anything under it.
  if (it.mount === 'ceiling') return {}
  const [from, to] = [facts.reach?.left ?? facts.coverage.left, facts.reach?.right ?? facts.coverage.right]
  const overhead = lowestCeiling(`${at}#over-rod`, facts.ceiling.points, known(from), known(to))
  const crown = wallUnder(window, windowOf(at), from.value)
  const crownBottom = perhaps(member(crown.wallAt, ['crown', 'bottom'], crown.wall.crown?.bottom))
  const isUnder = isUnderCrown(crown.wall.crown?.projection, facts)
  const limit =
    crownBottom && isUnder && it.mount !== 'crown' && crownBottom.value < overhead[2].value ? crownBottom : known(overhead[2])
  const lift = ruleOf(job, 'liftIn')
  const lifted = sum(`${at}#lifted`, 'drapery/lifted', plus('drapery/top-of-rod', facts.topOfRod), plus('drapery/lift-in', lift))
  const finial =
    facts.above?.finialRadius &&
    sum(
      `${at}#finial-top`,
      'drapery/finial-top',
      plus('drapery/middle-of-rod', facts.above.middle),
      plus('drapery/finial-radius', facts.above.finialRadius),
    )
  const highest = finial && finial.value > lifted.value ? finial : lifted
  const room = headRoom(`${at}#head-room`, limit, highest)
  const values = {
    room: magnitude(room),
    lift: long(lift),
    what: highest === finial ? 'finial' : 'rod',
    under: limit === crownBottom ? 'crown' : 'ceiling',
  }
  return {
    headRoomLeft: known(room),
    checks: [check('drapery/head-room', room.value < 0 ? 'fail' : 'pass', at, values, 'mark')],
    reckonings: [...overhead, lifted, ...(finial ? [finial] : []), room],
  }
})

/** Whether a crown stands over rod or finials: unless they are known to hang in front of all of it. */
function isUnderCrown(
  crown: Length | undefined,
  {
    projection: out,
    above: over,
    topOfRod: top,
  }: { projection?: Known<Length> | undefined; above?: Above | undefined; topOfRod: LengthReckoning },
): boolean {
  if (crown === undefined || !out || !over) return true
  const radius = Math.max(top.value - over.middle.value, over.finialRadius?.value ?? 0)
  return out.value - radius < crown
}

/** A plate that lies half on a casing rocks; screws at its edge split it. */
export const casingEdge = rule({
  id: 'casing-edge',
  on: 'treatment',
  needs: { plates, frame },
  gives: { checks },
  codes: ['drapery/casing-edge'],
}).run(({ it, at, window, job }, facts) => {
  if (it.mount === 'ceiling') return {}
  const gap = ruleOf(job, 'bracketEdge').value
  const casings = coveredBy(it, window, windowOf(at)).map(({ opening }) => ({
    left: opening.x ?? 0,
    right: (opening.x ?? 0) + (opening.casing?.width ?? 0),
    top: opening.casing?.top ?? Number.POSITIVE_INFINITY,
    bottom: opening.casing?.bottom ?? Number.NEGATIVE_INFINITY,
  }))
  const bad = facts.plates.find((plate) => {
    const box = { left: plate.x.value - plate.width.value / 2, right: plate.x.value + plate.width.value / 2 }
    const [top, bottom] = [plate.top.value, plate.top.value - plate.height.value]
    return casings.some((casing) => {
      const isBeside = top > casing.bottom && bottom < casing.top
      const isAcross =
        isBeside && (top > casing.top || bottom < casing.bottom) && box.right > casing.left && box.left < casing.right
      return isAcross || (isBeside && isHalfOn(box, casing, gap))
    })
  })
  const side = { side: { code: `drapery/${bad?.side ?? 'left'}` } }
  return { checks: [check('drapery/casing-edge', bad ? 'fail' : 'pass', at, side, 'mark')] }
})

const onStud = (0.75 * inch) as Length
/** What the screws find behind the wall: wood, or a stud at every bracket; else anchors, or nobody knows yet. */
export const behindWall = rule({
  id: 'behind-wall',
  on: 'treatment',
  needs: { holes },
  gives: { checks },
  codes: ['drapery/behind-wall'],
}).run(({ it, at, window }, facts) => {
  if (it.mount === 'ceiling') return {}
  if (it.mount === 'casing' || it.mount === 'crown') return {}
  const columns = facts.holes
    .filter((hole) => hole.on !== 'return')
    .map((hole) => ({ x: hole.x.value, ...wallUnder(window, windowOf(at), hole.x.value) }))
  // In the double brackets of another layer it has none of its own.
  if (columns.length === 0) return {}
  const isWood = ({ x, wall }: { x: number; wall: Wall }) =>
    wall.buildUp?.behind === 'wood' || (wall.studs ?? []).some((stud) => Math.abs(stud.x - x) <= onStud)
  const off = columns.find((column) => !isWood(column))
  const place = below((off ?? columns[0])?.wallAt ?? at, 'buildUp', 'behind')
  const behind = off?.wall.buildUp?.behind ?? 'unknown'
  const verdict = !off ? 'pass' : behind === 'unknown' ? 'unknown' : 'warn'
  return { checks: [check('drapery/behind-wall', verdict, place, { behind: { code: `drapery/behind-${behind}` } })] }
})

/** What is above the ceiling where brackets go: known to be wood, or found out before anything is drilled. */
export const aboveCeiling = rule({
  id: 'above-ceiling',
  on: 'treatment',
  needs: { holes },
  gives: { checks },
  codes: ['drapery/above-ceiling'],
}).run(({ it, at, window }, facts) => {
  if (it.mount !== 'ceiling' || facts.holes.length === 0) return {}
  const above = window.aboveCeiling ?? 'unknown'
  const verdict = above === 'wood' ? 'pass' : above === 'unknown' ? 'unknown' : 'warn'
  const place = below(windowOf(at), 'aboveCeiling')
  return { checks: [check('drapery/above-ceiling', verdict, place, { behind: { code: `drapery/behind-${above}` } })] }
})

/** Two readings of the floor at one place must agree, and without any the floor is only taken for level. */
export const floorRead = rule({
  id: 'floor-read',
  on: 'window',
  needs: {},
  gives: { checks },
  codes: ['drapery/floor-read'],
}).run(({ it, at }) => {
  const points = it.floor ?? []
  const twice = points.find((point, i) => points.some((other, j) => j < i && other.x === point.x && other.y !== point.y))
  const place = below(at, 'floor')
  if (points.length === 0) return { checks: [check('drapery/floor-read', 'unknown', place, {})] }
  const values = { count: { count: points.length }, x: { length: twice?.x ?? (0 as Length) } }
  return {
    checks: [check('drapery/floor-read', twice ? 'fail' : 'pass', twice ? below(place, twice.id) : place, values, 'mark')],
  }
})

/** Floors that are not finished, and tapes that stood on a subfloor: the hem would end up elsewhere. */
export const finishedFloor = rule({
  id: 'finished-floor',
  on: 'window',
  needs: {},
  gives: { checks },
  codes: ['drapery/finished-floor'],
}).run(({ it, at, room, job }) => {
  const on = it.floorOn ?? job.measured?.on
  if (room.floor === undefined && on === undefined) return {}
  const isRaw = room.floor === 'unfinished' || on === 'subfloor'
  return { checks: [check('drapery/finished-floor', isRaw ? 'warn' : 'pass', at, {})] }
})

/** What this version plans as if brackets stood on the wall, and what it does not plan. */
export const planned = rule({
  id: 'planned',
  on: 'treatment',
  needs: { drop: { maybe: ceilingDrop } },
  gives: { checks },
  codes: ['drapery/mount'],
}).run(({ it, at }, facts) => {
  const mount = it.mount ?? 'wall'
  const isPlain = ['wall', 'casing', 'crown'].includes(mount) || (mount === 'ceiling' && facts.drop !== undefined)
  return {
    checks: [
      ...(isPlain
        ? []
        : [
            check('drapery/mount', 'unknown', below(at, 'mount'), {
              mount: { code: `drapery/mount-${mount.replace(' ', '-')}` },
            }),
          ]),
    ],
  }
})
