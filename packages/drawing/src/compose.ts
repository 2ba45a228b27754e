import { linesClear } from './clear.ts'
import { crowdsOf } from './crowds.ts'
import { details } from './details.ts'
import { pageBox } from './fit.ts'
import { type Gathered, gather, only } from './gather.ts'
import { ground } from './ground.ts'
import { heightLabels } from './heights.ts'
import { bladeOf, lay, type Work, walls } from './layout.ts'
import { markBounds, markWords } from './mark/index.ts'
import type { Layer, Mark } from './marks.ts'
import { findingBox } from './notes.ts'
import { placeCaptions, placeFindings, placeHeights, placeInside, placeRows } from './placing.ts'
import type { LeftOut, Placed, Scene } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { shapesOf } from './shapes.ts'
import { type Box, boxAt, boxOf, unionOf } from './space.ts'
import { figureWords } from './speech.ts'
import { touchesApart } from './touch.ts'

/** Top to bottom, then left to right. */
const inReadingOrder = (items: readonly Placed[]): readonly Placed[] => {
  const at = (item: Placed) => (item.kind === 'dimension' || item.kind === 'height' ? item.label.at : ([0, 0] as const))
  return [...items].sort((a, b) => at(a)[1] - at(b)[1] || at(a)[0] - at(b)[0])
}

const labelOf = (item: Placed): readonly { readonly text: string; readonly box: Box }[] => {
  switch (item.kind) {
    case 'dimension':
    case 'height':
      return [{ text: item.label.words, box: item.label.box }]
    case 'caption':
      return [{ text: item.words.text, box: item.words.box }]
    case 'finding':
      return [{ text: item.words, box: findingBox(item.at, item.radius) }]
    case 'detail':
      return [
        { text: item.letter, box: item.sign },
        { text: item.letter, box: item.head },
        ...(item.title ? [{ text: item.title.text, box: item.title.box }] : []),
      ]
    case 'tape':
      return item.numbers.map(({ text, box }) => ({ text, box }))
    default:
      return []
  }
}

const emptyScene = ({ view, sizes, width, height: tall }: ComposeOptions, leftOut: readonly LeftOut[]): Scene => ({
  view,
  unit: sizes.unit,
  width,
  height: tall,
  scale: 1,
  items: [],
  labels: [],
  words: [],
  leftOut,
})

/** Everything that a scene says, once, in the order of its marks. */
function sentences({ gathered, heights, options }: Work): readonly string[] {
  const captions = new Map<Mark, string>(heights.map(({ mark, what }) => [mark, what]))
  const groups = gathered.groups.flatMap(({ words }) => (words === undefined ? [] : [options.say(words)]))
  const all = [
    ...groups,
    ...[...gathered.marks, ...gathered.details.flatMap((mark) => [mark, ...mark.marks])].flatMap((mark) =>
      mark.kind === 'height' && captions.has(mark)
        ? [figureWords(mark.figure, options, captions.get(mark))]
        : markWords(mark, options),
    ),
  ]
  return [...new Set(all.filter((text) => text !== ''))]
}

function workOf(gathered: Gathered, options: ComposeOptions): Work | undefined {
  const content = options.bounds ?? unionOf(gathered.marks.map(markBounds))
  if (!content) return undefined
  const heights =
    options.view === 'elevation' || options.view === 'marks' ? heightLabels(only(gathered.marks, 'height'), options) : []
  const hasWall = gathered.marks.some((mark) => 'role' in mark && walls.has(mark.role))
  return {
    gathered,
    content,
    heights,
    hasTape: heights.length > 0 || (hasWall && (options.view === 'elevation' || options.view === 'marks')),
    options,
  }
}

/**
 * Composes the layers of a window into one drawing: takes the marks of a view and a state of the drapery from back to front, finds the one
 * scale that leaves room for rows and heights, draws, opens details where marks crowd, and only then places words and numbers, none over another.
 */
export function compose(layers: readonly Layer[], options: ComposeOptions): Scene {
  const gathered = gather(layers, options.view, options.state)
  const work = workOf(gathered, options)
  if (!work) return emptyScene(options, gathered.leftOut)
  const laid = lay(work)
  const { frame, content } = laid
  const { crowds, calm } = crowdsOf(gathered, options.sizes.crowd / frame.scale)
  const marks = [...gathered.marks, ...calm]
  const shapes = shapesOf(marks, frame, content, options)
  const blade = bladeOf(work, laid)
  const heights = placeHeights(work, laid, blade)
  const crosses = shapes.flatMap((item) => (item.kind === 'cross' ? [boxAt(item.at, 2 * item.arm, 2 * item.arm)] : []))
  const outer = ground(pageBox(options), ...(blade ? [blade.box] : []), ...heights.items.flatMap(labelOf).map(({ box }) => box))
  const rows = placeRows(laid, outer, options)
  const free = ground(boxOf(frame, work.content), ...crosses, ...outer.taken)
  const findings = placeFindings(only(marks, 'finding'), laid, free, options)
  const enlarged = details(gathered, crowds, frame, free, options)
  const inside = placeInside(
    only(marks, 'dimension').filter((mark) => mark.side === 'inside'),
    laid,
    free,
    options,
  )
  const captions = placeCaptions(only(marks, 'caption'), laid, free, options)
  const figures = inReadingOrder([...rows.items, ...heights.items, ...inside.items])
  const items = touchesApart(
    linesClear([...shapes, ...(blade ? [blade] : []), ...captions.items, ...figures, ...findings.items, ...enlarged.items]),
  )
  return {
    view: options.view,
    unit: options.sizes.unit,
    width: options.width,
    height: options.height,
    scale: frame.scale,
    items,
    labels: items.flatMap(labelOf),
    words: sentences(work),
    leftOut: [...gathered.leftOut, ...[rows, heights, findings, enlarged, inside, captions].flatMap((each) => each.leftOut)],
  }
}
