import { readdirSync, readFileSync } from 'node:fs'
import { expect } from 'vitest'

const folder = `${process.env.EVENHEM_CORPORA}/`

/** Files of a collection whose names begin so, with their bytes. */
export const filesOf = (collection: string, start: string): readonly { readonly name: string; readonly bytes: Uint8Array }[] =>
  readdirSync(folder + collection)
    .filter((name) => name.startsWith(start) && name.endsWith('.json'))
    .map((name) => ({ name, bytes: readFileSync(`${folder}${collection}/${name}`) }))

export const stringsOf = (file: string): readonly string[] => JSON.parse(readFileSync(folder + file, 'utf8'))

/** Every case must come to nothing to say. Prints how many there were. */
export async function everyCase<T>(
  what: string,
  cases: readonly T[],
  wrong: (one: T) => string | undefined | Promise<string | undefined>,
): Promise<void> {
  const said: string[] = []
  for (const one of cases) said.push(...[await wrong(one)].flatMap((text) => (text === undefined ? [] : [text])))
  console.log(`${what}: ${cases.length} cases, ${said.length} wrong`)
  expect(cases.length).toBeGreaterThan(0)
  expect(said).toEqual([])
}
