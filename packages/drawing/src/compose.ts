import { crowdsOf } from './crowds.ts'
import { details } from './details.ts'
import { fit, larger, type Margins, pageBox } from './fit.ts'
import { gather, type Gathered } from './gather.ts'
import { type Ground, ground } from './ground.ts'
import { type Column, column, columnWidth, type HeightLabel, heightLabels } from './heights.ts'
import { insideSpot, lieOf, lineBox } from './inside.ts'
import { caption } from './mark/caption.ts'
import { dimension } from './mark/dimension.ts'
import { finding } from './mark/finding.ts'
import { height, riseOf } from './mark/height.ts'
import { markBounds, markWords } from './mark/index.ts'
import type { Caption, Dimension, Finding, Height, Layer, Mark, Role } from './marks.ts'
import { captionSpot, findingBox, findingSpot } from './notes.ts'
import { row, type Side, type Spot } from './rows.ts'
import type { LeftOut, Placed, PlacedTape, Scene } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { shapesOf } from './shapes.ts'
import { type Bounds, type Box, boxAt, boxOf, type Frame, grown, holds, overlap, unionOf } from './space.ts'
import { tape } from './tape.ts'
import { touchesApart } from './touch.ts'

const sides: readonly Side[] = ['above', 'below', 'left', 'right']
const walls: ReadonlySet<Role> = new Set(['wall', 'wall-face'])
/** How far hatch reaches beyond the wall, in captions' size. */
const hatchDepth = 0.85

const only = <K extends Mark['kind']>(marks: readonly Mark[], kind: K) => marks.filter((mark): mark is Extract<Mark, { kind: K }> => mark.kind === kind)

/** What stays the same while the scale is sought. */
interface Work {
  readonly gathered: Gathered
  readonly content: Bounds
  readonly heights: readonly HeightLabel[]
  readonly hasTape: boolean
  readonly options: ComposeOptions
}

/** Left of the drawing: the column of heights, the fan, the blade. */
const leftOf = ({ heights, hasTape, options: { sizes } }: Work): number =>
  (heights.length > 0 ? columnWidth(heights, sizes) + sizes.fan : 0) + (hasTape ? sizes.blade : 0)

interface Laid { readonly frame: Frame; readonly content: Box; readonly rows: ReadonlyMap<Dimension, Spot>; readonly blade: number }

/** All rows at one scale, and the margins that they would need. */
function rowsAt(work: Work, frame: Frame): { readonly laid: Laid; readonly margins: Margins } {
  const { options, gathered } = work
  const { edge, caption: { size } } = options.sizes
  const content = grown(boxOf(frame, work.content), hatchDepth * size)
  const dimensions = only(gathered.marks, 'dimension')
  const found = new Map(sides.map((side) => {
    const limits = side === 'above' || side === 'below' ? [content.x - (work.hasTape ? options.sizes.blade : 0), options.width - edge] as const : [edge, options.height - edge] as const
    return [side, row(dimensions.filter((mark) => mark.side === side), side, content, frame, limits, options)] as const
  }))
  const reach = (side: Side): number => found.get(side)?.reach ?? 0
  const around = hatchDepth * size + edge
  const margins = { left: reach('left') + leftOf(work) + around, top: reach('above') + around, right: reach('right') + around, bottom: reach('below') + around }
  const rows = new Map([...found.values()].flatMap(({ spots }) => spots))
  return { laid: { frame, content, rows, blade: content.x - reach('left') }, margins }
}

/** What one tier on each side that has dimensions would need: where the search begins. */
function oneTier(work: Work): Margins {
  const { edge, gap, row: { size }, caption } = work.options.sizes
  const has = (side: Side): number => (only(work.gathered.marks, 'dimension').some((mark) => mark.side === side) ? gap : 0)
  const around = hatchDepth * caption.size + edge
  return { left: leftOf(work) + around + has('left'), top: has('above') + around, right: has('right') + around + (has('right') && size), bottom: has('below') + around }
}

