import type { Drawing, Key } from '../drawing.ts'
import type { Point } from '../open.ts'
import type { Line, Outline, Points, Section, WindowPage } from '../outline.ts'
import type { Paper } from '../paper.ts'
import { papers } from '../paper.ts'
import { signOf } from '../standing.ts'
import type { Block, Files, Item, Row, Sample } from './blocks.ts'
import { photos } from './photos.ts'
import { drawingFile } from './picture.ts'
import { bare, fact, row, rows, said } from './text.ts'

type Verdicts = Outline['verdicts']

export const heading = (rank: number, text: string): Block => ({ kind: 'heading', rank, text, look: 'plain' })
export const paragraph = (text: string): Block => ({ kind: 'paragraph', text: [text], look: 'plain' })

const sample = ({ state, number, says }: Key): Sample => ({
  state,
  number: [...(state === 'computed' ? ['= '] : []), ...(number ? [bare(number)] : ['?'])],
  says,
})

/** A drawing as a picture; its key stands below it and what is beside it. */
function drawn(drawing: Drawing, name: string, files: Files): Block {
  const { scene, alternative } = drawing
  const file = files.add(`${name}.svg`, drawingFile(scene))
  return { kind: 'picture', file, alternative, width: scene.width, height: scene.height }
}

/** Facts with a name as rows; the others below them, each by itself. */
function facts({ title, of }: Section<Line>, rank: number): readonly Block[] {
  const [named, others] = [of.filter(({ name }) => name), of.filter(({ name }) => !name)]
  return [
    heading(rank, title),
    ...(named.length > 0 ? [rows(named.map(row), 'facts')] : []),
    ...others.flatMap(({ says }) => says.map((each): Block => ({ kind: 'paragraph', text: fact(each), look: 'fact' }))),
    { kind: 'space', height: 4.4 },
  ]
}

/** A point with its sign; one that was set aside is struck, and says why. */
export function point({ verdict, says, help, setAside }: Point, words: Verdicts): Item {
  const more = [help, setAside].flatMap((each): Block[] => (each ? [{ kind: 'paragraph', text: said(each), look: 'quiet' }] : []))
  const of: readonly Block[] = [{ kind: 'paragraph', text: said(says), look: setAside ? 'struck' : 'plain' }, ...more]
  return { sign: verdict, word: words[verdict], of }
}

const points = ({ title, before = [], of }: Points, words: Verdicts, rank: number): readonly Block[] => [
  { kind: 'space', height: 3.4 },
  heading(rank, title),
  ...before.map(paragraph),
  ...(of.length > 0 ? [{ kind: 'points', of: of.map((each) => point(each, words)) } as const] : []),
]

/** What was taken, and what was done otherwise than ordered. */
const done = ({ photos: taken, corrections }: WindowPage, rank: number, files: Files): readonly Block[] => [
  ...(taken ? [{ kind: 'space', height: 2.8 } as const, heading(rank, taken.title), photos(taken.of, files)] : []),
  ...(corrections
    ? [
        { kind: 'space', height: 2.8 } as const,
        heading(rank, corrections.title),
        rows(corrections.of.map(correction), 'corrections'),
      ]
    : []),
]
/** Its sentences in a line, each with its unit. */
const correction = ({ name = [], says }: Line): Row => ({
  name: said(name),
  says: [says.flatMap((each, n) => [...(n > 0 ? ['; '] : []), ...said(each)])],
})

/** The drawing with the facts beside it. */
function plate(window: WindowPage, paper: Paper, rank: number, files: Files): readonly Block[] {
  const { drawing, notDrawn, id } = window
  const beside = [...window.facts, ...(window.days ? [window.days] : [])].flatMap((each) => facts(each, rank))
  const left: Block = drawing ? drawn(drawing, id, files) : { kind: 'paragraph', text: [notDrawn], look: 'quiet' }
  return [
    { kind: 'space', height: 3.4 },
    { kind: 'columns', widths: [papers[paper].drawing.width], gap: 4, of: [[left], beside] },
    ...(drawing ? [{ kind: 'key', of: drawing.key.map(sample), note: drawing.note } as const] : []),
  ]
}

/** A window's blocks. `rank`: of its title, 1 where the window is all of the report. Care and safe use are said once, at the end, and marks on the next installer's page. */
export function windowBlocks(
  window: WindowPage,
  { paper, verdicts }: Pick<Outline, 'paper' | 'verdicts'>,
  rank: 1 | 2,
  files: Files,
): readonly Block[] {
  const { stands, lead, open, checked, id, title } = window
  const sign = signOf(stands.standing)
  return [
    { kind: 'heading', rank, text: title, look: 'title', id },
    ...(lead.length > 0
      ? [{ kind: 'lead', text: lead.flatMap((each, n) => [...(n > 0 ? [' '] : []), ...said(each)]), look: 'title' } as const]
      : []),
    ...(stands.says.length > 0 ? [{ kind: 'stands', sign, word: verdicts[sign], says: stands.says } as const] : []),
    ...plate(window, paper, rank + 1, files),
    ...done(window, rank + 1, files),
    ...points(open, verdicts, rank + 1),
    // Of what is well paper needs the number alone.
    ...(checked.of.length > 0
      ? [{ kind: 'counted', rank: rank + 1, sign: 'pass', word: verdicts.pass, text: checked.title } as const]
      : []),
  ]
}
