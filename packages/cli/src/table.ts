/** Rows as lines, their columns lined up; the last one as long as it is. */
export function table(rows: readonly (readonly string[])[], indent = '  '): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)))
  return rows
    .map((row) => `${indent}${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd())
    .map((line) => `${line}\n`)
    .join('')
}
