import { words as drawingWords, type Layer } from '@evenhem/drawing'
import type { Job, Place, PlacedWindow, Room, Window } from '@evenhem/job'
import { type Length, type ReadingUnit, type Reckoning, type Tape, tapes, type Written, writeLength } from '@evenhem/length'
import { asMeasured, type WindowPlan } from '@evenhem/planner'
import { createSay, wordsOf } from '@evenhem/planner/say'
import type { Language } from '../words.ts'
import type { Planned } from '../worker.ts'
import type { Changes } from './changes.ts'
import type { Reading } from './served.ts'
import type { Ground } from './working.ts'

type Values = WindowPlan['checks'][number]['values']

/** Everything that the sheet of one window is drawn from, for one reader: their unit is in `write` and in the sentences. */
export interface Sheet extends Ground {
  readonly place: Place
  readonly room: Room
  readonly window: Window
  readonly plan: WindowPlan
  /** The plan's layers, with what was measured on tape. */
  readonly layers: readonly Layer[]
  readonly unit: ReadingUnit
  readonly language: Language
  readonly write: (length: Length) => Written
  /** What something weighs, in the reader's unit. */
  readonly weigh: (kilograms: number) => string
  readonly say: (code: string, values?: Values) => string
  readonly help: (code: string, values?: Values) => string | undefined
}

/** The tape that each unit is read on. */
export const tapeOf: Readonly<Record<ReadingUnit, Tape>> = {
  in: tapes.sixteenths,
  'ft-in': tapes.feetAndSixteenths,
  mm: tapes.wholeMillimetres,
  cm: tapes.centimetresToTheMillimetre,
}

/** What a sheet is made from. */
export interface SheetOrder {
  readonly ordered: Job
  readonly readings: Readonly<Record<Place, Reading>>
  readonly found: PlacedWindow
  readonly planned: Planned
  readonly unit: ReadingUnit
  readonly language: Language
  /** What somebody put last, and what it changed; absent once it was read. */
  readonly put?: PutShown | undefined
}
/** Values that were put at places, and what that changed in the plan. */
export interface PutShown {
  readonly places: readonly Place[]
  readonly changes: Changes
  /** They can be put back. */
  readonly canUndo: boolean
}

/** Whether the same sheet would be made: then it need not be drawn again. */
export const isSameOrder = (a: SheetOrder, b: SheetOrder | undefined): boolean =>
  a.planned === b?.planned && a.unit === b.unit && a.language === b.language && a.put === b.put && a.readings === b.readings

/** Says codes to a reader. A length that the tape rounds is about so much; ~ because the typeface has no ≈. */
export function sayOn(words: Planned['words'], language: Language, tape: Tape): Pick<Sheet, 'say' | 'help' | 'weigh'> {
  const { say, help, quantity } = createSay({ words: [...wordsOf([]), ...words, drawingWords], language, tape })
  const shown = (values: Values = {}): Values =>
    Object.fromEntries(Object.entries(values).map(([name, value]) => [name, rounded(value, tape) ?? value]))
  return {
    say: (code, values) => say(code, shown(values)),
    help: (code, values) => help(code, shown(values)),
    weigh: (mass) => quantity({ mass }),
  }
}
function rounded(value: NonNullable<Values>[string], tape: Tape): string | undefined {
  if (typeof value === 'string' || !('length' in value)) return undefined
  const { text, off } = writeLength(value.length, tape)
  return off === 0 ? undefined : `~ ${text}`
}

/** Makes the sheet of a planned window for a reader. */
export function readSheet({ ordered, readings, found, planned: { plan, words }, unit, language }: SheetOrder): Sheet {
  const tape = tapeOf[unit]
  const { say, help, weigh } = sayOn(words, language, tape)
  const reckonings = new Map(plan.reckonings.map((reckoning: Reckoning) => [reckoning.name, reckoning]))
  return {
    ordered,
    readings,
    reckonings,
    plan,
    unit,
    language,
    say,
    help,
    weigh,
    place: found.place,
    room: found.room,
    window: found.window,
    layers: asMeasured(plan.layers, readings, plan.reckonings),
    write: (length) => writeLength(length, tape),
  }
}
