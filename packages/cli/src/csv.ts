// A spreadsheet takes a cell that begins so for a formula; an apostrophe before it makes it text (a common practice of spreadsheets).
const startsFormula = /^[\s]*[=+\-@|\t\r]/

const cell = (text: string): string => {
  const tame = startsFormula.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(tame) || tame !== tame.trim() ? `"${tame.replaceAll('"', '""')}"` : tame
}

/** Rows as comma-separated values (RFC 4180). A cell cannot start a formula, whatever a job holds. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('')
