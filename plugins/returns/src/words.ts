import type { Words } from '@evenhem/plugin'
import { es } from './words-es.ts'

const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

const en = {
  'returns/hole': one('wall angle'),
  'returns/hole-left': one('left wall angle'),
  'returns/hole-right': one('right wall angle'),
  'returns/eye': one('screw eye'),
  'returns/eye-left': one('left screw eye'),
  'returns/eye-right': one('right screw eye'),
  'returns/mark': one(
    'Pencil the {count, plural, one {cross} other {crosses}} of the {by, select, eye {{count, plural, one {screw eye} other {screw eyes}}} angle {{count, plural, one {wall angle} other {wall angles}}} other {wall angle and the screw eye}}.',
  ),
  'returns/mark.why': one('Behind the ring that parks outside the bracket, so that the last hook bears level with the others.'),
  'returns/mark.done': one('The returns are marked'),
  'returns/fix': one(
    'Drill and screw the {by, select, eye {{count, plural, one {screw eye} other {screw eyes}}} angle {{count, plural, one {wall angle} other {wall angles}}} other {wall angle and the screw eye}}.',
  ),
  'returns/fix.why': one(
    'The hem is proven, so the height of its hook is. {count, plural, one {This is the last hole} other {These are the last holes}}.',
  ),
  'returns/fix.done': one('They are on'),
  'returns/hook': one('Fasten {count, plural, one {the return} other {both returns}} to the wall.'),
  'returns/hook.why': one('It closes the side to the wall. The last hook there needs no ring.'),
  'returns/hook.done': one('Returns are fastened'),
  'returns/part-angle': one('wall angle'),
  'returns/part-eye': one('screw eye'),
  'returns/entry': one('Returns: {count}, to the wall'),
} satisfies Words

/** A code that these words are for. */
export type ReturnsCode = keyof typeof en
export const words: Readonly<Record<string, Words>> = { en, es }
