import type { SmallWall } from './frieze.ts'
import type { Count, Frieze, House, Link, RoomContents } from './house.ts'
import { html, type Markup } from './markup.ts'
import type { Line, Outline } from './outline.ts'
import { heading, line, sign } from './sentence.ts'
import { point } from './window-html.ts'

type Verdicts = Outline['verdicts']

const link = ({ to, text }: Link): Markup => html`<a href="#${to}">${text}</a>`
export const links = (all: readonly Link[]): Markup => html`${all.map((one, n) => html`${n > 0 ? '; ' : ''}${link(one)}`)}`
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
