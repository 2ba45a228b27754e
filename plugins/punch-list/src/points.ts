import { below } from '@evenhem/drapery'
import type { Fact, JsonSchema, Place } from '@evenhem/plugin'
import type { Point, PunchList } from './part.generated.ts'

/** A point as lists and drawings take it: numbered, its photos in order, what was left open filled. */
export interface PunchPoint {
  readonly id: string
  /** From 1, in the order of the names. */
  readonly number: number
  /** Where it stands in the job. */
  readonly place: Place
  readonly what?: string | undefined
  /** What on the drawing it is about. */
  readonly at?: Place | undefined
  readonly photo?: string | undefined
  readonly spot?: Point['spot'] | undefined
  readonly cause?: Point['cause'] | undefined
  readonly owner?: Point['owner'] | undefined
  readonly trade?: string | undefined
  readonly who?: string | undefined
  /** A day, `2026-12-04`. */
  readonly by?: string | undefined
  readonly isUnsafe: boolean
  readonly before: readonly string[]
  readonly after: readonly string[]
  readonly state: NonNullable<Point['state']>
  readonly note?: string | undefined
}

/** Digits are compared as numbers: p2 before p10. */
const sortable = (id: string): string => id.replaceAll(/\d+/g, (digits) => digits.padStart(20, '0'))
const inOrder = (a: string, b: string): number => (sortable(a) < sortable(b) || (sortable(a) === sortable(b) && a < b) ? -1 : 1)
const chosen = (photos: Readonly<Record<string, boolean>> = {}): readonly string[] =>
  Object.keys(photos)
    .filter((hash) => photos[hash])
    .sort()

/** The points of a window or of the job, in the order of their names. `mineAt`: where the plugin's part stands. */
export const pointsOf = (mine: PunchList | undefined, mineAt: Place): readonly PunchPoint[] =>
  Object.entries(mine?.points ?? {})
    .sort(([a], [b]) => inOrder(a, b))
    .map(([id, { unsafe, before, after, state = 'open', ...rest }], n) => ({
      id,
      number: n + 1,
      place: below(mineAt, 'points', id),
      ...rest,
      isUnsafe: unsafe === true,
      before: chosen(before),
      after: chosen(after),
      state,
    }))

const text: JsonSchema = { type: 'string' }
const texts: JsonSchema = { type: 'array', items: text }
const pointShape: JsonSchema = {
  type: 'object',
  required: ['id', 'number', 'place', 'isUnsafe', 'before', 'after', 'state'],
  properties: {
    ...Object.fromEntries(
      ['id', 'place', 'what', 'at', 'photo', 'cause', 'owner', 'trade', 'who', 'by', 'state', 'note'].map((name) => [name, text]),
    ),
    number: { type: 'integer', minimum: 1 },
    spot: { type: 'object' },
    isUnsafe: { type: 'boolean' },
    before: texts,
    after: texts,
  },
  additionalProperties: false,
}
const points = <L extends 'window' | 'job'>(id: `punch-list/${string}@1`, of: L) =>
  ({ id, of, many: false, schema: { type: 'array', items: pointShape } }) as const as Fact<readonly PunchPoint[], L> & {
    readonly many: false
  }

/** The points of a window, and those of the job that are at no window. */
export const windowPoints = points('punch-list/points@1', 'window')
export const jobPoints = points('punch-list/job-points@1', 'job')
