import type { Closing, FabricCare, SafetyNotes } from './closing.ts'
import type { SmallWall } from './frieze.ts'
import type { Count, Frieze, House, Link, RoomContents } from './house.ts'
import { html, type Markup } from './markup.ts'
import type { Line, Outline } from './outline.ts'
import { heading, line, said, sign } from './sentence.ts'
import { point } from './window-html.ts'

type Verdicts = Outline['verdicts']

const link = ({ to, text }: Link): Markup => html`<a href="#${to}">${text}</a>`
const links = (all: readonly Link[]): Markup => html`${all.map((one, n) => html`${n > 0 ? '; ' : ''}${link(one)}`)}`
const dl = (all: readonly Line[], name: string): Markup => html`<dl class="${name}">${all.map(line)}</dl>`

/** A wall at the frieze's scale; where no window and no drapery can be drawn stands a question mark. */
function wall({ left, top, width, height, pieces, isKnown }: SmallWall, scale: number): Markup {
  const size = (length: number): string => `${Math.round(length * scale * 100) / 100}mm`
  const drawn = pieces.map(({ role, d }) => html`<path class="${role}" d="${d}"/>`)
  const question = html`<text x="${left + width / 2}" y="${top + height / 2}">?</text>`
  return html`<svg width="${size(width)}" height="${size(height)}" viewBox="${left} ${top} ${width} ${height}" preserveAspectRatio="none" aria-hidden="true">${drawn}${isKnown ? undefined : question}</svg>`
}

/** A picture of the house; the contents lead to its windows. */
const frieze = ({
  says,
  words,
  scale,
  rooms,
}: Frieze): Markup => html`<figure class="frieze"><div role="img" aria-label="${words}">
${rooms.map(
  ({
    name,
    walls,
  }) => html`<div class="room"><div class="walls">${walls.map((one) => wall(one.wall, scale))}</div><span>${name}</span></div>
`,
)}</div>
<figcaption>${says}</figcaption></figure>`

/** The first page: the house by its name and as a frieze. */
export const coverHtml = ({ title, about }: Outline, house: House): Markup => html`<section class="cover">
${heading(1, title, 'title')}
<p class="lead">${house.lead}</p>
<p class="state">${house.summary.before[0]}</p>
${frieze(house.frieze)}
${dl(about, 'about')}
</section>
`

const row = (
  { link: to, verdict, short }: RoomContents['windows'][0],
  words: Verdicts,
): Markup => html`<li>${sign(verdict)}<span>${link(to)} <span class="quiet"><span class="visually-hidden">${words[verdict]}: </span>${short}</span></span></li>
`
const room = ({ name, windows }: RoomContents, words: Verdicts): Markup => html`<section>${heading(3, name)}
<ul>${windows.map((one) => row(one, words))}</ul></section>
`

/** A window that stops says why here too; what to do about it stands at the window. */
const stopping = ({ windows }: Count, words: Verdicts): Markup =>
  html`${windows.map((one) => html`<div class="stopping"><p>${link(one.link)}</p><ul>${one.points.map(({ verdict, says }) => point({ verdict, says }, words))}</ul></div>`)}`
function count(of: Count, words: Verdicts): Markup {
  const hasPoints = of.windows.some(({ points }) => points.length > 0)
  const more = hasPoints ? stopping(of, words) : html`<p class="quiet">${links(of.windows.map((one) => one.link))}</p>`
  return html`<li>${sign(of.verdict)}<div><p><b>${of.says}</b></p>${of.windows.length > 0 ? more : undefined}</div></li>
`
}

/** Where each window is and how it stands, then the same by what is open. */
export const contentsHtml = (
  { summary, contents }: House,
  words: Verdicts,
): Markup => html`<nav class="contents" aria-labelledby="contents">
<h2 class="title" id="contents">${contents.title}</h2>
<div class="rooms">${contents.of.map((each) => room(each, words))}
<section>${heading(3, contents.also.title)}
<ul class="also">${contents.also.of.map((to) => html`<li>${link(to)}</li>`)}</ul></section></div></nav>
<section class="summary points" id="${summary.id}">
${heading(2, summary.title, 'title')}
${summary.before.map((text) => html`<p>${text}</p>`)}<ul>${summary.of.map((each) => count(each, words))}</ul></section>
`

const care = ({ name, facts, windows, notes, notGiven }: FabricCare): Markup => html`<section class="fabric">${heading(3, name)}
<dl>${facts.map(line)}<div><dt>${windows.title}</dt><dd>${windows.instead ?? links(windows.of)}</dd></div></dl>
<div>${notes.map((each) => html`<p>${said(each)}</p>`)}<p>${notGiven}</p><div class="to-write"></div></div></section>
`
const note = ({ says, where, windows }: SafetyNotes['of'][0]): Markup =>
  html`<li>${said(says)}${where ? html` <span class="quiet">${where} ${links(windows)}</span>` : undefined}</li>`

/** What stays with the customer: care, safe use, and whom to call. */
export const closingHtml = ({ care: fabrics, safety, contacts }: Closing): Markup => html`<div class="closing">
<section id="${fabrics.id}">${heading(2, fabrics.title, 'title')}
${fabrics.of.map(care)}</section>
<section id="${safety.id}" class="safety">${heading(2, safety.title, 'title')}
${safety.instead ? html`<p>${safety.instead}</p>` : html`<ul>${safety.of.map(note)}</ul>`}
<p>${safety.rules}</p></section>
<section id="${contacts.id}" class="contacts">${heading(2, contacts.title, 'title')}
${contacts.instead ? html`<p>${contacts.instead}</p>` : dl(contacts.of, 'about')}</section>
</div>
`
