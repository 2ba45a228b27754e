import { isFault, type SealCode, type SealFinding } from '@evenhem/site-log'
import { type Command, type ExitCode, json, type Session, subjects } from './command.ts'
import { exitCode, type Opened, open, written } from './job.ts'
import { momentOf } from './log.ts'
import { plain, table } from './table.ts'
import { type FolderVerified, isGood, type Placed, unread, type Verified, verified } from './verified.ts'
import type { Odd } from './verify-files.ts'
import { reader, tables } from './voice.ts'
import type { CliCode } from './words.ts'

const parts = ['job', 'log', 'photos', 'signature'] as const
type Part = (typeof parts)[number]
/** What of a signature a finding is about. */
const partOf: Readonly<Record<SealCode, Part>> = {
  'seal/job': 'job',
  'seal/signature': 'signature',
  'seal/line-changed': 'log',
  'seal/line-missing': 'log',
  'seal/chain': 'log',
  'seal/after': 'log',
  'seal/photos': 'photos',
  'seal/photo': 'photos',
}
const differs = ({ findings }: Verified, part: Part): boolean =>
  findings.some((finding) => isFault(finding) && partOf[finding.code] === part)

interface At {
  readonly file?: string
  readonly line?: number
}
/** Where a finding is: a file of the folder, and the line where it is about one that is there. */
function placeOf({ code, by, n }: SealFinding, lines: readonly Placed[]): At {
  if (code === 'seal/job') return { file: 'job.json' }
  if (by === undefined) return {}
  const line = lines.find(({ event }) => event.by === by && event.n === n)
  return { file: `log/${by}.jsonl`, ...(line && { line: line.line }) }
}
const atOf = ({ file, line }: At): string => (line === undefined ? (file ?? '') : `${file}:${line}`)

function findingSays(finding: SealFinding, lines: readonly Placed[], { voice }: Session): string {
  const { code, by = '', n = 0, count = 1, photo = '' } = finding
  // A number of an entry is a name: it is written without marks between its digits.
  return voice(code, { by, n: String(n), count, photo: photo.slice(0, 8), at: atOf(placeOf(finding, lines)) })
}
function oddSays({ code, values }: Odd, { voice, language }: Session): string {
  return code in tables[language]
    ? voice(code as CliCode, values)
    : reader[language].say(code, values as Readonly<Record<string, string | number>>).says
}
const oddLine = (odd: Odd, session: Session): string => `  ${atOf(odd)}: ${oddSays(odd, session)}\n`

/** One signature: who, when and where, then what is as signed and what is not. */
function signatureText(signature: Verified, lines: readonly Placed[], session: Session): string {
  const { voice } = session
  const { placed, value, stands, findings } = signature
  const { role, name, accepts } = value
  const head = voice('verify-signed', { role, name, when: momentOf(placed.event.clock), at: atOf(placed) })
  const rows = parts.map((part) => [
    voice(`verify-part.${part}`),
    voice(differs(signature, part) ? 'verify-differs' : 'verify-as-signed'),
  ])
  const said = findings.map((finding) => {
    const at = isFault(finding) ? atOf(placeOf(finding, lines)) : ''
    return `  ${at === '' ? '' : `${at}: `}${findingSays(finding, lines, session)}\n`
  })
  const notes = [
    ...(accepts ? [voice('verify-accepts', { accepts: accepts === 'with open points' ? 'with' : 'without' })] : []),
    ...(stands ? [] : [voice('verify-put-over')]),
  ]
  return `${head}\n${notes.map((note) => `  ${note}\n`).join('')}${table(rows)}${said.join('')}\n`
}

function text(folder: FolderVerified, session: Session): string {
  const { voice } = session
  const { signatures, odd, lines } = folder
  const elsewhere = odd.length > 0 ? `${voice('verify-elsewhere')}\n${odd.map((each) => oddLine(each, session)).join('')}\n` : ''
  const none = signatures.length > 0 ? '' : `${voice('verify-unsigned', { folder: folder.folder })}\n`
  const end = voice(isGood(folder) ? 'verify-good' : 'verify-bad')
  return plain(`${signatures.map((each) => signatureText(each, lines, session)).join('')}${elsewhere}${none}${end}\n`)
}

/** The same for programs: hashes whole, places as path and line. */
function asJson(folder: FolderVerified, session: Session) {
  const { signatures, odd, lines } = folder
  return {
    folder: folder.folder,
    job: folder.job,
    isGood: isGood(folder),
    signatures: signatures.map((signature) => ({
      place: signature.placed.event.place,
      ...{ role: signature.value.role, name: signature.value.name, accepts: signature.value.accepts },
      ...{
        clock: signature.placed.event.clock,
        file: signature.placed.file,
        line: signature.placed.line,
        stands: signature.stands,
      },
      asSigned: Object.fromEntries(parts.map((part) => [part, !differs(signature, part)])),
      findings: signature.findings.map((finding) => ({
        ...finding,
        ...placeOf(finding, lines),
        isFault: isFault(finding),
        says: findingSays(finding, lines, session),
      })),
    })),
    odd: odd.map((each) => ({
      ...{ code: each.code, file: each.file, line: each.line, isFault: !each.isNote },
      says: oddSays(each, session),
    })),
  }
}

/** Exit code: a job that cannot be read is told of, and that it is not the one that was signed. */
function codeOf(folder: FolderVerified, opened: Opened): ExitCode {
  return isGood(folder) ? exitCode(opened) : 1
}

export const verify: Command = {
  name: 'verify',
  says: 'verify',
  more: 'verify.more',
  subjects: subjects.folder,
  options: { json },
  run: async ({ subject, options }, session) => {
    const opened = await open(subject).catch(unread(subject))
    const errors = opened.diagnostics.filter(({ severity }) => severity === 'error')
    if (!opened.job) session.err(written({ ...opened, diagnostics: errors }, session.language, false))
    const folder = await verified(opened)
    session.out('json' in options ? `${JSON.stringify(asJson(folder, session), null, 2)}\n` : text(folder, session))
    return codeOf(folder, opened)
  },
}
