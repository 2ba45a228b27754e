import { below, type Place, type Treatment } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import { type Check, checks, type Entry, entries, rule, type Step, steps, type Values } from '@evenhem/plugin'
import { type CordLimit, type CordLimits, limitsOf, reachOf } from '../cord-limits.ts'
import { rod, topOfRod } from '../facts/index.ts'
import { check, long, member, perhaps } from '../given.ts'

type Operation = NonNullable<Treatment['operation']>
export const isCorded = (by: Operation['by'] | undefined): boolean => by === 'cord' || by === 'continuous loop'

/** A continuous loop is not handed over before somebody recorded that its tension device is fixed and proven (US Consumer Product Safety Commission, 2021; read). */
export const cordDevice = rule({
  id: 'cord-device',
  on: 'treatment',
  needs: {},
  gives: { checks },
  codes: ['drapery/cord-device'],
}).run(({ it, at }) => {
  if (it.operation?.by !== 'continuous loop') return {}
  const device = it.found?.cord?.device
  const place = below(at, 'found', 'cord', 'device')
  const verdict = device === undefined ? 'unknown' : device === 'fixed and proven' ? 'pass' : 'fail'
  const found: Check = {
    ...check('drapery/cord-device', verdict, place, { device: device ?? 'none' }, 'hand-over'),
    ...(verdict === 'pass' ? {} : { isFirm: true as const }),
  }
  return { checks: [verdict === 'unknown' ? { ...found, stops: 'hand-over' as const } : found] }
})

/** A value as found, else as ordered. */
const knownOf = (at: Place, it: Treatment, name: 'freeCord' | 'looseLoop' | 'lowest'): Known<Length> | undefined =>
  perhaps(
    name === 'looseLoop'
      ? member(at, ['found', 'cord', 'looseLoop'], it.found?.cord?.looseLoop)
      : name === 'freeCord' && it.found?.cord?.freeCord !== undefined
        ? member(at, ['found', 'cord', 'freeCord'], it.found.cord.freeCord)
        : member(at, ['operation', name], it.operation?.[name]),
  )

interface Judged {
  readonly value: Known<Length> | undefined
  readonly limit: CordLimit
  /** Or so high above the floor. */
  readonly above?: Length
  readonly what: 'free' | 'loop' | 'lowest' | 'low'
  readonly isKept: boolean
}
/** Every limit of a country that is about this way of drawing. */
function judged(at: Place, it: Treatment, by: Operation['by'], limits: CordLimits): readonly Judged[] {
  const [free, loop, lowest] = (['freeCord', 'looseLoop', 'lowest'] as const).map((name) => knownOf(at, it, name))
  const most = (value: Known<Length> | undefined, limit: CordLimit | undefined, what: 'free' | 'loop'): readonly Judged[] =>
    limit ? [{ value, limit, what, isKept: value !== undefined && value.value <= limit.value }] : []
  const { lowLoop } = limits
  return [
    ...(by === 'cord' ? most(free, limits.freeCord, 'free') : most(loop, limits.loop, 'loop')),
    ...(limits.lowest
      ? [
          {
            value: lowest,
            limit: limits.lowest,
            what: 'lowest' as const,
            isKept: lowest !== undefined && lowest.value >= limits.lowest.value,
          },
        ]
      : []),
    ...(lowLoop ? [judgedLow(by === 'cord' ? looseOf(loop, free, lowLoop) : loop, lowest, lowLoop)] : []),
  ]
}

type LowLoop = NonNullable<CordLimits['lowLoop']>
/** A free cord forms no loop that is longer than itself; of a longer one somebody has to say what loop it forms. */
const looseOf = (loop: Known<Length> | undefined, free: Known<Length> | undefined, { shorter }: LowLoop) =>
  loop ?? (free && free.value < shorter.value ? free : undefined)
/** Shorter than one limit, or wholly above the other. */
function judgedLow(loop: Known<Length> | undefined, lowest: Known<Length> | undefined, { shorter, above }: LowLoop): Judged {
  const isShort = loop !== undefined && loop.value < shorter.value
  const isHigh = lowest !== undefined && lowest.value > above.value
  return { value: loop, limit: shorter, above: above.value, what: 'low', isKept: isShort || isHigh }
}

/** Cords against the limits of the job's country, and no other's. */
export const cordLength = rule({
  id: 'cord-length',
  on: 'treatment',
  needs: {},
  gives: { checks },
  codes: ['drapery/cord-length'],
}).run(({ it, at, job }) => {
  const by = it.operation?.by
  if (!by || !isCorded(by)) return {}
  const place = below(at, 'operation')
  const limits = limitsOf(job.country)
  const say = (verdict: Check['verdict'], what: string, values: Values = {}): Check => ({
    ...check('drapery/cord-length', verdict, place, { what, country: job.country, ...values }, 'hand-over'),
  })
  if (!limits) return { checks: [{ ...say('unknown', 'country'), says: 'drapery/cord-length.country' }] }
  const all = judged(at, it, by, limits)
  if (all.length === 0) return { checks: [{ ...say('pass', 'none'), says: 'drapery/cord-length.none' }] }
  return {
    checks: all.map(({ value, limit, above = limit.value, what, isKept }) => {
      const told = { limit: { length: limit.value }, above: { length: above }, source: limit.source }
      if (isKept) return say('pass', what, { ...told, ...(value ? { value: long(value) } : { value: 'none' }) })
      return value === undefined ? say('unknown', what, told) : say('fail', what, { ...told, value: long(value) })
    }),
  }
})

