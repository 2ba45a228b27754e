import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** Words of checking in what came. */
export const checkInWords = {
  'drapery/rod-piece': one('piece of the rod'),
  'drapery/missing': one('missing'),
  'drapery/needed': one('needed'),
  'drapery/counted': one('counted'),
  'drapery/came': one(
    'All that is needed came: {kinds, plural, one {# kind of part} other {# kinds of parts}} counted{over, plural, =0 {.} one {, {spare} more than needed of: {part}.} other {, of # kinds more than needed.}}',
  ),
  'drapery/came.unknown': one(
    '{left, plural, one {One kind of part is not counted yet: {part}.} other {# kinds of parts are not counted yet, the first: {part}.}}',
    'Count the rest before anything is marked.',
  ),
  'drapery/came.fail': one(
    'Missing: {missing} × {part}. {came} came, {needed} are needed.',
    'Count again, and look through the boxes of the other windows. What is missing must be there before anything is marked.',
  ),
  'drapery/came.called': one(
    'Missing: {missing} × {part}. {came} came, {needed} are needed. The workroom is called.',
    'Nothing is marked until it is there, or until somebody gives a reason to go on.',
  ),
  'drapery/way-spare': one('Take {count} × {part} from the other layer, which has {spare} to spare.'),
  'drapery/as-ordered.go-on': one(
    'The {panel}, {size}: {measured} measured, {ordered} ordered; it was decided to go on with it.',
  ),
  'drapery/as-ordered.reset-pins': one('The {panel}, {size}: {measured} measured, {ordered} ordered; the pins are set for it.'),
  'drapery/as-ordered.move-the-brackets': one(
    'The {panel}, {size}: {measured} measured, {ordered} ordered; the brackets follow it.',
  ),
  'drapery/as-ordered.call-the-workroom': one(
    'The {panel}, {size}: {measured} measured, {ordered} ordered. The workroom is called.',
    'Nothing is marked until it has answered, or until somebody gives a reason to go on.',
  ),
  'drapery/pins-alike.taken': one('The pins are set {apart} apart, which takes up what the panels differ in length.'),
  'drapery/hems-alike.go-on': one('The two hems hang {apart} apart; it was decided to go on with that.'),
  'drapery/hems-alike.called': one(
    'The two hems would hang {apart} apart: clearance {left} on the left, {right} on the right. The workroom is called.',
    'Nothing is marked until it has answered, or until somebody gives a reason to go on.',
  ),
  'drapery/opening-read': one('At the opening, {size}: {measured}, ordered {ordered}; inside the tolerance.'),
  'drapery/opening-read.unknown': one('Not known yet whether the openings are as ordered.'),
  'drapery/opening-read.warn': one(
    'At the opening, {size}: {measured} measured, {ordered} ordered, {off} {way, select, over {more} other {less}} than ordered.',
    'Measure it again. The plan follows what was measured; the panels and the rod were made for what was ordered.',
  ),
  'drapery/opening-read.go-on': one(
    'At the opening, {size}: {measured} measured, {ordered} ordered; it was decided to go on with it.',
  ),
  'drapery/opening-read.called': one(
    'At the opening, {size}: {measured} measured, {ordered} ordered. The workroom is called.',
    'Nothing is marked until it has answered, or until somebody gives a reason to go on.',
  ),
  'drapery/panels-swapped': one('Each panel came in its own bag.'),
  'drapery/panels-swapped.fail': one(
    'The two panels came in each other’s bags: each measures as the other was ordered.',
    'Hang each at the other side: record the swap, and change the labels of the bags.',
  ),
  'drapery/panels-swapped.called': one(
    'The two panels came in each other’s bags: each measures as the other was ordered. The workroom is called.',
    'Nothing is marked until it has answered, or until somebody gives a reason to go on.',
  ),
  'drapery/panels-swapped.unknown': one('Not known yet whether each panel came in its own bag.'),
  'drapery/way-swap': one('Swap the panels: each takes the readings of the other.'),
  'drapery/way-pins': one(
    '{how, select, one {Reset the pins of the {panel} to {pin}} pair {Reset the pins to {left} on the left and {right} on the right} other {Reset the pins of {count} panels, between {least} and {most}}}{move, select, up {, with the brackets {by} higher than ordered} down {, with the brackets {by} lower than ordered} other {}}: the hems then hang as ordered.',
  ),
  'drapery/way-brackets': one(
    'Put the brackets {by} {move, select, up {higher} other {lower}} than ordered, as the plan does for panels of this length.',
  ),
  'drapery/way-go-on': one('Go on with it as it is.'),
  'drapery/way-call': one('Stop and call the workroom.'),
} satisfies Words
