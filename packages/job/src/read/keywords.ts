import { type BareUnit, type Length, readLength } from '@evenhem/length'
import type { FuncKeywordDefinition } from 'ajv'
import type { DataValidationCxt } from 'ajv/dist/types/index.js'
import { implausible, plausible } from './absurd.ts'
import { error, type Finding, info } from './finding.ts'
import type { Pointer } from './pointers.ts'

/** A value that a keyword met, where it stands and what holds it. */
export interface Met {
  readonly at: Pointer
  readonly value: unknown
  readonly holder: unknown
  readonly says: unknown
}

/** What one pass of validation gathers on its way. It is given to the validators as their context. */
export interface Pass {
  readonly units: BareUnit
  readonly answers: Map<unknown, ReturnType<typeof readLength>>
  /** Lengths, to be put where their text stands once all is checked: until then nothing is changed, so a value may be met twice. */
  readonly lengths: { readonly holder: Record<string | number, unknown>; readonly key: string | number; readonly value: Length }[]
  /** Objects under `with`, with their level. */
  readonly withs: Met[]
  /** Entries under `hardware`. */
  readonly entries: Met[]
  /** Names that must be those of an item of a list. */
  readonly names: Met[]
  readonly findings: Finding[]
  /** Whether there was more than is looked into. */
  isCut: boolean
}

export const newPass = (units: unknown): Pass => ({
  units: units === 'mm' || units === 'cm' ? units : 'in',
  answers: new Map(),
  lengths: [],
  withs: [],
  entries: [],
  names: [],
  findings: [],
  isCut: false,
})

/** Puts the lengths that were read where their text stands. */
export function putLengths({ lengths }: Pass): void {
  for (const { holder, key, value } of lengths) holder[key] = value
}

/** Reads a length, each text once. */
export function answer(pass: Pass, written: string | number): ReturnType<typeof readLength> {
  const known = pass.answers.get(written)
  if (known) return known
  const read = readLength(written, pass.units)
  pass.answers.set(written, read)
  return read
}

const isLengthText = (value: unknown): value is string | number =>
  typeof value === 'number' || (typeof value === 'string' && value.length > 0 && value.length <= 40)

/** Reads a length and notes where it goes. Text that is none is a finding of the words that `length` has for it. */
function readHere(pass: Pass, written: unknown, { instancePath, parentData, parentDataProperty }: DataValidationCxt): void {
  if (!isLengthText(written)) return
  const read = answer(pass, written)
  if (!read.ok) {
    const { code, column, end, values } = read.problem
    pass.findings.push(error(code, { value: instancePath, part: [column - 1, end - 1] }, values))
    return
  }
  if (!read.exact) pass.findings.push(info('job/length-rounded', { value: instancePath }, { got: String(written) }))
  pass.lengths.push({ holder: parentData, key: parentDataProperty, value: read.value })
}

const note = (list: 'withs' | 'entries' | 'names'): FuncKeywordDefinition['validate'] =>
  function (this: Pass, says: unknown, value: unknown, _: unknown, context?: DataValidationCxt) {
    if (context) this[list].push({ at: context.instancePath, value, holder: context.parentData, says })
    return true
  }

/** The format's own keywords. They refuse nothing by themselves; what they find is in the pass. */
export const keywords: readonly FuncKeywordDefinition[] = [
  {
    keyword: 'x-evenhem-length',
    schemaType: 'boolean',
    errors: false,
    validate(this: Pass, _: unknown, written: unknown, __: unknown, context?: DataValidationCxt) {
      if (context) readHere(this, written, context)
      return true
    },
  },
  {
    keyword: 'x-evenhem-plausible',
    schemaType: 'object',
    errors: false,
    compile(range: { readonly least: string; readonly most: string }) {
      const limits = plausible(range)
      return function (this: Pass, written: unknown, context?: DataValidationCxt) {
        if (!context || !isLengthText(written)) return true
        const read = answer(this, written)
        if (read.ok && (read.value < limits.least || read.value > limits.most))
          this.findings.push(implausible(written, read.value, limits, this.units, context.instancePath))
        return true
      }
    },
  },
  { keyword: 'x-evenhem-with', schemaType: 'string', errors: false, validate: note('withs') },
  { keyword: 'x-evenhem-kind', schemaType: 'boolean', errors: false, validate: note('entries') },
  { keyword: 'x-evenhem-names', schemaType: 'string', errors: false, validate: note('names') },
]
