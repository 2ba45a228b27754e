import type { Crowd } from './crowds.ts'
import { ground } from './ground.ts'
import { insideSpot, lieOf, lineBox } from './inside.ts'
import { caption } from './mark/caption.ts'
import { dimension } from './mark/dimension.ts'
import { markBounds } from './mark/index.ts'
import type { Dimension, Mark, Role } from './marks.ts'
import { captionSpot } from './notes.ts'
import type { LeftOut, Placed } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { shapesOf } from './shapes.ts'
import { type Bounds, type Box, boxAt, type Frame, grown } from './space.ts'

/** What is to be enlarged, how much, how large that is on the drawing and beside it. */
export interface Plan {
  readonly factor: number
  readonly bounds: Bounds
  readonly source: Box
  readonly width: number
  readonly height: number
  readonly head: number
  readonly title: string
}

/** What an enlargement shows of the drawing: what marks are measured from. Hardware is not there yet: it is dashed. */
const shown: ReadonlySet<Role> = new Set([
  'wall',
  'hatch',
  'wall-face',
  'baseboard',
  'casing',
  'frame',
  'glass',
  'obstacle',
  'mark',
  'centre',
  'hidden',
  'level',
])
const dashed: ReadonlySet<Role> = new Set(['rod', 'bracket', 'finial'])
const isNear = (bounds: Bounds | undefined, { left, right, bottom, top }: Bounds): boolean =>
  bounds === undefined || (bounds.left < right && bounds.right > left && bounds.bottom < top && bounds.top > bottom)

const isShape = (mark: Mark): boolean =>
  'role' in mark && mark.kind !== 'dimension' && mark.kind !== 'height' && mark.kind !== 'caption'

/** The drawing's marks as an enlargement shows them: of a section all, since nothing else stands before the wall there. */
function enlarged(marks: readonly Mark[], bounds: Bounds, view: ComposeOptions['view']): readonly Mark[] {
  const near = marks.filter((mark) => isShape(mark) && isNear(markBounds(mark), bounds))
  if (view === 'plan') return near
  return near
    .filter((mark) => 'role' in mark && (shown.has(mark.role) || dashed.has(mark.role)))
    .map((mark) => ('role' in mark && dashed.has(mark.role) ? ({ ...mark, role: 'hidden' } as Mark) : mark))
}

export interface Inner {
  readonly shapes: readonly Placed[]
  readonly figures: readonly Placed[]
  readonly leftOut: readonly LeftOut[]
}

/** The marks of an enlargement and the labels of its own dimensions, kept within its panel. */
export function inner(
  crowd: Crowd,
  plan: Plan,
  panel: Box,
  marks: readonly Mark[],
  frame: Frame,
  options: ComposeOptions,
): Inner {
  const within: Box = { x: panel.x, y: panel.y + plan.head, width: panel.width, height: panel.height - plan.head }
  const scale = frame.scale * plan.factor
  const close: Frame = { scale, x: within.x - plan.bounds.left * scale, y: within.y + plan.bounds.top * scale }
  const base = [...enlarged(marks, plan.bounds, options.view), ...crowd.marks]
  const shapes = shapesOf(base, close, within, options).map((item) => ({ ...item, clip: within }))
  const { sizes } = options
  const free = ground(
    grown(within, -0.2 * sizes.caption.size),
    ...shapes.filter((item) => item.kind === 'cross').map((item) => boxAt(item.at, 2 * item.arm, 2 * item.arm)),
  )
  const dimensions = crowd.marks.filter((mark): mark is Dimension => mark.kind === 'dimension')
  const lines = dimensions.map((mark) => lineBox(lieOf(mark, close), 1))
  const figures: Placed[] = []
  const leftOut: LeftOut[] = []
  dimensions.forEach((mark, n) => {
    const spot = insideSpot(
      mark,
      close,
      free,
      lines.filter((_, other) => other !== n),
      options,
    )
    if (!spot) {
      leftOut.push({ what: mark.figure.what, of: mark.figure.of, why: 'crowded' })
      return
    }
    const item = dimension.place(mark, { frame: close, within, options, spot })
    free.take(item.label.box)
    figures.push(item)
  })
  for (const mark of crowd.marks) {
    if (mark.kind !== 'caption') continue
    const spot = captionSpot(mark, close, free, options)
    if (!spot) continue
    free.take(spot.box)
    figures.push(caption.place(mark, { frame: close, within, options, spot }))
  }
  return { shapes, figures, leftOut }
}
