import { below, check, filled, long, magnitude, member, openingOf, perhaps, ruleOf, wallUnder, windowOf } from '@evenhem/drapery'
import { between, halvesBeside, spaceLeft, spliceAt } from '@evenhem/drapery/arithmetic'
import { coverage, frame, makeUp, reach } from '@evenhem/drapery/facts'
import { type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { along } from './facts.ts'
import { rod } from './kind.ts'

/** The hardware against the free wall on each side, finials included. */
export const wallSpace = rule({
  id: 'wall-space',
  on: rod,
  needs: { reach, frame },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/wall-space'],
}).run(({ at, window }, facts) => {
  const first = wallUnder(window, windowOf(at), facts.reach.left.value)
  const last = wallUnder(window, windowOf(at), facts.reach.right.value)
  const members = {
    left: member(first.wallAt, ['space', 'left'], first.wall.space?.left),
    right: member(last.wallAt, ['space', 'right'], last.wall.space?.right),
  }
  return filled(members, (known) => {
    const over = {
      left: spaceLeft(at, 'left', facts.reach.left, known.left, facts.frame),
      right: spaceLeft(at, 'right', facts.reach.right, known.right, facts.frame),
    }
    const worse = over.left.value <= over.right.value ? ('left' as const) : ('right' as const)
    const values = {
      left: long(over.left),
      right: long(over.right),
      short: magnitude(over[worse]),
      side: { code: `drapery/${worse}` },
      space: long(known[worse]),
    }
    const place = worse === 'left' ? first.wallAt : last.wallAt
    return {
      checks: [check('rod-and-ring/wall-space', over[worse].value < 0 ? 'fail' : 'pass', place, values, 'mark')],
      reckonings: [over.left, over.right],
    }
  })
})

/** What else must be known of the rings and the wall, asked for at once and not only when all before it is filled. */
export const wanted = rule({ id: 'wanted', on: rod, needs: {}, gives: {} }).run(({ mine, mineAt, at, window }) => {
  const { wall, wallAt } = openingOf(window, windowOf(at))
  return filled(
    {
      rings: member(mineAt, ['rings'], mine?.rings),
      left: member(wallAt, ['space', 'left'], wall.space?.left),
      right: member(wallAt, ['space', 'right'], wall.space?.right),
    },
    () => ({}),
  )
})

/** The rod as it was cut against the rod that the plan needs, from end to end: a short one lets the finials pinch the parked rings. */
export const rodLength = rule({
  id: 'rod-length',
  on: rod,
  needs: { along },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/rod-length'],
}).run(({ it, at, job }, facts) => {
  const cut = perhaps(member(at, ['rod', 'cut'], it.rod?.cut))
  if (!cut) return {}
  const needed = between(`${at}#rod-needed`, 'rod-and-ring/rod-needed', facts.along.left.rodEnd, facts.along.right.rodEnd)
  const over = sum(
    `${at}#rod-over`,
    'rod-and-ring/rod-over',
    plus('rod-and-ring/rod-as-cut', cut),
    minus('rod-and-ring/rod-needed', needed),
  )
  const near = ruleOf(job, 'heightsAgree')
  const verdict = over.value < -near.value ? 'fail' : over.value > 2 * ruleOf(job, 'widthOff').value ? 'warn' : 'pass'
  const values = { cut: long(cut), needed: long(needed), off: magnitude(over), near: long(near) }
  const put = verdict === 'fail' ? { put: [{ at: cut.from, value: { length: needed.value } }] } : {}
  return {
    checks: [{ ...check('rod-and-ring/rod-length', verdict, cut.from, values, 'mark'), ...put }],
    reckonings: [needed, over],
  }
})

/** A splice needs a support near it, or a bracket. */
export const splices = rule({
  id: 'splices',
  on: rod,
  needs: { along },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/splice'],
}).run(({ it, at, job }, facts) => {
  const near = ruleOf(job, 'splicePlace')
  const held = [facts.along.left.bracket, ...facts.along.supports.map((support) => support.x), facts.along.right.bracket]
  const each = (it.rod?.splices ?? []).map((splice) => {
    const from = below(at, 'rod', 'splices', splice.id, 'fromLeft')
    const x = spliceAt(`${at}#splice-${splice.id}`, facts.along.left.rodEnd, { value: splice.fromLeft, from })
    const nearest = [...held].sort((a, b) => Math.abs(a.value - x.value) - Math.abs(b.value - x.value))[0] as LengthReckoning
    const apart = between(`${at}#splice-${splice.id}-apart`, 'rod-and-ring/splice-apart', x, nearest)
    const values = { apart: long(apart), near: long(near), x: long(x) }
    return {
      working: [x, apart],
      check: check('rod-and-ring/splice', apart.value > near.value ? 'fail' : 'pass', from, values, 'mark'),
    }
  })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap((one) => one.working) }
})

/** The distances between neighbouring brackets against what the maker allows. */
export const span = rule({
  id: 'span',
  on: rod,
  needs: { along },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/span'],
}).run(({ hardware, hardwareAt, at }, facts) => {
  const most = perhaps(member(hardwareAt, ['rod', 'span'], hardware.rod.span))
  if (!most) return {}
  const held = [facts.along.left.bracket, ...facts.along.supports.map((support) => support.x), facts.along.right.bracket]
  const spans = held
    .slice(1)
    .map((to, i) => between(`${at}#span-${i + 1}`, 'rod-and-ring/span-between', held[i] as LengthReckoning, to))
  const widest = spans.reduce((a, b) => (b.value > a.value ? b : a))
  const values = {
    widest: long(widest),
    most: long(most),
    over: magnitude({ value: widest.value - most.value }),
    count: { count: spans.length },
  }
  return {
    checks: [check('rod-and-ring/span', widest.value > most.value ? 'fail' : 'pass', at, values, 'mark')],
    reckonings: spans,
  }
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
