import { optionsOf } from './arguments.ts'
import type { Command, Option } from './command.ts'

/** Two columns, the left one as wide as its longest entry. */
const columns = (rows: readonly (readonly [left: string, right: string])[]): string => {
  const width = Math.max(...rows.map(([left]) => left.length))
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}\n`).join('')
}
const written = (name: string, { value, choices }: Option): string => `--${name}${value ? ` ${choices?.join('|') ?? value}` : ''}`
const usage = ({ name, subject, options }: Command): string => {
  const parts = Object.entries(options).map(([option, about]) =>
    about.required ? written(option, about) : `[${written(option, about)}]`,
  )
  return ['evenhem', name, ...(subject ? [`<${subject}>`] : []), ...parts].join(' ')
}

/** The help of one command. */
export const helpOf = (command: Command): string =>
  `${command.says}\n\n  ${usage(command)}\n\n${command.more ? `${command.more}\n\n` : ''}${columns(Object.entries(optionsOf(command)).map(([name, option]) => [written(name, option), option.says]))}`

/** The overview of all commands. */
export const overview = (commands: readonly Command[]): string =>
  `Evenhem works out one drapery job, from the work order to the customer's signature.\n\n${columns(commands.map((command) => [`evenhem ${command.name}${command.subject ? ` <${command.subject}>` : ''}`, command.says]))}
A job is a file, or its folder with job.json in it.
Exit code 0: good; 1: problems; 2: could not be read.
evenhem <command> --help tells more.\n`
