import type { Count, House, Link, RoomContents } from '../house.ts'
import type { Outline } from '../outline.ts'
import { papers } from '../paper.ts'
import type { Block, Entry, Files, Item, Piece, Text } from './blocks.ts'
import { friezeFile } from './frieze.ts'
import { row, rows } from './text.ts'
import { heading, paragraph, point } from './window.ts'

type Verdicts = Outline['verdicts']

export const links = (all: readonly Link[]): Text => all.flatMap((one, n): Piece[] => [...(n > 0 ? ['; '] : []), one])

/** The first page: the house by its name and as a frieze. */
export function coverBlocks({ title, about, paper }: Outline, { lead, summary, frieze }: House, files: Files): readonly Block[] {
  const { svg, width, height } = friezeFile(frieze, papers[paper].width - 2 * papers[paper].side)
  const file = files.add('frieze.svg', svg)
  return [
    { kind: 'heading', rank: 1, text: title, look: 'cover' },
    { kind: 'lead', text: [lead], look: 'cover' },
    ...summary.before.slice(0, 1).map((text): Block => ({ kind: 'paragraph', text: [text], look: 'quiet' })),
    { kind: 'space', height: 14 },
    { kind: 'picture', file, alternative: frieze.words, width, height },
    { kind: 'paragraph', text: [{ quiet: [frieze.says] }], look: 'quiet' },
    { kind: 'space', height: 12 },
    rows(about.map(row), 'about'),
    { kind: 'page' },
  ]
}

const room = ({ name, windows }: RoomContents, words: Verdicts): readonly Block[] => [
  heading(3, name),
  {
    kind: 'entries',
    of: windows.map(({ link, verdict, short }): Entry => ({ sign: verdict, word: words[verdict], ...link, more: short })),
  },
]

/** Windows that stand alike. One that stops says why here too; what to do about it stands at the window. */
function count({ verdict, says, windows }: Count, words: Verdicts): Item {
  const reasons = windows.flatMap(({ link, points }): Block[] => [
    { kind: 'paragraph', text: [link], look: 'plain' },
    { kind: 'points', of: points.map((one) => point({ verdict: one.verdict, says: one.says }, words)) },
  ])
  const names: Block = { kind: 'paragraph', text: links(windows.map(({ link }) => link)), look: 'quiet' }
  const below = windows.some(({ points }) => points.length > 0) ? reasons : windows.length > 0 ? [names] : []
  return { sign: verdict, word: words[verdict], of: [{ kind: 'paragraph', text: [says], look: 'bold' }, ...below] }
}

/** More lines than stand on a page in two columns. */
const aPage = 84

/** Rooms in two columns of about the same length; more than a page of them go down one column after the other. */
function inColumns(rooms: readonly (readonly Block[])[], lines: readonly number[]): Block {
  const all = lines.reduce((a, b) => a + b, 0)
  if (all > aPage) return { kind: 'flow', columns: 2, of: rooms }
  const above = lines.map((_, n) => lines.slice(0, n).reduce((a, b) => a + b, 0))
  const left = rooms.filter((_, n) => (above[n] as number) + (lines[n] as number) / 2 <= all / 2)
  const spaced = (some: typeof rooms): readonly Block[] =>
    some.flatMap((each) => [...each, { kind: 'space', height: 4 } as const])
  return { kind: 'columns', widths: [83.5], gap: 9, of: [spaced(left), spaced(rooms.slice(left.length))] }
}

/** Where each window is and how it stands, then the same by what is open. */
export const contentsBlocks = ({ summary, contents }: House, words: Verdicts): readonly Block[] => [
  { kind: 'heading', rank: 2, text: contents.title, look: 'title' },
  { kind: 'space', height: 4 },
  inColumns(
    [
      ...contents.of.map((each) => room(each, words)),
      [heading(3, contents.also.title), { kind: 'entries', of: contents.also.of.map((to) => ({ ...to, more: '' })) }],
    ],
    [...contents.of.map(({ windows }) => windows.length), contents.also.of.length].map((each) => each + 2),
  ),
  { kind: 'space', height: 9 },
  { kind: 'heading', rank: 2, text: summary.title, look: 'title', id: summary.id },
  { kind: 'space', height: 2 },
  ...summary.before.map(paragraph),
  { kind: 'points', of: summary.of.map((each) => count(each, words)) },
]