/** In a public place what people work must be within reach. */
export const reach = rule({ id: 'reach', on: 'treatment', needs: {}, gives: { checks }, codes: ['drapery/within-reach'] }).run(
  ({ it, at, job }) => {
    const { by } = it.operation ?? {}
    if (!job.site?.public || !by || by === 'motor') return {}
    const range = reachOf(job.country)
    const place = below(at, 'operation', 'handle')
    const handle = it.operation?.handle
    if (!range) return { checks: [check('drapery/within-reach', 'unknown', place, { known: 'no', country: job.country })] }
    if (handle === undefined)
      return { checks: [check('drapery/within-reach', 'unknown', place, { known: 'yes', country: job.country })] }
    const verdict = handle >= range.least && handle <= range.most ? 'pass' : 'fail'
    const values = {
      handle: { length: handle },
      least: { length: range.least },
      most: { length: range.most },
      source: range.source,
    }
    return { checks: [check('drapery/within-reach', verdict, place, values, 'hand-over')] }
  },
)

/** A motor needs power at its side of the rod. */
export const power = rule({
  id: 'power',
  on: 'treatment',
  needs: { rod: { maybe: rod }, topOfRod: { maybe: topOfRod } },
  gives: { checks },
  codes: ['drapery/power'],
}).run(({ it, at, window }, facts) => {
  const { by, motor, side = 'left' } = it.operation ?? {}
  if (by !== 'motor') return {}
  const place = below(at, 'operation', 'motor')
  const none = { length: 0 as Length }
  const say = (verdict: Check['verdict'], how: string, values: Values = { way: none, lead: none }) => ({
    checks: [check('drapery/power', verdict, place, { how, ...values }, 'drill')],
  })
  if (motor?.power === 'battery') return say('pass', 'battery')
  if (motor?.power === 'hard-wired') return say('pass', 'wired')
  if (motor?.power === 'none') return say('fail', 'none')
  if (!motor?.power) return say('unknown', 'unsaid')
  const looked = window.walls.filter(({ obstacles }) => obstacles !== undefined)
  const outlets = looked.flatMap(({ obstacles = [] }) => obstacles.filter(({ kind }) => kind === 'outlet'))
  const [end, top] = [facts.rod?.[side], facts.topOfRod]
  if (outlets.length === 0) return looked.length > 0 ? say('fail', 'nowhere') : say('unknown', 'unsaid')
  if (!end || !top || motor.lead === undefined) return say('unknown', 'unsaid')
  const ways = outlets.flatMap((outlet) => {
    if (outlet.left === undefined || outlet.bottom === undefined) return []
    const across = Math.max(outlet.left - end.value, 0, end.value - outlet.left - (outlet.width ?? 0))
    const upright = Math.max(outlet.bottom - top.value, 0, top.value - outlet.bottom - (outlet.height ?? 0))
    // A cable is led along the wall: across, and down or up.
    return [across + upright]
  })
  if (ways.length === 0) return say('unknown', 'unsaid')
  const nearest = Math.min(...ways) as Length
  return say(nearest <= motor.lead ? 'pass' : 'fail', 'outlet', { way: { length: nearest }, lead: { length: motor.lead } })
})

/** The tension device is fixed and proven before the panels hang, and recorded with what a child could reach. */
export const operating = rule({ id: 'operating', on: 'treatment', needs: {}, gives: { steps, entries } }).run(
  ({ it, at, job }) => {
    const by = it.operation?.by
    if (!by) return {}
    const isLoop = by === 'continuous loop'
    const cord = (name: string): Place => below(at, 'found', 'cord', name)
    const list: readonly Step[] = [
      ...(isLoop
        ? [
            {
              id: 'fix-device',
              stage: 'mount' as const,
              after: ['mount'],
              code: 'drapery/fix-device',
              cautions: ['drapery/caution-cord', 'drapery/caution-drill'],
              tools: ['drapery/drill-tool'],
            },
          ]
        : []),
      ...(isCorded(by)
        ? [
            {
              id: 'record-cord',
              stage: 'finish' as const,
              code: 'drapery/record-cord',
              values: { by: isLoop ? 'loop' : 'cord' },
              cautions: ['drapery/caution-cord'],
              captures: [
                ...(isLoop
                  ? [
                      {
                        at: cord('device'),
                        as: 'choice' as const,
                        choices: ['fixed and proven', 'not proven', 'missing'],
                      },
                      { at: cord('deviceHeight'), as: 'length' as const },
                      { at: cord('looseLoop'), as: 'length' as const },
                    ]
                  : ['freeCord', ...(limitsOf(job.country)?.lowLoop ? ['looseLoop'] : [])].map((name) => ({
                      at: cord(name),
                      as: 'length' as const,
                    }))),
              ],
            },
          ]
        : []),
      ...(by === 'motor'
        ? [
            {
              id: 'motor',
              stage: 'true-up' as const,
              code: 'drapery/motor',
              values: { power: it.operation?.motor?.power?.replace('hard-', '') ?? 'unsaid' },
              cautions: ['drapery/caution-electric'],
            },
          ]
        : []),
    ]
    const told: readonly Entry[] = isCorded(by)
      ? [
          { section: 'safe-use', code: 'drapery/entry-cords', values: { by: isLoop ? 'loop' : 'cord' } },
          ...(job.country === 'CA' ? [{ section: 'safe-use' as const, code: 'drapery/entry-cords-ca', values: {} }] : []),
        ]
      : []
    return { steps: list, entries: told }
  },
)
