import { below, type Place, type Treatment, type Window } from '@evenhem/job'
import { type Known, known, type Length, type LengthReckoning, least, most, number, plus } from '@evenhem/length'
import { type Ask, checks, reckonings, rule } from '@evenhem/plugin'
import {
  type Allowance,
  type HungPanel as CeilingPanel,
  clearsBase,
  explained,
  type HemBase,
  heights,
  heightsApart,
  highestFloor,
  lowestCeiling,
  meantFromCasing,
  meantFromCeiling,
  meantFromFloor,
  overFloor,
  underCeiling,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import {
  bearingDrop,
  type Coverage,
  ceiling,
  ceilingDrop,
  coverage,
  type Floor,
  floor,
  frame,
  type HangLine,
  hangLine,
  type MakeUp,
  makeUp,
  topOfRod,
} from '../facts/index.ts'
import { check, coveredBy, filled, long, magnitude, member, perhaps, roomOf, windowOf } from '../given.ts'

/** The floor's points from left to right. */
export const floorRule = rule({ id: 'floor', on: 'window', needs: {}, gives: { floor } }).run(({ it, at }) => ({
  floor: {
    points: (it.floor ?? [])
      .map((point) => ({
        x: { value: point.x, from: below(at, 'floor', point.id, 'x') },
        y: { value: point.y, from: below(at, 'floor', point.id, 'y') },
      }))
      .sort((a, b) => a.x.value - b.x.value),
  },
}))

/** The ceiling over a window: its own points, or the one height of its room. */
export const ceilingRule = rule({ id: 'ceiling', on: 'window', needs: {}, gives: { ceiling } }).run(({ it, at, room }) => {
  const own = (it.ceiling ?? []).map((point) => ({
    x: { value: point.x, from: below(at, 'ceiling', point.id, 'x') },
    y: { value: point.y, from: below(at, 'ceiling', point.id, 'y') },
  }))
  const roomAt = roomOf(at)
  const whole =
    room.ceiling === undefined
      ? []
      : [{ x: number(0) as Known<Length>, y: { value: room.ceiling, from: below(roomAt, 'ceiling') } }]
  const points = own.length > 0 ? own.sort((a, b) => a.x.value - b.x.value) : whole
  return points.length > 0 ? { ceiling: { points } } : { ask: [below(roomAt, 'ceiling')] }
})

/** What the hem is measured from: the highest floor under it, the highest stool, or the lowest apron of what it covers. */
function baseOf(
  { it, at, window }: { it: Treatment; at: Place; window: Window },
  highest: LengthReckoning,
): { base: HemBase; working: readonly LengthReckoning[] } | Ask {
  const to = it.hemAt ?? 'floor'
  if (to === 'floor') return { base: { at: 'floor', height: known(highest) }, working: [] }
  const members = coveredBy(it, window, windowOf(at)).map(({ opening, openingAt }) =>
    to === 'sill'
      ? member(openingAt, ['sill', 'top'], opening.sill?.top)
      : member(openingAt, ['apron', 'bottom'], opening.apron?.bottom),
  )
  const empty = members.filter((each) => each.value === undefined)
  if (empty.length > 0) return { ask: empty.map((each) => each.from) }
  const [first, ...others] = members as unknown as readonly Known<Length>[]
  if (others.length === 0) return { base: { at: to, height: first as Known<Length> }, working: [] }
  const [pick, what] = to === 'sill' ? ([most, 'drapery/sill-top'] as const) : ([least, 'drapery/apron-bottom'] as const)
  const all = pick(`${at}#${to}`, what, ...[first as Known<Length>, ...others].map((one) => plus(what, one)))
  return { base: { at: to, height: known(all) }, working: [all] }
}

/** Hem, top of the drapery and hang line, from the highest floor under the drapery or from stool or apron. */
export const hangLineRule = rule({
  id: 'hang-line',
  on: 'treatment',
  needs: { floor, coverage, makeUp, ceiling: { maybe: ceiling }, ceilingDrop: { maybe: ceilingDrop } },
  gives: { hangLine, reckonings },
}).run(({ it, at, window }, facts) =>
  filled({ clearance: member(at, ['clearance'], it.clearance) }, ({ clearance }) => {
    const [leftEnd, rightEnd, highest] = highestFloor(
      at,
      facts.floor.points,
      known(facts.coverage.left),
      known(facts.coverage.right),
    )
    const found = baseOf({ it, at, window }, highest)
    if ('ask' in found) return found
    const { base } = found
    if (it.mount === 'ceiling' && facts.ceilingDrop) {
      if (!facts.ceiling) return { ask: [below(roomOf(at), 'ceiling')] }
      return fromCeiling(at, base, [leftEnd, rightEnd, highest, ...found.working], highest, {
        ...facts,
        ceiling: facts.ceiling,
        ceilingDrop: facts.ceilingDrop,
      })
    }
    const { working, ...rest } = heights(at, base, clearance, facts.makeUp.panels)
    const clears = rest.panels.map(({ panel, hem }) => clearsBase(`${at}#clears-${panel}`, base, hem))
    const panels = rest.panels.map((panel, i) => ({ ...panel, clears: clears[i] as LengthReckoning }))
    return {
      hangLine: { hemAt: base.at, highestFloor: highest, ...rest, panels },
      reckonings: [leftEnd, rightEnd, highest, ...found.working, ...working, ...clears],
    }
  }),
)

/** The same under a ceiling, whose height leaves no choice. */
function fromCeiling(
  at: Place,
  base: HemBase,
  before: readonly LengthReckoning[],
  highestFloor: LengthReckoning,
  facts: {
    readonly coverage: Coverage
    readonly makeUp: MakeUp
    readonly floor: Floor
    readonly ceiling: Floor
    readonly ceilingDrop: LengthReckoning
  },
): { readonly hangLine: HangLine; readonly reckonings: readonly LengthReckoning[] } {
  const panels = facts.makeUp.panels.flatMap((panel): readonly CeilingPanel[] => {
    const share = facts.coverage.shares.find((one) => one.panel === panel.panel)
    if (!share) return []
    const [left, right] = panel.outer === 'left' ? [share.end, share.leading] : [share.leading, share.end]
    return [{ ...panel, left: known(left), right: known(right) }]
  })
  const { working, left, middle, right, ...rest } = underCeiling(
    at,
    { left: known(facts.coverage.left), right: known(facts.coverage.right) },
    known(facts.ceilingDrop),
    facts.ceiling.points,
    facts.floor.points,
    base.at === 'floor' ? undefined : base,
    panels,
  )
  return {
    hangLine: { hemAt: base.at, highestFloor, ...rest, underCeiling: { left, middle, right } },
    reckonings: [...before, ...working],
  }
}

/**
 * Under a ceiling the clearance follows from it: at the left, in the middle and at the right, against what was ordered. Pins take up a little, more
 * is shims or the panel, and never the bracket.
 */
export const ceilingClears = rule({
  id: 'ceiling-clears',
  on: 'treatment',
  needs: { hangLine },
  gives: { checks },
  codes: ['drapery/ceiling-clears'],
}).run(({ it, at, job }, facts) => {
  const { underCeiling: clears } = facts.hangLine
  if (!clears) return {}
  return filled({ clearance: member(at, ['clearance'], it.clearance) }, ({ clearance }) => {
    const each = (['left', 'middle', 'right'] as const).map((where) => ({ where, off: clears[where].value - clearance.value }))
    const worst = each.reduce((a, b) => (Math.abs(b.off) > Math.abs(a.off) ? b : a))
    const off = Math.abs(worst.off)
    const verdict = off <= ruleOf(job, 'heightsAgree').value ? 'pass' : off <= ruleOf(job, 'pinRange').value ? 'warn' : 'fail'
    const values = {
      left: long(clears.left),
      middle: long(clears.middle),
      right: long(clears.right),
      clearance: long(clearance),
      off: { length: off as Length },
      where: { code: `drapery/at-${worst.where}` },
      way: worst.off > 0 ? 'high' : 'low',
    }
    return { checks: [check('drapery/ceiling-clears', verdict, at, values, 'hang')] }
  })
})

/** The rod's height both ways: from the panels, and as the order means it, by each height that the order gives. */
export const rodHeight = rule({
  id: 'rod-height',
  on: 'treatment',
  needs: { hangLine, topOfRod, bearingDrop, makeUp, frame, coverage, ceiling: { maybe: ceiling } },
  gives: { checks, reckonings },
  codes: ['drapery/rod-height'],
}).run(({ it, at, window, job }, facts) => {
  const [fromFloor, above, under] = (['top', 'aboveCasing', 'belowCeiling'] as const).map((name) =>
    perhaps(member(at, ['rod', name], it.rod?.[name])),
  )
  if (it.mount === 'ceiling' && !fromFloor && !above && !under) return {}
  if (!fromFloor && !above && !under)
    return {
      checks: [
        { ...check('drapery/rod-height', 'unknown', at, { worked: long(facts.topOfRod) }), says: 'drapery/rod-height.unsaid' },
      ],
    }
  const casingTops = coveredBy(it, window, windowOf(at)).map(({ openingAt }) => below(openingAt, 'casing', 'top'))
  if (above && !facts.frame.top) return { ask: casingTops }
  if (under && !facts.ceiling) return { ask: [below(roomOf(at), 'ceiling')] }
  const { highestFloor: highest } = facts.hangLine
  const overhead =
    under && facts.ceiling
      ? lowestCeiling(at, facts.ceiling.points, known(facts.coverage.left), known(facts.coverage.right))
      : undefined
  const meant = [
    ...(fromFloor ? [{ from: fromFloor, top: meantFromFloor(at, highest, fromFloor) }] : []),
    ...(above ? [{ from: above, top: meantFromCasing(at, facts.frame.top as Known<Length>, above) }] : []),
    ...(under && overhead ? [{ from: under, top: meantFromCeiling(at, overhead[2], under) }] : []),
  ]
  const near = ruleOf(job, 'heightsAgree')
  const setter = facts.makeUp.panels.find((panel) => facts.hangLine.sets === panel.panel)
  const allowances: Readonly<Record<string, Allowance>> = {
    'drapery/pin': { value: setter?.pin.value ?? (0 as Length), put: 'on' },
    'drapery/eye-drop': { value: facts.bearingDrop.value, put: 'off' },
    'drapery/clearance': { value: it.clearance ?? (0 as Length), put: 'off' },
  }
  const each = meant.map(({ top, from }) => {
    const { check: found, working } = compared(at, facts.topOfRod, top, highest, near, allowances)
    // One value that would do it: the height in the order, so that both ways agree.
    const value = (from.value + (from === under ? -1 : 1) * (facts.topOfRod.value - top.value)) as Length
    return { check: found.verdict === 'fail' ? { ...found, put: [{ at: from.from, value: { length: value } }] } : found, working }
  })
  const reckoned = [...(overhead ?? []), ...meant.map((one) => one.top), ...each.flatMap((one) => one.working)]
  return { checks: each.map((one) => one.check), reckonings: reckoned }
})

/** One of the order's heights against the panels'; people are told both from the highest floor, as the order says them. */
function compared(
  at: string,
  worked: LengthReckoning,
  meant: LengthReckoning,
  highest: LengthReckoning,
  near: Known<Length>,
  allowances: Readonly<Record<string, Allowance>>,
) {
  const apart = heightsApart(`${meant.name}-apart`, worked, meant)
  const floor = overFloor(`${meant.name}-over-floor`, 'drapery/meant-over-floor', meant, highest)
  const top = overFloor(`${meant.name}-rod-over-floor`, 'drapery/rod-over-floor', worked, highest)
  const causes = explained(apart.value, allowances, (near.value / 2) as Length)
  const [cause] = causes
  const code = causes.length > 1 ? 'drapery/several-causes' : cause ? `${cause.what}.${cause.how}` : 'drapery/no-cause'
  const values = {
    worked: long(top),
    meant: long(floor),
    apart: magnitude(apart),
    near: long(near),
    way: apart.value > 0 ? 'long' : 'short',
    cause: { code },
  }
  const verdict = Math.abs(apart.value) <= near.value ? ('pass' as const) : ('fail' as const)
  return { check: check('drapery/rod-height', verdict, at, values, 'mark'), working: [apart, floor, top] }
}
