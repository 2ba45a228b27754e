import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { words } from '../src/words/index.ts'
import { hookWords } from '../src/words/true-up.ts'

const folder = new URL('../src/words/', import.meta.url)
const files = readdirSync(folder).filter((name) => !name.endsWith('-es.ts') && !['index.ts', 'sentence.ts'].includes(name))

// Files of words are spread into one another: a code that stood in two would be said with the words of the later one.
test('no code stands in two files of words', () => {
  const codes = files.flatMap((name) =>
    [...readFileSync(new URL(name, folder), 'utf8').matchAll(/^ {2}'(drapery\/[^']+)':/gm)].map(([, code]) => code as string),
  )
  expect(codes.filter((code, n) => codes.indexOf(code) !== n)).toEqual([])
  expect(codes.length + Object.keys(hookWords).length).toBe(Object.keys(words.en ?? {}).length)
})
