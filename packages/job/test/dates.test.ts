import { expect, test } from 'vitest'
import { isDate, isDateTime } from '../src/dates.ts'

test('a day is a day of the calendar', () => {
  expect(['2026-11-30', '2024-02-29', '2000-02-29', '0001-01-01'].filter((day) => !isDate(day))).toEqual([])
  expect(
    ['2026-11-31', '2026-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '2026-1-1', '30.11.2026', '2026-11-30 ', ''].filter(
      isDate,
    ),
  ).toEqual([])
})

// The first five are the examples of RFC 3339, section 5.8; basis: memory.
test('a moment has a day, a time and an offset', () => {
  const good = [
    '1985-04-12T23:20:50.52Z',
    '1996-12-19T16:39:57-08:00',
    '1990-12-31T23:59:60Z',
    '1990-12-31T15:59:60-08:00',
    '1937-01-01T12:00:27.87+00:20',
    '2026-11-30t09:12:00z',
  ]
  expect(good.filter((moment) => !isDateTime(moment))).toEqual([])
  const bad = [
    '2026-11-30T09:12:00',
    '2026-11-30 09:12:00Z',
    '2026-11-30T24:00:00Z',
    '2026-11-30T09:60:00Z',
    '2026-11-30T09:12:60Z',
    '2026-11-31T09:12:00Z',
    '2026-11-30T09:12:00+24:00',
    'this morning',
  ]
  expect(bad.filter(isDateTime)).toEqual([])
})
