import type { ComposeOptions } from './setting.ts'
import type { Mark } from './marks.ts'
import type { Placed } from './scene.ts'
import type { Box, Frame } from './space.ts'
import { circle } from './mark/circle.ts'
import { cross } from './mark/cross.ts'
import { hatch } from './mark/hatch.ts'
import { line } from './mark/line.ts'
import { path } from './mark/path.ts'
import { rect } from './mark/rect.ts'

/** What is drawn as it stands; words and numbers are placed later, around it. */
export function shape(mark: Mark, frame: Frame, within: Box, options: ComposeOptions): readonly Placed[] {
  const pencil = { frame, within, options, spot: undefined }
  switch (mark.kind) {
    case 'line': return [line.place(mark, pencil)]
    case 'path': return [path.place(mark, pencil)]
    case 'rect': return [rect.place(mark, pencil)]
    case 'circle': return [circle.place(mark, pencil)]
    case 'hatch': return [hatch.place(mark, pencil)]
    case 'cross': return [cross.place(mark, pencil)]
    default: return []
  }
}
