import { expect, test } from 'vitest'
import { forms } from '../../../plugins/forms.generated.ts'
import { type Job, placeInWords } from '../src/index.ts'
import { spanish } from '../src/place-words-es.ts'

const window = {
  id: 'w1',
  name: 'Window 1',
  walls: [{ id: 'a', openings: [{ id: 'o', casing: { width: 1 } }] }],
  treatments: [{ id: 'over', panels: [{ id: 'left', finishedLength: 84 }, { id: 'right' }], with: { returns: {} } }],
}
const job = { rooms: [{ id: 'garden', name: 'Garden room', windows: [window] }] } as unknown as Job
const at = '/rooms/garden/windows/w1'
const panel = `${at}/treatments/over/panels/left/finishedLength`

test('a list item goes by its name, one of several without a name by its id, an only one by what it is', () => {
  expect(placeInWords(job, panel)).toBe('Garden room, Window 1, treatment, panel left, finished length')
  expect(placeInWords(job, `${at}/walls/a/openings/o/casing/width`, at)).toBe('wall, opening, casing, width')
})
test('a place is told from below another on, and in full when it lies elsewhere', () => {
  expect(placeInWords(job, panel, at)).toBe('treatment, panel left, finished length')
  expect(placeInWords(job, panel, '/rooms/den')).toBe('Garden room, Window 1, treatment, panel left, finished length')
})
test('a member that is not there yet has a name all the same, and parts of plugins go without “with”', () => {
  expect(placeInWords(job, `${at}/treatments/over/panels/right/finishedLength`, at)).toBe(
    'treatment, panel right, finished length',
  )
  expect(placeInWords(job, `${at}/treatments/over/with/returns/returnDepth`, at)).toBe('treatment, returns, return depth')
})

test('in Spanish members and sides have their words, and names stay', () => {
  expect(placeInWords(job, panel, '', 'es')).toBe('Garden room, Window 1, cortina, paño izquierdo, largo terminado')
  expect(placeInWords(job, `${at}/walls/a/openings/o/casing/width`, at, 'es')).toBe('pared, vano, marco, ancho')
})

test('what was found goes by what it is of: a bracket, a hem, below which hook', () => {
  const over = `${at}/treatments/over`
  const said = (place: string, language = 'en') => placeInWords(job, `${over}/found/${place}`, over, language)
  expect(said('brackets/left/floorToHead')).toBe('bracket left, floor to frame head')
  expect(said('hemsRead/left/3')).toBe('hem left, hook 3')
  expect(said('brackets/left/floorToHead', 'es')).toBe('soporte izquierdo, del piso a lo alto del marco')
  expect(said('hemsRead/left/3', 'es')).toBe('dobladillo izquierdo, gancho 3')
  const signed = ['en', 'es'].map((language) => placeInWords(job, '/job/found/signatures/s1', '', language))
  expect(signed).toEqual(['job, signature s1', 'trabajo, firma s1'])
})

test('every member that can be read at a window has a Spanish name', () => {
  const names = forms
    .map(([place]) => place)
    .filter((place) => place.startsWith('/rooms/'))
    .flatMap((place) => place.split('/').slice(1))
  expect([...new Set(names)].filter((name) => name !== '*' && !(name in spanish))).toEqual([])
})
