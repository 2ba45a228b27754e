import { createHash } from 'node:crypto'
import { drawingCss, type Light, lights, type Scene, toSvg, weights, withLegend } from '@evenhem/drawing'
import type { Say } from '@evenhem/planner/say'
import { fontsFor } from '@evenhem/report'
import type { Example } from '../tools/examples.ts'
import { elements } from './elements.ts'
import type { HookMap } from './facts.ts'
import { askedFor, sayFor, sceneOf, shown, type Window, windowsIn } from './scenes.ts'

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
const escaped = (text: string): string => text.replace(/[&<>"']/g, (one) => escapes[one] ?? one)

const lightOf = (light: Light): string =>
  `.${light}{${Object.entries(lights[light])
    .map(([name, colour]) => `--${name}:${colour}`)
    .join(';')};--k:${weights[light]};background:var(--sheet);color:var(--ink)}`
const style = (): string => `${fontsFor('', 'drawing')}
body{margin:0;font:17px/1.36 "Source Sans 3 Variable",system-ui,sans-serif}
main,nav,header{max-width:1700px;margin:0 auto;padding:0 20px}
nav{columns:3 240px} nav ul{margin:0;padding-left:20px} h1,h2,h3{line-height:1.1} h2{margin-top:56px}
.both{display:grid;grid-template-columns:1fr 1fr;gap:6px;margin:6px 0} .both>*{padding:8px;overflow:auto}
.elements{display:grid;grid-template-columns:repeat(auto-fill,minmax(800px,1fr));gap:14px}
figure{margin:0 0 24px} figcaption{margin:0 0 4px} td,th{text-align:left;padding:2px 20px 2px 0;vertical-align:top}
${lightOf('paper')}
${lightOf('night')}
${drawingCss()}`

/** One drawing in both lights: written once, and used again at night. */
function inBothLights(scene: Scene, title: string, id: string): string {
  const svg = toSvg(scene, { title }).replace('<svg ', `<svg id="${id}" `)
  const again = `<svg class="drawing" width="${scene.width}" height="${scene.height}" role="img" aria-label="${escaped(title)}, at night"><use href="#${id}"/></svg>`
  return `<div class="both"><div class="paper">${svg}</div><div class="night">${again}</div></div>`
}
const figure = (scene: Scene, title: string, id: string, says: string): string =>
  `<figure><figcaption><b>${escaped(title)}</b> ${escaped(says)}</figcaption>${inBothLights(scene, title, id)}</figure>`

const leftOut = (scene: Scene, say: Say): string =>
  scene.leftOut.length === 0 ? '' : `Found no room: ${scene.leftOut.map(({ what }) => say.say(what)).join(', ')}.`

/** Where each hook goes, as the hook map says. */
function hooks(map: HookMap, say: Say): string {
  const panels = [...new Set(map.places.map(({ panel }) => panel))]
  const rows = panels.map((panel) => {
    const own = map.places.filter((place) => place.panel === panel)
    return `<tr><th scope="row">${escaped(panel)}</th><td>${own.map(({ hook, to, number }) => escaped(`${hook.n} → ${say.say(to)}${number === undefined ? '' : ` ${number}`}`)).join('<br>')}</td></tr>`
  })
  return `<table><caption>Hooks, from the leading edge outward</caption>${rows.join('')}</table>`
}

function window({ place, layers, hooks: maps }: Window, name: string, say: Say, id: string): string {
  const scenes = shown.map((each, n) => {
    const scene = withLegend(sceneOf(layers, each, say), askedFor(each, say))
    return figure(scene, `${name}${place}: ${each.title}`, `${id}-${n}`, leftOut(scene, say))
  })
  return scenes.join('') + maps.map((map) => hooks(map, say)).join('')
}

/** The gallery: every element of drawing and every scene of every example, by day and at night, on one page that asks nothing of any network. */
export function galleryPage(examples: readonly Example[]): string {
  const css = style()
  const policy = `default-src 'none'; style-src 'sha256-${createHash('sha256').update(css).digest('base64')}'; font-src data:; base-uri 'none'; form-action 'none'`
  const samples = elements.map(({ name, says, scene }, n) => figure(scene, name, `element-${n}`, says)).join('')
  const chapters = examples.map((example) => {
    const say = sayFor(example)
    const windows = windowsIn(example).map((each, n) => window(each, example.name, say, `${example.name}-${n}`))
    return `<section id="${example.name}"><h2>${escaped(example.name)}</h2><p>${escaped(example.found.job.name)}</p>${windows.join('')}</section>`
  })
  const contents = ['elements', ...examples.map(({ name }) => name)].map((id) => `<li><a href="#${id}">${escaped(id)}</a></li>`)
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width"><title>Evenhem: gallery</title><style>${css}</style></head>
<body><header><h1>Gallery</h1></header><nav aria-label="Contents"><ul>${contents.join('')}</ul></nav>
<main><section id="elements"><h2>Elements</h2><div class="elements">${samples}</div></section>${chapters.join('\n')}</main></body></html>
`
}