/** Rows change with the scale and the scale with their rows: margins only grow, so this ends. */
function lay(work: Work): Laid {
  const { options } = work
  const settle = (margins: Margins, turn: number): Laid => {
    const next = rowsAt(work, fit(work.content, options, margins, options.sizes.step))
    const wanted = larger(margins, next.margins)
    const isSettled = (Object.keys(wanted) as (keyof Margins)[]).every((side) => wanted[side] <= margins[side] + 0.01)
    return isSettled || turn > 6 ? next.laid : settle(wanted, turn + 1)
  }
  return settle(oneTier(work), 0)
}

/** The blade stands on what the leftmost height is measured from, or on the level line, and reaches the top of the wall. */
function bladeOf(work: Work, { frame, content, blade }: Laid): PlacedTape | undefined {
  if (!work.hasTape) return undefined
  const first = [...only(work.gathered.marks, 'height')].sort((a, b) => a.at[0] - b.at[0])[0]
  const room = unionOf(work.gathered.marks.filter((mark) => 'role' in mark && walls.has(mark.role)).map(markBounds)) ?? work.content
  const top = Math.min(room.top, work.options.bounds?.top ?? room.top)
  const foot = frame.y - (first?.base ?? 0) * frame.scale
  return tape(blade, foot, Math.max(content.y, frame.y - top * frame.scale), frame.scale, work.options.write(0 as never).unit, work.options.sizes)
}

function placeHeights(work: Work, { frame, content }: Laid, blade: PlacedTape | undefined): { readonly items: readonly Placed[]; readonly leftOut: Column['leftOut'] } {
  if (!blade) return { items: [], leftOut: [] }
  const { options } = work
  const { edge } = options.sizes
  const foot = blade.box.y + blade.box.height
  const fanned = column(work.heights, (mark) => foot - riseOf(mark) * frame.scale, blade.box.x - options.sizes.fan, [edge, options.height - edge], options)
  const items = [...fanned.spots].map(([mark, spot]) => height.place(mark, { frame, within: content, options, spot: { ...spot, blade: blade.box, foot } }))
  return { items, leftOut: fanned.leftOut }
}

const crowded = (mark: Dimension | Height): LeftOut => ({ what: mark.figure.what, of: mark.figure.of, why: 'crowded' })

/** Places marks one by one on free ground; those that find none are left out. */
function onGround<M extends Mark>(marks: readonly M[], place: (mark: M) => { readonly item: Placed; readonly box: Box } | undefined, left: (mark: M) => LeftOut, free: Ground): { readonly items: readonly Placed[]; readonly leftOut: readonly LeftOut[] } {
  const items: Placed[] = []
  const leftOut: LeftOut[] = []
  for (const mark of marks) {
    const found = place(mark)
    if (found) { items.push(found.item); free.take(found.box) } else leftOut.push(left(mark))
  }
  return { items, leftOut }
}

function placeFindings(marks: readonly Finding[], { frame, content }: Laid, free: Ground, options: ComposeOptions) {
  return onGround(marks, (mark) => {
    const spot = findingSpot(mark, frame, free, options)
    return spot && { item: finding.place(mark, { frame, within: content, options, spot }), box: findingBox(spot, options.sizes.finding) }
  }, (mark) => ({ what: mark.code, why: 'crowded' }), free)
}

function placeInside(marks: readonly Dimension[], { frame, content }: Laid, free: Ground, options: ComposeOptions) {
  const lines = new Map(marks.map((mark) => [mark, lineBox(lieOf(mark, frame), 1)]))
  return onGround(marks, (mark) => {
    const spot = insideSpot(mark, frame, free, [...lines].filter(([other]) => other !== mark).map(([, box]) => box), options)
    const item = spot && dimension.place(mark, { frame, within: content, options, spot })
    return item && { item, box: item.label.box }
  }, crowded, free)
}

