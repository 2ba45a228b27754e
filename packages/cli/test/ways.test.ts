import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { example, fileWith, line } from './line.ts'

const came = () => line('check', example('panels-came-wrong'))

test('what may be decided about a finding stands below it, the best first', async () => {
  expect((await came()).out).toContain(
    [
      '           - Reset the pins to 1/4 in on the left and 3/4 in on the right, with the brackets 1/4 in lower than ordered: the hems then hang as ordered.',
      '           - Stop and call the workroom.',
    ].join('\n'),
  )
})

test('it is said in Spanish, and below a plan, too', async () => {
  const { out } = await line('plan', example('panels-came-wrong'), '--lang', 'es')
  expect(out).toMatch(
    /\n +- Ajustar los ganchos a 1\/4 in en el izquierdo y a 3\/4 in en el derecho, .*\n +- Parar y llamar al taller\.\n/,
  )
})

test('as JSON each has its sentence and what it puts where, and a finding has the place for a reason', async () => {
  const { out } = await line('check', example('panels-came-wrong'), '--json')
  const over = '/rooms/garden-room/windows/w1/treatments/over'
  const finding = JSON.parse(out).findings.find(({ stops }: { stops?: string }) => stops === 'mark')
  expect(finding.ways.at(-1)).toEqual({
    code: 'drapery/way-call',
    says: 'Stop and call the workroom.',
    put: [{ at: `${over}/found/decided/left.finishedLength`, value: 'call the workroom: 2247.9 mm for 2260.6 mm' }],
  })
  expect(finding.overrideAt).toBe(`${over}/found/overrides/drapery~1as-ordered left.finishedLength 2247.9 mm for 2260.6 mm`)
})

test('what somebody set aside is struck and stands with its reason, and stops nothing', async () => {
  const job = JSON.parse(await readFile(`${example('panels-came-wrong')}/job.json`, 'utf8'))
  job.rooms[0].windows[0].treatments[0].found = { overrides: { 'drapery/as-ordered': 'The customer wants it today.' } }
  const { code, out } = await line('check', await fileWith(JSON.stringify(job)))
  expect(out).toMatch(/fail +~~The left panel, finished length: .* less than ordered\.~~\n/)
  expect(out).toContain('Set aside: The customer wants it today.')
  expect([code, out.includes('Stops everything')]).toEqual([0, false])
})
