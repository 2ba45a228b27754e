import { readFileSync } from 'node:fs'
import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { expect, test } from 'vitest'
import { plainPole } from '../template/src/index.ts'
// Registers the template's own tests here.
import '../template/conformance.ts'

test('the template fits drapery', () => {
  expect(createPlanner([drapery, plainPole]).unmet.filter(({ plugin }) => plugin === 'plain-pole')).toEqual([])
})

test('the template’s manual is one page', () => {
  const lines = readFileSync(new URL('../template/README.md', import.meta.url), 'utf8').split('\n')
  expect(lines.length).toBeLessThanOrEqual(41)
})
