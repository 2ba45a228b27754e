import type { Layer } from '@evenhem/drawing'
import { expect, test } from 'vitest'
import { standingOf } from '../src/data/house.ts'
import { smallPicture } from '../src/data/small-picture.ts'

const none = { pass: 3, warn: 0, fail: 0, unknown: 0 }

test('a stop decides how a window stands, then a missing reading, then what is to be looked at', () => {
  expect(standingOf({ ...none, fail: 1, warn: 2 }, 4)).toBe('fail')
  expect(standingOf({ ...none, warn: 2, unknown: 1 }, 4)).toBe('measure')
  expect(standingOf({ ...none, warn: 2, unknown: 1 }, 0)).toBe('warn')
  expect(standingOf({ ...none, unknown: 1 }, 0)).toBe('unknown')
  expect(standingOf(none, 0)).toBe('pass')
})

const wall: Layer = {
  view: 'elevation',
  depth: 0,
  marks: [
    { kind: 'path', role: 'wall-face', d: [['M', -100, 2400], ['L', 1100, 2400], ['L', 1100, -5], ['L', -100, 0], ['Z']] },
    { kind: 'rect', role: 'glass', at: [0, 800], width: 1000, height: 1200 },
    { kind: 'line', role: 'fold', from: [0, 0], to: [0, 9] },
  ],
}
const fabric: Layer = {
  view: 'elevation',
  state: 'drawn',
  depth: 30,
  marks: [{ kind: 'rect', role: 'fabric', at: [0, 0], width: 9, height: 9 }],
}

test('a small picture takes the wall, y down, and leaves out folds and the drawn drapery', () => {
  const picture = smallPicture([fabric, wall])
  expect(picture?.box).toEqual({ x: -100, y: -2400, width: 1200, height: 2405 })
  expect(picture?.shapes).toEqual([
    { role: 'wall-face', area: true, d: 'M-100 -2400L1100 -2400L1100 5L-100 0Z' },
    { role: 'glass', area: true, d: 'M0 -800h1000v-1200h-1000Z' },
  ])
})
test('a window whose wall is not known has none', () => expect(smallPicture([fabric])).toBeUndefined())
