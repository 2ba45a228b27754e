import { below, type JobHead, type Place, type Treatment } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import type { Capture } from '@evenhem/plugin'
import type { Reach, Rod } from '../facts/index.ts'

type Shown = NonNullable<NonNullable<Treatment['found']>['shown']>

/** What of the hardware says what there is to prove. */
interface Hung {
  readonly overlap?: Known<Length> | undefined
  readonly rod?: Rod | undefined
  readonly reach?: Reach | undefined
}

/** What reaches beyond the rod's ends is its finials. */
const hasFinials = ({ rod, reach }: Hung): boolean =>
  rod !== undefined && reach !== undefined && (reach.left.value < rod.left.value || reach.right.value > rod.right.value)

/** Leading edges pass one another by what the hardware says; where it says nothing, by what was ordered. */
const overlaps = ({ draw, overlap: ordered }: Treatment, { overlap }: Hung): boolean =>
  draw === 'pair' && (overlap?.value ?? ordered ?? 0) > 0

const leavesAnything = ({ handOver }: JobHead): boolean => (handOver?.spares?.length ?? 0) > 0 || (handOver?.remotes ?? 0) > 0

/** What is proven and shown at the hand-over, each only where there is something to show (common practice, no source). Cords have a step of their own. */
export function shownCaptures(it: Treatment, at: Place, job: JobHead, hung: Hung): readonly Capture[] {
  const applies: Readonly<Record<keyof Shown, boolean>> = {
    drawnFiveTimes: it.draw !== 'stationary',
    overlapCloses: overlaps(it, hung),
    hemsEven: true,
    finialsTight: hasFinials(hung),
    wandShown: it.operation?.by === 'wand',
    motorShown: it.operation?.by === 'motor',
    sparesLeft: leavesAnything(job),
    rubbishGone: true,
  }
  const names = Object.entries(applies).flatMap(([name, does]) => (does ? [name] : []))
  return names.map((name) => ({ at: below(at, 'found', 'shown', name), as: 'tick' }))
}
