import { coveredBy, filled, type Member, member, windowOf } from '@evenhem/drapery'
import { floorAt, fromCasing, fromFloor, holeHeight, topOfRod as rodTop, topOfPlate } from '@evenhem/drapery/arithmetic'
import {
  above,
  bearingDrop,
  floor,
  frame,
  type Hole,
  hangLine,
  holes,
  type Plate,
  plates,
  projection,
  topOfRod,
} from '@evenhem/drapery/facts'
import { type Known, known, type Length, type LengthReckoning, minus, number, plus, sum, times } from '@evenhem/length'
import { type Place, reckonings, rule, type Treatment, type Window } from '@evenhem/plugin'
import { along, plate, supportPlate } from './facts.ts'
import type { RodAndRing } from './hardware.generated.ts'
import { rod } from './kind.ts'

const ends = ['left', 'right'] as const

/** What the brackets are screwed to, when it stands out from the wall: the casing or the crown, by so much. */
function standsOut(
  it: Treatment,
  window: Window,
  windowAt: Place,
): { readonly what: string; readonly by: Member<Length> } | undefined {
  const first = coveredBy(it, window, windowAt)[0]
  if (!first) return undefined
  if (it.mount === 'casing')
    return {
      what: 'drapery/casing-thickness',
      by: member(first.openingAt, ['casing', 'thickness'], first.opening.casing?.thickness),
    }
  if (it.mount === 'crown')
    return { what: 'drapery/crown-projection', by: member(first.wallAt, ['crown', 'projection'], first.wall.crown?.projection) }
  return undefined
}

/** What drapery wants to know of any hardware: how far out and how far down the hooks bear. Screwed to a casing or a crown, a bracket stands out by that much more. */
export const bearing = rule({ id: 'bearing', on: rod, needs: {}, gives: { projection, bearingDrop, reckonings } }).run(
  ({ hardware, hardwareAt, it, at, window }) => {
    const members = {
      projection: member(hardwareAt, ['bracket', 'projection'], hardware.bracket.projection),
      bearingDrop: member(hardwareAt, ['ring', 'eyeDrop'], hardware.ring.eyeDrop),
    }
    const base = standsOut(it, window, windowOf(at))
    if (!base) return filled(members, (own) => own)
    return filled({ ...members, by: base.by }, ({ by, ...own }) => {
      const terms = [plus('drapery/bracket-projection', own.projection), plus(base.what, by)]
      const out = sum(`${at}#projection`, 'drapery/projection', ...terms)
      return { ...own, projection: known(out), reckonings: [out] }
    })
  },
)

/** The top of the rod, an eye drop above the hang line, the top of the plates beside it, and the middle of the rod, which finials surround. */
export const tops = rule({
  id: 'tops',
  on: rod,
  needs: { hangLine, bearingDrop },
  gives: { topOfRod, plate, above, reckonings },
}).run(({ hardware, hardwareAt, at }, facts) => {
  const members = {
    offset: member(hardwareAt, ['bracket', 'top'], hardware.bracket.top),
    diameter: member(hardwareAt, ['rod', 'diameter'], hardware.rod.diameter),
  }
  return filled(members, ({ offset, diameter }) => {
    const top = rodTop(at, facts.hangLine.hangLine, facts.bearingDrop)
    const plateTop = topOfPlate(at, top, offset)
    const radius = times(
      `${at}#rod-radius`,
      'rod-and-ring/rod-radius',
      plus('rod-and-ring/diameter', diameter),
      plus('drapery/half', number(0.5)),
    )
    const middle = sum(
      `${at}#middle-of-rod`,
      'rod-and-ring/middle-of-rod',
      plus('drapery/top-of-rod', top),
      minus('rod-and-ring/rod-radius', radius),
    )
    const finial = member(hardwareAt, ['finial', 'radius'], hardware.finial?.radius)
    return {
      topOfRod: top,
      plate: plateTop,
      above: { middle, ...(finial.value === undefined ? {} : { finialRadius: finial as Known<Length> }) },
      reckonings: [top, plateTop, radius, middle],
    }
  })
})

