import { lay } from '@evenhem/job'
import { type Diagnostic, diagnosticsJson, isCatalogue, readCatalogue } from '@evenhem/job/read'
import { overridePlace } from '@evenhem/planner'
import { tapeFor } from '@evenhem/server'
import { all, type Command, type ExitCode, json, type Session, subjects, unitIn, units, watch } from './command.ts'
import { isStanding } from './findings.ts'
import { type Group, groupLines, groupOf, groupsAbove } from './groups.ts'
import { exitCode, extensions, type Opened, open, written } from './job.ts'
import { logLines } from './log-lines.ts'
import { planned } from './plans.ts'
import { type Speech, speechFor } from './speech.ts'
import { plain } from './table.ts'
import { reader, type Voice } from './voice.ts'

/** A job that was read without errors is planned: what its plans say, the whole job first, then room by room. */
function groupsIn({ job: ordered, readings }: Opened, session: Session): readonly Group[] {
  if (!ordered) return []
  const found = lay(ordered, readings).job
  const { sheets, whole } = planned({ ordered, found }, session, groupOf)
  const above = groupsAbove(found, whole(), sheets)
  const roomOf = (at: string): string => at.split('/').slice(0, 3).join('/')
  return above.flatMap((group) => (group.at === '' ? [group] : [group, ...sheets.filter(({ at }) => roomOf(at) === group.at)]))
}

const counted = (diagnostics: readonly Diagnostic[], groups: readonly Group[]) => {
  const checks = groups.flatMap((group) => group.checks)
  const severe = (severity: string) => diagnostics.filter((each) => each.severity === severity).length
  const verdicts = (verdict: string) => checks.filter((each) => each.verdict === verdict).length
  const asks = groups.flatMap((group) => group.asks)
  return {
    errors: severe('error'),
    warnings: severe('warning'),
    notes: severe('info'),
    fails: checks.filter(isStanding).length,
    'set-asides': verdicts('fail') - checks.filter(isStanding).length,
    unknowns: verdicts('unknown'),
    warns: verdicts('warn'),
    passes: verdicts('pass'),
    'open-places': new Set(asks.map(({ at }) => at)).size,
    'rules-wait': asks.reduce((sum, { holds }) => sum + holds, 0),
    faults: groups.flatMap((group) => group.faults).length,
  } as const
}
type Counts = ReturnType<typeof counted>

/** `2 errors, 1 warning`; `good` when nothing is to be said, with how much was looked at. */
function summary(counts: Counts, voice: Voice): string {
  const said = (Object.keys(counts) as (keyof Counts)[]).filter((name) => counts[name] > 0)
  const isGood = said.every((name) => name === 'passes')
  return [...(isGood ? [voice('good')] : []), ...said.map((name) => voice(name, { count: counts[name] }))].join(', ')
}

const code = (opened: Opened, counts: Counts): ExitCode =>
  counts.errors > 0 ? exitCode(opened) : counts.fails > 0 || counts.faults > 0 ? 1 : 0

/** The groups for programs: every check with its sentence. */
const asJson = (groups: readonly Group[], { say, help }: Speech) =>
  groups.flatMap(({ names, at, checks }) =>
    checks.map((check) => {
      const { code, verdict, says = code, values, stops, override } = check
      const ways = check.ways?.map((way) => ({ code: way.code, says: say(way.code, way.values), put: way.put }))
      return {
        in: at,
        names,
        code,
        verdict,
        at: check.at,
        says: say(says, values),
        help: help(says, values),
        stops,
        ways,
        override,
        overrideAt: overridePlace(check),
      }
    }),
  )

/** A catalogue is checked by itself, with its own places. */
function checkCatalogue({ file, text }: Opened, { out, colours, language, voice }: Session): ExitCode {
  const { diagnostics, catalogue } = readCatalogue(text, extensions)
  const counts = counted(diagnostics, [])
  out(written({ file, text, diagnostics, readings: {} }, language, colours))
  out(`${plain(`${file}: ${summary(counts, voice)}`)}\n`)
  return catalogue ? 0 : 1
}

export const check: Command = {
  name: 'check',
  says: 'check',
  more: 'check.more',
  subjects: subjects.job,
  options: { all, json, units, watch },
  run: async ({ subject, options }, session) => {
    const opened = await open(subject)
    if (isCatalogue(opened.text)) return checkCatalogue(opened, session)
    const { file, diagnostics, job } = opened
    const groups = groupsIn(opened, session)
    const counts = counted(diagnostics, groups)
    const speech = job && speechFor(tapeFor(job, unitIn(options)), session.language)
    if ('json' in options) {
      const findings = speech ? asJson(groups, speech) : []
      const asks = groups.flatMap((group) => group.asks)
      session.out(
        `${JSON.stringify({ file, diagnostics: diagnosticsJson(diagnostics, reader[session.language].say), findings, asks, counts }, null, 2)}\n`,
      )
    } else {
      const log = opened.found && job ? plain(logLines(opened.found, job, session.language, session.voice)) : ''
      const said = written(opened, session.language, session.colours) + log
      const found = speech && job ? groups.map((group) => plain(groupLines(group, job, speech, 'all' in options))).join('') : ''
      session.out(`${said}${said && found ? '\n' : ''}${found}${plain(`${file}: ${summary(counts, session.voice)}`)}\n`)
    }
    return code(opened, counts)
  },
}
