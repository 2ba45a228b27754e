import type { Work } from './layout.ts'
import { markWords } from './mark/index.ts'
import type { Mark } from './marks.ts'
import { figureWords } from './speech.ts'

/** Everything that a scene says, once, in the order of its marks. */
export function sentences({ gathered, heights, options }: Work): readonly string[] {
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
