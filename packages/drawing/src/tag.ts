import type { Length } from '@evenhem/length'
import { figureOf, type Glyphs, middle, quantityOf, type Sign, withWords } from './figure.ts'
import type { Figure } from './marks.ts'
import type { Tag } from './scene.ts'
import type { Voice } from './setting.ts'
import { type Box, boxAt, joined } from './space.ts'
import { aside, isKnown, weighed } from './speech.ts'
import type { Type, Weight } from './text.ts'

/** Parts of a figure's size, read off the concept's tags. */
const tall = 1.36
const room = { plain: 0.25, tape: 0.49, tapeEnd: 0.37, off: 0.62, decided: 0.62 }
const hook = { width: 0.19, above: 0.06, below: 0.2 }

interface Dress {
  readonly block: Box
  readonly hook?: Box
  readonly number?: Tag['number']
}
const onBase = (glyphs: Glyphs, x: number): Tag['number'] => ({ glyphs, at: [x, middle * glyphs.size] })

/** Number in the middle of a block, with the same room at both ends. */
function blocked(glyphs: Glyphs, ends: number): Dress {
  const { size, width } = glyphs
  return { block: boxAt([0, 0], width + 2 * ends * size, tall * size), number: onBase(glyphs, -width / 2) }
}

/** On the blade of a tape: its hook at the left end stands a little below. */
function taped(glyphs: Glyphs, start: number, end: number): Dress {
  const { size, width } = glyphs
  const block = boxAt([0, 0], width + (start + end) * size, tall * size)
  const at = {
    x: block.x,
    y: block.y - hook.above * size,
    width: hook.width * size,
    height: block.height + (hook.above + hook.below) * size,
  }
  return { block, hook: at, number: onBase(glyphs, block.x + start * size) }
}

function dressOf(figure: Figure, type: Type, voice: Voice): Dress {
  if (!isKnown(figure) || figure.state === 'unknown') return { block: boxAt([0, 0], 2.1 * type.size, tall * type.size) }
  if (figure.mass !== undefined) return blocked(quantityOf(weighed(voice, figure.mass), { ...type, sign: '=' }), room.plain)
  const bold = Math.max(type.weight, 600) as Weight
  const written = voice.write(figure.value as Length)
  // A number that the tape rounds is about so much, however it is known; its minus says more.
  const signed = (sign?: Sign): Sign | undefined => (voice.tellsRounding && written.off !== 0 && !written.negative ? '≈' : sign)
  const set = (sign?: Sign, weight: Weight = type.weight): Glyphs =>
    figureOf(written, { size: type.size, weight, sign: signed(sign) })
  switch (figure.state) {
    case 'ordered':
      return blocked(set(), room.plain)
    case 'computed':
      return blocked(set('='), room.plain)
    case 'measured':
      return taped(set(undefined, bold), room.tape, room.tapeEnd)
    case 'off':
      return taped(set(undefined, bold), room.off + 0.1, room.off)
    case 'decided':
      return blocked(set(undefined, bold), room.decided)
  }
}

/** The second number, raised beside the block: the signed difference, what was set aside, or what is allowed. */
function besideOf(figure: Figure, type: Type, block: Box, voice: Voice): Tag['beside'] {
  const at = [block.x + block.width + 0.5 * type.size, -0.45 * type.size] as const
  if (figure.most !== undefined && isKnown(figure)) return { what: 'most', at, glyphs: mostOf(figure.most, type, voice) }
  if (figure.off === undefined || figure.value === undefined) return undefined
  if (figure.state === 'off') {
    const written = voice.write(Math.abs(figure.off) as Length)
    return {
      what: 'off',
      at,
      glyphs: figureOf(written, { size: 0.91 * type.size, weight: 700, sign: figure.off < 0 ? '−' : '+' }),
    }
  }
  if (figure.state !== 'decided') return undefined
  return { what: 'aside', at, glyphs: figureOf(voice.write(aside(figure) as Length), { size: 0.73 * type.size, weight: 500 }) }
}

const mostOf = (most: Length, { size }: Type, voice: Voice): Glyphs =>
  withWords(voice.say('drawing/most'), voice.write(most), { size: 0.73 * size, weight: 500 })

const besideBox = ({ glyphs, at: [x, y] }: NonNullable<Tag['beside']>): Box => ({
  x,
  y: y - 0.75 * glyphs.size,
  width: glyphs.width + 0.1 * glyphs.size,
  height: 0.85 * glyphs.size,
})

/** A figure in the dress of its state, around the middle of its block. */
export function tagOf(figure: Figure, type: Type, voice: Voice): Tag {
  const dress = dressOf(figure, type, voice)
  const beside = besideOf(figure, type, dress.block, voice)
  const boxes = [dress.block, ...(dress.hook ? [dress.hook] : []), ...(beside ? [besideBox(beside)] : [])]
  const state = isKnown(figure) ? figure.state : 'unknown'
  return { state, box: joined(...boxes), ...dress, ...(beside ? { beside } : {}) }
}
