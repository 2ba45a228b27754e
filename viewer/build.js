// Bundles the sheet into viewer/dist: index.html and, under assets/, the page, the plan's worker, the style and the fonts.
import { copyFile, mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'

const here = fileURLToPath(new URL('.', import.meta.url))
const assets = `${here}dist/assets`
const limits = { 'app.js': 60, 'worker.js': 120 }

const scripts = () => build({
  entryPoints: { app: `${here}src/app.ts`, worker: `${here}src/worker.ts` }, outdir: assets, bundle: true, minify: true, format: 'esm',
  target: 'es2022', conditions: ['source'], tsconfig: `${here}tsconfig.json`, legalComments: 'none', logLevel: 'warning',
})

async function style() {
  const text = (await Promise.all(['tokens', 'page'].map((name) => readFile(`${here}src/${name}.css`, 'utf8')))).join('')
  await writeFile(`${assets}/page.css`, text)
}

async function fonts() {
  const files = createRequire(import.meta.url).resolve('@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2')
  const folder = files.slice(0, files.lastIndexOf('/'))
  for (const part of ['latin', 'latin-ext'])
    await copyFile(`${folder}/source-sans-3-${part}-wght-normal.woff2`, `${assets}/source-sans-3-${part}.woff2`)
  await copyFile(`${folder}/../LICENSE`, `${assets}/source-sans-3-LICENSE.txt`)
}

/** Kilobytes as they travel. The plan's worker counts with the page: it is needed before the first number. */
async function sizes() {
  const kilobytes = async (name) => gzipSync(await readFile(`${assets}/${name}`), { level: 9 }).length / 1000
  for (const [name, most] of Object.entries(limits)) {
    const size = await kilobytes(name)
    console.log(`${name} ${size.toFixed(1)} kB compressed (at most ${most})`)
    if (size > most) throw new Error(`Unexpected ${size.toFixed(1)} kB for ${name}, expected at most ${most}; see what was added to the bundle.`)
  }
}

await rm(assets, { recursive: true, force: true })
await mkdir(assets, { recursive: true })
await Promise.all([scripts(), style(), fonts(), copyFile(`${here}index.html`, `${here}dist/index.html`)])
await sizes()
