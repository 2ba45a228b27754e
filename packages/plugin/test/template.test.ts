import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { drapery } from '@evenhem/drapery'
import { createPlanner } from '@evenhem/planner'
import { expect, test } from 'vitest'
import { plainPole } from '../template/src/index.ts'
// Registers the template's own tests here.
import '../template/conformance.ts'

test('the template fits drapery', () => {
  expect(createPlanner([drapery, plainPole]).unmet.filter(({ plugin }) => plugin === 'plain-pole')).toEqual([])
})

test('a copy of the template in plugins/ builds with the list: it is of that project, as what has a project of its own is not', () => {
  const folder = new URL('../../../plugins/', import.meta.url)
  const { include, exclude } = JSON.parse(readFileSync(new URL('tsconfig.json', folder), 'utf8'))
  const own = readdirSync(folder).filter((name) => existsSync(new URL(`${name}/tsconfig.json`, folder)))
  expect(include).toContain('*/src')
  expect([...exclude].sort()).toEqual(own.sort())
  expect(existsSync(new URL('../template/tsconfig.json', import.meta.url))).toBe(false)
})

test('the template’s manual is one page', () => {
  const lines = readFileSync(new URL('../template/README.md', import.meta.url), 'utf8').split('\n')
  expect(lines.length).toBeLessThanOrEqual(41)
})
