import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** The sizes that the viewer's build prints, in kB compressed: before the first paint, and all with the plan's worker. */
export function viewerSizes(): { readonly first: number; readonly whole: number } {
  const said = execFileSync(process.execPath, ['viewer/build.js'], { cwd: root, encoding: 'utf8' })
  const [first, , whole] = [...said.matchAll(/([\d.]+) kB/g)].map((found) => Number(found[1]))
  if (first === undefined || whole === undefined)
    throw new Error(`Unexpected words of the viewer's build, expected three sizes: ${said}`)
  return { first, whole }
}
