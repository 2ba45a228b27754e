import { Refusal } from '@evenhem/planner'
import { hint, sortOut } from './arguments.ts'
import { check } from './check.ts'
import { type Asked, type Command, type ExitCode, type Session, type Streams, Trouble } from './command.ts'
import { devices } from './devices.ts'
import { draw } from './draw.ts'
import { examples } from './examples.ts'
import { helpOf, overview } from './help.ts'
import { log } from './log.ts'
import { merge } from './merge.ts'
import { newJob } from './new.ts'
import { parts } from './parts.ts'
import { photos } from './photos.ts'
import { photosAdd } from './photos-add.ts'
import { plan } from './plan.ts'
import { punchList } from './punch-list.ts'
import { report } from './report.ts'
import { schema } from './schema.ts'
import { serve } from './serve.ts'
import { plain } from './table.ts'
import { verify } from './verify.ts'
import { languageIn, voiceIn } from './voice.ts'
import { watched } from './watching.ts'

export const commands: readonly Command[] = [
  newJob,
  check,
  plan,
  parts,
  punchList,
  draw,
  examples,
  schema,
  report,
  serve,
  devices,
  log,
  merge,
  photos,
  photosAdd,
  verify,
]

/** Runs one command line; what is wrong with it goes to `err`. */
export async function run(words: readonly string[], streams: Streams): Promise<ExitCode> {
  const language = languageIn(words)
  const session = { ...streams, language, voice: voiceIn(language) }
  return orTrouble(session, () => runCommand(words, session))
}

/** Says what stands in the way of some work, and that it does: plugins that do not fit, too, which their maker is to read. */
export async function orTrouble({ err, voice }: Session, work: () => Promise<ExitCode>): Promise<ExitCode> {
  try {
    return await work()
  } catch (error) {
    if (error instanceof Refusal) {
      err([voice('plugins-refused'), ...error.faults.map(({ message }) => `  ${message}`), ''].map(plain).join('\n'))
      return 2
    }
    if (!(error instanceof Trouble)) throw error
    err(`${plain(voice(error.code, error.values))}\n`)
    return 2
  }
}

async function runCommand(words: readonly string[], session: Session): Promise<ExitCode> {
  const { out, err, voice } = session
  const [name, ...rest] = inOneName(withoutLeadingLanguage(words))
  if (name === undefined || ['--help', '-h', 'help'].includes(name)) {
    const write = name === undefined ? err : out
    write(overview(commands, voice))
    return name === undefined ? 2 : 0
  }
  const command = commands.find((each) => each.name === name)
  const names = commands.map((each) => each.name).filter((each) => !each.includes(' '))
  if (!command) throw new Trouble('no-command', { got: name, names: names.join(', '), hint: hint(name, names, 'see-all') })
  const asked = sortOut(
    command,
    rest.map((word) => (word === '-h' ? '--help' : word)),
  )
  if ('help' in asked.options) {
    out(helpOf(command, voice))
    return 0
  }
  return 'watch' in asked.options ? again(command, asked, session) : command.run(asked, session)
}

const again = (command: Command, asked: Asked, session: Session): Promise<ExitCode> =>
  watched(asked.subject, session, () => orTrouble(session, () => command.run(asked, session)))

/** Some commands have two words. */
const inOneName = (words: readonly string[]): readonly string[] => {
  const [first, second] = words
  const both = commands.find(({ name }) => name === `${first} ${second}`)
  return both ? [both.name, ...words.slice(2)] : words
}

/** `evenhem --lang es plan …` is as good as `evenhem plan … --lang es`. */
const withoutLeadingLanguage = (words: readonly string[]): readonly string[] =>
  words[0] === '--lang'
    ? [...words.slice(2), ...words.slice(0, 2)]
    : words[0]?.startsWith('--lang=')
      ? [...words.slice(1), words[0]]
      : words
