import type { Ground } from './ground.ts'
import { captionText } from './mark/caption.ts'
import type { Caption, Finding } from './marks.ts'
import type { Words } from './scene.ts'
import type { ComposeOptions } from './setting.ts'
import { type At, type Box, boxAt, type Frame, toScene } from './space.ts'
import { cut } from './text.ts'
import { wordsAt } from './words.ts'

/** Steps away from where a note would stand, nearest first: straight, then across. */
const steps = [0, 1, 2, 3].flatMap((far) =>
  far === 0
    ? [[0, 0]]
    : [
        [0, -far],
        [0, far],
        [far, 0],
        [-far, 0],
        [far, -far],
        [-far, far],
        [far, far],
        [-far, -far],
      ],
) as readonly At[]

function nearest<T>(make: (by: At) => T, boxOf: (made: T) => Box, size: At, ground: Ground): T | undefined {
  return steps.map(([dx, dy]) => make([dx * size[0], dy * size[1]])).find((made) => ground.isFree(boxOf(made)))
}

/** A caption at its point or a little beside it; undefined when there is no room or nothing to say. */
export function captionSpot(mark: Caption, frame: Frame, ground: Ground, options: ComposeOptions): Words | undefined {
  const { caption: type, line } = options.sizes
  const text = cut(captionText(mark, options), type, ground.within.width)
  const [x, y] = toScene(frame, mark.at)
  return text === ''
    ? undefined
    : nearest(
        ([dx, dy]) => wordsAt(text, [x + dx, y + dy], type, mark.anchor),
        (words) => words.box,
        [line, line],
        ground,
      )
}

export const findingBox = (at: At, radius: number): Box => boxAt(at, 2.4 * radius, 2.4 * radius)
/** A finding at its point or a little beside it; undefined when there is no room. */
export function findingSpot(mark: Finding, frame: Frame, ground: Ground, { sizes }: ComposeOptions): At | undefined {
  const [x, y] = toScene(frame, mark.at)
  return nearest(
    ([dx, dy]): At => [x + dx, y + dy],
    (at) => findingBox(at, sizes.finding),
    [1.2 * sizes.finding, 1.2 * sizes.finding],
    ground,
  )
}
