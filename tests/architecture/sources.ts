import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))
export const read = (path: string): string => readFileSync(`${root}${path}`, 'utf8')

/** Every file that git holds or would hold, by its path from the top. */
export const files: readonly string[] = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '-z'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\0')
  .filter((path) => path !== '' && existsSync(`${root}${path}`))

const places = [
  [/^packages\/drapery\/src\/arithmetic\//, 'drapery/arithmetic'],
  [/^packages\/([^/]+)\/src\//, '$1'],
  [/^plugins\/index\.ts$/, 'plugins/index'],
  [/^plugins\/([^/]+)\/src\//, 'plugins/$1'],
  [/^viewer\/src\//, 'viewer'],
] as const

/** Which part of the whole a source file belongs to: `planner`, `plugins/returns`, `viewer`; undefined for what is no source. */
export function partOf(path: string): string | undefined {
  for (const [pattern, name] of places) {
    const found = pattern.exec(path)
    if (found) return name.replace('$1', found[1] ?? '')
  }
  return undefined
}

/** The part that an import of ours leads to: `@evenhem/job/read` to `job`, `@evenhem/plugin-returns` to `plugins/returns`. */
export function partImported(name: string): string | undefined {
  if (name === '@evenhem/plugins' || name === '@evenhem/plugins/forms') return 'plugins/index'
  if (name === '@evenhem/drapery/arithmetic') return 'drapery/arithmetic'
  return /^@evenhem\/plugin-(.+)$/.exec(name)?.[1]?.replace(/^/, 'plugins/') ?? /^@evenhem\/([^/]+)/.exec(name)?.[1]
}

export interface Import {
  readonly file: string
  readonly part: string
  readonly name: string
}

/** What is imported in a text, types included. */
export const importsIn = (text: string): readonly string[] =>
  [...text.replaceAll(/^\s*(?:\/\/|\*|\/\*).*$/gm, '').matchAll(/(?:\bfrom|\bimport)\s*\(?\s*['"]([^'"\n,]+)['"]/g)].map(
    (found) => found[1] ?? '',
  )

/** Every import of every source file. */
export const imports: readonly Import[] = files
  .filter((file) => /\.(ts|js)$/.test(file))
  .flatMap((file) => {
    const part = partOf(file)
    return part === undefined ? [] : importsIn(read(file)).map((name) => ({ file, part, name }))
  })
