import { findingBox } from './notes.ts'
import type { Placed } from './scene.ts'
import type { Box } from './space.ts'

/** Figures top to bottom, then left to right; everything else stays where it is. */
export const inReadingOrder = (items: readonly Placed[]): readonly Placed[] => {
  const at = (item: Placed) => (item.kind === 'dimension' || item.kind === 'height' ? item.label.at : ([0, 0] as const))
  return [...items].sort((a, b) => at(a)[1] - at(b)[1] || at(a)[0] - at(b)[0])
}

/** What an item says and where: every box that words or a figure takes. */
export const labelsOf = (item: Placed): readonly { readonly text: string; readonly box: Box }[] => {
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
