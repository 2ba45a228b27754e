import { below, type JobHead } from '@evenhem/job'
import { type Known, known, type Length, type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import type { Check, Quantity, Values, Verdict, WayOut } from '@evenhem/plugin'
import { type Choice, type Choices, hungAt, mostOutOfLevel } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import type { HungBracket, MakeUp } from '../facts/index.ts'
import { check, long, magnitude } from '../given.ts'
import type { Transfer } from './transfer.ts'
import { type Bracket, type Further, isHeld, isRecorded, markChosen, markRead } from './transfer-marks.ts'

interface Found {
  readonly checks: readonly Check[]
  readonly working: readonly LengthReckoning[]
}
const nothing: Found = { checks: [], working: [] }

/** A bracket in words; supports by their number from the left when there are several. */
export function bracketWord({ hung }: Pick<Transfer, 'hung'>, id: string): Quantity {
  const supports = hung.points.map(({ bracket }) => bracket).filter((bracket) => bracket !== 'left' && bracket !== 'right')
  const n = supports.indexOf(id)
  if (n < 0) return { code: `drapery/bracket-${id}` }
  return { code: supports.length === 1 ? 'drapery/support' : `drapery/support-${Math.min(n + 1, 9)}` }
}

type Sign = 'unknown' | 'same' | 'more' | 'less'
const signOf = (gap: { readonly value: number } | undefined): Sign =>
  gap === undefined ? 'unknown' : gap.value === 0 ? 'same' : gap.value > 0 ? 'more' : 'less'
/** A gap as a sentence needs it, by a sign and a magnitude, and signed for a picture where it is known. */
const gapValues = (name: string, gap: LengthReckoning | undefined): Values => ({
  [`${name}Is`]: signOf(gap),
  [`${name}By`]: magnitude(gap ?? { value: 0 }),
  ...(gap ? { [name]: long(gap) } : {}),
})
const halfRange = (job: JobHead): number => ruleOf(job, 'pinRange').value / 2
const canPin = (off: number, job: JobHead): 'yes' | 'no' => (Math.abs(off) <= halfRange(job) ? 'yes' : 'no')

/** What a choice does, and what stands where once it is taken. */
function wayOf(
  all: Transfer,
  bracket: Bracket,
  { distances }: Choices,
  { follows, mark, gaps, largest }: Choice,
  job: JobHead,
): WayOut {
  const reach = ruleOf(job, 'eyeReach')
  const isNear = Object.values(distances).some((distance) => Math.abs(distance.value) < reach.value)
  return {
    code: `drapery/follow-${follows}`,
    values: {
      bracket: bracketWord(all, bracket.id),
      mark: long(mark),
      ...gapValues('ceiling', gaps.ceiling),
      ...gapValues('head', gaps.head),
      ...gapValues('hem', gaps.hem),
      ...gapValues('rod', gaps.rod),
      largest: { length: largest },
      pins: canPin(gaps.hem.value, job),
      reach: long(reach),
      why: isNear ? 'near' : 'far',
    },
    put: [{ at: below(bracket.place, 'follows'), value: follows }],
  }
}

/** The marks at each further bracket: where they are apart somebody chooses before anything is drilled there. */
export function marksAgree(all: Transfer, job: JobHead): Found {
  const near = ruleOf(job, 'heightsAgree')
  const asked = all.further.filter(({ bracket }) => !isHeld(bracket))
  const checks = asked.flatMap((further) => (further.choices ? [agreeOf(all, further, further.choices, near, job)] : []))
  return { checks, working: [] }
}
function agreeOf(all: Transfer, further: Further, choices: Choices, near: Known<Length>, job: JobHead): Check {
  const { bracket } = further
  const place = below(bracket.place, 'follows')
  const { marks, apart, agree, least, list } = choices
  const [best] = list as [Choice]
  const { follows } = bracket.found
  const chosen = markChosen(further)
  const common = { bracket: bracketWord(all, bracket.id), near: long(near), apart: { length: apart } }
  const told = (verdict: Verdict, how: string, values: Values): Check => ({
    code: 'drapery/marks-agree',
    says: `drapery/marks-agree.${how}`,
    verdict,
    at: place,
    values: { ...common, ...values },
  })
  if (follows && chosen) return told('pass', 'followed', { follows: { code: `drapery/line-${follows}` }, mark: long(chosen) })
  if (follows || (marks.ceiling === undefined && marks.head === undefined && marks.level === undefined))
    return { ...told('unknown', 'unread', {}), stops: 'drill' }
  if (apart <= near.value) return check('drapery/marks-agree', 'pass', place, common)
  const each = (line: 'ceiling' | 'head' | 'level' | 'floor') => ({
    [`${line}Is`]: marks[line] ? 'known' : 'unknown',
    [line]: long(marks[line] ?? { value: 0 }),
  })
  const values = {
    ...each('ceiling'),
    ...each('head'),
    ...each('level'),
    ...each('floor'),
    agree: agree.length > 1 ? 'some' : 'none',
    count: { count: agree.length },
    best: { code: `drapery/line-${best.follows}` },
    mark: long(best.mark),
    least: { length: least.largest },
    leastOf: { code: `drapery/line-${least.follows}` },
  }
  return {
    ...told('unknown', 'unknown', values),
    stops: 'drill',
    ways: list.map((choice) => wayOf(all, bracket, choices, choice, job)),
  }
}

/** Each fixed bracket against its mark: within 1/16 in (common practice) it is on it, and pins take up a little more. */
export function fixedMarks(all: Transfer, job: JobHead): Found {
  const brackets = [
    { bracket: all.first.bracket, floor: all.first.bracket.ground, chosen: undefined },
    ...all.further.map((each) => ({ bracket: each.bracket, floor: each.floor, chosen: markChosen(each) })),
  ].filter(({ bracket }) => bracket.found.fixed)
  const each = brackets.map(({ bracket, floor, chosen }) => fixedMark(all, bracket, floor, chosen, job))
  return { checks: each.flatMap((one) => one.checks), working: each.flatMap((one) => one.working) }
}
function fixedMark(
  all: Transfer,
  bracket: Bracket,
  floor: LengthReckoning,
  chosen: LengthReckoning | undefined,
  job: JobHead,
): Found {
  const { at } = all
  const { id } = bracket
  const named = { bracket: bracketWord(all, id) }
  // Nobody can say by which plan it was drilled: an order's, or one with readings in it.
  if (!isRecorded(bracket)) {
    const unread: Check = {
      ...check('drapery/fixed-mark', 'unknown', below(bracket.place, 'floorToHole'), named),
      stops: 'hang',
    }
    return { checks: [unread], working: [] }
  }
  const read = markRead(at, bracket, floor) as LengthReckoning
  const planned = sum(
    `${at}#mark-planned-${id}`,
    'drapery/mark-planned',
    plus('drapery/planned-hole', bracket.planned.hole),
    minus('drapery/floor', floor),
  )
  const off = sum(
    `${at}#fixed-off-${id}`,
    'drapery/fixed-off',
    plus('drapery/mark', read),
    minus('drapery/mark-planned', chosen ?? planned),
  )
  const near = ruleOf(job, 'markOff')
  const far = Math.abs(off.value)
  const verdict = far <= near.value ? 'pass' : far <= halfRange(job) ? 'warn' : 'fail'
  const values = {
    ...named,
    read: long(read),
    planned: long(chosen ?? planned),
    off: magnitude(off),
    way: off.value > 0 ? 'high' : 'low',
    near: long(near),
  }
  return {
    checks: [check('drapery/fixed-mark', verdict, below(bracket.place, 'floorToHole'), values, 'hang')],
    working: [read, ...(chosen ? [] : [planned]), off],
  }
}

const endsOf = ({ hung }: Transfer) => {
  const [left, right] = ['left', 'right'].map((side) => hung.points.find(({ bracket }) => bracket === side))
  return [left, right] as [HungBracket, HungBracket]
}
const isMoved = ({ hung }: Transfer): boolean => hung.points.some(({ moved }) => moved !== undefined)

/** The rod from end to end: out of level by more than 1/2 in to 6 ft rings creep and motors misbehave (common practice, no source). */
export function rodLevel(all: Transfer, job: JobHead): Found {
  if (!isMoved(all)) return nothing
  const { at, further } = all
  const [left, right] = endsOf(all)
  if (further.some(({ bracket, isLevelKnown }) => (bracket.id === 'left' || bracket.id === 'right') && !isLevelKnown))
    return { checks: [check('drapery/rod-level', 'unknown', at, {})], working: [] }
  const out = sum(`${at}#rod-out`, 'drapery/gap-rod', plus('drapery/bears', right.height), minus('drapery/bears', left.height))
  const apart = sum(
    `${at}#brackets-apart`,
    'drapery/bracket-to-bracket',
    plus('drapery/bracket-x', right.x),
    minus('drapery/bracket-x', left.x),
  )
  const most = mostOutOfLevel(`${at}#rod-out-most`, apart, ruleOf(job, 'rodLevel'))
  const values = { out: magnitude(out), way: signOf(out), most: long(most), apart: long(apart) }
  return {
    checks: [check('drapery/rod-level', Math.abs(out.value) <= most.value ? 'pass' : 'warn', at, values)],
    working: [out, apart, most],
  }
}

/** How a hem clears what it is measured from below an end bracket. */
function clearsAt(all: Transfer, side: 'left' | 'right', point: HungBracket, makeUp: MakeUp): readonly LengthReckoning[] {
  const { at, hangLine, first, further } = all
  const panel = makeUp.panels.find(({ outer }) => outer === side) ?? makeUp.panels[0]
  const own = hangLine.panels.find((each) => each.panel === panel?.panel)
  if (!panel || !own) return []
  const name = `${at}#hung-clears-${side}`
  if (hangLine.hemAt !== 'floor') {
    const moved = point.moved
    const by = moved && (hangLine.hemAt === 'apron' ? minus : plus)('drapery/moved', moved)
    return [sum(name, 'drapery/clears-panel', plus('drapery/clears-panel', own.clears), ...(by ? [by] : []))]
  }
  const floor = further.find(({ bracket }) => bracket.id === side)?.floor ?? first.bracket.ground
  const hem = sum(
    `${at}#hung-hem-${side}`,
    'drapery/hem-panel',
    plus('drapery/bears', point.height),
    plus('drapery/pin', panel.pin),
    minus('drapery/finished-length', panel.finishedLength),
  )
  return [hem, sum(name, 'drapery/clears-panel', plus('drapery/above-level', hem), minus('drapery/floor', floor))]
}

/** What the brackets as they stand do to the hem at both ends, and whether pins can take that up. A hem that would drag stops. */
export function hungHem(all: Transfer, makeUp: MakeUp, job: JobHead): Found {
  const { it, at } = all
  if (!isMoved(all) || it.clearance === undefined) return nothing
  const clearance = { value: it.clearance, from: below(at, 'clearance') }
  const [left, right] = endsOf(all)
  const [a, b] = [clearsAt(all, 'left', left, makeUp), clearsAt(all, 'right', right, makeUp)]
  const [one, other] = [a.at(-1), b.at(-1)]
  if (!one || !other) return nothing
  const off = [one, other].map(({ value }) => value - clearance.value)
  const worst = Math.abs(off[1] as number) > Math.abs(off[0] as number) ? 1 : 0
  const near = ruleOf(job, 'heightsAgree')
  const drags = clearance.value > 0 && Math.min(one.value, other.value) < 0
  const verdict = off.every((each) => Math.abs(each) <= near.value) ? 'pass' : drags ? 'fail' : 'warn'
  const values = {
    left: long(one),
    right: long(other),
    clearance: long(clearance),
    off: magnitude({ value: off[worst] as number }),
    way: signOf({ value: off[worst] as number }),
    side: { code: `drapery/${worst === 0 ? 'left' : 'right'}` },
    pins: canPin(off[worst] as number, job),
  }
  return { checks: [check('drapery/hung-hem', verdict, at, values, 'hang')], working: [...a, ...b] }
}

/** Supports against the straight line between the end brackets, within 1/16 in (common practice): a rod that they bend creeps and squeaks. */
export function supportsInLine(all: Transfer, job: JobHead): Found {
  const { at, hung, further } = all
  const near = ruleOf(job, 'supportInLine')
  const [left, right] = endsOf(all)
  const between = hung.points.filter(({ x }) => x.value > left.x.value && x.value < right.x.value)
  if (!isMoved(all)) return nothing
  const each = between.map((point) => {
    const line = hungAt(`${at}#in-line-${point.bracket}`, [left, right], known(point.x))
    const off = sum(
      `${at}#out-of-line-${point.bracket}`,
      'drapery/out-of-line',
      plus('drapery/bears', point.height),
      minus('drapery/in-line', line),
    )
    const isFixed = further.some(({ bracket }) => bracket.id === point.bracket && bracket.found.fixed)
    const values = { bracket: bracketWord(all, point.bracket), off: magnitude(off), way: signOf(off), near: long(near) }
    const verdict = Math.abs(off.value) <= near.value ? 'pass' : 'fail'
    const place = below(at, 'found', 'brackets', point.bracket)
    return { check: check('drapery/support-in-line', verdict, place, values, isFixed ? 'hang' : 'drill'), working: [line, off] }
  })
  return { checks: each.map((one) => one.check), working: each.flatMap((one) => one.working) }
}
