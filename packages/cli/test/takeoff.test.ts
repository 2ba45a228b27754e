import { readFile } from 'node:fs/promises'
import { inch } from '@evenhem/length'
import { expect, test } from 'vitest'
import { example, fileWith, line } from './line.ts'

const job = example('workroom-takeoff')
const cloth = (...words: readonly string[]) => line('plan', job, '--takeoff', ...words)
/** The example with some of its text replaced. */
async function changed(from: string | RegExp, to: string): Promise<string> {
  return fileWith((await readFile(`${job}/job.json`, 'utf8')).replace(from, to))
}

test('cloth stands by window, and what to order by fabric; a length that was rounded is rounded up and says so', async () => {
  const { code, out, err } = await cloth()
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^Cottage at Fern Lock\n\nParlour, Window 1\n {2}fabric {7}Fern print {12}4 cuts of 108 in {2}≈ 12\.38 yd/)
  expect(out).toMatch(/ {4}left panel {3}flat width 102 in {2}.*fabric 106 in \(2\), lining 106 in \(2\).* {2}10\.8 lb\n/)
  expect(out).toMatch(/In all\n.*21\.75 yd .* 1 yd .*cloth to order 23 yd\n.*≈ 19\.84 yd .* 20 yd\n/)
})
test('metres are shown to whoever reads in millimetres, in Spanish too', async () => {
  const { out } = await cloth('--units', 'mm', '--lang', 'es')
  expect(out).toContain('4 cortes de ≈ 2743 mm')
  expect(out).toMatch(/River voile +tela necesaria ≈ 10\.98 m +tela que pedir 11 m\n$/)
})
test('one window alone has no sum', async () => {
  const { out } = await cloth('--window', 'landing/w1')
  expect(out).toContain('River voile')
  expect(out).not.toMatch(/Fern print|In all/)
})
test('as JSON every number is exact and has its working', async () => {
  const { windows, fabrics } = JSON.parse((await cloth('--json')).out)
  expect(windows[0].treatments[0].cloths[0].cloth).toMatchObject({ value: 445.5 * inch, how: 'sum' })
  expect(fabrics.map(({ fabric }: { fabric: string }) => fabric)).toEqual(['fern-print', 'sateen', 'bump', 'voile'])
  expect(fabrics[1].needed.value).toBe(714 * inch)
})
test('a spreadsheet gets yards and metres as numbers, and takes no cell for a formula', async () => {
  const file = await changed('Fern print', '=1+1')
  const { out } = await line('plan', file, '--takeoff', '--csv')
  const [head, ...rows] = out.trimEnd().split('\r\n')
  expect(head).toBe('room,window,treatment,what,fabric,panel,widths,cut width,cuts,cut length,yards,metres,kilograms')
  expect(rows).toContain("Parlour,Window 1,over,fabric,'=1+1,,4,,4,108 in,12.375,11.3157,")
  expect(rows).toContain(",,,cloth to order,'=1+1,,,,,,23,21.0312,")
})
test('what is lacking is named, and the rest is counted', async () => {
  const { code, out, err } = await line('plan', await changed('"fullness": 3,', ''), '--takeoff')
  expect(code).toBe(0)
  expect(err).toBe('Not counted: landing/w1 lacks treatment, fullness; write it into the order.\n')
  expect(out).toContain('Fern print')
  expect(out).not.toContain('Landing')
})
test('a fabric without a width is not left out in silence', async () => {
  const { err } = await line('plan', await changed('"width": "54",', ''), '--takeoff')
  expect(err).toBe(
    'Not counted: parlour/w1 lacks Fern print, width; write it into the order.\nNot counted: parlour/w2 lacks Fern print, width; write it into the order.\n',
  )
})
test('a job that counts no cloth says how it would', async () => {
  expect(await line('plan', example('tern-hollow'), '--takeoff')).toEqual({
    code: 0,
    out: '',
    err: 'No fabric here has a width, so no cloth is counted; write width under fabrics.\n',
  })
})
test('the sheet of a window has its cloth; a window whose cloth is not counted has no such section', async () => {
  expect((await line('plan', job, '--window', 'landing/w1')).out).toMatch(/\nCloth\n {2}fabric {2}River voile/)
  expect((await line('plan', example('tern-hollow'))).out).not.toContain('\nCloth\n')
})
test('CSV is of the cloth alone, and not both forms at once', async () => {
  expect(await line('plan', job, '--csv')).toMatchObject({ code: 2, err: expect.stringContaining('write --takeoff too') })
  expect((await cloth('--json', '--csv')).code).toBe(2)
})
