import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import type { Day } from './day.ts'
import { example, extensions } from './examples.ts'

const { read, ordered } = example('heron-point-day')
const at = (room: string, window: string): string => `/rooms/${room}/windows/${window}`
const over = '/treatments/over'

/** The house at Heron Point from unpacking to hems that are even, with something wrong at five windows. All people are invented. */
export const heronPointDay: Day = {
  order: ordered,
  readings: read.readings,
  known: extensions,
  planner: createPlanner(plugins),
  from: '2026-12-08T08:00:00Z',
  tablets: [
    { device: 'tablet-1', who: 'Marta Quill' },
    { device: 'tablet-2', who: 'Odo Fennel' },
  ],
  otherwise: {
    // 1. The right hem rises 1/4 toward the wall: pins are set, and it is read again.
    [at('living-room', 'w1')]: {
      reads: { [`${over}/found/hemsRead/right/6`]: ['5/8 in'], [`${over}/found/hemsRead/right/10`]: ['3/4 in'] },
      answers: { 'drapery/hem-even': [{ way: 'drapery/way-hem-pins' }] },
      again: [
        ['drapery/hem-even', `${over}/found/hemsRead/right/6`, '1/2 in'],
        ['drapery/hem-even', `${over}/found/hemsRead/right/10`, '9/16 in'],
      ],
    },
    // 2. Four rings lack at the first count, which is two fewer than hang there; they are in the other box.
    [at('living-room', 'w2')]: {
      reads: { [`${over}/with/rod-and-ring/rings`]: [18, 18] },
      also: { 'drapery/drill': [{ at: `${over}/with/rod-and-ring/rings`, value: 22 }] },
    },
    // 3. Both panels are 1/2 short: the brackets go down, and as the floor falls by 1/4 they follow it. The left one was mistyped first.
    [at('living-room', 'w3')]: {
      reads: {
        [`${over}/panels/left/finishedLength`]: ['78 in'],
        [`${over}/panels/right/finishedLength`]: ['87 in'],
        // The hole at the left is at 88; the floor is 1/8 lower at the support.
        [`${over}/found/brackets/middle/floorToLevel`]: ['88 1/8 in'],
      },
      also: { 'drapery/measure-panels': [{ at: `${over}/panels/left/finishedLength`, value: '87 in' }] },
      answers: {
        'drapery/as-ordered': [{ way: 'drapery/way-brackets' }, { way: 'drapery/way-brackets' }],
        'drapery/marks-agree': [{ way: 'drapery/follow-floor' }, { way: 'drapery/follow-floor' }],
      },
    },
    // 4. The one panel is 5/8 short: the workroom is called, and the work at this window ends there.
    [at('dining-room', 'w1')]: {
      reads: { [`${over}/panels/only/finishedLength`]: ['85 3/8 in'] },
      answers: { 'drapery/as-ordered': [{ way: 'drapery/way-call' }] },
    },
    // 5. Ceiling, frame and floor disagree at the right bracket: the ceiling is followed. A later reading of the floor moves nothing.
    [at('dining-room', 'w2')]: {
      reads: {
        [`${over}/found/brackets/right/floorToHead`]: ['80 1/4 in'],
        [`${over}/found/brackets/right/floorToCeiling`]: ['102 1/8 in'],
        [`${over}/found/brackets/right/floorToLevel`]: ['87 3/8 in'],
      },
      answers: { 'drapery/marks-agree': [{ way: 'drapery/follow-ceiling' }] },
      also: { 'rod-and-ring/thread': [{ at: '/floor/right/y', value: '1/8 in' }] },
    },
    // Both tablets read one casing without having seen one another, and somebody decides.
    [at('bedroom', 'w1')]: {
      also: {
        'drapery/measure-window': [
          { at: '/walls/a/openings/o/casing/width', value: '48 1/8 in', other: true, unseen: true },
          { at: '/walls/a/openings/o/casing/width', value: '48 in' },
        ],
      },
    },
    // A reading is withdrawn: it was taken beside another window.
    [at('bedroom', 'w3')]: { also: { 'drapery/measure-window': [{ at: '/floor/left/y' }] } },
    // A level line from the left bracket's hole, 139 above a level floor.
    [at('stair-hall', 'w1')]: { reads: { [`${over}/found/brackets/middle/floorToLevel`]: ['139 in'] } },
    // The order itself does not fit beside the pier.
    [at('stair-hall', 'w2')]: {
      answers: { 'drapery/wall-fits': [{ reason: 'The household wants it without the right finial; agreed at the door' }] },
    },
    [at('study', 'w2')]: { reads: { '/walls/a/openings/o/casing/width': ['42 in'] } },
  },
}
