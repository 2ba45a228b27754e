import type { Figure } from './marks.ts'
import type { Label, Tag, Words } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, grown, joined, moved } from './space.ts'
import { figureWords } from './speech.ts'

/** Where label placing has put a figure. */
export interface LabelSpot {
  readonly at: At
  readonly tag: Tag
  readonly captions: readonly Words[]
  readonly frame?: Box /** Its caption in full, when that is not the figure's own. */
  readonly what?: string
}

/** The boxes of a label's parts, all in one. */
export const labelBox = ({ at, tag, captions, frame }: LabelSpot): Box =>
  joined(moved(tag.box, at), ...captions.map((words) => words.box), ...(frame ? [frame] : []))

/** A label in its place; its touch box is its own box grown to what a finger needs. */
export function labelAt(figure: Figure, role: 'dimension' | 'mark', spot: LabelSpot, options: ComposeOptions): Label {
  const { at, tag, captions, frame } = spot
  const box = labelBox(spot)
  const [width, height] = options.sizes.touch
  const touch = grown(box, Math.max(0, (width - box.width) / 2), Math.max(0, (height - box.height) / 2))
  return {
    figure,
    role,
    tag,
    at,
    captions,
    box,
    touch,
    touched: options.touched === figure.of,
    ...(frame ? { frame } : {}),
    words: figureWords(figure, options, spot.what),
  }
}
