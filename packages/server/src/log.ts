import type { Job } from '@evenhem/job'
import { type Extensions, type NotPlain, readPlain } from '@evenhem/job/read'
import { isWrong, type Line, readEvent } from '@evenhem/site-log'
import { type LogWriter, logWriter } from '@evenhem/site-log/folder'
import type { FastifyInstance } from 'fastify'
import { jobHasErrors, refuse } from './answers.ts'
import type { Place } from './routes.ts'
import { type SentEntry, said, sent } from './sent-entry.ts'
import { entriesOf, logOwner, readSite } from './site.ts'

const mostLines = 500
/** The log of the job: `GET /log` answers what all devices wrote, `POST /log` adds lines of one device and answers when they are on the disk. */
export function serveLog(server: FastifyInstance, { prefix, jobOf }: Place, extensions: Extensions): void {
  const writers = new Map<string, LogWriter>()
  const writerOf = (folder: string): LogWriter => {
    const writer = writers.get(folder) ?? logWriter(folder)
    writers.set(folder, writer)
    return writer
  }

  server.get(`${prefix}/log`, async (request, reply) => {
    const { file, read } = await (await jobOf(request)).source.read()
    if (!read.job) return jobHasErrors(reply)
    const { entries, wrong } = await readSite(file, read.job, extensions)
    return reply.send({ entries: entries.map(sent), wrong: wrong.map((each) => ({ ...each, says: said(each) })) })
  })

  server.post(`${prefix}/log`, async (request, reply) => {
    const { source, live } = await jobOf(request)
    const { file, read } = await source.read()
    const folder = logOwner(file)
    if (!read.job) return jobHasErrors(reply)
    if (folder === undefined) return refuse(reply, 409, 'no-folder', noFolder)
    const lines = linesIn(request.body)
    if ('code' in lines) return refuse(reply, 400, lines.code, lines.message)
    const added = await writerOf(folder)
      .add(lines.device, lines.lines)
      .catch((error: NodeJS.ErrnoException) => {
        request.log.error(error)
        return error.code ?? 'unknown'
      })
    if (typeof added === 'string') return refuse(reply, 507, 'not-kept', notKept(added))
    if (added.is === 'refused')
      return reply.code(409).send({ code: added.wrong.code, message: said(added.wrong).en, last: added.last ?? null })
    const entries = sentLines(read.job, lines.lines, extensions)
    live.tell(entries)
    return reply.send({ last: added.last ?? null, entries })
  })
}

const sentLines = (job: Job, lines: readonly Line[], extensions: Extensions): readonly SentEntry[] =>
  entriesOf(job, lines, extensions).map(sent)

const notKept = (code: string): string =>
  `Unexpected answer of the disk (${code}), expected room for the log; make room or mend the disk. The tablet keeps its entries and sends them again.`
const noFolder =
  'Unexpected job file by its own name, expected a folder with job.json, which has room for a log; serve that folder.'
interface Refused {
  readonly code: string
  readonly message: string
}
const bad = (message: string): Refused => ({ code: 'lines', message })
const notPlain: Readonly<Record<NotPlain, string>> = {
  'no-json': 'Unexpected content that is no JSON, expected {"lines":["…"]}; send it as JSON.',
  'too-deep': 'Unexpected depth of nesting, expected {"lines":["…"]}; send lines as text.',
  odd: 'Unexpected name that stands twice, or a number in an odd form, expected {"lines":["…"]}; send plain JSON.',
}

/** The lines of a request, all of one device. */
function linesIn(body: unknown): { readonly device: string; readonly lines: readonly Line[] } | Refused {
  if (typeof body !== 'string') return bad(notPlain['no-json'])
  const plain = readPlain(body)
  if ('not' in plain) return bad(notPlain[plain.not])
  const texts = (plain.value as { readonly lines?: unknown } | null)?.lines
  if (!Array.isArray(texts) || texts.length === 0 || texts.length > mostLines)
    return bad(`Unexpected content, expected {"lines":["…"]} with 1 to ${mostLines} lines; send them in smaller parts.`)
  const lines: Line[] = []
  for (const [i, text] of texts.entries()) {
    const event = typeof text === 'string' ? readEvent(text) : undefined
    if (!event) return bad(`Unexpected line ${i + 1}, expected text; send each event as one line.`)
    if (isWrong(event)) return { code: event.code, message: `${said(event).en} (line ${i + 1})` }
    lines.push({ text, event })
  }
  const device = lines[0]?.event.by ?? ''
  return lines.every(({ event }) => event.by === device)
    ? { device, lines }
    : bad('Unexpected lines of several devices, expected those of one; send them apart.')
}