/** The top of the plates of the supports between the ends, where there are any. */
export const supportTops = rule({
  id: 'support-tops',
  on: rod,
  needs: { topOfRod },
  gives: { supportPlate, reckonings },
}).run(({ it, hardware, hardwareAt, at }, facts) => {
  if (!it.rod?.supports?.length) return {}
  return filled({ offset: member(hardwareAt, ['support', 'top'], hardware.support?.top) }, ({ offset }) => {
    const top = sum(
      `${at}#top-of-support`,
      'drapery/top-of-plate',
      plus('drapery/top-of-rod', facts.topOfRod),
      plus('drapery/plate-offset', offset),
    )
    return { supportPlate: top, reckonings: [top] }
  })
})

type PlateHoles = NonNullable<RodAndRing['bracket']['holes']>
interface Column {
  readonly key: string
  readonly id: string
  readonly side: Hole['side']
  readonly support?: string
  readonly x: LengthReckoning
  readonly top: LengthReckoning
  readonly holes: PlateHoles
  readonly holesAt: Place
}

/** Every hole of the brackets and supports, each from its own floor and from the casing. */
export const bracketHoles = rule({
  id: 'bracket-holes',
  on: rod,
  needs: { along, plate, floor, frame, supportPlate: { maybe: supportPlate } },
  gives: { holes, reckonings },
}).run(({ hardware, hardwareAt, at }, facts) => {
  const asked = (part: 'bracket' | 'support') => member(hardwareAt, [part, 'holes'], undefined).from
  const { holes: plateHoles } = hardware.bracket
  if (!plateHoles) return { ask: [asked('bracket')] }
  const supports = facts.supportPlate ? facts.along.supports : []
  const supportHoles = hardware.support?.holes
  if (supports.length > 0 && !supportHoles) return { ask: [asked('support')] }
  const columns: readonly Column[] = [
    ...ends.map((side) => ({
      key: side,
      id: `bracket-${side}`,
      side,
      x: facts.along[side].bracket,
      top: facts.plate,
      holes: plateHoles,
      holesAt: asked('bracket'),
    })),
    ...supports.map(({ id, x }) => ({
      key: `support-${id}`,
      id: `support-${id}`,
      side: 'middle' as const,
      support: id,
      x,
      top: facts.supportPlate as LengthReckoning,
      holes: supportHoles as PlateHoles,
      holesAt: asked('support'),
    })),
  ]
  const all = columns.map((column) => {
    const below = floorAt(`${at}#floor-bracket-${column.key}`, facts.floor.points, known(column.x))
    const outward = fromCasing(`${at}#bracket-from-casing-${column.key}`, column.side, column.x, facts.frame)
    const each = column.holes.map((hole): Hole => {
      const down = member(column.holesAt, [hole.id, 'down'], hole.down) as Known<Length>
      const height = holeHeight(`${at}#hole-${column.key}-${hole.id}`, column.top, down)
      return {
        id: `${column.id}-${hole.id}`,
        on: column.support === undefined ? 'bracket' : 'support',
        what: `rod-and-ring/hole-${hole.id}`,
        side: column.side,
        ...(column.support === undefined ? {} : { support: column.support }),
        x: column.x,
        height,
        fromFloor: fromFloor(`${at}#from-floor-${column.key}-${hole.id}`, height, below),
        fromCasing: outward,
      }
    })
    return { each, working: [below, outward, ...each.flatMap((hole) => [hole.height, hole.fromFloor])] }
  })
  return { holes: all.flatMap((column) => column.each), reckonings: all.flatMap((column) => column.working) }
})

/** The plates on the wall, where their sizes are known. */
export const plateSizes = rule({
  id: 'plates',
  on: rod,
  needs: { along, plate, supportPlate: { maybe: supportPlate } },
  gives: { plates },
}).run(({ hardware, hardwareAt }, facts) => {
  const size = (part: 'bracket' | 'support') => ({
    width: member(hardwareAt, [part, 'width'], hardware[part]?.width),
    height: member(hardwareAt, [part, 'height'], hardware[part]?.height),
  })
  return filled(size('bracket'), (own) => {
    const support = size('support')
    const isKnown = support.width.value !== undefined && support.height.value !== undefined
    const list: readonly Plate[] = [
      ...ends.map((side) => ({ id: `bracket-${side}`, side, x: facts.along[side].bracket, top: facts.plate, ...own })),
      ...(facts.supportPlate && isKnown ? facts.along.supports : []).map(({ id, x }) => ({
        id: `support-${id}`,
        side: 'middle' as const,
        x,
        top: facts.supportPlate as LengthReckoning,
        ...(support as typeof own),
      })),
    ]
    return { plates: list }
  })
})
