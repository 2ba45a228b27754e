/** Text that is markup already. Only `html` and `raw` make it, so that text from a job is text everywhere. */
export interface Markup {
  readonly markup: string
}

type Part = Markup | string | number | undefined | readonly Part[]

const named: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** Control characters, and halves of surrogate pairs, may not stand in a page. */
const unwritable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufdd0-\ufdef\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g

const escaped = (text: string): string => text.replace(unwritable, '\ufffd').replace(/[&<>"']/g, (one) => named[one] as string)

function written(part: Part): string {
  if (part === undefined) return ''
  if (typeof part === 'object') return 'markup' in part ? part.markup : part.map(written).join('')
  return escaped(String(part))
}

/** Markup with what is put into it escaped, unless it is markup itself. Lists are put in one after the other; undefined is nothing. */
export const html = (strings: TemplateStringsArray, ...parts: readonly Part[]): Markup => ({
  markup: strings.map((string, n) => string + written(parts[n])).join(''),
})

/** Text that some other maker of markup has already escaped. */
export const raw = (markup: string): Markup => ({ markup })

/** Text as a string of a style sheet: everything but plain letters and digits as its number, so that it ends neither the string nor the sheet. */
export const styleString = (text: string): string =>
  `"${[...text.replace(unwritable, '\ufffd')].map((one) => (/[A-Za-z0-9 ]/.test(one) ? one : `\\${(one.codePointAt(0) as number).toString(16)} `)).join('')}"`
