import { createHash } from 'node:crypto'
import { findingShape, toSvg } from '@evenhem/drawing'
import type { Drawing, Key } from './drawing.ts'
import { fontsFor } from './fonts.ts'
import { html, type Markup, raw } from './markup.ts'
import type { Point } from './open.ts'
import type { Line, Outline, Points, Section, WindowPage } from './outline.ts'
import { styleOf } from './style.ts'
import type { NumberPiece, Said } from './voice.ts'

/** With its unit always, as a fact has it (metric units only), or bare as on the drawing. */
type Dress = 'with unit' | 'as written' | 'bare'
const dressed = ({ written, unit }: NumberPiece, dress: Dress): string => {
  if (dress === 'bare') return written.text.replace(/ (mm|cm)$/, '')
  return dress === 'with unit' && unit ? `${written.text} ${unit}` : written.text
}
/** A number as it is set in a line: its fraction built, its name for a screen reader. */
function number(piece: NumberPiece, dress: Dress = 'as written'): Markup {
  const { spoken } = piece
  const text = dressed(piece, dress)
  const set = text
    .split(/( ?\d+\/\d+)/)
    .map((part, n) => (n % 2 === 1 ? html`<span class="fraction">${part}</span>` : html`${part}`))
  return spoken === undefined
    ? html`<span class="number">${set}</span>`
    : html`<span class="number" role="img" aria-label="${spoken}">${set}</span>`
}
/** A fact, whose unit is said once for all; a sentence of a text, which says it. */
const fact = (sentence: Said): Markup => html`${sentence.map((part) => (typeof part === 'string' ? part : number(part)))}`
const said = (sentence: Said): Markup =>
  html`${sentence.map((part) => (typeof part === 'string' ? part : number(part, 'with unit')))}`

const keyed = ({ state, number: shown, says }: Key): Markup =>
  html`<span class="${state}">${state === 'computed' ? '= ' : ''}${shown ? number(shown, 'bare') : html`<span class="question">?</span>`} ${says}</span>`

function drawn({ scene, small, alternative, key, note }: Drawing): Markup {
  const [wide, narrow] = [scene, small].map((each) => raw(toSvg(each, { title: alternative, desc: '' })))
  return html`<figure><div class="wide">${wide}</div><div class="narrow">${narrow}</div>
<figcaption>${key.map(keyed)}<span class="note">${note}</span></figcaption></figure>`
}

function line({ name = [], says }: Line): Markup {
  return html`<div><dt>${fact(name)}</dt>${says.map((sentence) => html`<dd>${fact(sentence)}</dd>`)}</div>
`
}
/** Facts with a name as a list of them; the others below it, each by itself. */
function facts({ title, of }: Section<Line>): Markup {
  const [named, bare] = [of.filter(({ name }) => name), of.filter(({ name }) => !name)]
  return html`<section><h2>${title}</h2>
${named.length > 0 ? html`<dl>${named.map(line)}</dl>` : undefined}${bare.map(({ says }) => html`<p>${says.map(fact)}</p>`)}</section>
`
}
const note = ({ title, of }: Section<Said>): Markup => html`<section><h2>${title}</h2>
${of.map((sentence) => html`<p>${said(sentence)}</p>`)}</section>
`
const sign = (verdict: Point['verdict']): Markup =>
  html`<svg viewBox="-9 -9 18 18" aria-hidden="true" class="${verdict}">${raw(findingShape[verdict]([0, 0], 7.4))}</svg>`

/** A point with its sign; the sign's meaning is said too, and a point that was set aside is struck. */
function point({ verdict, says, help, setAside }: Point, words: Outline['verdicts']): Markup {
  const sentence = html`<span class="visually-hidden">${words[verdict]}: </span>${setAside ? html`<s>${said(says)}</s>` : said(says)}`
  return html`<li>${sign(verdict)}<div><p>${sentence}</p>${[help, setAside].map((more) => (more ? html`<p class="quiet">${said(more)}</p>` : undefined))}</div></li>
`
}
function points({ title, before = [], of }: Points, name: string, words: Outline['verdicts']): Markup {
  return html`<section class="points ${name}"><h2>${title}</h2>
${before.map((text) => html`<p>${text}</p>`)}${of.length > 0 ? html`<ul>${of.map((each) => point(each, words))}</ul>` : undefined}</section>
`
}

/** What is open stands before everything that can wait; when nothing is, it is one note among the others. */
function page(window: WindowPage, words: Outline['verdicts']): Markup {
  const isOpen = window.open.of.length > 0
  const open = points(window.open, isOpen ? 'open' : 'settled', words)
  return html`<article class="window">
<h1>${window.title}</h1>
${window.lead.length > 0 ? html`<p class="lead">${window.lead.map((sentence, n) => html`${n > 0 ? ' ' : ''}${said(sentence)}`)}</p>` : undefined}
<div class="plate">${window.drawing ? drawn(window.drawing) : html`<p class="quiet">${window.notDrawn}</p>`}
<div class="facts">${window.facts.map(facts)}</div></div>
${isOpen ? open : undefined}<div class="notes">${window.notes.map(note)}${isOpen ? undefined : open}</div>
${window.checked.of.length > 0 ? points(window.checked, 'checked', words) : undefined}
</article>
`
}

function body({ head, foot, windows, about, verdicts }: Outline): Markup {
  return html`<header class="head"><span>${head.job}</span><span>${head.state} · ${head.kind}</span></header>
<main>${windows.map((window) => page(window, verdicts))}
<dl class="about">${about.map(line)}</dl></main>
<footer class="foot"><span>${foot.job}</span></footer>`
}

/** What the page may load: the one style sheet in it, and fonts and pictures that are part of it. No script, no network. */
const policy = (style: string): string =>
  `default-src 'none'; style-src 'sha256-${createHash('sha256').update(style).digest('base64')}'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'`

/** A report as one HTML page that needs nothing else, for the screen and for its paper. `policy` is its content security policy, for a server to send as well. */
export interface ReportPage {
  readonly html: string
  readonly policy: string
}

/** Writes an outline as one page. */
export function pageOf(outline: Outline): ReportPage {
  const content = body(outline)
  const style = `${fontsFor(content.markup + outline.title)}\n${styleOf(outline)}`
  const allowed = policy(style)
  const { markup } = html`<!doctype html>
<html lang="${outline.language}"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${allowed}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${outline.title}</title>
<style>${raw(style)}</style></head>
<body>${content}</body></html>
`
  return { html: markup, policy: allowed }
}
