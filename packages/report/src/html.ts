import { createHash } from 'node:crypto'
import { closingHtml } from './closing-html.ts'
import { fontsFor } from './fonts.ts'
import { contentsHtml, coverHtml } from './house-html.ts'
import { html, type Markup, raw } from './markup.ts'
import type { Outline } from './outline.ts'
import { styleOf } from './style.ts'
import { windowHtml } from './window-html.ts'

/** A house begins with its cover and contents; a window by itself is its own. Both end with what stays with the customer. */
function main(outline: Outline): Markup {
  const { windows, house, closing, verdicts } = outline
  const first = house ? html`${coverHtml(outline, house)}${contentsHtml(house, verdicts)}` : undefined
  return html`${first}${windows.map((window) => windowHtml(window, verdicts, house ? 2 : 1))}${closingHtml(closing)}`
}

function body({ head, foot }: Frame, content: Markup): Markup {
  return html`<header class="head"><span>${head.job}</span><span>${head.state} · ${head.kind}</span></header>
<main>${content}</main>
<footer class="foot"><span>${foot.job}</span></footer>`
}

/** Where pictures come from: `data:` out of the page, `'self'` also from where the page itself came from. */
export type Pictures = 'data:' | "'self'"

/** What the page may load: the one style sheet in it, and fonts and pictures that are part of it or lie beside it. No script, no network. */
const policy = (style: string, pictures: Pictures): string =>
  `default-src 'none'; style-src 'sha256-${createHash('sha256').update(style).digest('base64')}'; font-src data:; img-src ${pictures === 'data:' ? pictures : `data: ${pictures}`}; base-uri 'none'; form-action 'none'`

/** A report as one HTML page that needs nothing else, for the screen and for its paper. `policy` is its content security policy, for a server to send as well. */
export interface ReportPage {
  readonly html: string
  readonly policy: string
}

/** Writes an outline as one page. */
export const pageOf = (outline: Outline, pictures?: Pictures): ReportPage => framed(outline, main(outline), '', pictures)

/** What every page has around its contents. */
export type Frame = Pick<Outline, 'language' | 'paper' | 'title' | 'head' | 'foot'>

/** Contents as a whole page in the report's look. `more`: what its style sheet needs beside the report's. */
export function framed(frame: Frame, contents: Markup, more = '', pictures: Pictures = 'data:'): ReportPage {
  const content = body(frame, contents)
  const style = `${fontsFor(content.markup + frame.title)}\n${styleOf(frame)}${more}`
  const allowed = policy(style, pictures)
  const { markup } = html`<!doctype html>
<html lang="${frame.language}"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${allowed}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${frame.title}</title>
<style>${raw(style)}</style></head>
<body>${content}</body></html>
`
  return { html: markup, policy: allowed }
}
