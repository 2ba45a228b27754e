import { lights, paperCss } from '@evenhem/drawing'
import { styleString } from './markup.ts'
import type { Outline } from './outline.ts'
import { grid, type PaperSizes, papers } from './paper.ts'

const sans = '"Source Sans 3 Variable","Source Sans 3",system-ui,sans-serif'
const serif = '"Source Serif 4 Variable","Source Serif 4",Georgia,serif'

/** Paper is always light, and whiter than the sheet on a tablet. */
const colours = (): string =>
  `:root{${Object.entries({ ...lights.paper, sheet: '#ffffff', wallface: '#ffffff' })
    .map(([name, colour]) => `--${name}:${colour}`)
    .join(';')};--k:1;color-scheme:light}`

/** Head and foot of every printed page. The first page has its head in the page itself. */
function printed({ head, foot }: Outline, { name, side }: PaperSizes): string {
  const [before, between, after] = foot.page.map(styleString)
  const box = `font:9pt/1.3 ${sans};color:${lights.paper.ink2};width:50%;vertical-align:top`
  const top = `${box};border-top:.3mm solid ${lights.paper.ink};padding-top:1.8mm;margin-top:13.8mm`
  const bottom = `${box};border-top:.25mm solid ${lights.paper.faint};padding-top:1.8mm;margin-top:2mm`
  return `@page{size:${name};margin:25mm ${side}mm 18mm;
@top-left{content:${styleString(head.job)};text-align:left;${top}}
@top-right{content:${styleString(`${head.state} · ${head.kind}`)};text-align:right;${top}}
@bottom-left{content:${styleString(foot.job)};text-align:left;${bottom}}
@bottom-right{content:${before} counter(page) ${between} counter(pages) ${after};text-align:right;${bottom}}}
@page:first{margin-top:13.8mm;@top-left{content:none;border:0}@top-right{content:none;border:0}}`
}

const type = `*{box-sizing:border-box;margin:0}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{font:10pt/1.42 ${sans};color:var(--ink);font-kerning:normal;overflow-wrap:break-word}
h1,.lead{font-family:${serif};font-optical-sizing:auto;font-feature-settings:"lnum";font-weight:400}
h1{font-size:30pt;line-height:1.1;letter-spacing:-.014em;text-wrap:balance;margin:4.8mm 0 0 -.4mm}
.lead{font-size:13pt;line-height:1.42;color:var(--frame);max-width:150mm;margin-top:3mm;text-wrap:pretty}
h2{font-size:10.8pt;line-height:1.3;font-weight:600}
.number{white-space:nowrap;font-weight:600}
.lead .number{font-weight:400}
:is(.notes,.points) .number{font-weight:500}
.fraction{font-feature-settings:"frac";word-spacing:-.12em}
.lead .fraction{font-feature-settings:"frac","lnum"}
.quiet{color:var(--ink2)}`

