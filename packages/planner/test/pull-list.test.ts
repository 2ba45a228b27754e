import { inch, type Length } from '@evenhem/length'
import { pullList } from '@evenhem/planner'
import { expect, test } from 'vitest'

const inches = (count: number) => (count * inch) as Length
const rings = { what: 'a/ring', count: 10, hardware: '/hardware/rod' }

test('the same thing of several windows is one line of the job', () => {
  const list = pullList([
    { window: '/w1', parts: [rings] },
    { window: '/w2', parts: [rings, { ...rings, count: 3 }] },
  ])
  expect(list.windows.map(({ lines }) => lines)).toEqual([[rings], [{ ...rings, count: 13 }]])
  expect(list.job).toEqual([{ ...rings, count: 23 }])
})

test('another length or another hardware is another line, the longest first', () => {
  const rod = { what: 'a/rod', count: 1 }
  const parts = [
    { ...rod, length: inches(60) },
    { ...rod, length: inches(80) },
    { ...rod, length: inches(60), hardware: '/hardware/rod' },
  ]
  expect(pullList([{ window: '/w1', parts }]).job).toEqual([parts[1], parts[0], parts[2]])
})

test('spares are added where an order names them, and absent where none does', () => {
  const parts = [rings, { ...rings, spares: 2 }, { ...rings, spares: 0 }]
  expect(pullList([{ window: '/w1', parts }]).job).toEqual([{ ...rings, count: 30, spares: 2 }])
  expect(pullList([{ window: '/w1', parts: [rings] }]).job[0]).not.toHaveProperty('spares')
})

test('no window needs nothing', () => {
  expect(pullList([])).toEqual({ windows: [], job: [] })
})
