import type { ReadingUnit } from '@evenhem/length'
import { type Fillings, type Language, languages, type Voice } from './voice.ts'
import type { CliCode } from './words.ts'

/** 0: good. 1: the job has problems. 2: what was asked could not be read. */
export type ExitCode = 0 | 1 | 2

/** Asks a person one question; undefined when they want no more questions. */
export type Ask = (question: string) => Promise<string | undefined>

/** Where a command writes: results to `out`, trouble to `err`. */
export interface Streams {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Until `out` has passed on what it was given; left out: it does so at once. */
  readonly flush?: () => Promise<unknown>
  /** Whether `out` is a terminal that shows colours. */
  readonly colours: boolean
  /** Whether `out` is a terminal. */
  readonly isTerminal?: boolean
  /** Whether `err` is a terminal, so that a line on it may be written over. */
  readonly progress?: boolean
  /** Left out: there is no terminal to ask on. */
  readonly ask?: Ask
}
/** The streams, and how to speak on them. */
export interface Session extends Streams {
  readonly language: Language
  readonly voice: Voice
}

export interface Option {
  readonly says: CliCode
  /** What its value is, as help shows it: `ID`. Left out: the option takes no value. */
  readonly value?: string
  readonly choices?: readonly string[]
  readonly required?: boolean
}
export interface Subject {
  /** `files`: as many as there are, last of all. */
  readonly is: 'job' | 'folder' | 'name' | 'files'
  readonly mayLack?: boolean
}

/** The words of a command line, sorted out. An option that was not given is absent. */
export interface Asked {
  readonly subjects: readonly string[]
  /** The first of the subjects; empty when none was given. */
  readonly subject: string
  readonly options: Readonly<Record<string, string>>
}

export interface Command {
  readonly name: string
  /** One line for the overview. */
  readonly says: CliCode
  /** More, for its own help. */
  readonly more?: CliCode
  /** What stands after the name, in order. */
  readonly subjects?: readonly Subject[]
  readonly options: Readonly<Record<string, Option>>
  readonly run: (asked: Asked, session: Session) => Promise<ExitCode>
}

const job: readonly Subject[] = [{ is: 'job' }]
const folder: readonly Subject[] = [{ is: 'folder' }]
export const subjects = { job, folder }

export const json: Option = { says: '--json' }
export const all: Option = { says: '--all' }
export const csv: Option = { says: '--csv' }
export const watch: Option = { says: '--watch' }
export const units: Option = { says: '--units', value: 'UNIT', choices: ['in', 'ft-in', 'mm', 'cm'] }
export const out: Option = { says: '--out', value: 'FILE' }
export const window: Option = { says: '--window', value: 'ID' }
/** What every command takes. */
export const always: Readonly<Record<string, Option>> = {
  lang: { says: '--lang', value: 'LANGUAGE', choices: languages },
  help: { says: '--help' },
}

/** The unit that was asked for. */
export const unitIn = ({ units }: Asked['options']): ReadingUnit | undefined => units as ReadingUnit | undefined

/** Something that was asked and cannot be done, said to the person who asked. Ends with exit code 2. */
export class Trouble extends Error {
  readonly code: CliCode
  readonly values: Fillings
  constructor(code: CliCode, values: Fillings = {}) {
    super(code)
    this.code = code
    this.values = values
  }
}
