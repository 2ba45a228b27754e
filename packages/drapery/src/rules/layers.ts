import { below, type Place } from '@evenhem/job'
import { type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { type Check, checks, reckonings, rule, type Treatment } from '@evenhem/plugin'
import { ruleOf } from '../defaults.ts'
import { coverage, projection, reach, secondRod, topOfRod } from '../facts/index.ts'
import { check, long, magnitude, projectionAt } from '../given.ts'

/** A fact gathered from the treatments of a window: the one of this place. */
const of = <T>(all: readonly { readonly at: Place; readonly value: T }[], at: Place): T | undefined =>
  all.find((one) => one.at === at)?.value
const placesOf = (at: Place, treatments: readonly Treatment[]): readonly Place[] =>
  treatments.map(({ id }) => below(at, 'treatments', id))

/** The layers of a window, from the glass outward: each must hang clear of the one behind it. */
export const layersClear = rule({
  id: 'layers-clear',
  on: 'window',
  needs: { out: { each: projection } },
  gives: { checks, reckonings },
  codes: ['drapery/layers'],
}).run(({ it, at, job }, facts) => {
  const near = ruleOf(job, 'layerGap')
  const places = placesOf(at, it.treatments)
  const each = places.slice(1).flatMap((outer, i) => {
    const ways = (['left', 'right'] as const).flatMap((side) => {
      const [front, back] = [own(it.treatments[i + 1], outer, side), own(it.treatments[i], places[i] ?? '', side)]
      return front && back ? [apartAt(`${outer}#in-front-${side}`, front, back)] : []
    })
    const least = ways.reduce<LengthReckoning | undefined>((a, b) => (a && a.value <= b.value ? a : b), undefined)
    if (!least) return []
    const values = { apart: long(least), near: long(near) }
    return [{ ways, check: check('drapery/layers', least.value < near.value ? 'fail' : 'pass', outer, values, 'mark') }]
  })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap(({ ways }) => ways) }

  /** How far out a layer bears at one end: as the order sets it for the treatment, else as its hardware says. */
  function own(treatment: Treatment | undefined, place: Place, side: 'left' | 'right'): Known<Length> | undefined {
    const hardware = of(facts.out, place)
    return treatment && hardware && projectionAt(treatment, place, side, hardware)
  }
})

const apartAt = (name: string, front: Known<Length>, back: Known<Length>): LengthReckoning =>
  sum(name, 'drapery/layers-apart', plus('drapery/projection-outer', front), minus('drapery/projection-inner', back))

/** The returns of an outer layer take in the rod ends and finials of those behind it: on each side the gap between them. */
export const returnClears = rule({
  id: 'return-clears',
  on: 'window',
  needs: { covered: { each: coverage }, reached: { each: reach } },
  gives: { checks, reckonings },
  codes: ['drapery/return-clears'],
}).run(({ it, at }, facts) => {
  const places = placesOf(at, it.treatments)
  const each = places.slice(1).flatMap((outer, i) => {
    const ends = of(facts.covered, outer)
    const sides = it.treatments[i + 1] ? sidesWithReturn(it.treatments[i + 1] as Treatment) : []
    const gaps = places.slice(0, i + 1).flatMap((inner, n) => {
      const reaches = of(facts.reached, inner)
      if (!ends || !reaches) return []
      return sides.map((side) => gapAt(`${outer}#return-clears-${side}-${n + 1}`, side, ends[side], reaches[side]))
    })
    const least = gaps.reduce<LengthReckoning | undefined>((a, b) => (a && a.value <= b.value ? a : b), undefined)
    if (!least) return []
    const found = check('drapery/return-clears', least.value < 0 ? 'fail' : 'pass', outer, { gap: magnitude(least) }, 'mark')
    return [{ gaps, check: found }]
  })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap(({ gaps }) => gaps) }
})

