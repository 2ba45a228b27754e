import type { Job } from '@evenhem/job'
import { contactsOf } from './contacts.ts'
import { type HouseWindow, type Link, linkTo } from './house.ts'
import type { Line, Section } from './outline.ts'
import type { Said, Voice } from './voice.ts'

/** A fabric, where it hangs, and the place for its care. */
export interface FabricCare {
  readonly name: string
  readonly facts: readonly Line[]
  readonly windows: Section<Link> & { readonly instead?: string }
  /** What the plans say about the care of what hangs there, once each. */
  readonly notes: readonly Said[]
  /** Said until somebody has written how to care for it. */
  readonly notGiven: string
}
/** What the plans say about safe use, once each. `windows`: where it holds, when that is not everywhere. */
export interface SafetyNotes
  extends Section<{ readonly says: Said; readonly where?: string; readonly windows: readonly Link[] }> {
  readonly rules: string
  readonly instead?: string
}

type Fabric = NonNullable<Job['fabrics']>[number]
const fibresOf = ({ fibres = [] }: Fabric): string =>
  fibres.map(({ fibre, percent }) => (percent === undefined ? fibre : `${fibre} ${percent}\u00a0%`)).join(', ')

const once = (all: readonly Said[]): readonly Said[] => [...new Map(all.map((says) => [JSON.stringify(says), says])).values()]

/** The care of each fabric of an order, with every window at which it hangs. */
function careOf(order: Job, windows: readonly HouseWindow[], voice: Voice): Section<FabricCare> {
  const hangs = (id: string) => windows.filter(({ placed }) => placed.window.treatments.some(({ fabric }) => fabric === id))
  const fact = (code: string, text = ''): readonly Line[] => (text ? [{ name: [voice.text(code)], says: [[text]] }] : [])
  const cared = (fabric: Fabric): FabricCare => {
    const at = hangs(fabric.id)
    return {
      name: fabric.name,
      facts: [
        ...fact('report/fibres', fibresOf(fabric)),
        ...fact('report/lining', fabric.lining),
        ...fact('report/interlining', fabric.interlining),
      ],
      windows: {
        title: voice.text('report/hangs-at'),
        of: at.map(linkTo),
        ...(at.length === 0 ? { instead: voice.text('report/nothing-hangs') } : {}),
      },
      notes: once(at.flatMap((window) => window.care)),
      notGiven: voice.text('report/care-not-given'),
    }
  }
  return { title: voice.text('report/care-of-fabrics'), of: (order.fabrics ?? []).map(cared) }
}

/** What the plans of a house say about safe use: each sentence once, with where it holds. */
function safetyOf(windows: readonly HouseWindow[], voice: Voice): SafetyNotes {
  const said = new Map<string, { says: Said; windows: HouseWindow[] }>()
  for (const window of windows)
    for (const says of window.safe) {
      const key = JSON.stringify(says)
      const note = said.get(key) ?? { says, windows: [] }
      note.windows.push(window)
      said.set(key, note)
    }
  const of = [...said.values()].map(({ says, windows: at }) => {
    const everywhere = at.length === windows.length
    return {
      says,
      ...(windows.length > 1 ? { where: voice.text(everywhere ? 'report/every-window' : 'report/at-windows') } : {}),
      windows: everywhere ? [] : at.map(linkTo),
    }
  })
  return {
    title: voice.text('report/safety'),
    of,
    rules: voice.text('report/safety-rules'),
    ...(of.length === 0 ? { instead: voice.text('report/safety-not-said') } : {}),
  }
}

/** What stays with the customer: how to care for what hangs, how to use it safely, and whom to call. */
export interface Closing {
  readonly care: Section<FabricCare> & { readonly id: string }
  readonly safety: SafetyNotes & { readonly id: string }
  readonly contacts: Section<Line> & { readonly id: string; readonly instead?: string }
}

export const closingOf = (order: Job, windows: readonly HouseWindow[], voice: Voice): Closing => ({
  care: { id: 'care', ...careOf(order, windows, voice) },
  safety: { id: 'safety', ...safetyOf(windows, voice) },
  contacts: { id: 'contacts', ...contactsOf(order, voice) },
})
