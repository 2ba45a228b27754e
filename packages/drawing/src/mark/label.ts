import { element, escaped, rectOf, strokeData } from '../element.ts'
import type { Glyphs } from '../figure.ts'
import type { Label, Tag } from '../scene.ts'
import { type At, middleOf, moved } from '../space.ts'
import type { Ink } from './table.ts'
import { wordsSvg } from './words.ts'

/** A figure's glyphs from a place on its baseline. */
export const glyphsSvg = ({ glyphs }: Glyphs, [x, y]: At): string =>
  glyphs
    .map((glyph) =>
      glyph.kind === 'text'
        ? element(
            'text',
            { class: glyph.part, x: x + glyph.x, y: y + glyph.y, 'font-size': glyph.size, 'font-weight': glyph.weight },
            escaped(glyph.text),
          )
        : element('path', {
            class: 'slash',
            'stroke-width': glyph.thickness,
            d: strokeData([
              [
                [x + glyph.from[0], y + glyph.from[1]],
                [x + glyph.to[0], y + glyph.to[1]],
              ],
            ]),
          }),
    )
    .join('')

const unknownSign = (tag: Tag, [x, y]: At): string => {
  const size = tag.block.height / 1.36
  return element(
    'text',
    { class: 'question', x, y: y + 0.335 * size, 'font-size': size, 'font-weight': 700, 'text-anchor': 'middle' },
    escaped('?'),
  )
}

function besideSvg(beside: NonNullable<Tag['beside']>, [x, y]: At): string {
  const at: At = [x + beside.at[0], y + beside.at[1]]
  const middle = at[1] - 0.335 * beside.glyphs.size
  const strike =
    beside.what === 'aside'
      ? element('path', {
          class: 'strike',
          d: strokeData([
            [
              [at[0] - 0.1 * beside.glyphs.size, middle],
              [at[0] + beside.glyphs.width + 0.1 * beside.glyphs.size, middle],
            ],
          ]),
        })
      : ''
  return element('g', { class: beside.what }, glyphsSvg(beside.glyphs, at) + strike)
}

/** A number in the dress of its state. */
export function tagSvg(tag: Tag, at: At): string {
  const block = rectOf(moved(tag.block, at), {
    class: 'block',
    rx: tag.state === 'unknown' ? 0.1 * tag.block.height : tag.hook ? 0.08 * tag.block.height : undefined,
  })
  const hook = tag.hook ? rectOf(moved(tag.hook, at), { class: 'hook' }) : ''
  const number = tag.number
    ? glyphsSvg(tag.number.glyphs, [at[0] + tag.number.at[0], at[1] + tag.number.at[1]])
    : unknownSign(tag, at)
  return block + hook + number + (tag.beside ? besideSvg(tag.beside, at) : '')
}

/** The box of what is to be pencilled, with its cross before the number. */
function frameSvg({ frame, tag, at, captions }: Label): string {
  if (!frame) return ''
  // Beside a caption of two rows there is no room for it: then it stands before the number.
  const isLow = captions.length > 1
  const arm = 0.15 * (isLow ? 1.5 * tag.block.height : frame.height)
  const [x, y]: At = [frame.x + 2 * arm, middleOf(isLow ? moved(tag.block, at) : frame)[1]]
  const fits = x + arm < at[0] + tag.block.x
  return (
    rectOf(frame, { class: 'frame-box', rx: 0.09 * frame.height }) +
    (fits
      ? element('path', {
          class: 'cross',
          d: strokeData([
            [
              [x - arm, y],
              [x + arm, y],
            ],
            [
              [x, y - arm],
              [x, y + arm],
            ],
          ]),
        })
      : '')
  )
}

/** To touch, a figure is a button that knows its place; in a picture to look at, the picture's own words say it. */
const behaviourOf = ({ figure, touched, words }: Label): Readonly<Record<string, string>> => ({
  tabindex: '0',
  role: 'button',
  'aria-pressed': touched ? 'true' : 'false',
  'data-of': figure.of,
  'aria-label': words,
})

/** What a figure's line and label are drawn in. */
export function figureSvg(label: Label, lines: string, { interactive }: Ink): string {
  const names = ['figure', label.tag.state, label.role, label.touched ? 'touched' : ''].filter((name) => name !== '').join(' ')
  const ring = label.touched && !label.frame ? rectOf(label.box, { class: 'chosen', rx: 0.1 * label.tag.block.height }) : ''
  const target = interactive ? rectOf(label.touch, { class: 'touch' }) : ''
  return element(
    'g',
    { class: names, ...(interactive ? behaviourOf(label) : {}) },
    lines +
      frameSvg(label) +
      ring +
      tagSvg(label.tag, label.at) +
      label.captions.map((words) => wordsSvg(words, 'caption')).join('') +
      target,
  )
}
