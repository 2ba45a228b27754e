import { toSvg } from '@evenhem/drawing'
import type { Drawing, Key } from './drawing.ts'
import { html, type Markup, raw } from './markup.ts'
import type { Point } from './open.ts'
import type { Line, Outline, Points, Section, WindowPage } from './outline.ts'
import { photosHtml } from './photo-html.ts'
import { fact, heading, line, number, said, sign } from './sentence.ts'
import { type Stands, signOf } from './standing.ts'

type Rank = 2 | 3

const keyed = ({ state, number: shown, says }: Key): Markup =>
  html`<span class="${state}">${state === 'computed' ? '= ' : ''}${shown ? number(shown, 'bare') : html`<span class="question">?</span>`} ${says}</span>`

function drawn({ scene, small, alternative, key, note }: Drawing): Markup {
  const [wide, narrow] = [scene, small].map((each) => raw(toSvg(each, { title: alternative, desc: '' })))
  return html`<figure><div class="wide">${wide}</div><div class="narrow">${narrow}</div>
<figcaption>${key.map(keyed)}<span class="note">${note}</span></figcaption></figure>`
}

/** Facts with a name as a list of them; the others below it, each by itself. */
function facts({ title, of }: Section<Line>, rank: Rank): Markup {
  const [named, bare] = [of.filter(({ name }) => name), of.filter(({ name }) => !name)]
  return html`<section>${heading(rank, title)}
${named.length > 0 ? html`<dl>${named.map(line)}</dl>` : undefined}${bare.map(({ says }) => html`<p>${says.map(fact)}</p>`)}</section>
`
}
/** A point with its sign; the sign's meaning is said too, and a point that was set aside is struck. */
export function point({ verdict, says, help, setAside }: Point, words: Outline['verdicts']): Markup {
  const sentence = html`<span class="visually-hidden">${words[verdict]}: </span>${setAside ? html`<s>${said(says)}</s>` : said(says)}`
  return html`<li>${sign(verdict)}<div><p>${sentence}</p>${[help, setAside].map((more) => (more ? html`<p class="quiet">${said(more)}</p>` : undefined))}</div></li>
`
}
function points({ title, before = [], of }: Points, name: string, words: Outline['verdicts'], rank: Rank): Markup {
  return html`<section class="points ${name}">${heading(rank, title)}
${before.map((text) => html`<p>${text}</p>`)}${of.length > 0 ? html`<ul>${of.map((each) => point(each, words))}</ul>` : undefined}</section>
`
}

/** What was checked and is well: how many it is, and on a screen each of them when it is opened. Paper needs the number alone. */
const passed = ({ title, of }: Points, words: Outline['verdicts'], rank: Rank): Markup =>
  html`<details class="points checked"><summary>${sign('pass')}${heading(rank, title)}</summary>
<ul>${of.map((each) => point(each, words))}</ul></details>
`

const photos = ({ photos: taken }: WindowPage, rank: Rank): Markup | undefined =>
  taken &&
  html`<section class="as-installed">${heading(rank, taken.title)}
${photosHtml(taken.of)}</section>
`

/** What was done otherwise than ordered. */
const corrections = ({ corrections: done }: WindowPage, rank: Rank): Markup | undefined =>
  done &&
  html`<section class="corrections">${heading(rank, done.title)}
<dl>${done.of.map(({ name = [], says }) => html`<div><dt>${said(name)}</dt><dd>${says.map((each, n) => html`${n > 0 ? '; ' : ''}${said(each)}`)}</dd></div>`)}</dl></section>
`

/** That a window stops or is not measured is said before anything else of it. */
const standing = ({ standing: how, says }: Stands): Markup | undefined =>
  says.length > 0
    ? html`<div class="stands ${signOf(how)}">${sign(signOf(how))}<div>${says.map((text) => html`<p>${text}</p>`)}</div></div>
`
    : undefined

/** A window. `rank`: of its title's heading, 1 where the window is all of the report. Care and safe use are said once, at the end, and marks on the next installer's page. */
export function windowHtml(window: WindowPage, words: Outline['verdicts'], rank: 1 | 2): Markup {
  const below = (rank + 1) as Rank
  const isOpen = window.open.of.length > 0
  const open = points(window.open, isOpen ? 'open' : 'settled', words, below)
  const { drawing } = window
  return html`<article class="window" id="${window.id}">
${heading(rank, window.title, 'title')}
${window.lead.length > 0 ? html`<p class="lead">${window.lead.map((sentence, n) => html`${n > 0 ? ' ' : ''}${said(sentence)}`)}</p>` : undefined}
${standing(window.stands)}<div class="plate">${drawing ? drawn(drawing) : html`<p class="quiet">${window.notDrawn}</p>`}
<div class="facts">${[...window.facts, ...(window.days ? [window.days] : [])].map((each) => facts(each, below))}</div></div>
${photos(window, below)}${corrections(window, below)}<div class="checks">${open}
${window.checked.of.length > 0 ? passed(window.checked, words, below) : undefined}</div>
</article>
`
}
