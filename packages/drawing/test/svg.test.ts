import { readFileSync } from 'node:fs'
import { inches, tapes } from '@evenhem/length'
import { expect, test } from 'vitest'
import { compose, type Figure, figuresOf, type Layer, type Mark, type NumberState, paper, toSvg } from '../src/index.ts'
import { compare } from './golden.ts'
import { onTablet } from './scenes/options.ts'
import { pair } from './scenes/pair.ts'

const svg = (marks: readonly Mark[], interactive = false) =>
  toSvg(compose([{ view: 'elevation', depth: 0, marks }], onTablet()), { title: 'Window', interactive })
const wall: Mark = { kind: 'rect', role: 'wall', at: [0, 0], width: 2000, height: 2000 }
const figure = (state: NumberState): Figure => ({
  ...(state === 'unknown' ? {} : { value: inches(20) }),
  of: '/of',
  what: 'frame',
  state,
  off: inches(-0.375),
})
const wide = (state: NumberState): Mark => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'below',
  from: [0, 0],
  to: [508, 0],
  figure: figure(state),
})

test('the pair of the concept, stacked, in inches', () =>
  compare('pair-stacked-in', toSvg(compose(pair, onTablet()), { title: 'Living room, window 2', interactive: true })))
test('the pair of the concept, drawn, in millimetres', () =>
  compare(
    'pair-drawn-mm',
    toSvg(compose(pair, onTablet({ state: 'drawn' }, tapes.wholeMillimetres)), { title: 'Living room, window 2' }),
  ))
test('the pair of the concept on paper', () =>
  compare(
    'pair-on-paper',
    toSvg(compose(pair, onTablet({ state: 'drawn', sizes: paper, width: 176, height: 150 })), { title: 'Living room, window 2' }),
  ))

test('text from a job stays text', () => {
  const text = svg([wall, { kind: 'caption', role: 'dimension', at: [100, 900], text: `</text><script>alert("it's")</script>&` }])
  expect(text).toContain('&lt;/text&gt;&lt;script&gt;alert(&quot;it&#39;s&quot;)&lt;/script&gt;&amp;')
  expect(text).not.toContain('<script')
})
test('a caption with what XML has no place for is written without it', () => {
  expect(svg([wall, { kind: 'caption', role: 'dimension', at: [100, 900], text: 'a\u0000b\ud800c' }])).toContain(
    'a\ufffdb\ufffdc',
  )
})
test('a place in an attribute stays in it', () => {
  expect(svg([wall, { ...wide('ordered'), figure: { ...figure('ordered'), of: '/a"onclick="x' } } as Mark], true)).toContain(
    'data-of="/a&quot;onclick=&quot;x"',
  )
})
test('a drawing has no style, no script, no id and no address', () => {
  for (const name of ['pair-stacked-in', 'pair-drawn-mm', 'pair-on-paper']) {
    const kept = readFileSync(new URL(`golden/${name}.svg.txt`, import.meta.url), 'utf8').replace(
      'xmlns="http://www.w3.org/2000/svg"',
      '',
    )
    expect(kept).not.toMatch(/style=|<script|<style|\sid=|url\(|href|https?:/)
  }
})
test('to touch, each figure is a button with a name, its place and a target', () => {
  const text = svg([wall, wide('ordered')], true)
  expect(text).toContain('role="group"')
  expect(text).toMatch(
    /<g class="figure ordered dimension" tabindex="0" role="button" aria-pressed="false" data-of="\/of" aria-label="frame: 20 in, ordered">.*class="touch"/,
  )
})
test('to look at, it is one picture with a name and a description', () => {
  const text = svg([wall, wide('ordered')])
  expect(text).toMatch(/^<svg [^>]*role="img" aria-label="Window"><desc>frame: 20 in, ordered<\/desc>/)
  expect(text.slice(1)).not.toMatch(/tabindex|data-of|<g[^>]* role=/)
})
test('each state of a number has a shape of its own', () => {
  const shapes = (['ordered', 'computed', 'measured', 'off', 'unknown', 'decided'] as const).map((state) =>
    svg([wall, wide(state)]).replace(/.*<g class="figure[^>]*>/, ''),
  )
  expect(shapes[1]).toContain('>=</text>')
  expect(shapes[2]).toContain('class="hook"')
  expect(shapes[3]).toMatch(/class="hook".*<g class="off">.*>−<\/text>/)
  expect(shapes[4]).toContain('>?</text>')
  expect(shapes[5]).toContain('class="strike"')
  expect(new Set(shapes.map((shape) => shape.replace(/[\d.]+/g, ''))).size).toBe(6)
})
test('each verdict of a finding has a shape of its own', () => {
  const finding = (verdict: 'pass' | 'warn' | 'fail' | 'unknown') =>
    svg([wall, { kind: 'finding', verdict, at: [900, 900], code: 'x' }])
  expect(finding('pass')).toMatch(/class="ring".*class="check"/)
  expect(finding('warn')).toMatch(/class="lozenge".*class="half"/)
  expect(finding('fail')).toMatch(/class="square".*class="bar"/)
  expect(finding('unknown')).toMatch(/class="broken".*>\?<\/text>/)
})
test('a drawing on paper has its size in mm', () => {
  expect(toSvg(compose(pair, onTablet({ sizes: paper, width: 176, height: 150 })), { title: 'x' })).toMatch(
    /class="drawing on-paper" width="176mm" height="150mm" viewBox="0 0 176 150"/,
  )
})
test('elements are closed in their order, so that it is XML', () => {
  const open: string[] = []
  for (const [, slash, name, end] of toSvg(compose(pair, onTablet()), { title: 'x', interactive: true }).matchAll(
    /<(\/?)(\w+)[^>]*?(\/?)>/g,
  )) {
    if (slash) expect(open.pop()).toBe(name)
    else if (!end) open.push(name as string)
  }
  expect(open).toEqual([])
})
test('what leaves a part of the wall that was asked for is cut off at its edge', () => {
  const layer: Layer = {
    view: 'elevation',
    depth: 0,
    marks: [wall, { kind: 'circle', role: 'frame', at: [2000, 1000], radius: 300 }],
  }
  const text = toSvg(compose([layer], onTablet({ bounds: { left: 0, right: 2000, bottom: 0, top: 2000 } })), { title: 'x' })
  expect(text).toMatch(/<svg x="[\d.]+" y="[\d.]+" width="[\d.]+" height="[\d.]+" viewBox="[\d. ]+"><circle class="area frame"/)
})
test('figures come in reading order: top to bottom', () => {
  const ys = figuresOf(
    compose(
      pair.map((layer) => ({ ...layer, marks: layer.marks.filter((mark) => mark.kind !== 'detail') })),
      onTablet(),
    ),
  ).map((label) => label.at[1])
  expect(ys).toEqual(ys.toSorted((a, b) => a - b))
})
