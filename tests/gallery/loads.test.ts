import type { LoadsTold } from '@evenhem/drapery/facts'
import { type Dimension, figuresOf, type Layer, type Mark, type Path } from '@evenhem/drawing'
import { describe, expect, test } from 'vitest'
import { examples } from '../tools/examples.ts'
import { sayFor, sceneOf, shown, windowsIn } from './scenes.ts'
import { sheets } from './sheets.ts'
import { faults } from './truth.ts'

const each = shown.find(({ view }) => view === 'loads') as (typeof shown)[number]
const windows = examples.flatMap((one) =>
  windowsIn(one).map((window) => ({ ...window, of: `${one.name} ${window.place}`, example: one })),
)
const toldIn = ({ plan }: (typeof windows)[number]): readonly LoadsTold[] =>
  plan.facts.filter(({ id }) => id === 'drapery/loads-told@1').map(({ value }) => value as LoadsTold)
const loaded = windows.filter((window) => toldIn(window).length > 0)
const here = (id: string) => loaded.find(({ of }) => of === `will-it-hold /rooms/barn/windows/${id}`) as (typeof loaded)[number]

const marksOf = (layers: readonly Layer[]): readonly Mark[] =>
  layers.filter(({ view }) => view === 'loads').flatMap(({ marks }) => marks)
const sagOf = (marks: readonly Mark[]): Dimension | undefined =>
  marks.find((mark): mark is Dimension => mark.kind === 'dimension' && mark.figure.what === 'drapery/sags-at-most')
const signs = (layers: readonly Layer[]): readonly string[] =>
  marksOf(layers).flatMap((mark) => (mark.kind === 'finding' ? [`${mark.verdict} ${mark.code}`] : []))

test('a window has the picture when its loads are known, and no other has it', () => {
  expect(loaded.length).toBeGreaterThan(15)
  for (const window of windows)
    expect([window.of, marksOf(window.layers).length > 0]).toEqual([window.of, loaded.includes(window)])
})

test('the sag is as long as it says, times the factor that is stated, and the rod passes its end', () => {
  for (const { of, layers } of loaded) {
    const sag = sagOf(marksOf(layers))
    const steep = layers.find(({ view }) => view === 'loads')?.stretch ?? 1
    expect([1, 2, 5, 10, 20, 50]).toContain(steep)
    if (!sag?.figure.value) continue
    const [drawn, said] = [sag.from[1] - sag.to[1], sag.figure.value / 1e6]
    expect([of, Math.abs(drawn - steep * said) < 0.1]).toEqual([of, true])
    const rods = marksOf(layers).filter((mark): mark is Path => mark.kind === 'path' && mark.role === 'rod')
    const points = rods.flatMap(({ d }) => d.flatMap((one) => (one[0] === 'M' || one[0] === 'L' ? [`${one[1]} ${one[2]}`] : [])))
    expect(points, of).toContain(sag.to.join(' '))
    expect(marksOf(layers)).toContainEqual(expect.objectContaining({ code: `drapery/loads-steep-${steep}` }))
  }
})

describe.each(sheets)('on $name', (sheet) => {
  test.each(['en', 'es'] as const)('every load is written, none on another, in %s', (language) => {
    for (const window of loaded) {
      const say = sayFor(window.example, language)
      const scene = sceneOf(window.layers, each, say, sheet)
      expect([window.of, faults(scene), scene.leftOut]).toEqual([window.of, [], []])
      const loads = toldIn(window).flatMap(({ brackets }) => brackets)
      const written = figuresOf(scene).filter(({ figure }) => figure.mass !== undefined)
      expect(written.map(({ figure }) => figure.of).sort()).toEqual(loads.map(({ load }) => load.name).sort())
      for (const { figure, words } of written) expect(words).toContain(say.quantity({ mass: figure.mass as number }))
    }
  })
})

test('a number leads to its working', () => {
  for (const { of, layers, plan } of loaded)
    for (const mark of marksOf(layers))
      if (mark.kind === 'dimension' && mark.figure.state === 'computed')
        expect(
          plan.reckonings.map(({ name }) => name),
          of,
        ).toContain(mark.figure.of)
})

test('what carries too much, lifts or is not known has a sign of its own', () => {
  expect(signs(here('steady').layers)).toEqual(Array(3).fill('pass drapery/bracket-holds-it'))
  expect(signs(here('rating').layers)).toEqual(Array(3).fill('fail drapery/bracket-over'))
  expect(signs(here('masonry').layers)).toEqual(Array(3).fill('unknown drapery/bracket-not-known'))
  expect(signs(here('lifts').layers)).toContain('warn drapery/bracket-lifts')
  expect(signs(here('sags').layers)).toContain('warn drapery/sags-too-far')
})

test('what is told of a bracket is what was worked out', () => {
  const { plan } = here('rating')
  const held = plan.facts.find(({ id }) => id === 'drapery/held@1')?.value as readonly { readonly ofRated?: unknown }[]
  expect(toldIn(here('rating'))[0]?.brackets.map(({ ofRated }) => ofRated)).toEqual(held.map(({ ofRated }) => ofRated))
  expect(toldIn(here('rating'))[0]?.assumes).toEqual([
    ...['drapery/assume-all', 'drapery/assume-even', 'drapery/assume-line', 'drapery/assume-not'],
    ...['drapery/assume-screws', 'drapery/assume-ground'],
  ])
})
