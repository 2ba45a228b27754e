import { expect, test } from 'vitest'
import { lay, valueAt } from '../src/index.ts'
import { inch, jobOf } from './job.ts'

const job = jobOf()
const window = '/rooms/den/windows/w1'
const left = `${window}/treatments/over/panels/left/finishedLength`

test('without readings the job as found is the order itself', () => {
  expect(lay(job, {})).toEqual({ job, lost: [] })
  expect(lay(job, {}).job).toBe(job)
})

test('a reading takes the place of what was ordered, and the order stays', () => {
  const { job: found } = lay(job, { [left]: { value: inch(85) } })
  expect(valueAt(found, left)).toBe(inch(85))
  expect(valueAt(job, left)).toBe(inch(84))
})

test('only the path to a reading is copied', () => {
  const { job: found } = lay(job, { [left]: { value: inch(85) } })
  const right = `${window}/treatments/over/panels/right`
  expect(valueAt(found, right)).toBe(valueAt(job, right))
  expect(found.hardware).toBe(job.hardware)
  expect(valueAt(found, window)).not.toBe(valueAt(job, window))
})

test('a reading of what stands there already changes nothing', () => {
  expect(lay(job, { [left]: { value: inch(84) } }).job).toBe(job)
})

test('a reading without a value is nothing', () => {
  expect(lay(job, { [left]: { value: undefined } })).toEqual({ job, lost: [] })
})

test('what the order left out is made on the way', () => {
  const place = `${window}/walls/a/openings/o/casing/width`
  expect(valueAt(lay(job, { [place]: { value: inch(62) } }).job, place)).toBe(inch(62))
})

test('below found and with, maps are made', () => {
  const plumb = `${window}/found/plumb/left`
  const point = `${window}/with/punch-list/points/p1/state`
  const { job: found, lost } = lay(job, { [plumb]: { value: 'good' }, [point]: { value: 'open' } })
  expect([valueAt(found, plumb), valueAt(found, point), lost]).toEqual(['good', 'open', []])
})

test('a reading of a panel that is gone is lost, and nothing is copied for it', () => {
  const gone = `${window}/treatments/over/panels/middle/finishedLength`
  const laid = lay(job, { [gone]: { value: inch(84) } })
  expect(laid.lost).toEqual([gone])
  expect(laid.job).toBe(job)
})

test('a list that is not there is not made, nor is a member of hardware', () => {
  const floor = `${window}/floor/left/y`
  const bracket = '/hardware/rope/bracket/projection'
  expect(lay(job, { [floor]: { value: inch(0) }, [bracket]: { value: inch(3) } }).lost).toEqual([floor, bracket])
})

test('a place through a value that holds nothing is lost, and so is one that is no place', () => {
  const places = ['/units/x', 'rooms/den/ceiling', '', '/rooms/0/ceiling']
  expect(lay(job, Object.fromEntries(places.map((place) => [place, { value: 'x' }]))).lost).toEqual(places)
})

test('a name that every object inherits is a name like others', () => {
  const { job: found } = lay(job, { '/with/__proto__/x': { value: 1 }, '/with/constructor/x': { value: 2 } })
  expect(Object.keys(found.with ?? {})).toEqual(['__proto__', 'constructor'])
  expect(({} as { x?: number }).x).toBeUndefined()
})
