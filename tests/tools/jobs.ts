/** A random source that a seed repeats: 32-bit multiply and shift (mulberry32, public domain). */
export function random(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

type Random = () => number
const whole = (next: Random, least: number, most: number): number => least + Math.floor(next() * (most - least + 1))
const chance = (next: Random, share: number): boolean => next() < share
const oneOf = <T>(next: Random, all: readonly T[]): T => all[whole(next, 0, all.length - 1)] as T
const sixteenths = (n: number): string => {
  const sign = n < 0 ? '-' : ''
  const [whole, rest] = [Math.floor(Math.abs(n) / 16), Math.abs(n) % 16]
  return rest === 0 ? `${sign}${whole}` : `${sign}${whole === 0 ? '' : `${whole} `}${rest}/16`
}
/** An inch length between two bounds in inches, to the sixteenth. */
const inches = (next: Random, least: number, most: number): string =>
  sixteenths(whole(next, Math.round(least * 16), Math.round(most * 16)))

const rodEntry = (next: Random, id: string) => ({
  id,
  kind: 'rod-and-ring',
  name: `Rod ${id}`,
  rod: { diameter: inches(next, 1, 2), material: 'wood' },
  ring: { eyeDrop: inches(next, 1.75, 3), width: '1/4', room: inches(next, 0.75, 1.5) },
  bracket: {
    top: inches(next, -1, 0.5),
    projection: inches(next, 3, 4),
    width: '1 1/4',
    height: '3',
    holes: [
      { id: 'top', down: '5/8' },
      { id: 'lower', down: '2 1/4' },
    ],
    screw: 'No. 8 × 2',
  },
  finial: { length: inches(next, 2, 4), radius: '1 1/4' },
})

const trackEntry = (next: Random, id: string, at: 'front' | 'under') => ({
  id,
  kind: 'traverse',
  name: `Track ${id}`,
  rod: { height: '1', material: 'aluminium', span: inches(next, 48, 90) },
  carrier: { at, drop: inches(next, 1, 1.5), width: '5/8', opening: '1/8', comesOut: chance(next, 0.5) },
  master: { holes: whole(next, 1, 4), length: '3', overlap: '3', over: 'left' },
  bracket: {
    top: inches(next, -0.5, 0.5),
    projection: inches(next, 3, 4),
    inset: inches(next, 0, 3),
    hookHoles: whole(next, 0, 2),
    width: '1 1/4',
    height: '3',
    holes: [{ id: 'top', down: '5/8' }],
    screw: 'No. 8 × 2',
  },
  ceiling: { drop: inches(next, 0, 0.5), holes: [{ id: 'middle', out: '0' }] },
})
type TreatmentOf = ReturnType<typeof windowOf>['treatments'][number]
/** The same treatment on a traverse rod, on the wall or the ceiling. */
const onTraverse = (next: Random, treatment: TreatmentOf, tracks: readonly string[]) => ({
  ...treatment,
  hardware: oneOf(next, tracks),
  ...(chance(next, 0.7) ? { overlap: '3' } : {}),
  ...(chance(next, 0.2) ? { mount: 'ceiling' } : {}),
  with: {
    ...treatment.with,
    traverse: chance(next, 0.95) ? { carriers: { left: whole(next, 4, 16), right: whole(next, 4, 16) } } : {},
  },
})

const support = { top: '-1 3/8', width: '1', height: '2 1/2', holes: [{ id: 'top', down: '1/2' }] }

function panel(next: Random, id: 'left' | 'right', rodWidth: number, length: string) {
  const leading = 24
  const first = Math.round(rodWidth * 8) - leading + whole(next, -2, 4)
  return {
    id,
    bag: `bag ${id}`,
    finishedLength: length,
    pleats: whole(next, 6, 16),
    leadingFlat: '1 1/2',
    firstToLast: sixteenths(first),
    return: inches(next, 3, 4),
    pin: inches(next, 0.25, 0.75),
    heading: { kind: 'pinch pleat', height: '4' },
  }
}

/** One window of a pair on a rod with rings. Seldom a member is missing, as in an order that is not measured yet. */
function windowOf(next: Random, id: string, rods: readonly string[]) {
  const casing = whole(next, 24, 120)
  const rodWidth = casing + whole(next, 0, 24)
  const length = inches(next, 60, 108)
  const missing = next() < 0.05
  return {
    id,
    name: `Window ${id}`,
    walls: [
      {
        id: 'a',
        ...(missing ? {} : { space: { left: inches(next, 8, 40), right: inches(next, 8, 40) } }),
        buildUp: { surface: 'wallboard', board: '1/2', behind: next() < 0.5 ? 'wood' : 'hollow' },
        openings: [
          {
            id: 'o',
            casing: { width: String(casing), top: inches(next, 70, 96), bottom: inches(next, 10, 30), board: '3 1/2' },
            sill: { top: '34', depth: '2' },
          },
        ],
      },
    ],
    floor: Array.from({ length: whole(next, 0, 4) }, (_, i) => ({
      id: `p${i}`,
      x: sixteenths(i * 400 - 300 + whole(next, 0, 99)),
      y: inches(next, -0.5, 0.5),
    })),
    treatments: [
      {
        id: 'over',
        hardware: rods[whole(next, 0, rods.length - 1)],
        fabric: 'cloth',
        draw: 'pair',
        rod: {
          width: String(rodWidth),
          ...(next() < 0.4 ? { pastLeft: inches(next, 0, 12) } : {}),
          ...(next() < 0.7 ? { top: inches(next, 62, 110) } : { aboveCasing: inches(next, 2, 8) }),
        },
        clearance: inches(next, 0.25, 1),
        panels: [panel(next, 'left', rodWidth, length), panel(next, 'right', rodWidth, length)],
        with: {
          'rod-and-ring': missing ? {} : { rings: whole(next, 12, 40) },
          ...(next() < 0.8
            ? {
                returns: {
                  left: { held: 'wall angle', hole: '1/4' },
                  ...(next() < 0.8 ? { right: { held: 'wall angle', hole: '1/4' } } : {}),
                },
              }
            : {}),
        },
      },
    ],
  }
}

/** The same window with what the ordinary work of a year brings: other draws, hems, several openings, supports, obstacles, ceilings out of level. */
function mixed(next: Random, window: ReturnType<typeof windowOf>, tracks: readonly string[]): object {
  const [wall, ringed] = [window.walls[0], window.treatments[0]]
  const treatment = ringed && chance(next, 0.4) ? onTraverse(next, ringed, tracks) : ringed
  const opening = wall?.openings[0]
  if (!wall || !treatment || !opening) return window
  const width = Number(opening.casing.width)
  const draw = oneOf(next, ['pair', 'pair', 'pair', 'one-way left', 'one-way right', 'stationary'])
  const returnless = chance(next, 0.2)
  const panels = treatment.panels
    .slice(0, draw.startsWith('one-way') ? 1 : 2)
    .map((panel) => (returnless ? { ...panel, return: '0', outerFlat: '1' } : panel))
  const second = chance(next, 0.2) ? [{ ...opening, id: 'p', x: String(width + whole(next, 2, 20)) }] : []
  return {
    ...window,
    ...(chance(next, 0.3)
      ? {
          ceiling: [
            { id: 'l', x: '-12', y: inches(next, 119, 121) },
            { id: 'r', x: String(width + 12), y: inches(next, 119, 121) },
          ],
        }
      : {}),
    walls: [
      {
        ...wall,
        openings: [{ ...opening, apron: { bottom: '30' } }, ...second],
        ...(chance(next, 0.2)
          ? {
              obstacles: [
                {
                  id: 'thing',
                  kind: oneOf(next, ['switch', 'thermostat', 'outlet', 'electric heater', 'hydronic heater', 'grille']),
                  left: inches(next, -20, width),
                  bottom: inches(next, 2, 90),
                  width: '4',
                  height: '5',
                  depth: '1',
                },
              ],
            }
          : {}),
      },
    ],
    treatments: [
      {
        ...treatment,
        draw,
        ...(draw.startsWith('one-way') ? { leadingEnd: oneOf(next, ['symmetric', 'reach']) } : {}),
        hemAt: oneOf(next, ['floor', 'floor', 'floor', 'sill', 'apron']),
        clearance: draw === 'stationary' && chance(next, 0.5) ? '-1' : treatment.clearance,
        rod: {
          ...treatment.rod,
          ...(chance(next, 0.2) ? { pastLeft: inches(next, 2, 12), pastRight: inches(next, 2, 12) } : {}),
          ...(draw === 'pair' && chance(next, 0.2) ? { middle: inches(next, width / 3, (width * 2) / 3) } : {}),
          ...(chance(next, 0.3) ? { supports: [{ id: 'mid', x: inches(next, 8, width - 8) }] } : {}),
        },
        panels,
      },
    ],
  }
}

/** A job of many windows from a seed, as an order is written; ten windows a room. `readings`: how many of its panels were measured; `isMixed`: of all draws, hems and kinds of hardware, not pairs on rings alone. */
export function jobOf(seed: number, windows: number, readings = 0, isMixed = false): object {
  const next = random(seed)
  const rods = ['rod-1', 'rod-2', 'rod-3']
  const tracks = ['track-1', 'track-2']
  const rooms = Array.from({ length: Math.ceil(windows / 10) }, (_, r) => ({
    id: `room-${r}`,
    name: `Room ${r}`,
    ceiling: '120',
    floor: 'wood',
    windows: Array.from({ length: Math.min(10, windows - r * 10) }, (_, w) => windowOf(next, `w${w}`, rods)),
  }))
  const found = Object.fromEntries(
    Array.from({ length: Math.min(readings, windows) }, (_, i) => {
      const window = rooms[Math.floor(i / 10)]?.windows[i % 10]
      return [
        `/rooms/room-${Math.floor(i / 10)}/windows/${window?.id}/treatments/over/panels/left/finishedLength`,
        { value: inches(next, 60, 108), by: 'tablet 1', when: '2026-11-20T10:00:00Z' },
      ]
    }),
  )
  const all = isMixed
    ? rooms.map((room) => ({ ...room, windows: room.windows.map((window) => mixed(next, window, tracks)) }))
    : rooms
  return {
    format: 'evenhem-job/1',
    uses: { 'rod-and-ring': 1, ...(isMixed ? { traverse: 1 } : {}), returns: 1 },
    units: 'in',
    job: {
      number: `seed-${seed}`,
      name: `House ${seed}`,
      country: 'US',
      workroom: { name: 'Workroom', ...(next() < 0.3 ? { rules: { heightsAgree: '1/4' } } : {}) },
    },
    fabrics: [{ id: 'cloth', name: 'Cloth', fibres: [{ fibre: 'linen', percent: 100 }] }],
    hardware: [
      ...rods.map((id) => ({ ...rodEntry(next, id), ...(isMixed ? { support } : {}) })),
      ...(isMixed ? tracks.map((id, i) => ({ ...trackEntry(next, id, i === 0 ? 'front' : 'under'), support })) : []),
    ],
    rooms: all,
    ...(readings > 0 ? { found } : {}),
  }
}
