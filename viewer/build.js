// Bundles the sheet into viewer/dist, or the folder that is named: index.html and, under assets/, the page, the plan's worker, the style and the fonts.
import { createHash } from 'node:crypto'
import { copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'

const here = fileURLToPath(new URL('.', import.meta.url))
const out = process.argv[2] ?? `${here}dist`
const assets = `${out}/assets`
/** No sentence of ours tells a time of day, so the hour cycles of every country stay out. */
const withoutHourCycles = {
  name: 'without-hour-cycles',
  setup: (builder) => builder.onLoad({ filter: /time-data\.generated\.js$/ }, () => ({ contents: 'export const timeData = {}' })),
}
const settings = {
  outdir: assets,
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  conditions: ['source'],
  tsconfig: `${here}tsconfig.json`,
  legalComments: 'none',
  logLevel: 'warning',
  plugins: [withoutHourCycles],
}
/** The page in two steps: what paints first, then the sheet itself, which comes while the plan is worked out. */
const page = () =>
  build({ ...settings, entryPoints: { app: `${here}src/app.ts` }, splitting: true, chunkNames: '[name]-[hash]', metafile: true })
const worker = () => build({ ...settings, entryPoints: { worker: `${here}src/worker.ts` } })
/** Keeps all of it on the tablet, under a name that changes with any of it. Made last. */
async function keeping() {
  const files = (await readdir(assets)).filter((name) => !/\.(txt|gz)$/.test(name)).sort()
  const hash = createHash('sha256')
  for (const file of [`${out}/index.html`, ...files.map((name) => `${assets}/${name}`)]) hash.update(await readFile(file))
  const define = {
    files: JSON.stringify(['/', '/manifest.webmanifest', ...files.map((name) => `/assets/${name}`)]),
    version: JSON.stringify(hash.digest('hex').slice(0, 16)),
  }
  await build({ ...settings, outdir: out, format: 'iife', define, entryPoints: { sw: `${here}src/sw.ts` } })
}

async function fonts() {
  const files = createRequire(import.meta.url).resolve(
    '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2',
  )
  const folder = files.slice(0, files.lastIndexOf('/'))
  for (const part of ['latin', 'latin-ext'])
    await copyFile(`${folder}/source-sans-3-${part}-wght-normal.woff2`, `${assets}/source-sans-3-${part}.woff2`)
  await copyFile(`${folder}/../LICENSE`, `${assets}/source-sans-3-LICENSE.txt`)
}

/** A script and all that it needs before it runs. */
function needed(outputs, file, seen = new Set()) {
  if (seen.has(file)) return seen
  seen.add(file)
  for (const { path, kind } of outputs[file].imports) if (kind === 'import-statement') needed(outputs, path, seen)
  return seen
}

/** The scripts that the sheet needs once it was painted, down to their last part. They are named in the page, so that none of them waits for another to name it. */
function later({ metafile: { outputs } }) {
  const name = (file) => file.split('/').at(-1)
  const app = Object.keys(outputs).find((file) => file.endsWith('/app.js'))
  const first = needed(outputs, app)
  const asked = Object.keys(outputs).filter((file) => /^(window-sheet|house-page|notice-strip|tablet)-/.test(name(file)))
  const all = new Set(asked.flatMap((file) => [...needed(outputs, file)]))
  return [...all]
    .filter((file) => !first.has(file))
    .map(name)
    .sort()
}
async function hint(page) {
  const links = later(page).map((name) => `<link rel="modulepreload" href="/assets/${name}" fetchpriority="low">`)
  const html = await readFile(`${out}/index.html`, 'utf8')
  await writeFile(
    `${out}/index.html`,
    html.replace('    <script type="module"', `    ${links.join('\n    ')}\n    <script type="module"`),
  )
}

/** Beside each script and style what is sent to whoever can read it: a third of the bytes. */
async function compress() {
  const files = (await readdir(assets)).filter((name) => /\.(js|css|svg)$/.test(name))
  await Promise.all(
    files.map(async (name) => writeFile(`${assets}/${name}.gz`, gzipSync(await readFile(`${assets}/${name}`), { level: 9 }))),
  )
}

/** Says what travels, compressed: before the first paint, and in all. `npm run bench -- viewer` holds it to its limits. */
async function sizes({ metafile: { outputs } }) {
  const first = new Set(
    [
      ...needed(
        outputs,
        Object.keys(outputs).find((file) => file.endsWith('/app.js')),
      ),
    ].map((file) => file.split('/').at(-1)),
  )
  const files = (await readdir(assets)).filter((name) => name.endsWith('.js'))
  const scripts = await Promise.all(
    files.map(async (name) => ({ name, kB: gzipSync(await readFile(`${assets}/${name}`), { level: 9 }).length / 1000 })),
  )
  const sum = (some) =>
    scripts
      .filter(some)
      .reduce((total, { kB }) => total + kB, 0)
      .toFixed(1)
  console.log(
    `viewer: ${sum(({ name }) => first.has(name))} kB before the first paint, ${sum(({ name }) => first.has(name) || name === 'worker.js')} kB with the plan's worker, ${sum(() => true)} kB in all (compressed)`,
  )
}

await rm(assets, { recursive: true, force: true })
await mkdir(assets, { recursive: true })
const [built] = await Promise.all([
  page(),
  worker(),
  fonts(),
  copyFile(`${here}index.html`, `${out}/index.html`),
  copyFile(`${here}src/page.css`, `${assets}/page.css`),
  copyFile(`${here}public/manifest.webmanifest`, `${out}/manifest.webmanifest`),
  ...['icon.svg', 'icon-192.png', 'icon-512.png', 'icon-whole-512.png'].map((name) =>
    copyFile(`${here}public/${name}`, `${assets}/${name}`),
  ),
])
await hint(built)
await keeping()
await compress()
await sizes(built)
