import { filled, member, openingOf, windowOf } from '@evenhem/drapery'
import {
  endBracket,
  finialTip,
  floorAt,
  fromCasing,
  fromFloor,
  holeHeight,
  rodEnd,
  topOfRod as rodTop,
  topOfPlate,
} from '@evenhem/drapery/arithmetic'
import { bearingDrop, coverage, floor, type Hole, hangLine, holes, projection, reach, topOfRod } from '@evenhem/drapery/facts'
import type { Known, Length } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { along, plate } from './facts.ts'
import { rod } from './kind.ts'

const ends = ['left', 'right'] as const

/** What drapery wants to know of any hardware: how far out and how far down the hooks bear. */
export const bearing = rule({ id: 'bearing', on: rod, needs: {}, gives: { projection, bearingDrop } }).run(
  ({ hardware, hardwareAt }) =>
    filled(
      {
        projection: member(hardwareAt, ['bracket', 'projection'], hardware.bracket.projection),
        bearingDrop: member(hardwareAt, ['ring', 'eyeDrop'], hardware.ring.eyeDrop),
      },
      (known) => known,
    ),
)

/** The top of the rod, an eye drop above the hang line, and the top of the plate beside it. */
export const tops = rule({ id: 'tops', on: rod, needs: { hangLine, bearingDrop }, gives: { topOfRod, plate, reckonings } }).run(
  ({ hardware, hardwareAt, at }, facts) =>
    filled({ offset: member(hardwareAt, ['bracket', 'top'], hardware.bracket.top) }, ({ offset }) => {
      const top = rodTop(at, facts.hangLine.hangLine, facts.bearingDrop)
      const plateTop = topOfPlate(at, top, offset)
      return { topOfRod: top, plate: plateTop, reckonings: [top, plateTop] }
    }),
)

/** Brackets stand inside the cover ends by the ring room; the rod ends half a ring beyond the parked ring, and there the finial starts. */
export const alongWall = rule({ id: 'along', on: rod, needs: { coverage }, gives: { along, reach, reckonings } }).run(
  ({ hardware, hardwareAt, at }, facts) => {
    const members = {
      room: member(hardwareAt, ['ring', 'room'], hardware.ring.room),
      width: member(hardwareAt, ['ring', 'width'], hardware.ring.width),
      finial: member(hardwareAt, ['finial', 'length'], hardware.finial?.length),
    }
    return filled(members, ({ room, width, finial }) => {
      const sides = ends.map((side) => {
        const [half, end] = rodEnd(at, side, facts.coverage[side], width)
        return {
          bracket: endBracket(at, side, facts.coverage[side], room),
          half,
          rodEnd: end,
          tip: finialTip(at, side, end, finial),
        }
      })
      const [left, right] = sides as [(typeof sides)[0], (typeof sides)[0]]
      return {
        along: { left: { bracket: left.bracket, rodEnd: left.rodEnd }, right: { bracket: right.bracket, rodEnd: right.rodEnd } },
        reach: { left: left.tip, right: right.tip },
        reckonings: sides.flatMap((side) => [side.bracket, side.half, side.rodEnd, side.tip]),
      }
    })
  },
)

/** Every hole of both brackets, each from its own floor and from the casing. */
export const bracketHoles = rule({
  id: 'bracket-holes',
  on: rod,
  needs: { along, plate, floor },
  gives: { holes, reckonings },
}).run(({ hardware, hardwareAt, at, window }, facts) => {
  const { opening, openingAt } = openingOf(window, windowOf(at))
  const plateHoles = hardware.bracket.holes
  if (!plateHoles) return { ask: [member(hardwareAt, ['bracket', 'holes'], undefined).from] }
  return filled({ casing: member(openingAt, ['casing', 'width'], opening.casing?.width) }, ({ casing }) => {
    const all = ends.flatMap((side) => {
      const x = facts.along[side].bracket
      const below = floorAt(`${at}#floor-bracket-${side}`, facts.floor.points, { value: x.value, from: x.name })
      const outward = fromCasing(`${at}#bracket-from-casing-${side}`, side, x, casing)
      const each = plateHoles.map((hole): Hole => {
        const height = holeHeight(`${at}#hole-${side}-${hole.id}`, facts.plate, {
          value: hole.down,
          from: member(hardwareAt, ['bracket', 'holes', hole.id, 'down'], hole.down).from,
        } as Known<Length>)
        return {
          id: `bracket-${side}-${hole.id}`,
          on: 'bracket',
          what: `rod-and-ring/hole-${hole.id}`,
          side,
          x,
          height,
          fromFloor: fromFloor(`${at}#from-floor-${side}-${hole.id}`, height, below),
          fromCasing: outward,
        }
      })
      return [{ each, below, outward }]
    })
    return {
      holes: all.flatMap((side) => side.each),
      reckonings: all.flatMap((side) => [
        side.below,
        side.outward,
        ...side.each.flatMap((hole) => [hole.height, hole.fromFloor]),
      ]),
    }
  })
})
