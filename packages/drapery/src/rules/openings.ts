import { below, type Opening, type Window } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { type Check, checks, type Place, rule } from '@evenhem/plugin'
import { decided, differenceOf } from '../decisions.ts'
import { ruleOf } from '../defaults.ts'
import { check, long, magnitude, openingsOf, type PlacedOpening } from '../given.ts'
import { decideWay } from './ways.ts'

/** What is read at an opening and stands in the order, with its name. */
const sizes: readonly {
  readonly path: readonly [string, string]
  readonly what: string
  readonly of: (opening: Opening) => Length | undefined
}[] = [
  { path: ['casing', 'width'], what: 'drapery/casing-width', of: ({ casing }) => casing?.width },
  { path: ['casing', 'top'], what: 'drapery/casing-top', of: ({ casing }) => casing?.top },
  { path: ['casing', 'bottom'], what: 'drapery/casing-bottom', of: ({ casing }) => casing?.bottom },
  { path: ['sill', 'top'], what: 'drapery/sill-top', of: ({ sill }) => sill?.top },
  { path: ['apron', 'bottom'], what: 'drapery/apron-bottom', of: ({ apron }) => apron?.bottom },
]

/** What the tape said of each opening against the order. The plan follows the tape; a difference is looked at, since the order was made for the other size. */
export const openingRead = rule({
  id: 'opening-read',
  on: 'window',
  needs: {},
  gives: { checks },
  codes: ['drapery/opening-read'],
}).run(({ it, ordered, at, job }) => {
  const near = ruleOf(job, 'openingOff')
  const before = openingsOf(ordered, at)
  return {
    checks: openingsOf(it, at).flatMap((placed) => {
      const was = before.find(({ openingAt }) => openingAt === placed.openingAt)?.opening
      return was ? sizes.flatMap((size) => compared(it, at, placed, size.of(was), size, near.value)) : []
    }),
  }
})

function compared(
  window: Window,
  at: Place,
  { wall, opening, openingAt }: PlacedOpening,
  was: Length | undefined,
  { path, what, of }: (typeof sizes)[number],
  near: Length,
): readonly Check[] {
  const is = of(opening)
  if (was === undefined || is === undefined || was === is) return []
  const off = is - was
  const values = {
    size: { code: what },
    measured: long({ value: is }),
    ordered: long({ value: was }),
    off: magnitude({ value: off }),
    way: off > 0 ? 'over' : 'under',
  }
  const place = below(openingAt, ...path)
  if (Math.abs(off) <= near) return [check('drapery/opening-read', 'pass', place, values)]
  const key = [wall.id, opening.id, ...path].join('.')
  const difference = differenceOf(is, was)
  const choice = decided(window, key, difference)
  const about = `${key} ${difference}`
  if (choice === 'go on')
    return [{ ...check('drapery/opening-read', 'pass', place, values), says: 'drapery/opening-read.go-on', about }]
  const call = decideWay(at, 'call the workroom', key, difference)
  if (choice === 'call the workroom')
    return [{ ...check('drapery/opening-read', 'fail', place, values, 'mark'), says: 'drapery/opening-read.called', about }]
  return [
    { ...check('drapery/opening-read', 'warn', place, values), about, ways: [decideWay(at, 'go on', key, difference), call] },
  ]
}
