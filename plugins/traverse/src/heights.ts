import {
  bracketHoles,
  bracketPlates,
  ceilingHoles,
  filled,
  marksPlanned,
  member,
  perhaps,
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
  ceiling,
  ceilingDrop,
  floor,
  frame,
  hangLine,
  holes,
  hungLine,
  overlap,
  plannedMarks,
  plates,
  plateTops,
  projection,
  stand,
  topOfRod,
} from '@evenhem/drapery/facts'
import { type Known, known, type Length, minus, number, plus, sum, times } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { traverseRod } from './kind.ts'

/** How far out and how far down the hooks bear in the carriers; fixed to a casing or a crown, a bracket stands out by that much more. */
export const bearing = rule({
  id: 'bearing',
  on: traverseRod,
  needs: {},
  gives: { projection, bearingDrop, overlap, reckonings },
}).run(({ hardware, hardwareAt, it, at, window }) => {
  const members = {
    projection: member(hardwareAt, ['bracket', 'projection'], hardware.bracket.projection),
    bearingDrop: member(hardwareAt, ['carrier', 'drop'], hardware.carrier.drop),
  }
  const arms = perhaps(member(hardwareAt, ['master', 'overlap'], hardware.master?.overlap))
  const more = arms ? { overlap: arms } : {}
  const base = standsOut(it, window, windowOf(at))
  if (!base) return filled(members, (own) => ({ ...own, ...more }))
  return filled({ ...members, by: base.by }, ({ by, ...own }) => {
    const out = projectionFrom(at, own.projection, base.what, by)
    return { ...own, ...more, projection: known(out), reckonings: [out] }
  })
})

/** From a ceiling down to where the hooks bear. */
export const fromCeiling = rule({
  id: 'from-ceiling',
  on: traverseRod,
  needs: { bearingDrop },
  gives: { ceilingDrop, reckonings },
}).run(({ hardware, hardwareAt, it, at }, facts) => {
  if (it.mount !== 'ceiling') return {}
  return filled({ drop: member(hardwareAt, ['ceiling', 'drop'], hardware.ceiling?.drop) }, ({ drop }) => {
    const whole = sum(
      `${at}#ceiling-drop`,
      'drapery/ceiling-drop',
      plus('traverse/ceiling-to-rod', drop),
      plus('drapery/carrier-drop', facts.bearingDrop),
    )
    return { ceilingDrop: whole, reckonings: [whole] }
  })
})

/** The top of the rod, a carrier drop above the hang line, and its middle, which finials surround. */
export const tops = rule({
  id: 'tops',
  on: traverseRod,
  needs: { hangLine, bearingDrop },
  gives: { topOfRod, above, reckonings },
}).run(({ hardware, hardwareAt, at }, facts) =>
  filled({ height: member(hardwareAt, ['rod', 'height'], hardware.rod.height) }, ({ height }) => {
    const top = rodTop(at, facts.hangLine.hangLine, facts.bearingDrop, 'drapery/carrier-drop')
    const halfHeight = times(
      `${at}#half-rod`,
      'traverse/half-rod',
      plus('traverse/rod-height', height),
      plus('drapery/half', number(0.5)),
    )
    const middle = sum(
      `${at}#middle-of-rod`,
      'traverse/middle-of-rod',
      plus('drapery/top-of-rod', top),
      minus('traverse/half-rod', halfHeight),
    )
    const radius = perhaps(member(hardwareAt, ['finial', 'radius'], hardware.finial?.radius))
    return {
      topOfRod: top,
      above: { middle, ...(radius ? { finialRadius: radius } : {}) },
      reckonings: [top, halfHeight, middle],
    }
  }),
)

/** The tops of the plates on the wall, of brackets and of supports. */
export const topsOfPlates = rule({
  id: 'plate-tops',
  on: traverseRod,
  needs: { topOfRod },
  gives: { plateTops, reckonings },
}).run(({ hardware, hardwareAt, it, at }, facts) => {
  if (it.mount === 'ceiling') return {}
  const own = member(hardwareAt, ['bracket', 'top'], hardware.bracket.top)
  const others = supportsOf(it, at).length > 0 ? { support: member(hardwareAt, ['support', 'top'], hardware.support?.top) } : {}
  return filled<{ bracket: typeof own; support?: typeof own }, object>({ bracket: own, ...others }, (offsets) => {
    const bracket = topOfPlate(at, facts.topOfRod, offsets.bracket as Known<Length>)
    const support = offsets.support && topOfSupport(at, facts.topOfRod, offsets.support as Known<Length>)
    return {
      plateTops: { bracket, ...(support ? { support } : {}) },
      reckonings: [bracket, ...(support ? [support] : [])],
    }
  })
})

/** The highest hole of each bracket and support as a level rod has it: what the marks at the wall are taken from. */
export const marks = rule({
  id: 'marks',
  on: traverseRod,
  needs: { stand, plateTops },
  gives: { plannedMarks, reckonings },
}).run(({ it, hardware, hardwareAt, at }, facts) => {
  const found = marksPlanned(it, at, hardware, hardwareAt, facts.stand, facts.plateTops)
  return { plannedMarks: { marks: found.marks }, reckonings: found.reckonings }
})

/** Every hole of brackets and supports on the wall. */
export const wallHoles = rule({
  id: 'wall-holes',
  on: traverseRod,
  needs: { stand, plateTops, floor, frame, hungLine: { maybe: hungLine } },
  gives: { holes, reckonings },
}).run(({ hardware, hardwareAt, at, window }, facts) =>
  bracketHoles(at, hardware, hardwareAt, facts.stand, facts.plateTops, facts, window, (id) => `traverse/hole-${id}`),
)

/** The plates on the wall, where their sizes are known. */
export const plateSizes = rule({
  id: 'plates',
  on: traverseRod,
  needs: { stand, plateTops, hungLine: { maybe: hungLine } },
  gives: { plates },
}).run(({ it, hardware, hardwareAt }, facts) => {
  if (it.bracketsOf !== undefined) return {}
  const found = bracketPlates(hardware, hardwareAt, facts.stand, facts.plateTops, facts.hungLine)
  return 'ask' in found ? found : { plates: found }
})

/** Every hole in the ceiling, from the wall and from the casing. */
export const overhead = rule({
  id: 'ceiling-holes',
  on: traverseRod,
  needs: { stand, ceiling, floor, frame, projection },
  gives: { holes, reckonings },
}).run(({ hardware, hardwareAt, it, at, window }, facts) => {
  if (it.mount !== 'ceiling') return { holes: [] }
  const list = hardware.ceiling?.holes
  if (!list) return { ask: [member(hardwareAt, ['ceiling', 'holes'], undefined).from] }
  return ceilingHoles(
    it,
    at,
    list,
    member(hardwareAt, ['ceiling', 'holes'], undefined).from,
    facts,
    window,
    (id) => `traverse/ceiling-${id}`,
  )
})
