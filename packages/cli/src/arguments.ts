import { parseArgs } from 'node:util'
import { nearest } from '@evenhem/job/read'
import { type Asked, always, type Command, type Option, type Subject, Trouble } from './command.ts'
import { usageOf } from './help.ts'
import type { Phrase } from './voice.ts'
import type { CliCode } from './words.ts'

/** The options of a command, those of every command included. */
export const optionsOf = (command: Command): Readonly<Record<string, Option>> => ({ ...command.options, ...always })

/** Sorts out what stands after a command's name. Throws `Trouble` that says what was meant. */
export function sortOut(command: Command, words: readonly string[]): Asked {
  const options = optionsOf(command)
  const types = Object.fromEntries(
    Object.entries(options).map(([name, { value }]) => [name, { type: value ? ('string' as const) : ('boolean' as const) }]),
  )
  const { tokens, positionals } = parseArgs({ args: [...words], options: types, strict: false, tokens: true })
  const written = tokens.flatMap((token) =>
    token.kind === 'option'
      ? [[token.name, given(command, token.rawName, token.name, token.value, token.inlineValue)] as const]
      : [],
  )
  const asked = { subject: positionals[0] ?? '', subjects: positionals, options: Object.fromEntries(written) }
  if (!('help' in asked.options)) complete(command, asked)
  return asked
}

function given(command: Command, written: string, name: string, value: string | undefined, inline: boolean | undefined): string {
  const options = optionsOf(command)
  const option = Object.hasOwn(options, name) ? options[name] : undefined
  const see: Phrase = { code: 'see', values: { command: command.name } }
  if (!option)
    throw new Trouble('no-option', {
      got: written,
      names: listed(Object.keys(options)),
      hint: meant(name, Object.keys(options), '--') ?? see,
    })
  if (!option.value && inline) throw new Trouble('no-value-taken', { option: written, value: value ?? '' })
  if (!option.value) return 'yes'
  if (value === undefined || (!inline && value.startsWith('--')) || (!inline && /^-[a-z]/i.test(value)))
    throw new Trouble('value-missing', { option: written, value: option.value, example: option.choices?.[0] ?? option.value })
  if (option.choices && !option.choices.includes(value))
    throw new Trouble('not-a-choice', {
      option: written,
      got: value,
      choices: option.choices.join(', '),
      hint: hint(value, option.choices),
    })
  return value
}

function complete(command: Command, { subjects: given, options }: Asked): void {
  const { name, subjects = [] } = command
  if (given.length > subjects.length && subjects.at(-1)?.is !== 'files')
    throw new Trouble('too-much', { got: given[subjects.length] ?? '', command: name, expected: expected(command) })
  const lacking = subjects[given.length]
  if (lacking && !lacking.mayLack)
    throw new Trouble('subject-missing', { command: name, what: lacking.is, usage: usageOf(command) })
  const missing = Object.entries(command.options).find(([option, { required }]) => required && !(option in options))
  if (missing)
    throw new Trouble('option-missing', {
      command: name,
      option: missing[0],
      value: missing[1].choices?.join('|') ?? missing[1].value ?? '',
    })
}

function expected({ subjects = [] }: Command): Phrase {
  const named = (is: Subject['is']): Phrase => ({ code: `arg.${is}` as const })
  if (subjects.length === 0) return { code: 'nothing' }
  if (subjects.length === 1 && subjects[0]) return { code: 'just-one', values: { what: named(subjects[0].is) } }
  return { code: 'just-these', values: { what: subjects.map(({ is }) => `<${is}>`).join(' ') } }
}

/** `did you mean plan?`; undefined when nothing is near. */
export function meant(got: string, words: readonly string[], before = ''): Phrase | undefined {
  const near = nearest(got, words)
  return near === undefined ? undefined : { code: 'near', values: { near: `${before}${near}` } }
}
/** What was meant, or else what to do. */
export const hint = (got: string, words: readonly string[], otherwise: CliCode = 'one-of-them'): Phrase =>
  meant(got, words) ?? { code: otherwise }

const listed = (names: readonly string[]): string => names.map((name) => `--${name}`).join(', ')
