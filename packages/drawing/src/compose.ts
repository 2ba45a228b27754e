import { linesClear } from './clear.ts'
import { crowdsOf } from './crowds.ts'
import { details } from './details.ts'
import { pageBox } from './fit.ts'
import { type Gathered, gather, only } from './gather.ts'
import { type Ground, ground } from './ground.ts'
import { type HeightLabel, type HeightSide, heightLabels, sideOf } from './heights.ts'
import { inReadingOrder, labelsOf } from './labels.ts'
import { bladesOf, isAtTop, type Laid, lay, type Work, walls } from './layout.ts'
import { markBounds } from './mark/index.ts'
import type { Layer } from './marks.ts'
import { withOwners } from './owners.ts'
import { type Arranged, placeCaptions, placeFindings, placeHeights, placeInside, placeRows } from './placing.ts'
import type { LeftOut, Placed, Scene } from './scene.ts'
import { sentences } from './sentences.ts'
import type { ComposeOptions } from './setting.ts'
import { shapesOf } from './shapes.ts'
import { type Box, boxAt, boxOf, common, unionOf } from './space.ts'
import { touchesApart } from './touch.ts'

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

/** A tape stands where heights are read, and left of every wall that is to have one. */
const tapesFor = (heights: readonly HeightLabel[], hasWall: boolean): readonly HeightSide[] =>
  (['left', 'right'] as const).filter((side) => heights.some(({ mark }) => sideOf(mark) === side) || (side === 'left' && hasWall))

const onTheLeft = (gathered: Gathered): Gathered => ({
  ...gathered,
  marks: gathered.marks.map((mark) => (mark.kind === 'height' ? { ...mark, side: 'left' as const } : mark)),
})

function workOf(gathered: Gathered, options: ComposeOptions): Work | undefined {
  const content = options.bounds ?? unionOf(gathered.marks.map(markBounds))
  if (!content) return undefined
  const isElevation = options.view === 'elevation' || options.view === 'marks'
  const heights = isElevation ? heightLabels(only(gathered.marks, 'height'), options) : []
  const hasWall = gathered.marks.some((mark) => 'role' in mark && walls.has(mark.role))
  const tapes = tapesFor(heights, hasWall && isElevation && options.hasTape !== false)
  return { gathered, content, heights, tapes, options }
}

/** The least part of a page's width that columns on both sides may leave to the wall. */
const leastWall = 0.25

/** On a page too narrow for two columns all heights stand in the left one, where each says which it is. */
function settled(work: Work): { readonly work: Work; readonly laid: Laid } {
  const laid = lay(work)
  const { gathered, options, tapes } = work
  const alone =
    tapes.includes('right') && laid.room < leastWall * options.width ? workOf(onTheLeft(gathered), options) : undefined
  return alone ? { work: alone, laid: lay(alone) } : { work, laid }
}

const crossBoxes = (items: readonly Placed[]): readonly Box[] =>
  items.flatMap((item) => (item.kind === 'cross' ? [boxAt(item.at, 2 * item.arm, 2 * item.arm)] : []))

const labelsIn = (items: readonly Placed[]): readonly Box[] => items.flatMap(labelsOf).map(({ box }) => box)

/** Under a drawing at the top of its page, and under its rows and heights. */
function beneath(strip: Box, labels: readonly Box[], options: ComposeOptions): Ground {
  const { gap, edge } = options.sizes
  const top = Math.max(...[strip, ...labels].map((box) => box.y + box.height)) + gap
  return ground({ x: edge, y: top, width: options.width - 2 * edge, height: Math.max(0, options.height - edge - top) })
}

/** Places everything at the scale that was found: what is fixed first, then on the ground that is left free. */
function arrange(work: Work, laid: Laid): Arranged {
  const { gathered, content, options } = work
  const { frame } = laid
  const { crowds, calm } = crowdsOf(gathered, options.sizes.crowd / frame.scale)
  const marks = [...gathered.marks, ...calm]
  const shapes = shapesOf(marks, frame, laid.content, options)
  const blades = bladesOf(work, laid)
  const heights = placeHeights(work, laid, blades)
  const margin = ground(pageBox(options), ...labelsIn([...blades, ...heights.items]), ...blades.map(({ box }) => box))
  const rows = placeRows(laid, margin, options)
  const free = ground(common(boxOf(frame, content), pageBox(options)), ...crossBoxes(shapes), ...margin.taken)
  const findings = placeFindings(only(marks, 'finding'), laid, free, options)
  const below = isAtTop(work) ? beneath(boxOf(frame, content), labelsIn([...rows.items, ...heights.items]), options) : undefined
  const enlarged = details(
    gathered,
    crowds,
    frame,
    { panels: options.view === 'plan' && below ? below : free, row: below, signs: free },
    options,
  )
  const inside = placeInside(
    only(marks, 'dimension').filter((mark) => mark.side === 'inside'),
    laid,
    free,
    options,
  )
  const captions = placeCaptions(only(marks, 'caption'), laid, free, options)
  const figures = inReadingOrder([...rows.items, ...heights.items, ...inside.items])
  return {
    items: [...shapes, ...blades, ...captions.items, ...figures, ...findings.items, ...enlarged.items],
    leftOut: [...gathered.leftOut, ...[rows, heights, findings, enlarged, inside, captions].flatMap((each) => each.leftOut)],
  }
}

const stretchOf = (layers: readonly Layer[], view: Layer['view']): Pick<Scene, 'stretch'> => {
  const stretch = layers.find((layer) => layer.view === view && layer.stretch !== undefined)?.stretch
  return stretch === undefined ? {} : { stretch }
}

/**
 * Composes the layers of a window into one drawing: takes the marks of a view and a state of the drapery from back to front, finds the one
 * scale that leaves room for rows and heights, draws, opens details where marks crowd, and only then places words and numbers, none over another.
 */
export function compose(layers: readonly Layer[], options: ComposeOptions): Scene {
  const gathered = gather(withOwners(layers), options.view, options.state)
  const first = workOf(gathered, options)
  if (!first) return emptyScene(options, gathered.leftOut)
  const { work, laid } = settled(first)
  const { items, leftOut } = arrange(work, laid)
  const drawn = touchesApart(linesClear(items))
  const { view, width, height, sizes } = options
  return {
    view,
    unit: sizes.unit,
    width,
    height,
    scale: laid.frame.scale,
    ...stretchOf(layers, view),
    items: drawn,
    labels: drawn.flatMap(labelsOf),
    words: sentences(work),
    leftOut,
  }
}
