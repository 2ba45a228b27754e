import type { Job } from '@evenhem/job'
import { contactsOf } from './contacts.ts'
import { type HouseWindow, type Link, linkTo } from './house.ts'
import { type LeftOpen, leftOpenOf } from './left-open.ts'
import type { Line, Section } from './outline.ts'
import type { Photos } from './photos.ts'
import type { ListedPoint } from './punch-points.ts'
import { type Note, notesOf, shownOf } from './shown.ts'
import type { Signed } from './signatures.ts'
import { type Technical, technicalOf } from './technical.ts'
import type { Said, Voice } from './voice.ts'

/** A fabric, where it hangs, and the place for its care. What hangs without a fabric of the order has no name of its own. */
export interface FabricCare {
  readonly name: string
  readonly facts: readonly Line[]
  readonly windows: Section<Link> & { readonly instead?: string }
  /** What the plans say about the care of what hangs there, once each. */
  readonly notes: readonly Said[]
  /** Said while no plan says how to care for it. */
  readonly notGiven?: string
}
/** What the plans say about safe use, once each. `windows`: where it holds, when that is not everywhere. */
export interface SafetyNotes extends Section<Note> {
  readonly rules: string
  readonly instead?: string
}

type Fabric = NonNullable<Job['fabrics']>[number]
const fibresOf = ({ fibres = [] }: Fabric): string =>
  fibres.map(({ fibre, percent }) => (percent === undefined ? fibre : `${fibre} ${percent}\u00a0%`)).join(', ')

const once = (all: readonly Said[]): readonly Said[] => [...new Map(all.map((says) => [JSON.stringify(says), says])).values()]

type Fact = (code: string, text?: string) => readonly Line[]
const factsOf = (fabric: Fabric, fact: Fact): readonly Line[] => [
  ...fact('report/fibres', fibresOf(fabric)),
  ...fact('report/lining', fabric.lining),
  ...fact('report/interlining', fabric.interlining),
]

/** The windows at which something hangs; several that are all of them are not named one by one. */
function whereOf(at: readonly HouseWindow[], all: readonly HouseWindow[], voice: Voice) {
  const isEverywhere = at.length === all.length && at.length > 1
  const instead = at.length === 0 ? 'report/nothing-hangs' : isEverywhere ? 'report/every-window' : undefined
  return { of: at.map(linkTo), ...(instead ? { instead: voice.text(instead) } : {}) }
}

/** What is said about the care of what hangs at windows under a fabric; undefined: without one of the order. */
function caredFor(fabric: Fabric | undefined, known: ReadonlySet<string>, all: readonly HouseWindow[], voice: Voice): FabricCare {
  const isOf = (id = ''): boolean => (fabric ? id === fabric.id : !known.has(id))
  const at = all.filter(({ placed }) => placed.window.treatments.some((treatment) => isOf(treatment.fabric)))
  const notes = once(all.flatMap(({ care }) => care.filter((note) => isOf(note.fabric)).map(({ says }) => says)))
  const fact: Fact = (code, text = '') => (text ? [{ name: [voice.text(code)], says: [[text]] }] : [])
  return {
    name: fabric?.name ?? voice.text('report/no-fabric'),
    facts: fabric ? factsOf(fabric, fact) : [],
    windows: { title: voice.text('report/hangs-at'), ...whereOf(at, all, voice) },
    notes,
    ...(notes.length === 0 ? { notGiven: voice.text('report/care-not-given') } : {}),
  }
}

/** The care of each fabric of an order, with every window at which it hangs, and of what hangs there without one. */
function careOf(order: Job, windows: readonly HouseWindow[], voice: Voice): Section<FabricCare> {
  const { fabrics = [] } = order
  const known = new Set(fabrics.map(({ id }) => id))
  const named = fabrics.map((fabric) => caredFor(fabric, known, windows, voice))
  const unnamed = caredFor(undefined, known, windows, voice)
  return { title: voice.text('report/care-of-fabrics'), of: [...named, ...(unnamed.windows.of.length > 0 ? [unnamed] : [])] }
}

/** What the plans of a house say about safe use: each sentence once, with where it holds. */
function safetyOf(windows: readonly HouseWindow[], voice: Voice): SafetyNotes {
  const of = notesOf(windows, ({ safe }) => safe, voice)
  return {
    title: voice.text('report/safety'),
    of,
    rules: voice.text('report/safety-rules'),
    ...(of.length === 0 ? { instead: voice.text('report/safety-not-said') } : {}),
  }
}

/** What closes a report: what is still open, what was shown, how to care for what hangs, how to use it safely, who signed, whom to call, and what the next installer needs. */
export interface Closing {
  readonly open: LeftOpen & { readonly id: string }
  readonly shown: ReturnType<typeof shownOf> & { readonly id: string }
  readonly care: Section<FabricCare> & { readonly id: string }
  readonly safety: SafetyNotes & { readonly id: string }
  readonly signed: Signed & { readonly id: string }
  readonly contacts: Section<Line> & { readonly id: string; readonly instead?: string }
  readonly technical: Technical & { readonly id: string }
}

export interface ClosingOrder {
  readonly ordered: Job
  readonly found: Job
  readonly windows: readonly HouseWindow[]
  readonly points: readonly ListedPoint[]
  readonly photos: Photos
  readonly signed: Signed
}
export const closingOf = ({ ordered, found, windows, points, photos, signed }: ClosingOrder, voice: Voice): Closing => ({
  open: { id: 'open', ...leftOpenOf(points, found, photos, voice) },
  shown: { id: 'shown', ...shownOf(windows, voice) },
  care: { id: 'care', ...careOf(ordered, windows, voice) },
  safety: { id: 'safety', ...safetyOf(windows, voice) },
  signed: { id: 'signed', ...signed },
  contacts: { id: 'contacts', ...contactsOf(ordered, voice) },
  technical: { id: 'technical', ...technicalOf(windows, voice) },
})
