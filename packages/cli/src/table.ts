import { harmless } from '@evenhem/job/read'

/** Text that a terminal shows and does not obey: a name in a job may hold anything. Lines stay lines. */
export const plain = (text: string): string => text.split('\n').map(harmless).join('\n')

/** Rows as lines, their columns lined up; the last one as long as it is. */
export function table(rows: readonly (readonly string[])[], indent = '  '): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)))
  return rows
    .map((row) => `${indent}${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd())
    .map((line) => `${line}\n`)
    .join('')
}
