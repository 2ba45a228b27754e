import { builtinModules } from 'node:module'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { files, type Import, imports, importsIn, partImported, partOf, read } from './sources.ts'

// Who may import whom: DEVELOPERS.md says why.
const trade = ['length', 'drawing', 'mechanics', 'plugin', 'drapery', 'drapery/arithmetic']
const below = { plugin: ['length', 'job', 'mechanics', 'drawing'], planner: ['length', 'job', 'mechanics', 'drawing', 'plugin'] }
const served = [...below.planner, 'planner', 'disk', 'site-log', 'report', 'photos', 'plugins/index']
const may: Readonly<Record<string, readonly string[]>> = {
  length: [],
  disk: [],
  job: ['length'],
  mechanics: ['length'],
  drawing: ['length'],
  plugin: below.plugin,
  planner: below.planner,
  drapery: [...below.planner, 'drapery/arithmetic'],
  'drapery/arithmetic': ['length'],
  'site-log': ['length', 'job', 'disk'],
  photos: ['disk'],
  report: [...below.planner, 'planner', 'site-log'],
  server: served,
  // To print marks and hooks it knows the trade's facts by name; rules it has none.
  cli: [...served, 'server', 'drapery'],
  viewer: ['length', 'job', 'drawing', 'planner', 'site-log', 'plugins/index'],
}
const allowed = (part: string, other: string): boolean => {
  if (part === 'plugins/index') return other.startsWith('plugins/') || ['plugin', 'drapery'].includes(other)
  return (part.startsWith('plugins/') ? trade : (may[part] ?? [])).includes(other)
}

const ours = imports.filter(({ name }) => name.startsWith('@evenhem/'))
const relative = imports.filter(({ name }) => name.startsWith('.'))
const others = imports.filter(({ name }) => !name.startsWith('.') && !name.startsWith('@evenhem/'))
const said = ({ file, name }: Import) => `${file} imports ${name}`

test('imports of every shape are seen', () => {
  const text = `import a from 'a'\nimport type { B } from "b"\nexport * from './c.ts'\nimport 'd'\nconst e = await import('e')\nimport {\n  f,\n} from 'f'\n// import 'g'\n`
  expect(importsIn(text)).toEqual(['a', 'b', './c.ts', 'd', 'e', 'f'])
})

test('every package is in the table of who may import whom', () => {
  const parts = new Set(files.map(partOf).filter((part) => part !== undefined))
  expect([...parts].filter((part) => !part.startsWith('plugins/') && !(part in may))).toEqual([])
})

test('a package imports only what it may', () => {
  expect(
    ours.filter(({ part, name }) => partImported(name) !== part && !allowed(part, partImported(name) ?? '')).map(said),
  ).toEqual([])
})

test('no plugin imports another', () => {
  const between = ours.filter(
    ({ part, name }) => part !== 'plugins/index' && part.startsWith('plugins/') && name.startsWith('@evenhem/plugin-'),
  )
  expect(between.map(said)).toEqual([])
})

test('a relative import stays in its part', () => {
  const crosses = ({ file, part, name }: Import) => {
    const other = partOf(join(dirname(file), name)) ?? 'outside'
    return other !== part && !(other.startsWith(`${part}/`) && allowed(part, other))
  }
  expect(relative.filter(crosses).map(said)).toEqual([])
})

test('the reader, which is for Node, is imported by server and command line only', () => {
  expect(ours.filter(({ part, name }) => name === '@evenhem/job/read' && !['server', 'cli'].includes(part)).map(said)).toEqual([])
})

test('sharp has one importer', () => {
  expect(others.filter(({ part, name }) => name === 'sharp' && part !== 'photos').map(said)).toEqual([])
})

test('what is imported is declared in the package', () => {
  const undeclared = ({ file, name, part }: Import) => {
    const packageOf = name
      .split('/')
      .slice(0, name.startsWith('@') ? 2 : 1)
      .join('/')
    if (name.startsWith('node:') || builtinModules.includes(name) || packageOf === `@evenhem/${part.split('/')[0]}`) return false
    const manifest = part === 'plugins/index' ? 'plugins/package.json' : `${file.split('/src/')[0]}/package.json`
    return !(packageOf in (JSON.parse(read(manifest)).dependencies ?? {}))
  }
  expect([...ours, ...others].filter(undeclared).map(said)).toEqual([])
})

test('a rule can reach no clock, chance, network or language settings', () => {
  const reaches = /\b(Date|performance|Math\.random|crypto|fetch|Intl|setTimeout|process|globalThis)\b|\.toLocale|\.localeCompare/
  const pure = files.filter(
    (file) => ['drapery', 'drapery/arithmetic'].includes(partOf(file) ?? '') || partOf(file)?.startsWith('plugins/'),
  )
  const code = (file: string) => read(file).replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$|'(?:[^'\\\n]|\\.)*'/gm, '')
  expect(pure.filter((file) => file.endsWith('.ts') && reaches.test(code(file)))).toEqual([])
})
