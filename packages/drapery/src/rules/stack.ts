import { below, type Fabric, type JobHead, type Place } from '@evenhem/job'
import { type Known, known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { glassCovered, type StackBase, stackBy, stackRules, stacksBy } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { coverage, frame, glass, hookMap, type Share, stackRules as stackRulesFact } from '../facts/index.ts'
import { check, coveredBy, filled, long, type Member, member, type PlacedOpening, panelAt, windowOf } from '../given.ts'

/** Blackout linings go by their name; nothing else in an order says what a lining does. */
const liningOf = (fabric: Fabric | undefined): StackBase['lining'] => {
  if (fabric?.interlining) return 'interlined'
  if (!fabric?.lining) return 'none'
  return /black-?out|dim-?out/i.test(fabric.lining) ? 'blackout' : 'lined'
}

const glassMembers = ({ opening, openingAt }: PlacedOpening): Readonly<Record<'x' | 'start' | 'width', Member<Length>>> => ({
  x: opening.x === undefined ? { value: 0 as Length, from: 'number:0' } : { value: opening.x, from: below(openingAt, 'x') },
  start: member(openingAt, ['glass', 'fromLeft'], opening.glass?.fromLeft),
  width: member(openingAt, ['glass', 'width'], opening.glass?.width),
})

/** The glass that is seen, from its left edge to its right one; of several openings from the first to the last. */
function glassEdges(at: Place, first: Edge, last: Edge): readonly [LengthReckoning, LengthReckoning, LengthReckoning] {
  const left = sum(
    `${at}#glass-left`,
    'drapery/glass-edge',
    plus('drapery/casing-x', first.x),
    plus('drapery/glass-from-left', first.start),
  )
  const right = sum(
    `${at}#glass-right`,
    'drapery/glass-edge',
    plus('drapery/casing-x', last.x),
    plus('drapery/glass-from-left', last.start),
    plus('drapery/glass-width', last.width),
  )
  const width = sum(`${at}#glass`, 'drapery/glass-width', plus('drapery/glass-edge', right), minus('drapery/glass-edge', left))
  return [left, right, width]
}
type Edge = Readonly<Record<'x' | 'start' | 'width', Known<Length>>>

/** The rule for stacks that the workroom chose; undefined: none, or the one that holds anyway. */
const chosenRule = ({ workroom }: JobHead) =>
  stackRules.find(({ id, says }) => says === workroom?.rules?.stackBy && id !== 'rod-third')

/** Where the glass is that a treatment covers, when somebody wants to know: for what is clear of it, or for a stack that is a part of it. */
export const glassRule = rule({ id: 'glass', on: 'treatment', needs: {}, gives: { glass, reckonings } }).run(
  ({ it, at, job, window }) => {
    const openings = coveredBy(it, window, windowOf(at)).map(glassMembers)
    const [first, last] = [openings[0], openings.at(-1)] as const
    const isWanted = it.draw !== 'stationary' && (it.clearGlass !== undefined || chosenRule(job)?.of === 'glass')
    if (!isWanted || !first || !last) return {}
    return filled({ fx: first.x, ff: first.start, fw: first.width, lx: last.x, lf: last.start, lw: last.width }, (seen) => {
      const [left, right, width] = glassEdges(
        at,
        { x: seen.fx, start: seen.ff, width: seen.fw },
        { x: seen.lx, start: seen.lf, width: seen.lw },
      )
      return { glass: { left, right, width }, reckonings: [left, right, width] }
    })
  },
)

/**
 * How wide each panel stacks by the rule that the workroom chose. While nobody measured what it is of, which is asked for, a third of the share stands in
 * and says so in its working: no hook waits for an estimate.
 */
export const stackRule = rule({
  id: 'stack-rule',
  on: 'treatment',
  needs: { coverage, frame: { maybe: frame }, glass: { maybe: glass } },
  gives: { stackRules: stackRulesFact, reckonings },
}).run(({ it, at, job, fabric }, { coverage: covered, frame: casing, glass: seen }) => {
  const chosen = chosenRule(job)
  if (!chosen || it.draw === 'stationary') return { stackRules: [] }
  if (!casing) return { stackRules: [] }
  const base = {
    window: casing.width,
    glass: seen && known(seen.width),
    isPair: covered.shares.length > 1,
    lining: liningOf(fabric),
  }
  const by = covered.shares.flatMap(({ panel, width }) => {
    const stack = stackBy(`${panelAt(at, panel)}#stack-rule`, { ...base, share: width }, chosen)
    return stack ? [{ panel, width: stack }] : []
  })
  return by.length < covered.shares.length ? { stackRules: [] } : { stackRules: by, reckonings: by.map(({ width }) => width) }
})

/**
 * How much glass is clear when the drapery is open, against what was ordered. By an estimated stack it may only warn, and the range of the published rules
 * is told beside it; a stack that was measured decides.
 */
export const clearGlass = rule({
  id: 'clear-glass',
  on: 'treatment',
  needs: { coverage: { maybe: coverage }, frame: { maybe: frame }, hookMap: { maybe: hookMap }, glass: { maybe: glass } },
  gives: { checks, reckonings },
  codes: ['drapery/clear-glass'],
}).run(({ it, at, job, fabric }, { coverage: covered, frame: casing, hookMap: hooks, glass: seen }) => {
  if (it.clearGlass === undefined || it.draw === 'stationary') return {}
  if (!seen) return { checks: [check('drapery/clear-glass', 'unknown', below(at, 'clearGlass'), {})] }
  if (!covered || !casing || !hooks?.stacks) return {}
  const { width } = seen
  const edges = { left: known(seen.left), right: known(seen.right) }
  const base = { window: casing.width, glass: known(width), isPair: covered.shares.length > 1, lining: liningOf(fabric) }
  const each = covered.shares.flatMap((share) => {
    const stack = hooks.stacks?.find(({ panel }) => panel === share.panel)?.width
    return stack
      ? [
          {
            share,
            stack,
            ...overGlass(at, share, stack, edges),
            by: stacksBy(panelAt(at, share.panel), { ...base, share: share.width }),
          },
        ]
      : []
  })
  const clear = sum(
    `${at}#clear-glass`,
    'drapery/clear-glass-left',
    plus('drapery/glass-width', width),
    ...each.map(({ over }) => minus('drapery/glass-covered', over[1])),
  )
  const isMeasured = each.every(({ share }) => it.found?.stacks?.[share.panel] !== undefined)
  const range = rangeOf(width, each, edges)
  const wanted = { value: it.clearGlass as Length, from: below(at, 'clearGlass') }
  const isShort = clear.value < wanted.value - ruleOf(job, 'heightsAgree').value
  const values = {
    clear: long(clear),
    wanted: long(wanted),
    glass: long(width),
    least: { length: range[0] },
    most: { length: range[1] },
    how: isMeasured ? 'measured' : 'estimated',
  }
  return {
    checks: [check('drapery/clear-glass', isShort ? (isMeasured ? 'fail' : 'warn') : 'pass', wanted.from, values)],
    reckonings: [...each.flatMap(({ over, by }) => [...over, ...by]), clear],
  }
})

interface Edges {
  readonly left: Known<Length>
  readonly right: Known<Length>
}
const overGlass = (at: Place, share: Share, stack: LengthReckoning, edges: Edges) => ({
  over: glassCovered(panelAt(at, share.panel), share.outer, share.end, stack, edges),
})

/** The least and the most glass that the published rules leave clear. */
function rangeOf(
  glass: LengthReckoning,
  each: readonly { readonly share: Share; readonly by: readonly LengthReckoning[] }[],
  edges: Edges,
): readonly [Length, Length] {
  const rules = each[0]?.by.length ?? 0
  const clears = Array.from({ length: rules }, (_, n) =>
    each.reduce((all, { share, by }) => {
      const stack = by[n]?.value ?? 0
      const over =
        share.outer === 'left' ? share.end.value + stack - edges.left.value : edges.right.value - share.end.value + stack
      return all - Math.max(0, over)
    }, glass.value as number),
  )
  return [Math.min(...clears) as Length, Math.max(...clears) as Length]
}
