import { below } from '@evenhem/job'
import { type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { between, spaceLeft, spliceAt } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { coverage, frame, reach, rod } from '../facts/index.ts'
import { check, filled, long, magnitude, member, openingOf, perhaps, wallUnder, windowOf } from '../given.ts'

/** The free wall on both sides, asked for at once and not only when all before it is filled. */
export const wallWanted = rule({ id: 'wall-wanted', on: 'treatment', needs: {}, gives: {} }).run(({ at, window }) => {
  // Around corners it is the walls where the hardware ends, which the rule below asks for.
  if (window.walls.length > 1) return {}
  const { wall, wallAt } = openingOf(window, windowOf(at))
  const side = (name: 'left' | 'right') => member(wallAt, ['space', name], wall.space?.[name])
  return filled({ left: side('left'), right: side('right') }, () => ({}))
})

/** The hardware against the free wall on each side, finials included. */
export const wallFits = rule({
  id: 'wall-fits',
  on: 'treatment',
  needs: { reach, frame },
  gives: { checks, reckonings },
  codes: ['drapery/wall-fits'],
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
      checks: [check('drapery/wall-fits', over[worse].value < 0 ? 'fail' : 'pass', place, values, 'mark')],
      reckonings: [over.left, over.right],
    }
  })
})

/** The rod as it was cut against the rod that the plan needs, from end to end: a short one lets the finials pinch the parked rings. */
export const rodLength = rule({
  id: 'rod-length',
  on: 'treatment',
  needs: { rod: { maybe: rod }, coverage: { maybe: coverage } },
  gives: { checks, reckonings },
  codes: ['drapery/rod-length'],
}).run(({ it, at, job }, facts) => {
  const cut = perhaps(member(at, ['rod', 'cut'], it.rod?.cut))
  if (!cut || !facts.rod) return {}
  const needed = between(`${at}#rod-needed`, 'drapery/rod-needed', facts.rod.left, facts.rod.right, facts.coverage?.corners)
  const over = sum(`${at}#rod-over`, 'drapery/rod-over', plus('drapery/rod-as-cut', cut), minus('drapery/rod-needed', needed))
  const near = ruleOf(job, 'heightsAgree')
  const verdict = over.value < -near.value ? 'fail' : over.value > 2 * ruleOf(job, 'widthOff').value ? 'warn' : 'pass'
  const values = { cut: long(cut), needed: long(needed), off: magnitude(over), near: long(near) }
  const put = verdict === 'fail' ? { put: [{ at: cut.from, value: { length: needed.value } }] } : {}
  return {
    checks: [{ ...check('drapery/rod-length', verdict, cut.from, values, 'mark'), ...put }],
    reckonings: [needed, over],
  }
})

/** A splice needs a support near it, or a bracket. */
export const splices = rule({
  id: 'splices',
  on: 'treatment',
  needs: { rod: { maybe: rod } },
  gives: { checks, reckonings },
  codes: ['drapery/splice-held'],
}).run(({ it, at, job }, facts) => {
  const near = ruleOf(job, 'splicePlace')
  if (!facts.rod) return {}
  const { left, held } = facts.rod
  const each = (it.rod?.splices ?? []).map((splice) => {
    const from = below(at, 'rod', 'splices', splice.id, 'fromLeft')
    const x = spliceAt(`${at}#splice-${splice.id}`, left, { value: splice.fromLeft, from })
    const nearest = [...held].sort((a, b) => Math.abs(a.value - x.value) - Math.abs(b.value - x.value))[0] as LengthReckoning
    const apart = between(`${at}#splice-${splice.id}-apart`, 'drapery/splice-apart', x, nearest)
    const values = { apart: long(apart), near: long(near), x: long(x) }
    return {
      working: [x, apart],
      check: check('drapery/splice-held', apart.value > near.value ? 'fail' : 'pass', from, values, 'mark'),
    }
  })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap((one) => one.working) }
})

/** The distances between neighbouring brackets against what the maker allows. */
export const span = rule({
  id: 'span',
  on: 'treatment',
  needs: { rod: { maybe: rod }, coverage: { maybe: coverage } },
  gives: { checks, reckonings },
  codes: ['drapery/span'],
}).run(({ at }, facts) => {
  const { held = [], span: most } = facts.rod ?? {}
  if (!most || held.length < 2) return {}
  const spans = held
    .slice(1)
    .map((to, i) =>
      between(`${at}#span-${i + 1}`, 'drapery/span-between', held[i] as LengthReckoning, to, facts.coverage?.corners),
    )
  const widest = spans.reduce((a, b) => (b.value > a.value ? b : a))
  const values = {
    widest: long(widest),
    most: long(most),
    over: magnitude({ value: widest.value - most.value }),
    count: { count: spans.length },
  }
  return {
    checks: [check('drapery/span', widest.value > most.value ? 'fail' : 'pass', at, values, 'mark')],
    reckonings: spans,
  }
})
