import { meant, sortOut } from './arguments.ts'
import { check } from './check.ts'
import { type Command, type ExitCode, type Streams, Trouble } from './command.ts'
import { draw } from './draw.ts'
import { helpOf, overview } from './help.ts'
import { plan } from './plan.ts'
import { report } from './report.ts'
import { schema } from './schema.ts'
import { serve } from './serve.ts'
import { plain } from './table.ts'

export const commands: readonly Command[] = [check, plan, draw, schema, report, serve]

/** Runs one command line; what is wrong with it goes to `err`. */
export async function run(words: readonly string[], streams: Streams): Promise<ExitCode> {
  try {
    return await runCommand(words, streams)
  } catch (error) {
    if (!(error instanceof Trouble)) throw error
    streams.err(`${plain(error.message)}\n`)
    return 2
  }
}

async function runCommand([name, ...rest]: readonly string[], streams: Streams): Promise<ExitCode> {
  if (name === undefined) throw new Trouble(overview(commands).trimEnd())
  if (['--help', '-h', 'help'].includes(name)) {
    streams.out(overview(commands))
    return 0
  }
  const command = commands.find((each) => each.name === name)
  const names = commands.map((each) => each.name)
  if (!command)
    throw new Trouble(
      `Unexpected command ${name}, expected one of ${names.join(', ')}; ${meant(name, names) ?? 'see evenhem --help'}`,
    )
  const asked = sortOut(
    command,
    rest.map((word) => (word === '-h' ? '--help' : word)),
  )
  if (!('help' in asked.options)) return command.run(asked, streams)
  streams.out(helpOf(command))
  return 0
}
