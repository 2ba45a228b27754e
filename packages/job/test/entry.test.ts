import { readFileSync } from 'node:fs'
import { inch } from '@evenhem/length'
import { expect, test } from 'vitest'
import type { Job } from '../src/index.ts'
import { extensionsOf, readEntry, readJob } from '../src/read.ts'

const extensions = extensionsOf([])
const example = new URL('../../../schema/examples/heron-point/job.json', import.meta.url)
const job = readJob(readFileSync(example, 'utf8'), extensions).job as Job
const over = '/rooms/living-room/windows/w1/treatments/over'
const put = (place: string, value: unknown) => readEntry(job, place, value, extensions)

test('a length is read by the schema of its place, in its own unit or that of the job', () => {
  expect(put(`${over}/panels/left/finishedLength`, '84 3/4 in')).toEqual({ value: 84.75 * inch })
  expect(put(`${over}/panels/left/finishedLength`, 84.5)).toEqual({ value: 84.5 * inch })
  expect(put(`${over}/found/hemsRead/left/3`, '5/8')).toEqual({ value: 0.625 * inch })
})

test('ticks, counts, choices and dates are read as they are', () => {
  expect(put(`${over}/found/brackets/left/fixed`, true)).toEqual({ value: true })
  expect(put(`${over}/found/came/rod-and-ring~1ring`, 14)).toEqual({ value: 14 })
  expect(put(`${over}/found/brackets/right/follows`, 'ceiling')).toEqual({ value: 'ceiling' })
  expect(put(`${over}/found/hungOn`, '2026-11-25')).toEqual({ value: '2026-11-25' })
})

test('what a place does not take is refused with the code that a job file would get', () => {
  const code = (place: string, value: unknown) => (put(place, value) as { refused?: { code: string } }).refused?.code
  expect(code(`${over}/panels/left/finishedLength`, '2150 in')).toMatch(/^job\/absurd/)
  expect(code(`${over}/panels/left/finishedLength`, 'long')).toMatch(/^length\//)
  expect(code(`${over}/panels/third/finishedLength`, '84')).toMatch(/^job\/reading-nowhere/)
  expect(code(`${over}/panels/left/finnishedLength`, '84')).toBe('job/reading-unknown-near')
  expect(code('panels', '84')).toBe('job/reading-no-place')
  expect(code(`${over}/found/came/x`, -1)).toMatch(/^job\//)
})

test('a signature is one value: who, what is accepted, strokes between 0 and 1, and its seal', () => {
  const hash = 'a1'.repeat(32)
  const seal = { job: hash, devices: { 'tablet-1': { n: 7, hash } }, photos: hash }
  const drawn = { role: 'customer', name: 'Ida Marsh', accepts: 'with open points', strokes: [[0, 0.5, 1, 0.25]], seal }
  const typed = { role: 'installer', name: 'Odo Fennel', strokes: [], typed: true, left: 'Two rings', seal }
  const code = (value: unknown) => (put('/job/found/signatures/s1', value) as { refused?: { code: string } }).refused?.code
  for (const value of [drawn, typed]) expect(put('/job/found/signatures/s1', value)).toEqual({ value })
  expect(code({ ...drawn, seal: undefined })).toMatch(/^job\/missing/)
  expect(code({ ...drawn, strokes: [[0, 1.5]] })).toBe('job/too-large')
  expect(code({ ...drawn, accepts: 'yes' })).toMatch(/^job\/choice/)
  expect(code({ ...drawn, colour: 'blue' })).toMatch(/^job\/unknown-member/)
  expect(code({ ...drawn, seal: { ...seal, photos: 'all' } })).toBe('job/pattern')
})
