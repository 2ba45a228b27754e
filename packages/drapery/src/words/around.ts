import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** Sentences of the checks of what is around and of the cloth. */
export const aroundWords = {
  'drapery/panels-of-draw': one('{count, plural, one {One panel makes} other {# panels make}} {draw}, as ordered.'),
  'drapery/panels-of-draw.fail': one(
    'Unexpected {count, plural, one {one panel} other {# panels}} for {draw}; a pair has two that open apart, a one-way draw has one.',
    'Have the workroom correct the draw or the panels in the order.',
  ),
  'drapery/panels-of-draw.unknown': one('Not known yet whether the panels make up the draw.'),
  'drapery/widths-agree': one('The rod width and how far it passes the casing agree: {covers}.'),
  'drapery/widths-agree.fail': one(
    'By how far it passes the casing the drapery covers {covers}, by its rod width {width}: {apart} apart.',
    'Have the workroom say which of the two holds, before anything is marked.',
  ),
  'drapery/widths-agree.unknown': one('Not known yet whether the two ways to the rod width agree.'),
  'drapery/obstacle': one('The hardware is {apart} clear of the {name, select, none {{thing}} other {{thing} ({name})}}.'),
  'drapery/obstacle.fail': one(
    'The hardware {inside, select, yes {would stand in} other {comes within {apart} of}} the {name, select, none {{thing}} other {{thing} ({name})}}{away, select, yes {; it must keep {keep} away} other {}}.',
    'Settle with the workroom where rod or bracket may go, or have the thing moved by whoever may do it, before anything is marked.',
  ),
  'drapery/obstacle.unknown': one(
    'Not known yet whether the hardware is clear of what is on the wall.',
    'Measure what is on the wall: its left and lowest edge, its width, its height.',
  ),
  'drapery/covered': one('The cloth leaves the {name, select, none {{thing}} other {{thing} ({name})}} free.'),
  'drapery/covered.warn': one(
    'The cloth hangs over the {name, select, none {{thing}} other {{thing} ({name})}}.',
    'Ask the customer, and the workroom; a detector or a sprinkler head must stay free by local code.',
  ),
  'drapery/covered.unknown': one('Not known yet whether the cloth covers anything that must stay free.'),
  'drapery/heater': one('The cloth is {apart} from the {thing}.'),
  'drapery/heater.warn': one(
    'The cloth {over, select, yes {hangs over} other {comes within {apart} of}} the {thing}; {keep} is advised.',
    'It blocks the heat. Its maker’s instructions rule; ask the customer and the workroom.',
  ),
  'drapery/heater.fail': one(
    'The cloth {over, select, yes {hangs over} other {comes within {apart} of}} the electric heater; keep {keep} away, and never hang across it.',
    'It can start although it seems off. Do not hang it so: shorter panels or another place, by its maker’s instructions and local codes.',
  ),
  'drapery/heater.unknown': one('Not known yet how near the cloth comes to a heater.'),
  'drapery/sash': one('What swings in passes {room} under the rings.'),
  'drapery/sash.fail': one(
    'What swings in reaches {top} up; it lacks {room} to pass under the rings.',
    'Raise the rod, or let the workroom choose brackets of more projection and draw the drapery first; settle it before anything is marked.',
  ),
  'drapery/sash.unknown': one(
    'Not known yet whether what swings in passes under the rod.',
    'Open it and measure how high it reaches into the room.',
  ),
  'drapery/stool': one('The cloth passes {room} in front of the stool.'),
  'drapery/stool.warn': one(
    'The cloth passes only {room} in front of the stool; {least} is wanted.',
    'It will brush the stool. Brackets of more projection help.',
  ),
  'drapery/stool.fail': one(
    'The stool stands {room} further out than the cloth hangs.',
    'The cloth would lie on it. Brackets of more projection, or a hem above the stool: settle it with the workroom before anything is marked.',
  ),
  'drapery/stool.unknown': one('Not known yet whether the cloth passes the stool.'),
  'drapery/head-room': one(
    'There is room overhead: {room} more than the {what, select, finial {finials} other {rod, lifted by {lift},}} need.',
  ),
  'drapery/head-room.fail': one(
    'The {what, select, finial {finials need} other {rod, lifted {lift} into its brackets, needs}} {room} more than there is under the {under, select, crown {crown} other {ceiling}}.',
    'Lower the rod, take smaller finials, or use brackets that the rod slides into: settle it with the workroom before anything is marked.',
  ),
  'drapery/head-room.unknown': one(
    'Not known yet whether rod and finials fit under the ceiling.',
    'Measure the ceiling over the rod.',
  ),
  'drapery/casing-edge': one('Every bracket lies wholly on the casing or wholly on the wall.'),
  'drapery/casing-edge.fail': one(
    'The {side} bracket would lie half on the casing.',
    'It rocks there, and its screws split the edge. Move the rod’s end or its height, or pack the plate out: settle it with the workroom before anything is marked.',
  ),
  'drapery/casing-edge.unknown': one('Not known yet whether the brackets lie clear of the casing’s edge.'),
  'drapery/behind-wall': one('Every bracket finds wood behind the wall.'),
  'drapery/behind-wall.warn': one(
    'Not every bracket finds wood behind the wall; the first that does not finds {behind}.',
    'All fasteners go in before anything hangs, chosen by their maker’s listing for this wall and load.',
  ),
  'drapery/behind-wall.unknown': one(
    'Not known yet what is behind the wall where the brackets go.',
    'Find out before drilling: knock, probe, or use a detector.',
  ),
  'drapery/floor-read': one('The floor was read at {count, plural, one {one point} other {# points}}.'),
  'drapery/floor-read.fail': one(
    'Two readings of the floor {x} from the casing’s left edge disagree.',
    'Read it again there, and keep one.',
  ),
  'drapery/floor-read.unknown': one(
    'The floor was not read here; it is taken for level.',
    'Measure it at both ends and in the middle, from a level line.',
  ),
  'drapery/finished-floor': one('Heights were taken from the finished floor.'),
  'drapery/finished-floor.warn': one(
    'The floor is not finished, or the tape stood on a subfloor.',
    'The hem will be wrong by what is laid on it. Ask the workroom what thickness was allowed for.',
  ),
  'drapery/finished-floor.unknown': one('Not known yet which floor was measured from.'),
  'drapery/mount.unknown': one(
    'The brackets are ordered {mount}. Heights and places are worked out as on a wall.',
    'Work by the hardware maker’s instructions where they differ.',
  ),
  'drapery/mount': one('Where the brackets are fixed is known.'),
  'drapery/rod-needed': one('rod needed, end to end'),
  'drapery/rod-as-cut': one('rod as cut'),
  'drapery/rod-over': one('rod to spare'),
  'drapery/splice-apart': one('splice to the nearest support'),
  'drapery/span-between': one('bracket to bracket'),
  'drapery/bracket-to-bracket': one('bracket to bracket'),
  'drapery/wall-fits': one('The hardware fits the wall: {left} is left over on the left, {right} on the right.'),
  'drapery/wall-fits.fail': one(
    'The {side} end of the hardware needs {short} more wall than the {space} there is.',
    'A shorter finial or end, or the rod moved or cut: settle it with the workroom before anything is marked.',
  ),
  'drapery/wall-fits.unknown': one(
    'Not known yet whether the hardware fits the wall.',
    'Measure the free wall on both sides, at the height of the rod.',
  ),
  'drapery/rod-length': one('The rod is long enough: {cut} for {needed} needed.'),
  'drapery/rod-length.warn': one(
    'The rod is {off} longer than the {needed} that the plan needs.',
    'Cut it, or its ends stand further out than planned.',
  ),
  'drapery/rod-length.fail': one(
    'The rod is cut to {cut}; {needed} is needed, {off} more.',
    'It would pinch what parks at its ends, or not reach its brackets. Call the workroom before anything is marked.',
  ),
  'drapery/rod-length.unknown': one('Not known yet whether the rod is long enough.'),
  'drapery/splice-held': one('The splice is {apart} from a support.'),
  'drapery/splice-held.fail': one(
    'The splice is {apart} from the nearest support; {near} at most.',
    'A splice carries no load by itself. Put a support at it, or turn the rod end for end, before anything is marked.',
  ),
  'drapery/splice-held.unknown': one('Not known yet whether the splice is held.'),
  'drapery/span': one('From bracket to bracket it is {widest} at most; the rod may span {most}.'),
  'drapery/span.fail': one(
    'From bracket to bracket it is {widest}, {over} more than the {most} that its maker allows.',
    'It would sag. Add a support, before anything is marked.',
  ),
  'drapery/span.unknown': one('Not known yet whether the rod spans too far.'),
  'drapery/around-corner': one(
    '{count, plural, =0 {The drapery stays on one wall.} one {The drapery turns a corner of {angles}; along the rod it covers {rod}.} other {The drapery turns # corners of {angles}; along the rod it covers {rod}.}}',
  ),
  'drapery/around-corner.unknown': one(
    'Not known yet how the drapery turns the corner.',
    'Measure the angle between the walls, seen from the room, and where the walls end; both ends of the rod must stand equally far off the wall.',
  ),
  'drapery/layers': one('The layers hang {apart} in front of one another.'),
  'drapery/layers.fail': one(
    'A layer hangs {apart} in front of the one behind it; {near} is needed.',
    'They would brush and catch. Brackets of more projection for the outer layer: settle it with the workroom before anything is marked.',
  ),
  'drapery/layers.unknown': one('Not known yet whether the layers hang clear of one another.'),
  'drapery/break': one('The cloth lies {lies} on the floor, {how, select, agreed {as agreed} other {and hangs still}}.'),
  'drapery/break.warn': one(
    'The cloth would lie {lies} on the floor and be drawn over it.',
    'It wears and soils. Ask the customer, or let pins and rod lift it.',
  ),
  'drapery/break.unknown': one('Not known yet whether the cloth lies on the floor.'),
  'drapery/pin-in-heading': one('All pins sit in the heading.'),
  'drapery/pin-in-heading.fail': one(
    'The pins of the {panel} are set {pin} deep, its heading is {height} high.',
    'A pin below the heading tears the cloth. Measure it again; then call the workroom.',
  ),
  'drapery/pin-in-heading.unknown': one('Not known yet whether the pins sit in the heading.'),
  'drapery/pins-alike': one('The pins of all panels are set alike, {first}.'),
  'drapery/pins-alike.warn': one(
    'The pins of the {panel} are set {far} deep, others {first}: {apart} apart, allowed {near}.',
    'Set them alike, unless the panels differ in length.',
  ),
  'drapery/pins-alike.unknown': one('Not known yet whether the pins are set alike.'),
  'drapery/pleat-spaces': one('The spaces between pleats are {widest} at most.'),
  'drapery/pleat-spaces.warn': one(
    '{how, select, wide {The spaces between pleats are up to {widest} wide, more than {most}.} other {The spaces of the two panels differ by {apart}, more than {agree}.}}',
    '{how, select, wide {They may sag between the hooks.} other {The panels will look unlike when they are drawn.}} Ask the workroom.',
  ),
  'drapery/pleat-spaces.unknown': one('Not known yet how wide the spaces between pleats are.'),
  'drapery/settling': one('The cloth settles by {settles}, less than its clearance of {clearance}.'),
  'drapery/settling.warn': one(
    'The cloth will settle by {settles}; it clears the floor by {clearance}.',
    'Have it hang before it is hemmed, or agree on a day to come back and measure again.',
  ),
  'drapery/settling.unknown': one('Not known yet whether the cloth settles onto the floor.'),
  'drapery/lift': one('The heaviest panel weighs {mass}.'),
  'drapery/lift.warn': one(
    'The heaviest panel weighs {mass}; one person should lift {most} at most.',
    'Lift it with two people, and hang it in two stages.',
  ),
  'drapery/lift.unknown': one('Not known yet what the panels weigh.'),
  'drapery/ladder': one('The rod is {height} above the floor.'),
  'drapery/ladder.warn': one(
    'The rod is {height} above the floor, more than {most}.',
    'Work with two people, or from a tower. Follow local codes.',
  ),
  'drapery/ladder.unknown': one('Not known yet how high the work is.'),
  'drapery/repeat-received': one('The repeat of the cloth is as ordered, {ordered}.'),
  'drapery/repeat-received.warn': one(
    'The repeat of the cloth that came is {received}, ordered {ordered}.',
    'Ask the workroom how the panels were cut: patterns may not meet.',
  ),
  'drapery/repeat-received.unknown': one('Not known yet whether the repeat is as ordered.'),
  'drapery/ceiling-read': one('The ceiling was read at {count, plural, one {one point} other {# points}}.'),
  'drapery/ceiling-read.warn': one(
    'The rod is ordered from the ceiling, and the ceiling was read at {count, plural, =0 {no point} one {one point} other {# points}} over this window.',
    'Ceilings are seldom level. Measure it over both brackets and in the middle.',
  ),
  'drapery/ceiling-read.unknown': one('Not known yet how level the ceiling is.'),
  'drapery/room-rods': one('The rods of this room are level with one another.'),
  'drapery/room-rods.warn': one(
    'The rods of this room differ by {apart}, allowed {near}.',
    'The eye compares them. Ask the workroom whether it is meant.',
  ),
  'drapery/room-rods.unknown': one('Not known yet whether the rods of this room are level with one another.'),
  'drapery/room-hems': one('The hems of this room are level with one another.'),
  'drapery/room-hems.warn': one(
    'The hems of this room differ by {apart}, allowed {near}.',
    'Level hems over a floor that falls, or even gaps over the floor: choose one for the whole room, and set the pins.',
  ),
  'drapery/room-hems.unknown': one('Not known yet whether the hems of this room are level with one another.'),
  'drapery/room-patterns': one('The pattern begins at one height in this room.'),
  'drapery/room-patterns.warn': one(
    'The pattern of one fabric begins at heights that differ by {apart} in this room, allowed {near}.',
    'It shows from across the room. Ask the workroom before it is hung.',
  ),
  'drapery/room-patterns.unknown': one('Not known yet whether the pattern begins at one height in this room.'),
  'drapery/bag-labels': one('All {count} bags have labels of their own.'),
  'drapery/bag-labels.fail': one(
    'Two bags are labelled “{bag}”.',
    'Measure what is in them and label them anew before anything is hung.',
  ),
  'drapery/bag-labels.unknown': one('Not known yet whether every bag has a label of its own.'),
} satisfies Words
