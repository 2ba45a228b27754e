import type { Caption } from '../marks.ts'
import type { PlacedCaption, Words } from '../scene.ts'
import type { ComposeOptions } from '../setting.ts'
import { boundsOf } from '../space.ts'
import type { MarkTable } from './table.ts'
import { wordsSvg } from './words.ts'

/** Names from the job stand as they are, words come by code. */
export const captionText = (mark: Caption, options: ComposeOptions): string =>
  mark.text ?? (mark.code === undefined ? '' : options.say(mark.code))

export const caption: MarkTable<Caption, PlacedCaption, Words> = {
  bounds: (mark) => boundsOf([mark.at]),
  place: (mark, { spot }) => ({ kind: 'caption', role: mark.role, words: spot }),
  svg: ({ role, words }) => wordsSvg(words, `caption ${role}`),
  words: (mark, options) => [captionText(mark, options)].filter((text) => text !== ''),
}
