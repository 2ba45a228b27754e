import { existsSync } from 'node:fs'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { root } from './sources.ts'

const entry = `${root}viewer/src/worker.ts`

/** The plan's worker as the tablet gets it, and what went into it. */
async function bundle() {
  expect(existsSync(entry), 'viewer/src/worker.ts, the worker in which the tablet plans, is there').toBe(true)
  const { outputFiles, metafile } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    metafile: true,
    minify: true,
    legalComments: 'none',
    format: 'esm',
    platform: 'browser',
    conditions: ['source'],
    external: ['node:*'],
    absWorkingDir: root,
    logLevel: 'silent',
  })
  return {
    text: outputFiles[0]?.text ?? '',
    from: Object.keys(metafile.inputs),
    imports: Object.entries(metafile.inputs).flatMap(([file, input]) =>
      input.imports.map(({ path }) => `${file} imports ${path}`),
    ),
  }
}

test('the worker in which the tablet plans holds no Node, no ajv and no Intl', async () => {
  const { text, from, imports } = await bundle()
  expect(imports.filter((line) => / (node:|ajv)/.test(line))).toEqual([])
  expect(from.filter((file) => /node_modules\/ajv|intl-messageformat|job\/src\/read/.test(file))).toEqual([])
  expect(text.match(/.{0,60}(?:\bnode:|\bajv\b|\bIntl\b|toLocale|localeCompare).{0,60}/g)).toBeNull()
})

test('the worker plans with every plugin that ships', async () => {
  const { from } = await bundle()
  for (const part of ['packages/planner/src/', 'packages/drapery/src/', 'plugins/rod-and-ring/src/', 'plugins/returns/src/'])
    expect(
      from.some((file) => file.startsWith(part)),
      part,
    ).toBe(true)
})
