import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** Sentences of the checks: passing under the code itself, otherwise under code and verdict. */
export const checkWords = {
  'drapery/coverage': one('Closed, the drapery passes the casing by {left} on the left and {right} on the right.'),
  'drapery/coverage.fail': one(
    'Closed, the drapery stops {short} short of the casing on the {side}; expected to pass it.',
    'Have the rod width or its place corrected by the workroom before anything is marked.',
  ),
  'drapery/coverage.unknown': one(
    'Not known yet whether the drapery covers the casing.',
    'Measure the casing and the rod width.',
  ),
  'drapery/panel-width': one('The {panel} fills its share of the rod, {share}.'),
  'drapery/panel-width.warn': one(
    'The {panel} is {less} {way, select, short {short of} other {over}} its share of the rod, {share}.',
    'Within {off} it can be dressed; watch that the pair closes in the middle.',
  ),
  'drapery/panel-width.fail': one(
    'The {panel} is {less} short of its share of the rod, {share}; it may be over by {off} at most, and never short.',
    'Measure it again, first pleat to last. If it stays short, call the workroom: it would leave a gap.',
  ),
  'drapery/panel-width.unknown': one('Not known yet whether the panels fill the rod.'),
  'drapery/rod-height': one('The rod is as high as it was ordered: {worked} from the panels, {meant} by the order.'),
  'drapery/rod-height.fail': one(
    'The panels put the top of the rod at {worked}, the order at {meant}: {apart} apart, allowed {near}.',
    'The panels are {way, select, long {too long} other {too short}} by {apart}. {cause} Settle it with the workroom before anything is marked.',
  ),
  'drapery/rod-height.unknown': one('Not known yet whether the rod is as high as it was ordered.'),
  'drapery/rod-height.unsaid': one(
    'The order does not say how high the rod is meant to be, so its height cannot be checked another way.',
    'Ask the workroom, or ask the customer where the rod is meant to be: above the casing, or below the ceiling.',
  ),
  'drapery/hems-alike': one('The two hems hang alike: clearance {left} and {right}.'),
  'drapery/hems-alike.warn': one(
    'The two hems hang {apart} apart: clearance {left} on the left, {right} on the right; allowed {near}.{cause, select, lengths { The panels are {lengths} apart in length.} other {}}',
    'Set the pins of one panel so that the hems meet.',
  ),
  'drapery/hems-alike.fail': one(
    'The two hems would hang {apart} apart: clearance {left} on the left, {right} on the right; pins can take up {pins}.',
    'Measure both panels and their pins again. If they stay unlike, call the workroom: one panel must go back before anything is marked.',
  ),
  'drapery/hems-alike.unknown': one('Not known yet whether the two hems hang alike.'),
  'drapery/as-ordered': one('The {panel}, {size}: {measured}, ordered {ordered}; inside the tolerance.'),
  'drapery/as-ordered.unknown': one('Not known yet whether the panels are as ordered.'),
  'drapery/as-ordered.warn': one(
    'The {panel}, {size}: {measured} measured, {ordered} ordered, {off} {way, select, over {more} other {less}} than ordered.',
    'Reset the pins.',
  ),
  'drapery/as-ordered.fail': one(
    'The {panel}, {size}: {measured} measured, {ordered} ordered, {off} {way, select, over {more} other {less}} than ordered.',
    'Measure it again. If it stays so, call the workroom before anything is marked.',
  ),
  'drapery/return-held': one('{count, plural, one {The return is} other {Both returns are}} held at the wall.'),
  'drapery/return-held.unknown': one('Not known yet whether the returns are held at the wall.'),
  'drapery/return-held.warn': one(
    'The {side} return is {return}, and the order does not say what holds it at the wall.',
    'Ask the workroom: a wall angle, or no return at all.',
  ),
  'drapery/no-cause': one('No single allowance explains it.'),
  'drapery/several-causes': one('More than one allowance is as large, so it cannot be told which was forgotten or taken twice.'),
  'drapery/pin.forgotten': one('That is the pin setting: it may have been forgotten.'),
  'drapery/pin.twice': one('That is the pin setting: it may have been added twice.'),
  'drapery/eye-drop.forgotten': one('That is the drop from the rod to the hooks: it may have been forgotten.'),
  'drapery/eye-drop.twice': one('That is the drop from the rod to the hooks: it may have been taken off twice.'),
  'drapery/clearance.forgotten': one('That is the clearance: it may have been forgotten.'),
  'drapery/clearance.twice': one('That is the clearance: it may have been taken off twice.'),
} satisfies Words
