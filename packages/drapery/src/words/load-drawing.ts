import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** What the picture of loads says. */
export const loadDrawingWords = {
  'drapery/loads-steep-1': one('Heights are drawn as widths are.'),
  'drapery/loads-steep-2': one('The sag is drawn 2 times as steep as widths.'),
  'drapery/loads-steep-5': one('The sag is drawn 5 times as steep as widths.'),
  'drapery/loads-steep-10': one('The sag is drawn 10 times as steep as widths.'),
  'drapery/loads-steep-20': one('The sag is drawn 20 times as steep as widths.'),
  'drapery/loads-steep-50': one('The sag is drawn 50 times as steep as widths.'),
  'drapery/when-drawn-lowest': one('The rod at its lowest: the panels drawn.'),
  'drapery/when-stacked-lowest': one('The rod at its lowest: the panels open.'),
  'drapery/when-between-lowest': one('The rod at its lowest: the panels partly drawn.'),
  'drapery/bracket-holds-it': one('holds'),
  'drapery/bracket-over': one('carries more than it holds'),
  'drapery/bracket-lifts': one('the rod lifts out'),
  'drapery/bracket-not-known': one('not known whether it holds'),
  'drapery/sags-at-most': one('worst sag'),
  'drapery/sags-too-far': one('sags more than is allowed'),
} satisfies Words
