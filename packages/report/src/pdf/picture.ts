import { findingShape, lights, paperCss, type Scene, toSvg } from '@evenhem/drawing'
import type { Verdict } from '@evenhem/plugin'

/** Paper is whiter than the sheet on a tablet. */
export const colours: Readonly<Record<string, string>> = { ...lights.paper, sheet: '#ffffff', wallface: '#ffffff' }

/** A style sheet without properties of its own, which the reader of pictures does not know, and without rules for some media. */
const plain = (css: string): string =>
  css
    .replace(/@media[^{]*\{(?:[^{}]*\{[^{}]*\})*[^{}]*\}/g, '')
    .replace(/var\(--(\w+)\)/g, (_, name: string) => colours[name] ?? 'none')

/** The first of the families is the one that the document holds. */
const drawingStyle = plain(paperCss())
  .replaceAll('"Source Sans 3 Variable",', '')
  .replace(/,system-ui,sans-serif/g, '')

const styled = (svg: string, style: string): string => svg.replace(/(<svg[^>]*>)/, `$1<style>${style}</style>`)

/** The same picture as on the page, as a file that stands by itself. */
export const drawingFile = (scene: Scene): string => styled(toSvg(scene, { title: '', desc: '' }), drawingStyle)

const signStyle = plain(`.pass .ring{fill:none;stroke:var(--pass);stroke-width:1.6}
.pass .check{fill:none;stroke:var(--pass);stroke-width:2;stroke-linecap:round;stroke-linejoin:round}
.warn .lozenge{fill:var(--sheet);stroke:var(--warn);stroke-width:1.6}.warn .half{fill:var(--warn)}
.fail .square{fill:var(--fail)}.fail .bar{fill:none;stroke:var(--sheet);stroke-width:2.4}
.unknown .broken{fill:none;stroke:var(--ink);stroke-width:1.6;stroke-dasharray:3 2.2}
.unknown .question{fill:var(--ink);font-family:"Source Sans 3"}`)

/** The sign of a verdict as a picture of its own. */
export const signFile = (verdict: Verdict): string =>
  styled(
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-9 -9 18 18"><g class="${verdict}">${findingShape[verdict]([0, 0], 7.4)}</g></svg>`,
    signStyle,
  )
