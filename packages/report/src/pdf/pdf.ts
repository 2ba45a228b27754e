import type { Outline } from '../outline.ts'
import { papers } from '../paper.ts'
import type { ShownPhoto } from '../photos.ts'
import { outlineFor, type ReportOrder } from '../report.ts'
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
}

/** The customer's report of a job as a PDF, PDF/UA-1. Dated by the last reading. Throws when the document cannot be set. */
export function pdfOf(order: ReportOrder, wishes: PdfWishes = {}): Uint8Array {
  const { dated, ...others }: PdfWishes = { ...dateOf(order), ...wishes }
  // The outline and its plans are let go before the document is set: each takes as much memory as a process has for both.
  return filled(outlineFor(order), dated, others).set(dated ?? 0)
}

function dateOf({ readings }: ReportOrder): PdfWishes {
  const days = Object.values(readings).flatMap(({ when }) => {
    const time = Date.parse(when ?? '')
    return Number.isNaN(time) ? [] : [time]
  })
  return days.length > 0 ? { dated: Math.floor(days.reduce((a, b) => Math.max(a, b)) / 1000) } : {}
}

/** Writes an outline as a PDF, PDF/UA-1: a house with its cover and contents, or a window by itself. */
export const pdfOfOutline = (outline: Outline, { dated, ...others }: PdfWishes = {}): Uint8Array =>
  filled(outline, dated, others).set(dated ?? 0)

/** A document with all that an outline says. */
function filled(outline: Outline, dated: number | undefined, { lost, photo = heldIn }: PdfWishes): Document {
  const document = newDocument()
  const letters = letterer()
  const add: Files['add'] = (name, bytes) => {
    document.add(name, typeof bytes === 'string' ? Buffer.from(letters.picture(bytes)) : bytes)
    return `/${name}`
  }
  const data = dataOf(outline, dated !== undefined, { add, photo })
  document.add('report.json', Buffer.from(JSON.stringify(data, letters.member)))
  if (letters.lost.size > 0) lost?.([...letters.lost])
  return document
}

/** A photo that is held in its address, as one that is part of an HTML page is. */
function heldIn({ src = '' }: ShownPhoto): Uint8Array | undefined {
  const data = 'data:image/jpeg;base64,'
  return src.startsWith(data) ? Buffer.from(src.slice(data.length), 'base64') : undefined
}

/** What the template reads. */
function dataOf(outline: Outline, isDated: boolean, files: Files): object {
  const { language, paper, title, head, foot, house } = outline
  const [lang, region] = language.split('-')
  const blocks = blocksOf(outline, files)
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

function blocksOf(outline: Outline, files: Files): readonly Block[] {
  const { windows, house, closing, verdicts } = outline
  const first = house ? [...coverBlocks(outline, house, files), ...contentsBlocks(house, verdicts)] : []
  const page: Block = { kind: 'page' }
  return [
    ...first,
    ...windows.flatMap((window) => [page, ...windowBlocks(window, outline, house ? 2 : 1, files)]),
    ...closingBlocks(closing, verdicts, files),
  ]
}
