import type { Words } from '@evenhem/plugin'

/** Words of overlaps, carriers and ceilings. */
const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })

export const rodWords = {
  'drapery/carrier-drop': one('carrier drop'),
  'drapery/carriers-needed': one('carriers needed'),
  'drapery/hooks-in-master': one('hooks in the master carrier'),
  'drapery/hooks-in-end': one('hooks in the end bracket'),
  'drapery/half-overlap': one('half the overlap'),
  'drapery/overlap-ordered': one('overlap'),
  'drapery/share-overlapped': one('its place on the rod and half the overlap'),
  'drapery/ceiling-drop': one('ceiling to where the hooks bear'),
  'drapery/bears': one('where the hooks bear'),
  'drapery/half-covered': one('half of what is covered'),
  'drapery/from-wall': one('from the wall'),
  'drapery/hole-out': one('hole from the line of the hooks'),
  'drapery/at-left': one('at the left'),
  'drapery/at-middle': one('in the middle'),
  'drapery/at-right': one('at the right'),
  'drapery/fold-room': one('room behind the carriers'),
  'drapery/kept-free': one('kept free at the wall'),
  'drapery/space-most': one('widest space that folds back'),
  'drapery/twice': one('twice'),
  'drapery/return-fits': one('The {side} return is {return}, the projection {projection}: it reaches the wall.'),
  'drapery/return-fits.fail': one(
    'The {side} return is {return}, {less} narrower than the projection of {projection}; at most {short} is allowed.',
    'It would pull the last ring or carrier off its corner. Call the workroom, or use a bracket of less projection, before anything is drilled.',
  ),
  'drapery/return-fits.warn': one(
    'The {side} return is {return}, {less} wider than the projection of {projection}; a return more than {over} wider bulges.',
    'Look at it when it hangs; what holds it can take the edge further back.',
  ),
  'drapery/return-fits.unknown': one('Not known yet whether the returns fit the projection.'),
  'drapery/corner': one('corner'),
  'drapery/set-back': one('set back at the corner'),
  'drapery/set-back-rule': one('projection by the tangent of half the angle'),
  'drapery/corner-angle': one('angle of the corner'),
  'drapery/corner-room-left': one('left over beside the corner'),
  'drapery/angle-unknown': one('angle not measured'),
  'drapery/from-left-corner': one('from the left corner'),
  'drapery/from-right-corner': one('from the right corner'),
  'drapery/corner-room': one('Every bracket stands clear of where the rod turns; the nearest by {room}.'),
  'drapery/corner-room.fail': one(
    'A bracket stands {room} inside the corner, where the rod has turned already.',
    'Move it away from the corner by that much at least, before anything is marked.',
  ),
  'drapery/corner-room.unknown': one('Not known yet whether the brackets clear the corners.'),
  'drapery/overlap': one('The overlap of {ordered} is what the arms make.'),
  'drapery/overlap.fail': one(
    '{arms, select, yes {An overlap of {ordered} is ordered; the arms make {made}.} other {An overlap of {ordered} is ordered on a rod without arms.}}',
    '{arms, select, yes {The panels would be {apart} too {way, select, more {wide} other {narrow}} between them: ask the workroom which is right.} other {The leading edges can only meet edge to edge; the panels are {apart} too wide between them. Ask the workroom.}}',
  ),
  'drapery/overlap.unknown': one('Not known yet how far the leading edges overlap.'),
  'drapery/ceiling-clears': one(
    'Under the ceiling the hems clear {left} at the left, {middle} in the middle, {right} at the right; {clearance} is ordered.',
  ),
  'drapery/ceiling-clears.warn': one(
    'Under the ceiling the hems clear {left}, {middle} and {right} from left to right; {where} that is {off} too {way, select, high {high} other {low}}.',
    'Pins take that up; the brackets stay on the ceiling.',
  ),
  'drapery/ceiling-clears.fail': one(
    'Under the ceiling the hems clear {left}, {middle} and {right} from left to right where {clearance} is ordered; {where} that is {off} too {way, select, high {high} other {low}}.',
    'It is more than pins take up: shims under a bracket, or the panel goes back. Call the workroom before it is hung.',
  ),
  'drapery/ceiling-clears.unknown': one('Not known yet what the hems clear under the ceiling.'),
} satisfies Words
