import { parseArgs } from 'node:util'
import { nearest } from '@evenhem/job/read'
import { type Asked, type Command, type Option, Trouble } from './command.ts'

const help: Option = { says: 'Show this help.' }
/** The options of a command, `--help` included. */
export const optionsOf = (command: Command): Readonly<Record<string, Option>> => ({ ...command.options, help })

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
  const asked = { subject: positionals[0] ?? '', options: Object.fromEntries(written) }
  if (!('help' in asked.options)) complete(command, asked, positionals)
  return asked
}

function given(command: Command, written: string, name: string, value: string | undefined, inline: boolean | undefined): string {
  const options = optionsOf(command)
  const option = Object.hasOwn(options, name) ? options[name] : undefined
  if (!option)
    throw new Trouble(
      `Unexpected option ${written}, expected one of ${listed(Object.keys(options))}; ${meant(name, Object.keys(options), '--') ?? `see evenhem ${command.name} --help`}`,
    )
  if (!option.value && inline)
    throw new Trouble(`Unexpected value "${value}" of ${written}, expected none; write only ${written}`)
  if (!option.value) return 'yes'
  if (value === undefined || (value.startsWith('-') && !inline))
    throw new Trouble(
      `Unexpected end after ${written}, expected ${option.value}; write ${written} ${option.choices?.[0] ?? option.value}`,
    )
  if (option.choices && !option.choices.includes(value))
    throw new Trouble(
      `Unexpected ${written} ${value}, expected ${option.choices.join(', ')}; ${meant(value, option.choices) ?? 'write one of them'}`,
    )
  return value
}

function complete({ name, subject, options }: Command, asked: Asked, positionals: readonly string[]): void {
  const most = subject ? 1 : 0
  if (positionals.length > most)
    throw new Trouble(
      `Unexpected "${positionals[most]}", expected ${subject ? `one ${subject}` : 'nothing'} after ${name}; see evenhem ${name} --help`,
    )
  if (subject && positionals.length === 0)
    throw new Trouble(`Unexpected end after ${name}, expected a ${subject}; write evenhem ${name} <${subject}>`)
  const missing = Object.entries(options).find(([option, { required }]) => required && !(option in asked.options))
  if (missing)
    throw new Trouble(
      `Unexpected ${name} without --${missing[0]}, expected --${missing[0]} ${missing[1].choices?.join('|') ?? missing[1].value}; see evenhem ${name} --help`,
    )
}

/** `did you mean plan?`; undefined when nothing is near. */
export function meant(got: string, words: readonly string[], before = ''): string | undefined {
  const near = nearest(got, words)
  return near && `did you mean ${before}${near}?`
}

const listed = (names: readonly string[]): string => names.map((name) => `--${name}`).join(', ')
