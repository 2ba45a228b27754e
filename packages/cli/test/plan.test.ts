import { readFile } from 'node:fs/promises'
import { lay } from '@evenhem/job'
import { readJob } from '@evenhem/job/read'
import { createPlanner, planText } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { extensions } from '../src/job.ts'
import { example, fileWith, line, smallJob } from './line.ts'

const job = example('tern-hollow')
const place = '/rooms/garden-room/windows/w1'

/** The sections of a plan for people, by their titles. */
async function sections(...words: readonly string[]): Promise<Readonly<Record<string, string>>> {
  const { out } = await line('plan', ...words)
  return Object.fromEntries(
    out.split('\n\n').map((part) => [part.slice(0, part.indexOf('\n')), part.slice(part.indexOf('\n') + 1).trimEnd()]),
  )
}

test('a plan names the job, the room and the window first', async () => {
  expect((await line('plan', job)).out).toMatch(/^House at Tern Hollow, Garden room, Window 1\ngarden-room\/w1\n/)
})

test('heights stand from the top down, each with its unit', async () => {
  expect((await sections(job))['Heights above the level line']).toBe(
    '  top of rod      91 1/8 in\n  top of bracket  90 5/8 in\n  hang line       89 in\n  hem             1/2 in',
  )
})

test('marks stand side by side, the highest first, from the floor and from the casing', async () => {
  expect((await sections(job))['Marks on the wall']?.split('\n')[0]).toBe(
    '  left   top hole    90 in from the floor      7 in from the casing',
  )
})

test('every hook is named with where it goes', async () => {
  const hooks = (await sections(job)).Hooks
  expect(hooks).toContain('panel left   hook 1 to 11  ring 1 to 11')
  expect(hooks).toMatch(/hook 13 +wall/)
})

test('each check has its verdict in words, the failing first, with what to do and what it stops', async () => {
  const [first, second, third] = (await sections(example('rings-missing'))).Checks?.split('\n') ?? []
  expect(first).toBe('  fail     2 rings are missing: 22 packed, 24 needed for 26 hooks.')
  expect(second).toContain('Get them before the rod goes up')
  expect(third).toContain('Stops everything from mount on.')
})

test('steps stand by stage, with their numbers and cautions', async () => {
  const { Steps } = await sections(job)
  expect(Steps).toMatch(/^ {2}unpack {5}\S/)
  expect(Steps).toContain('top hole 90 in, lower hole 88 3/8 in')
  expect(Steps).toContain('Caution: Look for cables and pipes before you drill.')
})

test('parts are counted', async () => {
  expect((await sections(job)).Parts).toMatch(/ 2 {2}finial/)
})

test('what is not measured yet is asked for by its place in words, with how many rules wait', async () => {
  expect((await sections(example('not-measured-yet')))['To measure']).toMatch(
    /^ {2}wall, opening, casing, width \(\d+ rules wait for it\)/,
  )
})

test('lengths are in the units that were asked for, and rounded ones say so', async () => {
  const marks = (await sections(job, '--units', 'mm'))['Marks on the wall']
  expect(marks).toContain('2286 mm from the floor')
  expect(marks).toContain('≈ 178 mm from the casing')
})

test('the exit code tells a failing check from a good plan', async () => {
  expect((await line('plan', job)).code).toBe(0)
  expect((await line('plan', example('rings-missing'))).code).toBe(1)
})

test.each(['w1', 'garden-room/w1', place])('a window is found by %s', async (name) => {
  expect(JSON.parse((await line('plan', job, '--window', name, '--json')).out).window).toBe(place)
})

test('as JSON a window is the planner’s own text, readings laid over the order', async () => {
  const folder = example('tern-hollow-found')
  const { job: ordered, readings } = readJob(await readFile(`${folder}/job.json`), extensions)
  if (!ordered) throw new Error('the example is no job')
  const plan = createPlanner(plugins).window(lay(ordered, readings).job, ordered, place)
  expect((await line('plan', folder, '--window', 'w1', '--json')).out).toBe(planText(plan))
})

test('as JSON all windows are one object, by their places', async () => {
  const { out } = await line('plan', job, '--json')
  const one = JSON.parse((await line('plan', job, '--json', '--window', 'w1')).out)
  expect(out).toBe(`${JSON.stringify({ [place]: one }, null, 2)}\n`)
  expect((await line('plan', await fileWith(JSON.stringify(smallJob)), '--json')).out).toBe('{}\n')
})

test('a job with errors is not planned; they are said as trouble', async () => {
  const { code, out, err } = await line(
    'plan',
    await fileWith('{"format":"evenhem-job/1","units":"inch","job":{"number":"1","name":"n","country":"US"},"rooms":[]}'),
  )
  expect([code, out]).toEqual([1, ''])
  expect(err).toContain('job/choice')
})

test('a name in a job is shown and never obeyed by the terminal', async () => {
  const text = (await readFile(`${job}/job.json`, 'utf8')).replace('House at Tern Hollow', 'House\\u001b[2J\\u009b5m')
  const { out } = await line('plan', await fileWith(text))
  expect(out).toContain('Garden room')
  expect([...out].filter((letter) => letter !== '\n' && /\p{Control}/u.test(letter))).toEqual([])
})

test('a closed step names the check that closes it in words', async () => {
  const { Steps } = await sections(example('rings-missing'))
  expect(Steps).toContain('Closed by: 2 rings are missing')
  expect(Steps).not.toContain('rod-and-ring/')
})

test('a job without windows says so', async () => {
  const file = await fileWith(JSON.stringify(smallJob))
  const said = 'There is no window in this job, so there is nothing to plan.\n'
  expect(await line('plan', file)).toEqual({ code: 0, out: '', err: said })
  expect((await line('plan', file, '--window', 'w1')).err).toContain('this job has no window')
})

test('titles, verdicts and stages are said in Spanish', async () => {
  const { out } = await line('plan', example('rings-missing'), '--lang', 'es')
  for (const word of ['Marcas en la pared', 'falla', 'desde el piso', 'Pasos', 'taladrar']) expect(out).toContain(word)
  expect(out).not.toMatch(/ from the floor|\nSteps\n|Caution:/)
})
