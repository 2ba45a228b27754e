import { below, check, filled, long, member, perhaps, ruleOf } from '@evenhem/drapery'
import { between, halvesBeside } from '@evenhem/drapery/arithmetic'
import { coverage, makeUp, pinReach, supportPlaces } from '@evenhem/drapery/facts'
import { type Known, type Length, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { along } from './facts.ts'
import { rod } from './kind.ts'
import { ringsThere } from './rings.ts'

/** How many rings were packed, asked for at once and not only when all before it is filled. */
export const wanted = rule({ id: 'wanted', on: rod, needs: {}, gives: {} }).run(({ it, at, mine, mineAt }) =>
  filled({ rings: ringsThere(it, at, mine?.rings, mineAt) }, () => ({})),
)

/** Where a support lets the panels travel: anywhere where rings pass it or nothing moves, else only where a pair meets. */
export const whereSupports = rule({
  id: 'where-supports',
  on: rod,
  needs: { along, coverage },
  gives: { supportPlaces },
}).run(({ it, hardware }, { along: { left, right }, coverage: { meets } }) => {
  const isFree = hardware.ring.passes === 'passing' || it.draw === 'stationary'
  if (isFree) return { supportPlaces: [{ from: left.bracket.value, to: right.bracket.value }] }
  return { supportPlaces: meets ? [{ from: meets.value, to: meets.value }] : [] }
})

/**
 * A support stops closed rings inside the travel of a panel. Where a pair meets it is right, and leaves a gap of a bracket and a ring; rings that are
 * open at the top pass it; stationary panels do not travel.
 */
export const supportsPass = rule({
  id: 'supports-pass',
  on: rod,
  needs: { along, coverage },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/support'],
}).run(({ it, at, hardware, hardwareAt }, facts) => {
  const { supports, left, right } = facts.along
  if (supports.length === 0) return {}
  const sizes = {
    plate: member(hardwareAt, ['support', 'width'], hardware.support?.width),
    ring: member(hardwareAt, ['ring', 'width'], hardware.ring.width),
  }
  return filled(sizes, ({ plate, ring }) => {
    const free = hardware.ring.passes === 'passing' || it.draw === 'stationary'
    const each = supports.map(({ id, x }) => {
      const halves = halvesBeside(at, 'middle', plate, ring)
      const place = below(at, 'rod', 'supports', id)
      if (free)
        return { working: [], check: check('rod-and-ring/support', 'pass', place, { how: 'free', gap: { length: 0 as Length } }) }
      const { meets } = facts.coverage
      const from = meets && between(`${at}#support-${id}-from-meeting`, 'rod-and-ring/from-meeting', x, meets)
      const isBetween = from !== undefined && from.value <= halves[2].value
      const isOutside = x.value <= left.bracket.value || x.value >= right.bracket.value
      const gap = sum(
        `${at}#support-${id}-gap`,
        'rod-and-ring/gap',
        plus('drapery/plate-width', plate),
        plus('drapery/ring-width', ring),
      )
      const verdict = isBetween || isOutside ? 'pass' : 'fail'
      const values = { how: isBetween ? 'meeting' : 'travel', gap: long(gap), x: long(x) }
      return {
        working: [gap, ...(from ? [...halves, from] : [])],
        check: check('rod-and-ring/support', verdict, place, values, 'mark'),
      }
    })
    const working = each.flatMap((one) => one.working)
    const once = working.filter((one, i) => working.findIndex((other) => other.name === one.name) === i)
    return { checks: each.map((one) => one.check), reckonings: once }
  })
})

/** Between which settings pins on rings work. */
export const reachOfPins = rule({ id: 'pin-reach', on: rod, needs: {}, gives: { pinReach } }).run(({ job }) => ({
  pinReach: { least: ruleOf(job, 'pinLeast'), most: ruleOf(job, 'pinMost') },
}))

/** The pin settings against the range in which pins on rings work: the panel that is furthest from it. */
export const pinRange = rule({
  id: 'pin-range',
  on: rod,
  needs: { makeUp },
  gives: { checks },
  codes: ['rod-and-ring/pins'],
}).run(({ job }, facts) => {
  const [least, most] = [ruleOf(job, 'pinLeast'), ruleOf(job, 'pinMost')]
  const outside = (pin: number) => Math.max(least.value - pin, pin - most.value)
  const [furthest] = [...facts.makeUp.panels].sort((a, b) => outside(b.pin.value) - outside(a.pin.value))
  if (!furthest) return {}
  const values = {
    panel: { code: `drapery/panel-${furthest.outer}` },
    pin: long(furthest.pin),
    least: long(least),
    most: long(most),
  }
  return { checks: [check('rod-and-ring/pins', outside(furthest.pin.value) > 0 ? 'warn' : 'pass', furthest.pin.from, values)] }
})

/** Small things that must go into one another: the rod into the ring, the hook into its eye. */
export const goesIn = rule({
  id: 'goes-in',
  on: rod,
  needs: {},
  gives: { checks },
  codes: ['rod-and-ring/ring-on-rod', 'rod-and-ring/hook-in-eye'],
}).run(({ it, at, hardware, hardwareAt }) => {
  const inside = perhaps(member(hardwareAt, ['ring', 'inside'], hardware.ring.inside))
  const eye = perhaps(member(hardwareAt, ['ring', 'eyeOpening'], hardware.ring.eyeOpening))
  const wire = perhaps(member(at, ['hooks', 'wire'], it.hooks?.wire))
  const { diameter } = hardware.rod
  const ring =
    inside &&
    check(
      'rod-and-ring/ring-on-rod',
      inside.value > diameter ? 'pass' : 'fail',
      inside.from,
      { inside: long(inside), diameter: { length: diameter } },
      'mount',
    )
  const hook = (eye || wire) && hookInEye(eye, wire, at)
  return { checks: [...(ring ? [ring] : []), ...(hook ? [hook] : [])] }
})

const hookInEye = (eye: Known<Length> | undefined, wire: Known<Length> | undefined, at: string) =>
  eye && wire
    ? check(
        'rod-and-ring/hook-in-eye',
        wire.value < eye.value ? 'pass' : 'fail',
        wire.from,
        { eye: long(eye), wire: long(wire) },
        'mount',
      )
    : check('rod-and-ring/hook-in-eye', 'unknown', at, {})
