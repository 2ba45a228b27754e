import { optionsOf } from './arguments.ts'
import type { Command, Option } from './command.ts'
import type { Voice } from './voice.ts'

/** Two columns, the left one as wide as its longest entry. */
const columns = (rows: readonly (readonly [left: string, right: string])[]): string => {
  const width = Math.max(...rows.map(([left]) => left.length))
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}\n`).join('')
}
const written = (name: string, { value, choices }: Option): string => `--${name}${value ? ` ${choices?.join('|') ?? value}` : ''}`

/** The command with its subjects: `plan <job>`. */
export const usageOf = ({ name, subjects = [] }: Command, voice?: Voice): string =>
  [
    name,
    ...subjects.map(({ is, mayLack }) => {
      const word = voice ? voice(`arg.${is}`) : is
      return mayLack ? `[${word}]` : `<${word}>`
    }),
  ].join(' ')
const usage = (command: Command, voice: Voice): string => {
  const parts = Object.entries(command.options).map(([option, about]) =>
    about.required ? written(option, about) : `[${written(option, about)}]`,
  )
  return ['evenhem', usageOf(command, voice), ...parts].join(' ')
}

/** The help of one command. */
export const helpOf = (command: Command, voice: Voice): string =>
  `${voice(command.says)}\n\n  ${usage(command, voice)}\n\n${command.more ? `${voice(command.more)}\n\n` : ''}${columns(Object.entries(optionsOf(command)).map(([name, option]) => [written(name, option), voice(option.says)]))}`

/** The overview of all commands. */
export const overview = (commands: readonly Command[], voice: Voice): string =>
  `${voice('about')}\n\n${columns(commands.map((command) => [`evenhem ${usageOf(command, voice)}`, voice(command.says)]))}\n${voice('footing')}\n`
