import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { keywords } from '../src/read/keywords.ts'
import { catalogueSchema, jobSchema } from '../src/read/schemas.generated.ts'
import { readCatalogue, readJob } from '../src/read.ts'
import { bare } from './job.ts'

const readme = readFileSync(fileURLToPath(new URL('../../../schema/README.md', import.meta.url)), 'utf8')
const [shortest = '', catalogue = ''] = [...readme.matchAll(/```json\n([\s\S]*?)```/g)].map(([, text]) => text)

test('the shortest job of the manual is one, and nothing is to be said about it', () => {
  expect(readJob(shortest, bare)).toMatchObject({ job: JSON.parse(shortest), diagnostics: [] })
})

test('the shortest job has only what must be there', () => {
  expect(Object.keys(JSON.parse(shortest)).sort()).toEqual([...(jobSchema.required as readonly string[])].sort())
})

test('the catalogue of the manual is one, and nothing is to be said about it', () => {
  expect(readCatalogue(catalogue, bare)).toMatchObject({ catalogue: { fabrics: [{ id: 'sand' }] }, diagnostics: [] })
})

test('the manual explains each keyword of ours', () => {
  expect(keywords.map(({ keyword }) => keyword).filter((keyword) => !readme.includes(`\`${keyword}\``))).toEqual([])
})

test('every member of the format is described', () => {
  const bare: string[] = []
  const look = (schema: unknown, at: string): void => {
    if (schema === null || typeof schema !== 'object') return
    for (const [key, value] of Object.entries(schema)) {
      if (key === 'properties')
        for (const [name, member] of Object.entries(value as object))
          if (!(member as { description?: string }).description) bare.push(`${at}/${name}`)
      look(value, `${at}/${key}`)
    }
  }
  look(jobSchema, '')
  look(catalogueSchema, '')
  expect(bare).toEqual([])
})

const headings = [...readme.matchAll(/^#{2,3} (.*)$/gm)].map(([, heading = '']) => heading)
const slugs = headings.map((heading) => heading.toLowerCase().replaceAll(' ', '-'))
test('every link inside the manual leads to one heading', () => {
  const links = [...readme.matchAll(/\]\(#(.*?)\)/g)].map(([, to]) => to)
  expect(links.filter((to) => slugs.filter((slug) => slug === to).length !== 1)).toEqual([])
  expect(links.length).toBeGreaterThan(100)
})

test('every object of the format has its table, with every member', () => {
  const missing: string[] = []
  const look = (schema: unknown): void => {
    if (schema === null || typeof schema !== 'object') return
    const { title, properties } = schema as { readonly title?: string; readonly properties?: object }
    if (title && properties) {
      const heading = title.replaceAll(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
      const [, section = ''] = readme.split(`\n### ${heading}\n`)
      const rows = [...(section.split('\n### ')[0] ?? '').matchAll(/^\| `(.*?)` \|/gm)].map(([, name]) => name)
      if (String(rows) !== String(Object.keys(properties))) missing.push(`${heading}: ${rows}`)
    }
    Object.values(schema).forEach(look)
  }
  look(jobSchema)
  look(catalogueSchema)
  expect(missing).toEqual([])
})
