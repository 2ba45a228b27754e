import { join } from 'node:path'
import { formatDiagnostics, readJob } from '@evenhem/job/read'
import { type Ask, type Command, type Option, type Session, subjects, Trouble } from './command.ts'
import { mustBeFree, startFolder } from './folder.ts'
import { extensions } from './job.ts'
import { newJobText } from './new-job.ts'
import { type Answers, type Question, questions } from './questions.ts'
import { plain } from './table.ts'
import { type Language, reader } from './voice.ts'

const options: Readonly<Record<string, Option>> = Object.fromEntries(
  questions.map(({ flag, says, value, choices }) => [flag, { says, value, choices }]),
)

const isAskedFor = ({ needs }: Question, answers: Answers): boolean => needs === undefined || answers[needs] !== undefined

/** Options that belong to something that no option names: told all at once, with what that needs in its turn. */
function mustBelong(given: Answers): void {
  const loose = questions.filter((question) => given[question.flag] !== undefined && !isAskedFor(question, given))
  if (loose.length === 0) return
  const needed = new Set<string>()
  const need = (flag: string | undefined): void => {
    if (flag === undefined || given[flag] !== undefined) return
    need(questions.find((question) => question.flag === flag)?.needs)
    needed.add(flag)
  }
  for (const { needs } of loose) need(needs)
  throw new Trouble('no-room', { flag: loose.map(({ flag }) => flag).join(', --'), needs: [...needed].join(', --') })
}

/** What the options say, each checked, those without an answer filled by what follows from the others. */
function fromOptions(given: Answers, isAll: boolean): Answers {
  mustBelong(given)
  let answers: Answers = {}
  for (const question of questions) {
    const { flag, otherwise, check } = question
    const answer = given[flag]
    if (answer !== undefined) check?.(answer, flag, given)
    const known = answer ?? (isAll && isAskedFor(question, answers) ? otherwise?.(answers) : undefined)
    if (known !== undefined) answers = { ...answers, [flag]: known }
  }
  return answers
}

/** Without a terminal what must be known must be among the options. */
function complete(answers: Answers, folder: string): Answers {
  const missing = questions.filter(({ flag, isRequired }) => isRequired && answers[flag] === undefined)
  if (missing.length === 0) return answers
  const usage = missing.map(({ flag, value, choices }) => `--${flag} ${choices?.join('|') ?? value}`).join(' ')
  throw new Trouble('answers-missing', { names: missing.map(({ flag }) => `--${flag}`).join(', '), folder, usage })
}

/** Asks one question until its answer can be meant; undefined when it is left open. */
async function answerTo(question: Question, answers: Answers, ask: Ask, { voice, err }: Session): Promise<string | undefined> {
  const { flag, asks, choices, isRequired, check } = question
  const usual = question.otherwise?.(answers)
  const prompt = `${voice(asks)}${choices ? ` (${choices.join(', ')})` : ''}${usual ? ` [${usual}]` : ''}: `
  for (;;) {
    const answer = await ask(plain(prompt))
    if (answer === undefined) throw new Trouble('stopped-asking')
    const chosen = answer.trim() || usual
    if (chosen === undefined && !isRequired) return undefined
    try {
      check?.(chosen ?? '', flag, answers)
      return chosen
    } catch (error) {
      if (!(error instanceof Trouble)) throw error
      err(`${plain(voice(error.code, error.values))}\n`)
    }
  }
}

async function fromPerson(given: Answers, ask: Ask, session: Session): Promise<Answers> {
  session.err(`${session.voice('ask-intro')}\n`)
  let answers = given
  for (const question of questions) {
    if (answers[question.flag] !== undefined || !isAskedFor(question, answers)) continue
    const answer = await answerTo(question, answers, ask, session)
    if (answer !== undefined) answers = { ...answers, [question.flag]: answer }
  }
  return answers
}

/** A job that does not read is not written: a length may be one and still be absurd for its place. */
function mustRead(text: string, language: Language): void {
  const errors = readJob(text, extensions).diagnostics.filter(({ severity }) => severity === 'error')
  if (errors.length > 0)
    throw new Trouble('would-not-read', {
      text: formatDiagnostics(errors, text, { file: 'job.json', ...reader[language] }).trimEnd(),
    })
}

export const newJob: Command = {
  name: 'new',
  says: 'new',
  more: 'new.more',
  subjects: subjects.folder,
  options,
  run: async ({ subject: folder, options: given }, session) => {
    const { ask, out, err, voice } = session
    await mustBeFree(join(folder, 'job.json'))
    const known = fromOptions(given, ask === undefined)
    const answers = ask ? await fromPerson(known, ask, session) : complete(known, folder)
    const text = newJobText(answers, voice)
    mustRead(text, session.language)
    out(`${plain(await startFolder(folder, text))}\n`)
    err(`${plain(voice('next', { folder }))}\n`)
    return 0
  },
}
