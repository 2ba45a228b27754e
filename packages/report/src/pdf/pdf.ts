import type { Outline } from '../outline.ts'
import { papers } from '../paper.ts'
import type { ShownPhoto } from '../photos.ts'
import { outlineFor, type ReportOrder, type Stage } from '../report.ts'
import type { Block, Files } from './blocks.ts'
import { closingBlocks } from './closing.ts'
import { contentsBlocks, coverBlocks } from './house.ts'
import { letterer } from './lettering.ts'
import { colours, signFile } from './picture.ts'
import { type Document, newDocument } from './typst.ts'
import { windowBlocks } from './window.ts'

/** How a PDF is made beside what it says. */
export interface PdfWishes {
  /** When what it says was last added to, in seconds since 1970; a PDF of the same is the same, byte for byte. Left out: it bears no date. */
  readonly dated?: number
  /** The bytes of a photo, JPEG, undefined when it is not here. Left out: those that are held in the outline. */
  readonly photo?: Files['photo']
  /** Hears of letters that the fonts of the document lack, once each; `?` stands for them. */
  readonly lost?: (letters: readonly string[]) => void
  /** Hears how far the PDF is. */
  readonly told?: (stage: Stage) => void
}

/** The customer's report of a job as a PDF, PDF/UA-1. Dated by the last reading. Rejects when the document cannot be set. */
export function pdfOf(order: ReportOrder, wishes: PdfWishes = {}): Promise<Uint8Array> {
  // Nobody holds the outline and its plans any more while the document is set: both together take more memory than a machine may have.
  return pdfOfOutline(outlineFor(order), { ...dateOf(order), told: order.told, ...wishes })
}

function dateOf({ readings }: ReportOrder): PdfWishes {
  const days = Object.values(readings).flatMap(({ when }) => {
    const time = Date.parse(when ?? '')
    return Number.isNaN(time) ? [] : [time]
  })
  return days.length > 0 ? { dated: Math.floor(days.reduce((a, b) => Math.max(a, b)) / 1000) } : {}
}

/** Writes an outline as a PDF, PDF/UA-1: a house with its cover and contents, or a window by itself. */
export function pdfOfOutline(outline: Outline, wishes: PdfWishes = {}): Promise<Uint8Array> {
  const document = filled(outline, wishes)
  wishes.told?.({ is: 'setting' })
  return document.set(wishes.dated ?? 0)
}

/** A document with all that an outline says. */
function filled(outline: Outline, wishes: PdfWishes): Document {
  const document = newDocument()
  try {
    fill(document, outline, wishes)
    return document
  } catch (error) {
    document.away()
    throw error
  }
}

function fill(document: Document, outline: Outline, { dated, lost, photo = heldIn, told }: PdfWishes): void {
  const letters = letterer()
  const add: Files['add'] = (name, bytes) => {
    document.add(name, typeof bytes === 'string' ? Buffer.from(letters.picture(bytes)) : bytes)
    return `/${name}`
  }
  const data = dataOf(outline, dated !== undefined, { add, photo }, told)
  document.add('report.json', Buffer.from(JSON.stringify(data, letters.member)))
  if (letters.lost.size > 0) lost?.([...letters.lost])
}

/** A photo that is held in its address, as one that is part of an HTML page is. */
function heldIn({ src = '' }: ShownPhoto): Uint8Array | undefined {
  const data = 'data:image/jpeg;base64,'
  return src.startsWith(data) ? Buffer.from(src.slice(data.length), 'base64') : undefined
}

/** What the template reads. */
function dataOf(outline: Outline, isDated: boolean, files: Files, told: PdfWishes['told']): object {
  const { language, paper, title, head, foot, house } = outline
  const [lang, region] = language.split('-')
  const blocks = blocksOf(outline, files, told)
  return {
    title,
    head,
    foot,
    isDated,
    lang,
    region: region && /^[A-Za-z]{2}$/.test(region) ? region : null,
    paper: paper === 'letter' ? 'us-letter' : paper,
    side: papers[paper].side,
    colours,
    signs: Object.fromEntries(
      (['pass', 'warn', 'fail', 'unknown'] as const).map((one) => [one, files.add(`${one}.svg`, signFile(one))]),
    ),
    // Headings within a window are bookmarks where there is one window.
    isSmall: house === undefined,
    blocks,
  }
}

function blocksOf(outline: Outline, files: Files, told: PdfWishes['told']): readonly Block[] {
  const { windows, house, closing, verdicts } = outline
  const first = house ? [...coverBlocks(outline, house, files), ...contentsBlocks(house, verdicts)] : []
  const page: Block = { kind: 'page' }
  const pages = windows.flatMap((window, n) => {
    const blocks = windowBlocks(window, outline, house ? 2 : 1, files)
    told?.({ is: 'drawn', done: n + 1, total: windows.length })
    return [page, ...blocks]
  })
  return [...first, ...pages, ...closingBlocks(closing, verdicts, files)]
}
