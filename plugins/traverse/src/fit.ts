import { below, check, filled, long, magnitude, member, perhaps, projectionAt, ruleOf } from '@evenhem/drapery'
import { between, foldsBack } from '@evenhem/drapery/arithmetic'
import { bearingDrop, coverage, hookMap, makeUp, pinReach, projection, rod, stand, supportPlaces } from '@evenhem/drapery/facts'
import { type Known, known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { checks, type Place, reckonings, rule } from '@evenhem/plugin'
import { traverseRod } from './kind.ts'

/** The rod is made for the draw that is ordered, where its entry says so. */
export const suits = rule({
  id: 'draw',
  on: traverseRod,
  needs: {},
  gives: { checks },
  codes: ['traverse/draw'],
}).run(({ it, at, hardware }) => {
  if (!hardware.draws) return {}
  const values = { draw: { code: `drapery/draw-${it.draw.replace(' ', '-')}` }, rod: hardware.name }
  return { checks: [check('traverse/draw', hardware.draws.includes(it.draw) ? 'pass' : 'fail', at, values, 'unpack')] }
})

/** A rod whose length can be set, against the length that is needed. */
export const isLongEnough = rule({
  id: 'extends',
  on: traverseRod,
  needs: { rod, coverage },
  gives: { checks, reckonings },
  codes: ['traverse/extends'],
}).run(({ hardware, hardwareAt, at }, facts) => {
  const least = perhaps(member(hardwareAt, ['rod', 'least'], hardware.rod.least))
  const most = perhaps(member(hardwareAt, ['rod', 'most'], hardware.rod.most))
  if (!least && !most) return {}
  const needed = between(`${at}#rod-set`, 'traverse/rod-set', facts.rod.left, facts.rod.right, facts.coverage.corners)
  const isShort = most !== undefined && needed.value > most.value
  const isLong = least !== undefined && needed.value < least.value
  const bound = isShort ? most : isLong ? least : (most ?? least)
  const values = { needed: long(needed), bound: long(bound as Known<Length>), way: isShort ? 'short' : 'long' }
  return { checks: [check('traverse/extends', isShort || isLong ? 'fail' : 'pass', at, values, 'mark')], reckonings: [needed] }
})

/**
 * The heading against the rod. In front of it the heading stands as far above the rod as the pin is deeper than the carrier's drop, and hides
 * it; under it the heading must not meet the rod. Where the order says how far it stands above, the pins must make just that.
 */
export const pins = rule({
  id: 'pins',
  on: traverseRod,
  needs: { makeUp, bearingDrop },
  gives: { checks, reckonings },
  codes: ['traverse/pins'],
}).run(({ it, at, job, hardware, hardwareAt }, facts) => {
  const meant = perhaps(member(at, ['rod', 'headingAbove'], it.rod?.headingAbove))
  const height = { value: hardware.rod.height, from: below(hardwareAt, 'rod', 'height') }
  const each = facts.makeUp.panels.map((panel) => {
    const above = sum(
      `${at}/panels/${panel.panel}#heading-above`,
      'traverse/heading-above',
      plus('drapery/pin', panel.pin),
      minus('drapery/carrier-drop', facts.bearingDrop),
    )
    return { panel, above, ...judged(above, meant, hardware.carrier.at, height, ruleOf(job, 'heightsAgree')) }
  })
  return {
    checks: each.map(({ panel, above, verdict, how, pin }) => {
      const values = {
        panel: { code: `drapery/panel-${panel.outer}` },
        above: magnitude(above),
        way: above.value < 0 ? 'below' : 'above',
        how,
        pin: long(panel.pin),
        ...(meant
          ? { meant: magnitude(meant), wanted: meant.value < 0 ? 'below' : 'above' }
          : { meant: 'none', wanted: 'above' }),
      }
      const put =
        pin === undefined ? {} : { put: [{ at: panel.pin.from, value: { length: (facts.bearingDrop.value + pin) as Length } }] }
      return { ...check('traverse/pins', verdict, panel.pin.from, values, 'hang'), ...put }
    }),
    reckonings: each.map(({ above }) => above),
  }
})

/** How shallow pins may be in front of a rod, so that the heading covers it, and how deep under one, so that it stays below. */
export const reachOfPins = rule({
  id: 'pin-reach',
  on: traverseRod,
  needs: { bearingDrop },
  gives: { pinReach, reckonings },
}).run(({ at, hardware, hardwareAt }, facts) => {
  if (hardware.carrier.at === 'front') return { pinReach: { least: facts.bearingDrop } }
  const most = sum(
    `${at}#pin-most`,
    'traverse/pin-most',
    plus('drapery/carrier-drop', facts.bearingDrop),
    minus('traverse/rod-height', { value: hardware.rod.height, from: below(hardwareAt, 'rod', 'height') }),
  )
  return { pinReach: { most: known(most) }, reckonings: [most] }
})

/** `pin`: how much more than the carrier's drop a pin would be that does it. */
function judged(
  above: LengthReckoning,
  meant: Known<Length> | undefined,
  at: 'front' | 'under',
  rodHeight: Known<Length>,
  near: Known<Length>,
): { readonly verdict: 'pass' | 'warn' | 'fail'; readonly how: string; readonly pin?: number } {
  if (meant && Math.abs(above.value - meant.value) > near.value) return { verdict: 'fail', how: 'unlike', pin: meant.value }
  if (at === 'under' && above.value > -rodHeight.value) return { verdict: 'fail', how: 'meets', pin: -rodHeight.value }
  if (at === 'front' && above.value < 0) return { verdict: 'warn', how: 'shows' }
  return { verdict: 'pass', how: at }
}

/** Folds of a heading under the rod go back toward the wall, and must have room there. */
export const foldRoom = rule({
  id: 'fold-room',
  on: traverseRod,
  needs: { makeUp, projection },
  gives: { checks, reckonings },
  codes: ['traverse/fold-room'],
}).run(({ it, at, job, hardware }, facts) => {
  if (hardware.carrier.at !== 'under') return {}
  const each = facts.makeUp.panels.map((panel) => {
    const name = `${at}/panels/${panel.panel}#fold-room`
    const out = projectionAt(it, at, panel.outer, facts.projection)
    const [free, most] = foldsBack(name, out, ruleOf(job, 'foldFree'))
    const values = { space: long(panel.space), most: long(most), panel: { code: `drapery/panel-${panel.outer}` } }
    const verdict = panel.space.value > most.value ? 'fail' : 'pass'
    return { working: [free, most], check: check('traverse/fold-room', verdict, at, values, 'hang') }
  })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap((one) => one.working) }
})

