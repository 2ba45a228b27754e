import type { Closing } from '../closing.ts'
import type { LoadsShown } from '../loads.ts'
import type { Line, Outline, Section } from '../outline.ts'
import type { PrintedPoint } from '../punch-list.ts'
import { field, type ShownSignature } from '../signatures.ts'
import type { TechnicalWindow } from '../technical.ts'
import type { WallMarks } from '../wall-marks.ts'
import type { Block, Files, Signature } from './blocks.ts'
import { photos } from './photos.ts'
import { colours, drawingFile } from './picture.ts'
import { begin, notes, staysBlocks } from './stays.ts'
import { linesOf, row, rows } from './text.ts'
import { heading, paragraph } from './window.ts'

type Verdicts = Outline['verdicts']

const lead = (text: string): Block => ({ kind: 'lead', text: [text], look: 'title' })

/** Lines that stand on every paper, what is around them included. */
const aPage = 32
/** Blocks on one page. What may be longer than one is torn: on one page its end would fall off it. */
const together = (of: readonly Block[], lines: number): readonly Block[] => (lines > aPage ? of : [{ kind: 'together', of }])

/** A point to mend with what is known of it. */
function left({ title, unsafe, what, facts, photos: of }: PrintedPoint, words: Verdicts, files: Files): readonly Block[] {
  const all: readonly Block[] = [
    { kind: 'rule', look: 'ink' },
    heading(3, title),
    ...(unsafe ? [{ kind: 'stands', sign: 'fail', word: words.fail, says: [unsafe] } as const] : []),
    { kind: 'lead', text: [what], look: 'point' },
    rows(facts.map(row), 'point'),
    ...(of.length > 0 ? [photos(of, files)] : []),
  ]
  // A row of photos is as high as eight lines.
  const lines =
    linesOf([[what]], 70) +
    linesOf(
      facts.flatMap(({ says }) => says),
      80,
    ) +
    8 * Math.ceil(of.length / 3)
  return [{ kind: 'space', height: 5 }, ...together(all, lines)]
}

const signatureFile = (path: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${field.width} ${field.height}"><path d="${path}" fill="none" stroke="${colours.ink}" stroke-width="2" stroke-linecap="round" stroke-linejoin="round"/></svg>`

function signature({ id, name, as, says, path, alternative, fingerprint }: ShownSignature, n: number, files: Files): Signature {
  const { words, hash } = fingerprint
  const file = path === '' ? {} : { file: files.add(`signature-${n}.svg`, signatureFile(path)) }
  return { ...file, alternative: alternative || id, name, says: [as, ...says], words: words.join(' '), hash }
}

const signed = (all: Closing['signed'], files: Files): readonly Block[] => [
  ...begin(all),
  ...(all.instead ? [lead(all.instead)] : []),
  { kind: 'signatures', of: all.of.map((one, n) => signature(one, n + 1, files)) },
  { kind: 'paragraph', text: [all.about], look: 'quiet' },
]

const small = (text: string): Block => ({ kind: 'heading', rank: 4, text, look: 'small' })
const listed = ({ title, of }: Section<Line>): readonly Block[] =>
  of.length > 0 ? [small(title), rows(of.map(row), 'small'), { kind: 'space', height: 2 }] : []
const marks = ({ title, of, instead }: WallMarks): readonly Block[] =>
  instead ? [small(title), paragraph(instead)] : listed({ title, of })

/** A window for whoever works at it next: marks in one column, hooks and pins in the other. */
function technical({ window, marks: all, hooks, pins, loads }: TechnicalWindow, n: number, files: Files): readonly Block[] {
  const columns = [all.flatMap(marks), [...listed(hooks), ...listed(pins)]]
  const of: readonly Block[] = [
    { kind: 'rule', look: 'ink' },
    heading(3, window.text),
    { kind: 'columns', widths: [83.5], gap: 9, of: columns },
  ]
  const lines = [all, [hooks, pins]].map((column) =>
    linesOf(
      column.flatMap((list) => list.of.flatMap(({ says }) => says)),
      30,
    ),
  )
  return [{ kind: 'space', height: 4 }, ...together(of, Math.max(...lines)), ...(loads ? carried(loads, n, files) : [])]
}
/** What brackets carry: the drawing, bracket by bracket, what was taken for granted, and that it is an estimate. */
function carried({ brackets, granted, estimate, drawing, alternative }: LoadsShown, n: number, files: Files): readonly Block[] {
  const file = files.add(`loads-${n}.svg`, drawingFile(drawing))
  const picture: Block = { kind: 'picture', file, alternative, width: drawing.width, height: drawing.height }
  const shown: readonly Block[] = [picture, small(brackets.title), rows(brackets.of.map(row), 'small')]
  const said: readonly Block[] = [
    small(granted.title),
    { kind: 'paragraph', text: [granted.says], look: 'quiet' },
    { kind: 'paragraph', text: [estimate], look: 'bold' },
  ]
  const space: Block = { kind: 'space', height: 2 }
  // The drawing is as high as fourteen lines.
  return [space, ...together(shown, 14 + 2 * brackets.of.length), space, { kind: 'together', of: said }]
}

/** What closes a report, as on the page: what is open, was shown and is signed, what stays with the customer, and the next installer's page. */
export function closingBlocks(closing: Closing, words: Verdicts, files: Files): readonly Block[] {
  const { open, shown, signed: all, technical: next } = closing
  const page: Block = { kind: 'page' }
  const isShort = open.of.length + shown.of.length + all.of.length === 0
  return [
    page,
    ...begin(open),
    lead(open.lead),
    ...open.of.flatMap((point) => left(point, words, files)),
    ...begin(shown),
    ...notes(shown),
    ...(all.of.length > 0 ? signed(all, files) : []),
    ...(isShort ? [] : [page]),
    ...staysBlocks(closing),
    page,
    ...begin(next),
    lead(next.lead),
    ...next.of.flatMap((window, n) => technical(window, n + 1, files)),
  ]
}
