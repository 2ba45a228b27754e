import { expect, test } from 'vitest'
import { excerpt } from '../src/read/excerpt.ts'
import { columns } from '../src/read/width.ts'
import { type Diagnostic, diagnosticsJson, formatDiagnostics } from '../src/read.ts'

const diagnostic: Diagnostic = {
  code: 'job/minus-zero',
  severity: 'error',
  line: 2,
  column: 3,
  endLine: 2,
  endColumn: 5,
  values: { got: '-0' },
}

test('a diagnostic is shown with its place, its line and carets', () => {
  expect(formatDiagnostics([diagnostic], '{\n  -0\n}', { file: 'a.json' })).toBe(
    [
      'a.json:2:3 error job/minus-zero',
      '  Unexpected -0, expected 0 without a sign; write 0.',
      '  |',
      '2 |   -0',
      '  |   ^^',
      '',
    ].join('\n'),
  )
})

test('without diagnostics nothing is shown', () => {
  expect(formatDiagnostics([], '{}', { file: 'a.json' })).toBe('')
})

test('words come from whoever asks, and colours only when they are asked for', () => {
  const say = () => ({ says: 'Nada', help: 'Nada más' })
  const plain = formatDiagnostics([diagnostic], '{\n  -0\n}', { file: 'a', say })
  const coloured = formatDiagnostics([diagnostic], '{\n  -0\n}', { file: 'a', say, colour: true })
  expect(plain).toContain('  Nada\n')
  expect(plain).toContain('help: Nada más')
  expect(plain).not.toContain('\u001b')
  expect(coloured).toContain('\u001b[31m^^\u001b[0m')
})

test('for programs each diagnostic has its sentence', () => {
  expect(diagnosticsJson([diagnostic])).toEqual([{ ...diagnostic, says: 'Unexpected -0, expected 0 without a sign; write 0.' }])
})

test('a part that goes over lines is marked to the end of its first line', () => {
  const marks = formatDiagnostics([{ ...diagnostic, line: 1, column: 1, endLine: 3 }], '{ "a":\n1\n}', { file: 'a' }).split(
    '\n',
  )[4]
  expect(marks).toBe('  | ^^^^^^')
})

test('carets stand under wide letters, marks, tabs and flags', () => {
  for (const before of ['書斎', 'e\u0301', '\t', '🪟', 'ﾊ', 'क्षि']) {
    const { line, marks } = excerpt(`${before}x`, before.length, before.length + 1)
    expect([before, columns(marks) - 1]).toEqual([before, columns(line) - 1])
  }
})

test('a long line is cut around its part, and never wider than a hundred columns', () => {
  const { line, marks } = excerpt(`${'a'.repeat(5000)}<here>${'b'.repeat(5000)}`, 5000, 5006)
  expect([line.slice(0, 2), line.slice(31, 37), marks.trim(), line.endsWith('b…'), columns(line)]).toEqual([
    '…a',
    '<here>',
    '^^^^^^',
    true,
    100,
  ])
  expect(columns(excerpt('x'.repeat(5000), 10, 4000).line)).toBeLessThanOrEqual(100)
})

test('what a terminal would obey is shown and not obeyed', () => {
  const { line } = excerpt('a\u001b[2Jb\u202ec\u0000', 0, 1)
  expect(line).toBe('a<001B>[2Jb<202E>c<0000>')
})
