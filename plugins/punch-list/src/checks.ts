import { below, check } from '@evenhem/drapery'
import { type Check, checks, type Place, rule, type Values, type WayOut } from '@evenhem/plugin'
import { atJob, atWindow } from './additions.ts'
import type { PunchList } from './part.generated.ts'
import { jobPoints, type PunchPoint, pointsOf, windowPoints } from './points.ts'

/** What every sentence about a point is filled with. `owner` and `state` are words that sentences choose by. */
export const valuesOf = ({ number, what, owner, trade, who, by, state }: PunchPoint): Values => ({
  n: { count: number },
  said: what === undefined ? 'no' : 'yes',
  what: what ?? 'none',
  owner: owner === undefined ? 'none' : owner === 'other trade' ? 'trade' : owner,
  named: who === undefined ? 'no' : 'yes',
  who: who ?? 'none',
  trade: trade ?? 'none',
  by: by ?? 'none',
  state: state.split(' ', 1)[0] ?? state,
})

/** Nobody has mended it, looked at it or accepted it. */
export const isOpen = ({ state }: PunchPoint): boolean => state === 'open'
const stating = ({ place }: PunchPoint, code: string, state: PunchPoint['state']): WayOut => ({
  code: `punch-list/way-${code}`,
  values: {},
  put: [{ at: below(place, 'state'), value: state }],
})

/** A point that hurts nobody: open, or seen to. */
function ordinary(point: PunchPoint): Check {
  const found = check('punch-list/open', isOpen(point) ? 'warn' : 'pass', point.place, valuesOf(point))
  const ways = [stating(point, 'mended', 'mended'), stating(point, 'accepted', 'accepted as it is')]
  return { ...found, about: point.id, ...(isOpen(point) ? { ways } : {}) }
}

/** One that can: it stops until it is mended and was looked at again, and nobody can accept it or give a reason to go on. */
function unsafe(point: PunchPoint, code = 'punch-list/unsafe'): Check {
  const { state } = point
  if (state === 'looked at') return { ...check(code, 'pass', point.place, valuesOf(point)), about: point.id }
  const isMended = state === 'mended'
  return {
    ...check(code, isMended ? 'unknown' : 'fail', point.place, valuesOf(point)),
    ...(state === 'accepted as it is' ? { says: `${code}.accepted` } : {}),
    about: point.id,
    stops: 'hand-over',
    isFirm: true,
    ways: [isMended ? stating(point, 'looked', 'looked at') : stating(point, 'mended', 'mended')],
  }
}

const owners = ['workroom', 'installer', 'other trade', 'customer'] as const
/** An open point of which nobody knows yet who mends it, or by when. */
function notAgreed(point: PunchPoint): readonly Check[] {
  const { owner, by, place, id } = point
  if (!isOpen(point) || (owner !== undefined && by !== undefined)) return []
  const lacks = owner !== undefined ? 'by' : by !== undefined ? 'owner' : 'both'
  const found = check('punch-list/agreed', 'unknown', below(place, owner === undefined ? 'owner' : 'by'), {
    ...valuesOf(point),
    lacks,
  })
  const ways = owners.map((each): WayOut => {
    const code = each === 'other trade' ? 'trade' : each
    return { code: `punch-list/way-${code}`, values: {}, put: [{ at: below(place, 'owner'), value: each }] }
  })
  return [{ ...found, about: id, ...(owner === undefined ? { ways } : {}) }]
}

/** What is found about points; nothing where there are none. */
function found(all: readonly PunchPoint[]): readonly Check[] {
  const open = all.filter(isOpen)
  const lacking = all.flatMap(notAgreed)
  const agreed = open[0] && lacking.length === 0 ? [allAgreed(open)] : []
  return [...all.map((point) => (point.isUnsafe ? unsafe(point) : ordinary(point))), ...lacking, ...agreed]
}
const allAgreed = (open: readonly PunchPoint[]): Check =>
  check('punch-list/agreed', 'pass', (open[0] as PunchPoint).place, { count: { count: open.length } })

/** Asks what is wrong where a point does not say it. A rule of its own, since what asks gives nothing else: nothing unsafe may wait for words. */
function told(mine: PunchList | undefined, mineAt: Place) {
  const all = pointsOf(mine, mineAt)
  const silent = all.filter(({ what }) => what === undefined)
  if (silent.length > 0) return { ask: silent.map(({ place }) => below(place, 'what')) }
  return { checks: all.length > 0 ? [check('punch-list/told', 'pass', mineAt, { count: { count: all.length } })] : [] }
}

const codes = ['punch-list/open', 'punch-list/unsafe', 'punch-list/agreed']
export const listed = rule({ id: 'listed', on: atWindow, needs: {}, gives: { windowPoints, checks }, codes }).run(
  ({ mine, mineAt }) => {
    const all = pointsOf(mine, mineAt)
    return { windowPoints: all, checks: found(all) }
  },
)
export const listedOfJob = rule({ id: 'listed-of-job', on: atJob, needs: {}, gives: { jobPoints, checks }, codes }).run(
  ({ mine, mineAt }) => {
    const all = pointsOf(mine, mineAt)
    return { jobPoints: all, checks: found(all) }
  },
)
export const toldAll = rule({ id: 'told', on: atWindow, needs: {}, gives: { checks }, codes: ['punch-list/told'] }).run(
  ({ mine, mineAt }) => told(mine, mineAt),
)
export const toldAllOfJob = rule({ id: 'told-of-job', on: atJob, needs: {}, gives: { checks }, codes: ['punch-list/told'] }).run(
  ({ mine, mineAt }) => told(mine, mineAt),
)

/** What is unsafe in the house and at no window stops the hand-over of every window. */
export const unsafeInHouse = rule({
  id: 'unsafe-in-house',
  on: 'window',
  needs: { jobPoints: { maybe: jobPoints } },
  gives: { checks },
  codes: ['punch-list/unsafe-in-house'],
}).run((_, { jobPoints: all = [] }) => ({
  checks: all.filter(({ isUnsafe }) => isUnsafe).map((point) => unsafe(point, 'punch-list/unsafe-in-house')),
}))
