import { expect, test } from 'vitest'
import { files, read } from './sources.ts'

const top = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'package-lock.json',
  'package.json',
  'packages',
  'plugins',
  'schema',
  'tests',
  'tsconfig.json',
  'viewer',
]
const texts = files.filter((file) => /\.(ts|js|json|md|css|html|svg|yml|yaml|txt|npmrc)$|^\.ci\//.test(file))
const places =
  /^(packages|plugins)\/[^/]+\/test\/|^viewer\/test\/|^tests\/(together|unseen|references|architecture|manual|browser|others|gallery|long|corpora)\//
const manifests = files.filter((file) => /^(packages\/[^/]+|plugins(\/[^/]+)?|viewer)\/package\.json$/.test(file))

/** Files of `from` in which a pattern is found, each with what was found. */
const holding = (pattern: RegExp, from: readonly string[]) =>
  from.flatMap(
    (file) =>
      read(file)
        .match(pattern)
        ?.map((found) => `${file}: ${found}`) ?? [],
  )

test('the top level holds what the manual lists, and nothing else', () => {
  const entries = new Set(files.map((file) => file.split('/')[0] ?? '').filter((entry) => !entry.startsWith('.')))
  expect([...entries].sort()).toEqual(top)
})

test('no file names a path of the machine it was written on', () => {
  expect(
    holding(
      /(?<![\w.@-])\/(?:work|root|home|farm)\/[\w.-]*/g,
      texts.filter((file) => !file.endsWith('tree.test.ts')),
    ),
  ).toEqual([])
})

test('no file names the host of a registry of packages', () => {
  const hosts = ['registry', 'npmjs', 'yarnpkg', 'jsr', 'unpkg', 'jsdelivr'].map((name) => `\\b${name}\\.(?:org|com|io|net|npm)`)
  expect(holding(new RegExp(`${hosts.join('|')}|"resolved": *"http.*`, 'g'), texts)).toEqual([])
})

test('every test stands where the test command finds it', () => {
  expect(files.filter((file) => /\.(test|spec)\.[jt]s$/.test(file) && !places.test(file))).toEqual([])
})

test('no test is skipped, left to do, or alone', () => {
  const alone = new RegExp(`\\b(?:it|test|describe)\\.(?:${'skip'}|${'todo'}|${'only'}|${'fails'})\\w*`, 'g')
  expect(
    holding(
      alone,
      files.filter((file) => file.endsWith('.test.ts')),
    ),
  ).toEqual([])
})

test('a package builds after the packages it depends on', () => {
  const wrong = manifests.flatMap((file) => {
    const folder = file.replace('/package.json', '')
    const needs = Object.keys(JSON.parse(read(file)).dependencies ?? {}).filter((name) => name.startsWith('@evenhem/'))
    const names = JSON.parse(read(`${folder}/tsconfig.json`)).references.map(({ path }: { path: string }) =>
      nameAt(new URL(`${path}/`, `file:///${folder}/`).pathname.slice(1)),
    )
    return needs.filter((name) => !names.includes(name)).map((name) => `${folder}/tsconfig.json has no reference to ${name}`)
  })
  expect(wrong).toEqual([])
})
const nameAt = (folder: string): string => JSON.parse(read(`${folder}package.json`)).name

test('the whole is built from the top', () => {
  const listed = JSON.parse(read('tsconfig.json')).references.map(({ path }: { path: string }) => `${path}/package.json`)
  expect(manifests.filter((file) => !listed.includes(file))).toEqual([])
})
