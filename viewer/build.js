// Bundles the sheet into viewer/dist, or the folder that is named: index.html and, under assets/, the page, the plan's worker, the style and the fonts.
import { copyFile, mkdir, readFile, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'

const here = fileURLToPath(new URL('.', import.meta.url))
const out = process.argv[2] ?? `${here}dist`
const assets = `${out}/assets`
// Kilobytes as they travel: before the first paint, and with the plan's worker.
const most = { page: 60, all: 120 }

const scripts = () =>
  build({
    entryPoints: { app: `${here}src/app.ts`, worker: `${here}src/worker.ts` },
    outdir: assets,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['source'],
    tsconfig: `${here}tsconfig.json`,
    legalComments: 'none',
    logLevel: 'warning',
  })

async function fonts() {
  const files = createRequire(import.meta.url).resolve(
    '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2',
  )
  const folder = files.slice(0, files.lastIndexOf('/'))
  for (const part of ['latin', 'latin-ext'])
    await copyFile(`${folder}/source-sans-3-${part}-wght-normal.woff2`, `${assets}/source-sans-3-${part}.woff2`)
  await copyFile(`${folder}/../LICENSE`, `${assets}/source-sans-3-LICENSE.txt`)
}

async function sizes() {
  const [page, worker] = await Promise.all(
    ['app', 'worker'].map(async (name) => gzipSync(await readFile(`${assets}/${name}.js`), { level: 9 }).length / 1000),
  )
  console.log(
    `viewer: page ${page.toFixed(1)} kB compressed (at most ${most.page}), plan's worker ${worker.toFixed(1)} kB (together at most ${most.all})`,
  )
  if (page > most.page || page + worker > most.all)
    throw new Error('Unexpected size of the viewer, expected no more than that; look at what was added to the bundles.')
}

await rm(assets, { recursive: true, force: true })
await mkdir(assets, { recursive: true })
await Promise.all([
  scripts(),
  fonts(),
  copyFile(`${here}index.html`, `${out}/index.html`),
  copyFile(`${here}src/page.css`, `${assets}/page.css`),
])
await sizes()
