import {
  type Brackets,
  bracketPlates,
  filled,
  bracketHoles as holesOf,
  marksPlanned,
  member,
  projectionFrom,
  standsOut,
  supportsOf,
  topOfSupport,
  windowOf,
} from '@evenhem/drapery'
import { topOfRod as rodTop, topOfPlate } from '@evenhem/drapery/arithmetic'
import {
  above,
  bearingDrop,
  floor,
  frame,
  hangLine,
  holes,
  hungLine,
  overlap,
  plannedMarks,
  plates,
  projection,
  topOfRod,
} from '@evenhem/drapery/facts'
import { type Known, known, type Length, minus, number, plus, sum, times } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { type Along, along, plate, supportPlate } from './facts.ts'
import { rod } from './kind.ts'

/** What drapery wants to know of any hardware: how far out and how far down the hooks bear. Screwed to a casing or a crown, a bracket stands out by that much more. */
export const bearing = rule({ id: 'bearing', on: rod, needs: {}, gives: { projection, bearingDrop, overlap, reckonings } }).run(
  ({ hardware, hardwareAt, it, at, window }) => {
    const members = {
      projection: member(hardwareAt, ['bracket', 'projection'], hardware.bracket.projection),
      bearingDrop: member(hardwareAt, ['ring', 'eyeDrop'], hardware.ring.eyeDrop),
    }
    const base = standsOut(it, window, windowOf(at))
    /** Nothing carries one leading edge past the other. */
    const none = { overlap: number(0) as Known<Length> }
    if (!base) return filled(members, (own) => ({ ...own, ...none }))
    return filled({ ...members, by: base.by }, ({ by, ...own }) => {
      const out = projectionFrom(at, own.projection, base.what, by)
      return { ...own, ...none, projection: known(out), reckonings: [out] }
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
  if (supportsOf(it, at).length === 0) return {}
  return filled({ offset: member(hardwareAt, ['support', 'top'], hardware.support?.top) }, ({ offset }) => {
    const top = topOfSupport(at, facts.topOfRod, offset)
    return { supportPlate: top, reckonings: [top] }
  })
})

/** The highest hole of each bracket and support as a level rod has it: what the marks at the wall are taken from. */
export const marks = rule({
  id: 'marks',
  on: rod,
  needs: { along, plate, supportPlate: { maybe: supportPlate } },
  gives: { plannedMarks, reckonings },
}).run(({ it, hardware, hardwareAt, at }, facts) => {
  const tops = { bracket: facts.plate, support: facts.supportPlate }
  const found = marksPlanned(it, at, hardware, hardwareAt, standing(facts.along), tops)
  return { plannedMarks: { marks: found.marks }, reckonings: found.reckonings }
})

/** Every hole of the brackets and supports, each from its own floor and from the casing. */
export const bracketHoles = rule({
  id: 'bracket-holes',
  on: rod,
  needs: { along, plate, floor, frame, supportPlate: { maybe: supportPlate }, hungLine: { maybe: hungLine } },
  gives: { holes, reckonings },
}).run(({ hardware, hardwareAt, at, window }, facts) => {
  const tops = { bracket: facts.plate, support: facts.supportPlate }
  return holesOf(at, hardware, hardwareAt, standing(facts.along), tops, facts, window, (id) => `rod-and-ring/hole-${id}`)
})

/** The plates on the wall, where their sizes are known. */
export const plateSizes = rule({
  id: 'plates',
  on: rod,
  needs: { along, plate, supportPlate: { maybe: supportPlate }, hungLine: { maybe: hungLine } },
  gives: { plates },
}).run(({ it, hardware, hardwareAt }, facts) => {
  if (it.bracketsOf !== undefined) return {}
  const tops = { bracket: facts.plate, support: facts.supportPlate }
  const found = bracketPlates(hardware, hardwareAt, standing(facts.along), tops, facts.hungLine)
  return 'ask' in found ? found : { plates: found }
})

const standing = ({ left, right, supports }: Along): Brackets => ({ left: left.bracket, right: right.bracket, supports })
