import { getDocumentProxy } from 'unpdf'

interface Tagged {
  readonly role?: string
  readonly alt?: string
  readonly lang?: string
  readonly children?: readonly Tagged[]
}
export interface ReadPage {
  readonly width: number
  readonly height: number
  /** All that is set on it, spaces as one. */
  readonly text: string
  /** Roles of its structure with the words for who cannot see, in the order of reading. */
  readonly figures: readonly (string | undefined)[]
  readonly roles: readonly string[]
}
export interface ReadPdf {
  readonly pages: readonly ReadPage[]
  readonly title: string
  readonly language: string
  readonly bookmarks: readonly string[]
  /** The bookmarks and links that lead nowhere. */
  readonly lost: readonly string[]
}

const flat = (one: Tagged): readonly Tagged[] => [one, ...(one.children ?? []).flatMap(flat)]
type Bookmark = { title: string; dest: unknown; items: Bookmark[] }
const all = (some: readonly Bookmark[]): readonly Bookmark[] => some.flatMap((one) => [one, ...all(one.items)])

/** Reads a PDF with a reader that is not ours. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocumentProxy(new Uint8Array(bytes), { verbosity: 0 })
  const pages: ReadPage[] = []
  const lost: string[] = []
  const leads = async (dest: unknown): Promise<boolean> =>
    Array.isArray(dest) ? true : typeof dest === 'string' && (await document.getDestination(dest)) !== null
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n)
    const { width, height } = page.getViewport({ scale: 1 })
    const { items } = (await page.getTextContent()) as { items: readonly { readonly str?: string; readonly hasEOL?: boolean }[] }
    const text = items.map(({ str = '', hasEOL }) => str + (hasEOL ? ' ' : '')).join('')
    const tags = flat(((await page.getStructTree()) ?? {}) as Tagged)
    pages.push({
      width,
      height,
      text: text.replace(/[\s\u200b]+/g, ' '),
      figures: tags.filter(({ role }) => role === 'Figure').map(({ alt }) => alt),
      roles: tags.flatMap(({ role }) => role ?? []),
    })
    for (const { subtype, dest } of await page.getAnnotations())
      if (subtype === 'Link' && !(await leads(dest))) lost.push(`link on page ${n}`)
  }
  const bookmarks = all(((await document.getOutline()) ?? []) as Bookmark[])
  for (const { title, dest } of bookmarks) if (!(await leads(dest))) lost.push(title)
  const { info } = (await document.getMetadata()) as { info: { Title: string; Language: string } }
  return { pages, title: info.Title, language: info.Language, bookmarks: bookmarks.map(({ title }) => title), lost }
}
