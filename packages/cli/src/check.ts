import { type Diagnostic, diagnosticsJson } from '@evenhem/job/read'
import { type Command, json } from './command.ts'
import { exitCode, open, written } from './job.ts'

const names = { error: ['error', 'errors'], warning: ['warning', 'warnings'], info: ['note', 'notes'] } as const

/** `2 errors, 1 warning`. */
function counted(diagnostics: readonly Diagnostic[]): string {
  const counts = (['error', 'warning', 'info'] as const).map((severity) => ({
    severity,
    n: diagnostics.filter((each) => each.severity === severity).length,
  }))
  return counts
    .filter(({ n }) => n > 0)
    .map(({ severity, n }) => `${n} ${names[severity][n === 1 ? 0 : 1]}`)
    .join(', ')
}

export const check: Command = {
  name: 'check',
  says: 'Read a job and say what is wrong with it.',
  more: 'Names each place with line and column. Exit code 1: there are errors; 2: it is no job at all.',
  subject: 'job',
  options: { json },
  run: async ({ subject, options }, { out, colours }) => {
    const opened = await open(subject)
    const { file, diagnostics } = opened
    if ('json' in options) out(`${JSON.stringify({ file, diagnostics: diagnosticsJson(diagnostics) }, null, 2)}\n`)
    else out(`${written(opened, colours)}${file}: ${counted(diagnostics) || 'good'}\n`)
    return exitCode(opened)
  },
}
