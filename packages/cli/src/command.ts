import type { ReadingUnit } from '@evenhem/length'

/** 0: good. 1: the job has problems. 2: what was asked could not be read. */
export type ExitCode = 0 | 1 | 2

/** Where a command writes: results to `out`, trouble to `err`. */
export interface Streams {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Whether `out` is a terminal that shows colours. */
  readonly colours: boolean
}

export interface Option {
  readonly says: string
  /** What its value is, as help shows it: `ID`. Left out: the option takes no value. */
  readonly value?: string
  readonly choices?: readonly string[]
  readonly required?: boolean
}

/** The words of a command line, sorted out. An option that was not given is absent. */
export interface Asked {
  readonly subject: string
  readonly options: Readonly<Record<string, string>>
}

export interface Command {
  readonly name: string
  /** One line for the overview. */
  readonly says: string
  /** More, for its own help. */
  readonly more?: string
  /** What stands after the name: `job`, `folder`; left out: nothing. */
  readonly subject?: string
  readonly options: Readonly<Record<string, Option>>
  readonly run: (asked: Asked, streams: Streams) => Promise<ExitCode>
}

export const json: Option = { says: 'Write JSON, for programs.' }
export const units: Option = {
  says: 'Units of lengths; left out: those of the job.',
  value: 'UNIT',
  choices: ['in', 'ft-in', 'mm', 'cm'],
}

/** The unit that was asked for. */
export const unitIn = ({ units }: Asked['options']): ReadingUnit | undefined => units as ReadingUnit | undefined
export const out: Option = { says: 'Write into this file; left out: to standard output.', value: 'FILE' }
export const window: Option = {
  says: 'A window by its id, or by room and id when several rooms have it: garden-room/w1.',
  value: 'ID',
}

/** Something that was asked and cannot be done; its message is for the person who asked. Ends with exit code 2. */
export class Trouble extends Error {}
