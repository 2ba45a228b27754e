import { circle } from './mark/circle.ts'
import { cross } from './mark/cross.ts'
import { hatch } from './mark/hatch.ts'
import { line } from './mark/line.ts'
import { path } from './mark/path.ts'
import { rect } from './mark/rect.ts'
import type { Mark, Role } from './marks.ts'
import type { Placed } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import type { Box, Frame } from './space.ts'

function shape(mark: Mark, frame: Frame, within: Box, options: ComposeOptions): readonly Placed[] {
  const pencil = { frame, within, options, spot: undefined }
  switch (mark.kind) {
    case 'line':
      return [line.place(mark, pencil)]
    case 'path':
      return [path.place(mark, pencil)]
    case 'rect':
      return [rect.place(mark, pencil)]
    case 'circle':
      return [circle.place(mark, pencil)]
    case 'hatch':
      return [hatch.place(mark, pencil)]
    case 'cross':
      return [cross.place(mark, pencil)]
    default:
      return []
  }
}

/** What lies on cloth, and under its edge. */
const onCloth: ReadonlySet<Role> = new Set(['fabric-shade', 'fold', 'pleat'])

/** What is drawn as it stands, from back to front; words and numbers are placed later, around it. The edge of cloth is drawn again over its folds. */
export function shapesOf(marks: readonly Mark[], frame: Frame, within: Box, options: ComposeOptions): readonly Placed[] {
  const items: Placed[] = []
  let edge: Placed | undefined
  const finish = (): void => {
    if (edge) items.push(edge)
    edge = undefined
  }
  for (const item of marks.flatMap((mark) => shape(mark, frame, within, options))) {
    if (!('role' in item && onCloth.has(item.role))) finish()
    items.push(item)
    if (item.kind === 'path' && item.role === 'fabric') edge = { ...item, isEdge: true }
  }
  finish()
  return items
}
