import { below } from '@evenhem/drapery'
import { type Capture, rule, type Step, steps } from '@evenhem/plugin'
import { atWindow } from './additions.ts'
import { isOpen, valuesOf } from './checks.ts'
import { type PunchPoint, windowPoints } from './points.ts'

/** How a point stands, to choose. What can hurt somebody is not accepted. */
const stateOf = ({ place, isUnsafe }: PunchPoint): Capture => ({
  at: below(place, 'state'),
  as: 'choice',
  choices: ['open', 'mended', 'looked at', ...(isUnsafe ? [] : ['accepted as it is'])],
})

/** A name that a step may have: what a point's own may hold beside small letters, digits and hyphens goes. */
const plain = (id: string): string => id.toLowerCase().replaceAll(/[^a-z0-9-]/g, '-')
/** Of points that would share a name the later ones have their number behind it: what is done about one says nothing of another. */
function stepOf({ id, number, owner }: PunchPoint, all: readonly PunchPoint[]): string {
  const isShared = all.some((other) => other.number < number && plain(other.id) === plain(id))
  return `${owner === 'installer' ? 'mend' : 'call'}-${plain(id)}${isShared ? `-${number}` : ''}`
}

/** Mending is the installer's own work; everybody else is called. Both come before the hand-over, which an unsafe point closes. */
function seeingTo(point: PunchPoint, id: string): Step {
  const isOwn = point.owner === 'installer'
  const unsafe = point.isUnsafe ? ['punch-list/caution-unsafe'] : []
  return {
    id,
    stage: 'finish',
    code: isOwn ? 'punch-list/mend' : 'punch-list/call',
    values: valuesOf(point),
    cautions: [...unsafe, ...(isOwn ? ['drapery/caution-ladder', 'drapery/caution-drill'] : [])],
    ...(isOwn ? { captures: [stateOf(point)] } : {}),
  }
}

/** With the customer, past everything that is not done with. */
const walking = (left: readonly PunchPoint[]): Step => ({
  id: 'walk',
  stage: 'hand-over',
  code: 'punch-list/walk',
  values: { count: { count: left.length } },
  captures: left.map(stateOf),
})

/** What is to be done about open points: to call whoever mends them, to mend one's own, what is unsafe first, and to go through all of them at the hand-over. */
export const work = rule({ id: 'work', on: atWindow, needs: { windowPoints }, gives: { steps } }).run((_, facts) => {
  const left = facts.windowPoints.filter(({ state }) => state === 'open' || state === 'mended')
  const owned = left.filter((point) => isOpen(point) && point.owner !== undefined)
  const named = (point: PunchPoint): string => stepOf(point, facts.windowPoints)
  const first = owned.filter(({ isUnsafe }) => isUnsafe).map(named)
  const steps = owned.map((point) => ({ ...seeingTo(point, named(point)), ...(point.isUnsafe ? {} : { after: first }) }))
  return { steps: [...steps, ...(left.length > 0 ? [walking(left)] : [])] }
})