function placeCaptions(marks: readonly Caption[], { frame, content }: Laid, free: Ground, options: ComposeOptions) {
  const said = marks.filter((mark) => caption.words(mark, options).length > 0)
  return onGround(said, (mark) => {
    const spot = captionSpot(mark, frame, free, options)
    return spot && { item: caption.place(mark, { frame, within: content, options, spot }), box: spot.box }
  }, (mark) => ({ what: mark.code ?? mark.text ?? '', why: 'crowded' }), free)
}

/** Rows' dimensions whose label lies on the page. */
function placeRows({ rows, frame, content }: Laid, free: Ground, options: ComposeOptions) {
  return onGround([...rows.keys()], (mark) => {
    const item = dimension.place(mark, { frame, within: content, options, spot: rows.get(mark) as Spot })
    return free.isFree(item.label.box) ? { item, box: item.label.box } : undefined
  }, crowded, free)
}

/** Top to bottom, then left to right. */
const inReadingOrder = (items: readonly Placed[]): readonly Placed[] => {
  const at = (item: Placed) => (item.kind === 'dimension' || item.kind === 'height' ? item.label.at : ([0, 0] as const))
  return [...items].sort((a, b) => at(a)[1] - at(b)[1] || at(a)[0] - at(b)[0])
}

const labelOf = (item: Placed): readonly { readonly text: string; readonly box: Box }[] => {
  switch (item.kind) {
    case 'dimension': case 'height': return [{ text: item.label.words, box: item.label.box }]
    case 'caption': return [{ text: item.words.text, box: item.words.box }]
    case 'finding': return [{ text: item.words, box: findingBox(item.at, item.radius) }]
    case 'detail': return [{ text: item.letter, box: item.sign }, { text: item.letter, box: item.head }, ...(item.title ? [{ text: item.title.text, box: item.title.box }] : [])]
    case 'tape': return item.numbers.map(({ text, box }) => ({ text, box }))
    default: return []
  }
}

const emptyScene = ({ view, sizes, width, height: tall }: ComposeOptions, leftOut: readonly LeftOut[]): Scene =>
  ({ view, unit: sizes.unit, width, height: tall, scale: 1, items: [], labels: [], words: [], leftOut })

/** Everything that a scene says, once, in the order of its marks. */
function sentences({ gathered, options }: Work): readonly string[] {
  const groups = gathered.groups.flatMap(({ words }) => (words === undefined ? [] : [options.say(words)]))
  const all = [...groups, ...[...gathered.marks, ...gathered.details.flatMap((mark) => [mark, ...mark.marks])].flatMap((mark) => markWords(mark, options))]
  return [...new Set(all.filter((text) => text !== ''))]
}

function workOf(gathered: Gathered, options: ComposeOptions): Work | undefined {
  const content = options.bounds ?? unionOf(gathered.marks.map(markBounds))
  if (!content) return undefined
  const heights = options.view === 'elevation' || options.view === 'marks' ? heightLabels(only(gathered.marks, 'height'), options) : []
  const hasWall = gathered.marks.some((mark) => 'role' in mark && walls.has(mark.role))
  return { gathered, content, heights, hasTape: heights.length > 0 || (hasWall && (options.view === 'elevation' || options.view === 'marks')), options }
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
  const inside = placeInside(only(marks, 'dimension').filter((mark) => mark.side === 'inside'), laid, free, options)
  const captions = placeCaptions(only(marks, 'caption'), laid, free, options)
  const figures = inReadingOrder([...rows.items, ...heights.items, ...inside.items])
  const items = touchesApart([...shapes, ...(blade ? [blade] : []), ...captions.items, ...figures, ...findings.items, ...enlarged.items])
  return {
    view: options.view, unit: options.sizes.unit, width: options.width, height: options.height, scale: frame.scale, items,
    labels: items.flatMap(labelOf), words: sentences(work),
    leftOut: [...gathered.leftOut, ...[rows, heights, findings, enlarged, inside, captions].flatMap((each) => each.leftOut)],
  }
}
