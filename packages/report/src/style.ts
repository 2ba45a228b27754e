import { lights, paperCss } from '@evenhem/drawing'
import { friezeGaps } from './frieze.ts'
import { styleString } from './markup.ts'
import type { Outline } from './outline.ts'
import { grid, type PaperSizes, papers } from './paper.ts'
import { photoStyle } from './photo-html.ts'
import { punchStyle } from './punch-point-html.ts'
import { signedStyle } from './signed-html.ts'

const sans = '"Source Sans 3 Variable","Source Sans 3",system-ui,sans-serif'
const serif = '"Source Serif 4 Variable","Source Serif 4",Georgia,serif'

/** Paper is always light, and whiter than the sheet on a tablet. */
const colours = (): string =>
  `:root{${Object.entries({ ...lights.paper, sheet: '#ffffff', wallface: '#ffffff' })
    .map(([name, colour]) => `--${name}:${colour}`)
    .join(';')};--k:1;color-scheme:light}`

type Dressed = Pick<Outline, 'head' | 'foot' | 'paper'>

/** Head and foot of every printed page. The first page has its head in the page itself. */
function printed({ head, foot }: Dressed, { name, side }: PaperSizes): string {
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
a{color:inherit;text-decoration-color:var(--line);text-decoration-thickness:.06em;text-underline-offset:.16em}
.title,.lead{font-family:${serif};font-optical-sizing:auto;font-feature-settings:"lnum";font-weight:400}
.title{font-size:30pt;line-height:1.1;letter-spacing:-.014em;text-wrap:balance;margin:4.8mm 0 0 -.4mm}
.lead{font-size:13pt;line-height:1.42;color:var(--frame);max-width:150mm;margin-top:3mm;text-wrap:pretty}
:is(h2,h3):not(.title){font-size:10.8pt;line-height:1.3;font-weight:600}
.number{white-space:nowrap;font-weight:600}
.lead .number{font-weight:400}
:is(.points,.safety,.fabric,.corrections,.for-next) .number{font-weight:500}
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
.facts :is(h2,h3){margin-bottom:1mm}
.facts div{display:grid;grid-template-columns:20.6mm 1fr;column-gap:1.4mm;border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.facts dt{color:var(--ink2)}
.facts p{border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.points :is(h2,h3):not(.title){margin-bottom:.8mm}
.as-installed,.corrections{margin-top:2.8mm}
.stands{display:grid;grid-template-columns:4mm 1fr;column-gap:2.2mm;margin-top:3mm;font-weight:600;border-top:.3mm solid var(--ink);border-bottom:.3mm solid var(--ink);padding:1.4mm 0}
.stands svg{width:3.6mm;height:3.6mm;margin-top:.75mm}
.stands.fail{color:var(--fail);border-color:var(--fail);border-width:.7mm}
:is(.open,.settled,.checked){margin-top:3.4mm}
.points ul{list-style:none;padding:0;margin-top:1.4mm}
.points li{display:grid;grid-template-columns:4mm 1fr;column-gap:2.2mm;padding:.7mm 0}
.points svg{width:3.6mm;height:3.6mm;margin-top:.75mm}
.checked summary{display:flex;align-items:center;gap:2.2mm;min-height:10mm}.checked summary svg{width:3.6mm;height:3.6mm;margin:0}.checked summary::after{content:'+';font-weight:600}.checked[open] summary::after{content:'−'}@media print{.checked summary{min-height:0}.checked summary::after{content:''}}
.checked ul{font-size:9pt;line-height:1.32}
.checked ul{margin:0}.checked li,.checked li div,.checked li p{display:inline}.checked li{padding:0;margin-right:2.4mm}
.checked li svg{width:3mm;height:3mm;margin:0 1.2mm -.45mm 0}
.about{display:grid;grid-template-columns:1.45fr 1fr 1fr 1fr;gap:4mm 6mm;margin-top:5mm}
.about div{border-top:.25mm solid var(--ink);padding-top:1.6mm}
.about dt{color:var(--ink2);font-size:9pt}
.pass .ring{fill:none;stroke:var(--pass);stroke-width:1.6}.pass .check{fill:none;stroke:var(--pass);stroke-width:2;stroke-linecap:round;stroke-linejoin:round}
.warn .lozenge{fill:var(--sheet);stroke:var(--warn);stroke-width:1.6}.warn .half{fill:var(--warn)}
.fail .square{fill:var(--fail)}.fail .bar{fill:none;stroke:var(--sheet);stroke-width:2.4}
.unknown .broken{fill:none;stroke:var(--ink);stroke-width:1.6;stroke-dasharray:3 2.2}svg.unknown .question{fill:var(--ink);font-family:${sans}}
.corrections dl div{display:grid;grid-template-columns:44mm 1fr;column-gap:3mm;border-top:.25mm solid var(--faint);padding:.8mm 0;line-height:1.28}
.corrections :is(h2,h3){margin-bottom:.8mm}.corrections dt{color:var(--ink2)}.corrections dd{overflow-wrap:anywhere}
.visually-hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}`

/** What a house has beside its windows. The frieze's lines keep their weight at every scale. */
const ofHouse = `.cover .title{font-size:58pt;line-height:1.02;margin-top:16mm}
.cover .lead{font-size:17pt;margin-top:9mm}
.cover .state{margin-top:2mm;color:var(--ink2)}
.frieze{display:block;margin-top:14mm}
.frieze>div{display:flex;flex-wrap:wrap;column-gap:${friezeGaps.room}mm;align-items:flex-end}
.frieze .room{display:flex;flex-direction:column;min-width:0;max-width:100%}
.frieze .room span{font-size:9pt;line-height:1.2;color:var(--ink2);height:${friezeGaps.row}mm;padding-top:1.4mm;width:0;min-width:100%;overflow:hidden}
.frieze .walls{display:flex;flex-wrap:wrap;align-items:flex-end}
.frieze svg{display:block;overflow:visible;max-width:100%;border-bottom:.7mm solid var(--ink);box-sizing:content-box}
.frieze path{vector-effect:non-scaling-stroke;stroke-width:.2mm;stroke:var(--frame);fill:none}
.frieze .wall-face{fill:var(--sheet);stroke:var(--ink)}
.frieze .casing{fill:var(--casing)}.frieze .glass{fill:var(--glass)}
.frieze .rod{fill:var(--rod);stroke:var(--rodline)}
.frieze .fabric{fill:var(--fabric);stroke:var(--fedge)}
.frieze text{font:700 600px ${sans};text-anchor:middle;dominant-baseline:central;fill:var(--ink)}
.frieze figcaption{margin-top:2mm}
.cover .about{margin-top:12mm}
.summary ul{margin-top:3mm}
.summary>p{margin-top:2mm}
.stopping{margin-top:1.4mm}.stopping ul{margin:0}
.summary{margin-top:9mm}
.rooms{columns:2;column-gap:9mm;margin-top:4mm}
.rooms section{margin-bottom:4mm}
.rooms ul,:is(.safety,.shown) ul{list-style:none;padding:0}
.rooms li{display:grid;grid-template-columns:4mm 1fr;column-gap:2.2mm;border-top:.25mm solid var(--faint);padding:.9mm 0;line-height:1.3}
.rooms .also li{display:block}
.rooms svg{width:3.6mm;height:3.6mm;margin-top:.4mm}
.fabric{display:grid;grid-template-columns:1fr 1fr;gap:1.4mm 7.4mm;margin-top:5mm;border-top:.25mm solid var(--ink);padding-top:1.6mm}
.fabric h3{grid-column:1/-1}
.fabric dl div{display:grid;grid-template-columns:24mm 1fr;column-gap:1.4mm;border-top:.25mm solid var(--faint);padding:.95mm 0;line-height:1.28}
.fabric dt{color:var(--ink2)}.fabric p+p{margin-top:1.4mm}
.to-write::before,.to-write::after{content:"";display:block;height:8mm;border-bottom:.25mm solid var(--line)}
.closing>section+section{margin-top:8mm}
:is(.safety,.shown) :is(li,p){margin-top:2mm}
.for-next{margin-top:5mm;border-top:.25mm solid var(--ink);padding-top:1.6mm}.for-next>div{columns:2;column-gap:9mm;font-size:9pt;line-height:1.3}
.for-next section{padding-top:1mm;break-inside:avoid}.for-next h4{font-size:9pt;font-weight:600;color:var(--ink2)}
.for-next dl div{display:grid;grid-template-columns:1fr 1fr;column-gap:3mm;border-top:.25mm solid var(--faint);padding:.6mm 0}.for-next dd{grid-column:2}
.loads{font-size:9pt;line-height:1.3;padding-top:3mm}.for-next .loads dl div{grid-template-columns:37mm 1fr}.loads dl+h4{margin-top:2mm}.loads p{color:var(--ink2)}.loads p:last-child{color:var(--ink);margin-top:1mm}
.contacts .about dd{overflow-wrap:anywhere}.contacts .about{grid-template-columns:repeat(4,1fr)}`

const onPaper = `@media print{.checks:has(.settled){display:flex;align-items:last baseline;gap:14mm}.foot{display:none}.points ul{margin-top:.4mm}.points li{padding:.4mm 0}.plate{margin-top:3mm}.checked{margin-top:2mm}.closing p{text-wrap:pretty}html,body{background:#fff}.window:not(:first-child){break-before:page}.window:not(:first-child) .title{margin-top:0}
h1,h2,h3,.lead{break-after:avoid}figure,.facts section,.points li:not(:has(.stopping)),.stopping li,.for-next,.signatures,.stands,.about div,.frieze .room,.rooms :is(li,section),.fabric,.safety,.corrections div{break-inside:avoid}
.stopping>p,.open li:last-child{break-after:avoid}.checked{break-before:avoid}.cover{break-after:page}.contents .title,.closing>:first-child .title{margin-top:0}.closing{break-before:page}*{print-color-adjust:exact;-webkit-print-color-adjust:exact}}`

const onScreen = ({ width, side }: PaperSizes): string => `@media screen{html{background:var(--desk)}
body{background:var(--sheet);max-width:${width}mm;min-height:100vh;margin:0 auto;padding:13.8mm ${side}mm 12mm}
:is(.window,.contents,.closing):not(:first-child){margin-top:24mm;border-top:.3mm solid var(--ink)}}
@media screen and (max-width:${width}mm){body{padding:5mm max(4mm,min(${side}mm,5vw)) 6mm}}
@media screen and (max-width:${grid + 18}mm){figcaption{order:0;margin-top:0}.rooms,.for-next>div{columns:1}.corrections dl div{grid-template-columns:minmax(0,1fr)}.fabric{grid-template-columns:minmax(0,1fr)}.cover .title{font-size:clamp(30pt,11vw,58pt);margin-top:8mm}.plate{row-gap:3mm}.wide{display:none}.narrow{display:block}.plate{grid-template-columns:minmax(0,1fr)}.facts{display:grid;grid-template-columns:repeat(auto-fit,minmax(60mm,1fr));gap:6mm 8mm;margin-top:3mm}.facts section+section{margin-top:0}.about{grid-template-columns:repeat(auto-fit,minmax(min(50mm,100%),1fr))}.about,.contacts .about{grid-template-columns:1fr 1fr}.title{font-size:26pt;margin-left:-.2mm}}`

/** The whole style sheet of a report but its fonts. */
export const styleOf = (outline: Dressed): string =>
  [
    colours(),
    type,
    parts,
    ofHouse,
    photoStyle,
    punchStyle,
    signedStyle,
    paperCss(),
    printed(outline, papers[outline.paper]),
    onPaper,
    onScreen(papers[outline.paper]),
  ].join('\n')
