import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { createPlanner } from '@evenhem/planner'
import { plugins } from '@evenhem/plugins'
import type { Aside, Day } from './day.ts'
import { example, extensions } from './examples.ts'

const folder = new URL('../../schema/examples/heron-point-day/', import.meta.url)
const { read, ordered } = example('heron-point-day')
const at = (room: string, window: string): string => `/rooms/${room}/windows/${window}`
const over = '/treatments/over'

/** Photos that lie beside the log, drawn by program, by what they show. */
const photos = {
  before: '02b2265f8cd36f8ebe0cbe0e2b43bec59cc473e95286765f325fb287a03effcf',
  closed: 'a3cb1468767e9316357118dbb070c1df44337fd520c71edfb7865bdb9a509e0d',
  chipped: 'aeca374a113756d802b9f9f1cefdf3743534521c726e1fd23a7db6e6952fa846',
}
const photo = (name: keyof typeof photos, shows: string, of: string): readonly Aside[] => [
  { at: `/found/photos/${photos[name]}`, value: shows },
  { at: `/found/photoOf/${photos[name]}`, value: of },
]
/** What is left to mend, a member after the other. */
const point = (id: string, members: Readonly<Record<string, unknown>>): readonly Aside[] =>
  Object.entries(members).map(([member, value]) => ({ at: `/with/punch-list/points/${id}/${member}`, value }))

/** A line as a hand writes it: waves of a pen. */
const stroke = (from: number, waves: number): readonly number[] =>
  Array.from({ length: 12 * waves }, (_, i) => [from + i * 0.006, 0.55 - 0.25 * Math.sin(i / 2) * (1 - i / (14 * waves))])
    .flat()
    .map((share) => Math.round(share * 1000) / 1000)

/** The house at Heron Point from unpacking to hems that are even, with something wrong at five windows. All people are invented. */
export const heronPointDay: Day = {
  order: ordered,
  readings: read.readings,
  known: extensions,
  planner: createPlanner(plugins),
  from: '2026-12-08T08:00:00Z',
  hash: createHash('sha256')
    .update(readFileSync(new URL('job.json', folder)))
    .digest('hex'),
  signed: [
    { role: 'installer', name: 'Marta Quill', strokes: [stroke(0.1, 5), stroke(0.45, 3)] },
    {
      role: 'customer',
      name: 'The household at Heron Point',
      accepts: 'with open points',
      strokes: [stroke(0.12, 4), stroke(0.4, 6), stroke(0.75, 2)],
      left: 'two rings and one hook',
    },
  ],
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
      also: {
        'drapery/unpack': photo('before', 'The wall before the work', 'before'),
        'drapery/hand-over': photo('closed', 'The pair, closed', 'closed'),
      },
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
      also: {
        'drapery/unpack': point('p001', {
          what: 'The panel is short and goes back',
          cause: 'made',
          owner: 'workroom',
          by: '2026-12-18',
        }),
      },
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
        // The painter's work, shown by a photo with an arrow on it.
        'drapery/set-up': [
          ...photo('chipped', 'Paint chipped beside the casing', 'detail'),
          { at: `/found/photoMarks/${photos.chipped}/m1`, value: { kind: 'arrow', x: 0.7, y: 0.38, toX: 0.82, toY: 0.52 } },
          ...point('p001', {
            what: 'Paint chipped beside the casing',
            cause: 'wall',
            owner: 'other trade',
            trade: 'painter',
            by: '2026-12-15',
            photo: photos.chipped,
          }),
        ],
        // Somebody could be hurt: mended at once, and looked at again before the hand-over.
        'drapery/hang': point('p002', {
          what: 'The right bracket can be moved by hand',
          unsafe: true,
          owner: 'installer',
          by: '2026-12-08',
        }),
        'drapery/all-screws': point('p002', { state: 'looked at' }),
        'drapery/measure-window': [
          { at: '/walls/a/openings/o/casing/width', value: '48 1/8 in', other: true, unseen: true },
          { at: '/walls/a/openings/o/casing/width', value: '48 in' },
        ],
      },
    },
    // A reading is withdrawn: it was taken beside another window.
    [at('bedroom', 'w3')]: { also: { 'drapery/measure-window': [{ at: '/floor/left/y' }] } },
    // A level line from the left bracket's hole, 139 above a level floor. The screws that came hold too little for two panels of 24 kg.
    [at('stair-hall', 'w1')]: {
      reads: { [`${over}/found/brackets/middle/floorToLevel`]: ['139 in'] },
      answers: { 'drapery/holds': [{ way: 'drapery/way-screws' }] },
    },
    // The order itself does not fit beside the pier.
    [at('stair-hall', 'w2')]: {
      answers: { 'drapery/wall-fits': [{ reason: 'The household wants it without the right finial; agreed at the door' }] },
    },
    [at('study', 'w2')]: { reads: { '/walls/a/openings/o/casing/width': ['42 in'] } },
  },
}
