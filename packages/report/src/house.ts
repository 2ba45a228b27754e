import type { PlacedWindow } from '@evenhem/job'
import type { Verdict } from '@evenhem/plugin'
import type { Closing } from './closing.ts'
import { friezeScale, type SmallWall } from './frieze.ts'
import type { Point } from './open.ts'
import type { Section, WindowPage } from './outline.ts'
import type { Paper } from './paper.ts'
import type { ListedPoint } from './punch-points.ts'
import type { Signed } from './signatures.ts'
import { type Standing, signOf, standings } from './standing.ts'
import type { TechnicalWindow } from './technical.ts'
import type { Said, Voice } from './voice.ts'

/** A place of the report and its name. */
export interface Link {
  readonly to: string
  readonly text: string
}
/** A window with what the whole house needs of its plan. */
export interface HouseWindow {
  readonly placed: PlacedWindow
  readonly page: WindowPage
  readonly wall: SmallWall
  /** What its plan says about care, of the fabric of what hangs there. */
  readonly care: readonly { readonly says: Said; readonly fabric?: string }[]
  /** About safe use. */
  readonly safe: readonly Said[]
  /** What was shown at the hand-over. */
  readonly shown: readonly Said[]
  /** What the next installer needs to know of it. */
  readonly technical: Pick<TechnicalWindow, 'hooks' | 'pins' | 'loads'>
  /** What is wrong at it. */
  readonly points: readonly ListedPoint[]
}

/** Every wall of the house, by room. */
export interface Frieze {
  readonly says: string
  /** For who cannot see it. */
  readonly words: string
  /** mm of paper for a mm of wall. */
  readonly scale: number
  readonly rooms: readonly {
    readonly name: string
    readonly walls: readonly { readonly link: Link; readonly wall: SmallWall }[]
  }[]
}
/** Windows that stand alike; of those that stop, why. */
export interface Count {
  readonly verdict: Verdict
  readonly says: string
  readonly windows: readonly { readonly link: Link; readonly points: readonly Point[] }[]
}
/** Windows of a room, and how each stands. */
export interface RoomContents {
  readonly name: string
  readonly windows: readonly { readonly link: Link; readonly verdict: Verdict; readonly short: string }[]
}

/** What a report says about a house beside its windows. */
export interface House {
  readonly lead: string
  readonly frieze: Frieze
  readonly summary: Section<Count> & { readonly id: string; readonly before: readonly string[] }
  readonly contents: Section<RoomContents> & { readonly also: Section<Link> }
}

export const linkTo = ({ page }: HouseWindow): Link => ({ to: page.id, text: page.title })

/** Windows by their room, in walking order. */
function byRoom(windows: readonly HouseWindow[]): readonly { readonly name: string; readonly windows: readonly HouseWindow[] }[] {
  const rooms = new Map<string, { name: string; windows: HouseWindow[] }>()
  for (const window of windows) {
    const { id, name } = window.placed.room
    const room = rooms.get(id) ?? { name, windows: [] }
    room.windows.push(window)
    rooms.set(id, room)
  }
  return [...rooms.values()]
}

export function houseOf(
  windows: readonly HouseWindow[],
  { open, shown, care, safety, signed, contacts, technical }: Closing,
  paper: Paper,
  voice: Voice,
): House {
  const rooms = byRoom(windows)
  const summary = { id: 'summary', ...summaryOf(windows, signed, voice) }
  return {
    lead: voice.text('report/house', { windows: { count: windows.length }, rooms: { count: rooms.length } }),
    frieze: friezeOf(rooms, paper, voice),
    summary,
    contents: {
      title: voice.text('report/contents'),
      of: rooms.map((room) => ({
        name: room.name,
        windows: room.windows.map(({ placed, page: { id, stands } }) => ({
          link: { to: id, text: placed.window.name },
          verdict: signOf(stands.standing),
          short: stands.short,
        })),
      })),
      also: {
        title: voice.text('report/also'),
        of: [summary, open, shown, ...(signed.of.length > 0 ? [signed] : []), care, safety, contacts, technical].map(
          ({ id, title }) => ({ to: id, text: title }),
        ),
      },
    },
  }
}

function friezeOf(rooms: ReturnType<typeof byRoom>, paper: Paper, voice: Voice): Frieze {
  const walls = rooms.map((room) => room.windows.map(({ wall }) => wall))
  return {
    says: voice.text('report/frieze'),
    words: voice.text('report/frieze-words'),
    scale: friezeScale(walls, paper),
    rooms: rooms.map(({ name, windows }) => ({
      name,
      walls: windows.map((window) => ({ link: linkTo(window), wall: window.wall })),
    })),
  }
}

function summaryOf(windows: readonly HouseWindow[], { isSigned }: Signed, voice: Voice): Omit<House['summary'], 'id'> {
  const standing = (one: Standing) => windows.filter(({ page }) => page.stands.standing === one)
  const allWell = windows.every(({ page }) => page.stands.standing === 'pass')
  return {
    title: voice.text('report/summary'),
    before: [
      voice.text(isSigned ? 'report/house-signed' : 'report/house-unsigned'),
      ...(allWell ? [voice.text('report/all-well')] : []),
    ],
    of: standings.flatMap((one) => {
      const alike = standing(one)
      return alike.length > 0 ? [countOf(one, alike, voice)] : []
    }),
  }
}

function countOf(standing: Standing, alike: readonly HouseWindow[], voice: Voice): Count {
  const stopping = ({ page }: HouseWindow) =>
    standing === 'fail' ? page.open.of.filter(({ verdict, setAside }) => verdict === 'fail' && !setAside) : []
  return {
    verdict: signOf(standing),
    says: voice.text(`report/count-${standing}`, { count: { count: alike.length } }),
    windows: standing === 'pass' ? [] : alike.map((window) => ({ link: linkTo(window), points: stopping(window) })),
  }
}