const sidesWithReturn = (it: Treatment): readonly ('left' | 'right')[] =>
  (['left', 'right'] as const).filter((side) =>
    it.panels.some((panel, n) => (panel.return ?? 0) > 0 && (panel.outer ?? outerOf(it, n)) === side),
  )
const outerOf = ({ draw, panels }: Treatment, n: number): 'left' | 'right' =>
  draw === 'one-way left' ? 'left' : draw === 'one-way right' ? 'right' : n < panels.length / 2 ? 'left' : 'right'

const gapAt = (name: string, side: 'left' | 'right', cover: LengthReckoning, inner: LengthReckoning): LengthReckoning =>
  side === 'left'
    ? sum(name, 'drapery/return-gap', plus('drapery/reach-left', inner), minus('drapery/cover-left', cover))
    : sum(name, 'drapery/return-gap', plus('drapery/cover-right', cover), minus('drapery/reach-right', inner))

/** What any kind of hardware may say of a double bracket. */
interface Double {
  readonly bracket?: { readonly inner?: { readonly top: Length; readonly projection: Length } }
}
/** The second rod that the brackets of a treatment carry, where they are double. */
export const secondRodRule = rule({ id: 'second-rod', on: 'treatment', needs: {}, gives: { secondRod } }).run(
  ({ hardware, hardwareAt }) => {
    const inner = (hardware as Double | undefined)?.bracket?.inner
    if (!inner) return {}
    const placeOf = (name: string): Place => below(hardwareAt, 'bracket', 'inner', name)
    return {
      secondRod: {
        top: { value: inner.top, from: placeOf('top') },
        projection: { value: inner.projection, from: placeOf('projection') },
      },
    }
  },
)

/** A rod in another's double brackets has no choice of height and depth: both must be what these brackets give. */
export const doubleBracket = rule({
  id: 'double-bracket',
  on: 'window',
  needs: { tops: { each: topOfRod }, out: { each: projection }, second: { each: secondRod } },
  gives: { checks, reckonings },
  codes: ['drapery/double-bracket'],
}).run(({ it, at, job }, facts) => {
  const near = ruleOf(job, 'heightsAgree')
  const each = it.treatments
    .filter(({ bracketsOf }) => bracketsOf !== undefined)
    .map((treatment): { readonly check: Check; readonly working: readonly LengthReckoning[] } => {
      const place = below(at, 'treatments', treatment.id)
      const outer = below(at, 'treatments', treatment.bracketsOf ?? '')
      const [rod, carrier, second, out] = [
        of(facts.tops, place),
        of(facts.tops, outer),
        of(facts.second, outer),
        of(facts.out, place),
      ]
      if (!rod || !carrier || !second || !out)
        return { check: check('drapery/double-bracket', 'unknown', below(place, 'bracketsOf'), {}), working: [] }
      const given = sum(
        `${place}#second-rod`,
        'drapery/second-rod',
        plus('drapery/top-of-rod', carrier),
        plus('drapery/second-rod-top', second.top),
      )
      const apart = sum(
        `${place}#second-rod-apart`,
        'drapery/second-rod-apart',
        plus('drapery/top-of-rod', rod),
        minus('drapery/second-rod', given),
      )
      const deep = sum(
        `${place}#second-rod-deep`,
        'drapery/layers-apart',
        plus('drapery/projection', out),
        minus('drapery/second-rod-projection', second.projection),
      )
      const isHigh = Math.abs(apart.value) > near.value
      const isDeep = Math.abs(deep.value) > near.value
      const values = {
        how: isHigh ? 'height' : isDeep ? 'depth' : 'both',
        apart: magnitude(isHigh ? apart : deep),
        way: (isHigh ? apart : deep).value > 0 ? 'more' : 'less',
        near: long(near),
      }
      return {
        check: check('drapery/double-bracket', isHigh || isDeep ? 'fail' : 'pass', place, values, 'mark'),
        working: [given, apart, deep],
      }
    })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap(({ working }) => working) }
})