const parts = `.head,.foot{display:flex;justify-content:space-between;gap:8mm;font-size:9pt;line-height:1.3;color:var(--ink2);padding-top:1.8mm}
.head{border-top:.3mm solid var(--ink)}
.foot{border-top:.25mm solid var(--faint);margin-top:10mm}
.head span+span,.foot span+span{text-align:right}
.plate{display:grid;grid-template-columns:121mm 1fr;column-gap:4mm;margin-top:4mm;align-items:start}
figure{display:contents}
.narrow{display:none}
figure .drawing{max-width:100%;height:auto}
figcaption{display:flex;flex-wrap:wrap;gap:1mm 4mm;font-size:9pt;line-height:1.3;color:var(--ink2);margin-top:3mm;align-items:center;grid-column:1/-1;order:1}
figcaption .note{margin-left:auto}
figcaption>span{display:inline-flex;gap:2mm;align-items:center}
.measured .number,.computed .number{color:var(--ink)}
.measured .number{position:relative;background:var(--tape);color:var(--tapeink);padding:.4mm 1.2mm .4mm 1.9mm;margin-left:.3mm}
.measured .number::before{content:"";position:absolute;left:0;top:-.2mm;bottom:-.8mm;width:.75mm;background:var(--tapehook)}
.unknown .question{border:.35mm dashed var(--ink);border-radius:.5mm;padding:0 2mm;font-weight:700;color:var(--ink)}
.facts section+section{margin-top:4.4mm}
.facts h2{margin-bottom:1mm}
.facts div{display:grid;grid-template-columns:20.6mm 1fr;column-gap:1.4mm;border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.facts dt{color:var(--ink2)}
.facts p{border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.notes{display:grid;grid-template-columns:1.3fr 1fr 1fr;gap:5mm 7.4mm;margin-top:5mm}
.notes h2,.points h2{margin-bottom:.8mm}
.open{margin-top:5mm}
.checked{margin-top:4.4mm}
.points ul{list-style:none;padding:0;margin-top:1.4mm}
.points li{display:grid;grid-template-columns:4mm 1fr;column-gap:2.2mm;padding:.7mm 0}
.points svg{width:3.6mm;height:3.6mm;margin-top:.75mm}
.checked{font-size:9pt;line-height:1.38}
.checked ul{margin:0}.checked li,.checked li div,.checked li p{display:inline}.checked li{padding:0;margin-right:3mm}
.checked svg{width:3mm;height:3mm;margin:0 1.2mm -.45mm 0}
.about{display:grid;grid-template-columns:1.45fr 1fr 1fr 1fr;gap:4mm 6mm;margin-top:5mm}
.about div{border-top:.25mm solid var(--ink);padding-top:1.6mm}
.about dt{color:var(--ink2);font-size:9pt}
.pass .ring{fill:none;stroke:var(--pass);stroke-width:1.6}.pass .check{fill:none;stroke:var(--pass);stroke-width:2;stroke-linecap:round;stroke-linejoin:round}
.warn .lozenge{fill:var(--sheet);stroke:var(--warn);stroke-width:1.6}.warn .half{fill:var(--warn)}
.fail .square{fill:var(--fail)}.fail .bar{fill:none;stroke:var(--sheet);stroke-width:2.4}
.unknown .broken{fill:none;stroke:var(--ink);stroke-width:1.6;stroke-dasharray:3 2.2}svg.unknown .question{fill:var(--ink);font-family:${sans}}
.visually-hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}`

const onPaper = `@media print{.foot{display:none}html,body{background:#fff}.window+.window{break-before:page}.window+.window h1{margin-top:0}
h1,h2,.lead{break-after:avoid}figure,.facts section,.notes section,.points li,.checked,.about div{break-inside:avoid}*{print-color-adjust:exact;-webkit-print-color-adjust:exact}}`

const onScreen = ({ width, side }: PaperSizes): string => `@media screen{html{background:var(--desk)}
body{background:var(--sheet);max-width:${width}mm;min-height:100vh;margin:0 auto;padding:13.8mm ${side}mm 12mm}
.window+.window{margin-top:24mm;border-top:.3mm solid var(--ink)}}
@media screen and (max-width:${width}mm){body{padding:5mm max(4mm,min(${side}mm,5vw)) 6mm}}
@media screen and (max-width:${grid + 18}mm){figcaption{order:0;margin-top:0}.plate{row-gap:3mm}.wide{display:none}.narrow{display:block}.plate{grid-template-columns:minmax(0,1fr)}.facts{display:grid;grid-template-columns:repeat(auto-fit,minmax(60mm,1fr));gap:6mm 8mm;margin-top:3mm}.facts section+section{margin-top:0}.notes,.about{grid-template-columns:repeat(auto-fit,minmax(min(50mm,100%),1fr))}.about{grid-template-columns:1fr 1fr}h1{font-size:26pt;margin-left:-.2mm}}`

/** The whole style sheet of a report but its fonts. */
export const styleOf = (outline: Outline): string =>
  [colours(), type, parts, paperCss(), printed(outline, papers[outline.paper]), onPaper, onScreen(papers[outline.paper])].join(
    '\n',
  )
