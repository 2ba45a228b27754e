import { expect, test } from 'vitest'
import { commands } from '../src/run.ts'
import { english } from '../src/words.ts'
import { example, line } from './line.ts'

const job = example('tern-hollow')

test('without a command it says which there are, as trouble', async () => {
  const { code, out, err } = await line()
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain('evenhem check <job>')
})

test.each(['--help', '-h', 'help'])('%s shows every command, and that is good', async (word) => {
  const { code, out } = await line(word)
  expect(code).toBe(0)
  for (const { name, says } of commands) expect(out).toMatch(new RegExp(`evenhem ${name}.* ${english[says]}`))
})

test.each(commands.map(({ name }) => name))('%s --help shows its usage and each of its options', async (name) => {
  const { code, out } = await line(...name.split(' '), '--help')
  expect(code).toBe(0)
  expect(out).toContain(`evenhem ${name}`)
  for (const option of Object.keys(commands.find((command) => command.name === name)?.options ?? {}))
    expect(out).toContain(`--${option}`)
})

test.each([
  [
    ['plam', job],
    'Unexpected command plam, expected one of new, check, plan, parts, punch-list, draw, examples, schema, report, serve, devices, log, merge, photos, verify; did you mean plan?',
  ],
  [
    ['xyzzy'],
    'Unexpected command xyzzy, expected one of new, check, plan, parts, punch-list, draw, examples, schema, report, serve, devices, log, merge, photos, verify; see evenhem --help',
  ],
  [
    ['plan', job, '--wimdow', 'w1'],
    'Unexpected option --wimdow, expected one of --window, --takeoff, --json, --csv, --units, --watch, --lang, --help; did you mean --window?',
  ],
  [
    ['plan', job, '-x'],
    'Unexpected option -x, expected one of --window, --takeoff, --json, --csv, --units, --watch, --lang, --help; see evenhem plan --help',
  ],
  [
    ['plan', job, '--__proto__'],
    'Unexpected option --__proto__, expected one of --window, --takeoff, --json, --csv, --units, --watch, --lang, --help; see evenhem plan --help',
  ],
  [['plan', job, '--window'], 'Unexpected end after --window, expected ID; write --window ID'],
  [['plan', job, '--window', '--json'], 'Unexpected end after --window, expected ID; write --window ID'],
  [['plan', job, '--json=yes'], 'Unexpected value "yes" of --json, expected none; write only --json'],
  [['plan', job, '--units', 'mn'], 'Unexpected --units mn, expected in, ft-in, mm, cm; did you mean in?'],
  [['plan'], 'Unexpected end after plan, expected a job; write evenhem plan <job>'],
  [['plan', job, 'more'], 'Unexpected "more", expected one job after plan; see evenhem plan --help'],
  [['schema', job], `Unexpected "${job}", expected nothing after schema; see evenhem schema --help`],
  [['draw', job, '--view', 'marks'], 'Unexpected draw without --window, expected --window ID; see evenhem draw --help'],
  [
    ['draw', job, '--window', 'w1'],
    'Unexpected draw without --view, expected --view elevation|plan|marks|level|hem|pins|loads; see evenhem draw --help',
  ],
  [
    ['examples', 'a', 'b', 'c'],
    'Unexpected "c", expected <name> <folder> and nothing more after examples; see evenhem examples --help',
  ],
  [['plan', job, '--lang', 'fr'], 'Unexpected --lang fr, expected en, es; write one of them'],
  [['parts', job, '--json', '--csv'], 'Unexpected --json beside --csv, expected one of them; leave one out'],
  [['serve', job, '--port', '4.5'], 'Unexpected --port 4.5, expected a whole number from 0 to 65535; left out, it is 4170'],
  [['plan', job, '--window', 'w2'], 'Unexpected window w2, expected one of garden-room/w1; did you mean w1?'],
  [
    ['plan', job, '--window', 'kitchen/sink'],
    'Unexpected window kitchen/sink, expected one of garden-room/w1; write one of them',
  ],
] as const)('%j says what was expected, on the other stream, and ends with 2', async (words, said) => {
  expect(await line(...words)).toEqual({ code: 2, out: '', err: `${said}\n` })
})

test('what a person wrote is shown and never obeyed by the terminal', async () => {
  expect((await line('pl\u001b[31man')).err).not.toContain('\u001b')
})
