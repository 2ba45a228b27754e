import type { Diagnostic } from './diagnostics.ts'
import { excerpt } from './excerpt.ts'
import type { Severity } from './finding.ts'
import { englishLabels, type Labels, type Said, type Say, sayEnglish } from './say.ts'
import { harmless } from './width.ts'

export interface ShowOptions {
  /** What the file is called. */
  readonly file: string
  /** Left out: in English. */
  readonly say?: Say
  /** Left out: in English. */
  readonly labels?: Labels
  /** Whether a terminal shows it that knows colours. */
  readonly colour?: boolean
}

const colours: Readonly<Record<Severity, number>> = { error: 31, warning: 33, info: 36 }
type Paint = (text: string, ...codes: readonly number[]) => string
const paint =
  (colour: boolean | undefined): Paint =>
  (text, ...codes) =>
    colour ? `\u001b[${codes.join(';')}m${text}\u001b[0m` : text

/** The lines of a text, without what ends them. */
const linesOf = (text: string): readonly string[] => text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)

/**
 * Diagnostics for people: where, what, the line with carets under the exact part, and what helps. What comes from the file is shown so
 * that a terminal can't take it for orders. Empty without diagnostics.
 */
export function formatDiagnostics(
  diagnostics: readonly Diagnostic[],
  text: string,
  { file, say = sayEnglish, labels = englishLabels, colour }: ShowOptions,
): string {
  const lines = diagnostics.length > 0 ? linesOf(text) : []
  const gutter = String(Math.max(0, ...diagnostics.map(({ line }) => line))).length
  return diagnostics
    .map((diagnostic) =>
      block(
        diagnostic,
        lines[diagnostic.line - 1] ?? '',
        gutter,
        file,
        say(diagnostic.code, diagnostic.values),
        labels,
        paint(colour),
      ),
    )
    .join('\n')
}

function block(
  { code, severity, line, column, endLine, endColumn }: Diagnostic,
  text: string,
  gutter: number,
  file: string,
  { says, help }: Said,
  labels: Labels,
  as: Paint,
): string {
  const { line: shown, marks } = excerpt(text, column - 1, endLine === line ? endColumn - 1 : text.length)
  const bar = as(`${' '.repeat(gutter)} |`, 2)
  return [
    `${as(`${harmless(file)}:${line}:${column}`, 1)} ${as(labels[severity], 1, colours[severity])} ${as(code, 2)}`,
    `  ${harmless(says)}`,
    bar,
    `${as(`${String(line).padStart(gutter)} |`, 2)} ${shown}`.trimEnd(),
    `${bar} ${marks.replace(/\^+/, (carets) => as(carets, colours[severity]))}`,
    ...(help ? [`  ${as(`${labels.help}:`, 1)} ${harmless(help)}`] : []),
    '',
  ].join('\n')
}

/** Diagnostics for programs, with their sentences. */
export const diagnosticsJson = (diagnostics: readonly Diagnostic[], say: Say = sayEnglish): readonly (Diagnostic & Said)[] =>
  diagnostics.map((diagnostic) => ({ ...diagnostic, ...say(diagnostic.code, diagnostic.values) }))
