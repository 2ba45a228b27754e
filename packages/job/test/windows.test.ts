import { expect, test } from 'vitest'
import { findWindow, nameOf, type WindowSearch, windowsOf } from '../src/index.ts'
import { jobOf } from './job.ts'

const [den] = jobOf().rooms
const job = {
  ...jobOf(),
  rooms: [den, { ...den, id: 'hall' }, { ...den, id: 'loft', windows: [{ ...den?.windows[0], id: 'w2' }] }],
} as ReturnType<typeof jobOf>
const found = (search: WindowSearch) => (search.is === 'one' ? search.found.place : [search.is, ...search.among.map(nameOf)])

test('windows are listed in walking order, each with its place and room', () => {
  expect(windowsOf(job).map(({ place, room }) => [place, room.id])).toEqual([
    ['/rooms/den/windows/w1', 'den'],
    ['/rooms/hall/windows/w1', 'hall'],
    ['/rooms/loft/windows/w2', 'loft'],
  ])
})

test('a window is found by its id, by room and id, by its place, and by a place below it', () => {
  expect(found(findWindow(job, 'w2'))).toBe('/rooms/loft/windows/w2')
  expect(found(findWindow(job, 'hall/w1'))).toBe('/rooms/hall/windows/w1')
  expect(found(findWindow(job, '/rooms/den/windows/w1'))).toBe('/rooms/den/windows/w1')
  expect(found(findWindow(job, '/rooms/den/windows/w1/treatments/over'))).toBe('/rooms/den/windows/w1')
})

test('an id that two rooms have tells which windows it could mean', () => {
  expect(found(findWindow(job, 'w1'))).toEqual(['several', 'den/w1', 'hall/w1'])
})

test('an unknown name tells which windows there are', () => {
  expect(found(findWindow(job, 'w9'))).toEqual(['none', 'den/w1', 'hall/w1', 'loft/w2'])
})
