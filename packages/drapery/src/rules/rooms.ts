import { below, type Place } from '@evenhem/job'
import { type Known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { type Check, checks, reckonings, rule } from '@evenhem/plugin'
import { ruleOf } from '../defaults.ts'
import { bags, hangLine, patternLine, topOfRod } from '../facts/index.ts'
import { check, long, member, panelAt, perhaps } from '../given.ts'

/** Where the pattern's repeat begins on a panel, above the level line; of the first panel that says so. */
export const patternRule = rule({
  id: 'pattern-line',
  on: 'treatment',
  needs: { hangLine },
  gives: { patternLine, reckonings },
}).run(({ it, at, fabric }, facts) => {
  const panel = it.panels.find((each) => each.patternStart !== undefined)
  const start = panel && perhaps(member(panelAt(at, panel.id), ['patternStart'], panel.patternStart))
  if (!start || !fabric) return {}
  const line = sum(
    `${at}#pattern-line`,
    'drapery/pattern-line',
    plus('drapery/top', facts.hangLine.top),
    minus('drapery/pattern-start', start),
  )
  return { patternLine: { fabric: fabric.id, line }, reckonings: [line] }
})

interface Placed {
  readonly at: Place
  readonly height: LengthReckoning
}
/** The heights of one room that the eye compares, lowest and highest; outer treatments only, since an inner layer hangs lower by intent. */
function alike(
  code: string,
  name: string,
  at: Place,
  all: readonly Placed[],
  near: Known<Length>,
): { readonly checks: readonly Check[]; readonly working: readonly LengthReckoning[] } {
  const sorted = [...all].sort((a, b) => a.height.value - b.height.value)
  const [low, high] = [sorted[0], sorted.at(-1)]
  if (!low || !high || low === high) return { checks: [], working: [] }
  const apart = sum(
    `${at}#${name}`,
    'drapery/apart-in-room',
    plus('drapery/highest-of-room', high.height),
    minus('drapery/lowest-of-room', low.height),
  )
  const values = { apart: long(apart), near: long(near), count: { count: all.length } }
  return { checks: [check(code, apart.value > near.value ? 'warn' : 'pass', at, values)], working: [apart] }
}

/** The outermost treatment of each window. */
function outermost<T>(
  all: readonly { readonly at: Place; readonly value: T }[],
): readonly { readonly at: Place; readonly value: T }[] {
  const windowAt = (at: Place) => at.slice(0, at.lastIndexOf('/treatments/'))
  return all.filter((each, i) => !all.some((other, j) => j > i && windowAt(other.at) === windowAt(each.at)))
}

/** Rods, hems and patterns of the windows of one room, which the eye compares with one another. */
export const roomAlike = rule({
  id: 'room-alike',
  on: 'room',
  needs: { rods: { each: topOfRod }, hung: { each: hangLine }, patterns: { each: patternLine } },
  gives: { checks, reckonings },
  codes: ['drapery/room-rods', 'drapery/room-hems', 'drapery/room-patterns'],
}).run(({ it, at, job }, facts) => {
  const near = ruleOf(job, 'roomHeights')
  const may = (what: 'rods' | 'hems' | 'patterns') => it.mayDiffer?.includes(what) ?? false
  const rods = outermost(facts.rods).map(({ at: place, value }) => ({ at: place, height: value }))
  const hems = outermost(facts.hung)
    .filter(({ value }) => value.hemAt === 'floor')
    .map(({ at: place, value }) => ({ at: place, height: value.hem }))
  const fabrics = [...new Set(facts.patterns.map(({ value }) => value.fabric))]
  const results = [
    ...(may('rods') ? [] : [alike('drapery/room-rods', 'rods-apart', at, rods, near)]),
    ...(may('hems') ? [] : [alike('drapery/room-hems', 'hems-apart-in-room', at, hems, near)]),
    ...(may('patterns')
      ? []
      : fabrics.map((fabric) =>
          alike(
            'drapery/room-patterns',
            `patterns-apart-${fabric}`,
            at,
            facts.patterns
              .filter(({ value }) => value.fabric === fabric)
              .map(({ at: place, value }) => ({ at: place, height: value.line })),
            near,
          ),
        )),
  ]
  return { checks: results.flatMap((each) => each.checks), reckonings: results.flatMap((each) => each.working) }
})

/** The labels of the bags of a treatment. */
export const bagRule = rule({ id: 'bags', on: 'treatment', needs: {}, gives: { bags } }).run(({ it, at }) => ({
  bags: it.panels.flatMap((panel) =>
    panel.bag === undefined ? [] : [{ bag: panel.bag, at: below(panelAt(at, panel.id), 'bag') }],
  ),
}))

/** One label on one bag: two panels under the same label get swapped. */
export const bagLabels = rule({
  id: 'bag-labels',
  on: 'job',
  needs: { bags: { each: bags } },
  gives: { checks },
  codes: ['drapery/bag-labels'],
}).run((_, facts) => {
  const all = facts.bags.flatMap(({ value }) => value)
  const twice = all.find((one, i) => all.findIndex((other) => other.bag === one.bag) < i)
  const shown = twice ?? all[0]
  if (!shown) return {}
  const values = { count: { count: all.length }, bag: shown.bag }
  return { checks: [check('drapery/bag-labels', twice ? 'fail' : 'pass', shown.at, values, 'unpack')] }
})