/** A hook must go into its carrier. */
export const goesIn = rule({
  id: 'goes-in',
  on: traverseRod,
  needs: {},
  gives: { checks },
  codes: ['traverse/hook-in-carrier'],
}).run(({ it, at, hardware, hardwareAt }) => {
  const opening = perhaps(member(hardwareAt, ['carrier', 'opening'], hardware.carrier.opening))
  const wire = perhaps(member(at, ['hooks', 'wire'], it.hooks?.wire))
  if (!opening && !wire) return {}
  if (!opening || !wire) return { checks: [check('traverse/hook-in-carrier', 'unknown', at, {})] }
  const verdict = wire.value < opening.value ? 'pass' : 'fail'
  return { checks: [check('traverse/hook-in-carrier', verdict, wire.from, { opening: long(opening), wire: long(wire) }, 'hang')] }
})

/** What moves past a place when the draperies are drawn: from where it stands stacked to where it stands drawn, on its own side of the meeting point. */
interface Travel {
  readonly from: number
  readonly to: number
}

/** Where a support lets what travels pass: anywhere where nothing is stopped by it, else outside all travel. */
export const whereSupports = rule({
  id: 'where-supports',
  on: traverseRod,
  needs: { stand, coverage, hookMap },
  gives: { supportPlaces },
}).run(({ it, hardware }, { stand: { left, right }, coverage: covered, hookMap: map }) => {
  const blocks = it.draw === 'stationary' ? 'nothing' : (hardware.support?.blocks ?? 'nothing')
  const travels = blocks === 'nothing' ? [] : travelOf(blocks, map.places, covered)
  const free = freeOf(left.value, right.value, travels)
  const { meets } = covered
  // Where a pair meets nothing travels past.
  return { supportPlaces: meets && travels.length > 0 ? [...free, { from: meets.value, to: meets.value }] : free }
})
/** What is left of a stretch between travels. */
function freeOf(from: Length, to: Length, travels: readonly Travel[]) {
  const inside = travels.flatMap((each) => [each.from as Length, each.to as Length])
  const edges = [from, ...inside, to].sort((a, b) => a - b)
  const pieces = edges.slice(1).map((end, i) => ({ from: edges[i] as Length, to: end }))
  return pieces.filter((each) => each.to > each.from && !travels.some((one) => one.from < each.to && one.to > each.from))
}

/** A support that stops carriers or master carriers must stand outside their travel. At the meeting point of a pair it is right. */
export const supportsPass = rule({
  id: 'supports-pass',
  on: traverseRod,
  needs: { stand, coverage, hookMap },
  gives: { checks, reckonings },
  codes: ['traverse/support'],
}).run(({ it, at, hardware, hardwareAt }, facts) => {
  const { supports } = facts.stand
  if (supports.length === 0) return {}
  const blocks = it.draw === 'stationary' ? 'nothing' : (hardware.support?.blocks ?? 'nothing')
  return filled({ width: member(hardwareAt, ['carrier', 'width'], hardware.carrier.width) }, ({ width }) => {
    const travels = blocks === 'nothing' ? [] : travelOf(blocks, facts.hookMap.places, facts.coverage)
    return {
      checks: supports.map(({ id, x }) => {
        const isCrossed = travels.some(({ from, to }) => from < x.value - width.value / 2 && to > x.value + width.value / 2)
        const values = {
          x: long(x),
          how: blocks,
          what: { code: `traverse/${blocks === 'masters' ? 'masters-all' : 'carriers-all'}` },
        }
        const place: Place = below(at, 'rod', 'supports', id)
        return check('traverse/support', isCrossed ? 'fail' : 'pass', place, values, 'mark')
      }),
    }
  })
})

type Places = readonly { readonly panel: string; readonly to: string; readonly drawn: number; readonly stacked: number }[]
type Meeting = {
  readonly meets?: { readonly value: number } | undefined
  readonly shares: readonly { readonly panel: string; readonly outer: string }[]
}
const travelOf = (blocks: 'carriers' | 'masters', places: Places, { meets, shares }: Meeting): readonly Travel[] =>
  places
    .filter(({ to }) => to === 'traverse/to-master' || (blocks === 'carriers' && to === 'traverse/to-carrier'))
    .map(({ panel, drawn, stacked }) => {
      const outer = shares.find((share) => share.panel === panel)?.outer
      const end = meets === undefined ? drawn : outer === 'left' ? Math.min(drawn, meets.value) : Math.max(drawn, meets.value)
      return { from: Math.min(end, stacked), to: Math.max(end, stacked) }
    })
