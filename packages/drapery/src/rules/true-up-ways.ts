import { below, type JobHead, type Place, type Treatment, type Window } from '@evenhem/job'
import { type Length, wholeNanometres } from '@evenhem/length'
import type { WayOut } from '@evenhem/plugin'
import {
  type ChainHook,
  floorUnder,
  type Held,
  type Movable,
  moveBoth,
  moveBrackets,
  type PinRange,
  panelLong,
  remainsOf,
  riseAt,
  trueUp as trueUpPins,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import type { Floor, Hole, Side } from '../facts/index.ts'
import type { HemHook, HemPanel, TrueUp } from '../facts/true-up.ts'
import { long, magnitude, wallUnder, windowOf } from '../given.ts'
import { decidedText, moveText } from './hem-decided.ts'
import { chainsOf } from './true-up.ts'

/** The window that a hem hangs at, as the ways out need it. */
export interface HemAt {
  readonly it: Treatment
  readonly at: Place
  readonly job: JobHead
  readonly window: Window
  readonly floor: Floor | undefined
  readonly holes: readonly Hole[] | undefined
}
/** What becomes of a hook: its pin, and how far the rod above it rises. */
type Fate = (hook: HemHook) => { readonly pin: Length; readonly rise: Length }
interface Offer {
  readonly way: WayOut
  readonly remains: Length
}
const stays = 0 as Length

/** What the hem below a hook then clears. */
function clearsThen({ it }: HemAt, hook: HemHook, { pin, rise }: ReturnType<Fate>): Length {
  const up = pin - hook.pin.value + rise
  return (hook.now.value + (it.hemAt === 'apron' ? -up : up)) as Length
}
/** The least that hems clear the floor once the panels are open; undefined where nothing opens or nothing hangs over the floor. */
export function leastOpen(hem: HemAt, panels: readonly HemPanel[], fate: Fate): Length | undefined {
  const { it, floor } = hem
  if (!floor || it.draw === 'stationary' || (it.hemAt ?? 'floor') !== 'floor') return undefined
  const under = (x: Length): number => floorUnder(floor.points, x)
  const each = panels.flatMap(({ hooks }) =>
    hooks.map((hook) => clearsThen(hem, hook, fate(hook)) + under(hook.drawn.value) - under(hook.stacked)),
  )
  return each.length === 0 ? undefined : wholeNanometres(Math.min(...each))
}

/** Pins that are to be set, and for each panel of which something changes the readings it was worked out from and what it should make of them. */
function puts(hem: HemAt, panels: readonly HemPanel[], how: string, fate: Fate): WayOut['put'] {
  const found = (...tokens: readonly string[]) => below(hem.at, 'found', ...tokens)
  return panels.flatMap((panel) => {
    const changed = panel.hooks.filter((hook) => fate(hook).pin !== hook.pin.value)
    const isMoved = panel.hooks.some((hook) => fate(hook).rise !== 0)
    if (changed.length === 0 && !isMoved) return []
    const read = Object.fromEntries(panel.readings.map(({ n, value }) => [n, value.value]))
    const hooks = panel.readings.map(({ n }) => panel.hooks[n - 1] as HemHook)
    const meant = Object.fromEntries(hooks.map((hook) => [hook.n, clearsThen(hem, hook, fate(hook))]))
    return [
      ...changed.map((hook) => ({
        at: found('pins', panel.panel, String(hook.n)),
        value: { length: fate(hook).pin },
      })),
      { at: found('decided', `hem-${panel.panel}`), value: decidedText({ how, read, meant }) },
    ]
  })
}

const insideOf = ({ tolerance }: TrueUp, remains: Length): 'yes' | 'no' => (remains <= tolerance.value ? 'yes' : 'no')

/** All chains one after the other, as one whose parts are not bound to one another. */
interface Whole {
  readonly hooks: readonly HemHook[]
  readonly links: readonly ChainHook[]
  readonly range: PinRange
}
function wholeOf({ it, job }: HemAt, hem: TrueUp): Whole {
  const chains = chainsOf(it, job, hem.panels)
  const free = Number.MAX_SAFE_INTEGER as Length
  return {
    hooks: chains.flatMap(({ hooks }) => hooks.map(({ hook }) => hook as HemHook)),
    links: chains.flatMap(({ links }) => links.map((link, i) => (i === 0 ? { ...link, apart: free } : link))),
    range: { ...hem.range, least: hem.range.least.value },
  }
}

function pinsWay(hem: HemAt, up: TrueUp, whole: Whole, pins: readonly Length[], how: 'pins' | 'pins-half'): Offer | undefined {
  const changed = pins.filter((pin, i) => pin !== whole.links[i]?.pin).length
  if (changed === 0) return undefined
  const set = new Map(whole.hooks.map((hook, i) => [hook, pins[i] as Length]))
  const fate: Fate = (hook) => ({ pin: set.get(hook) ?? hook.pin.value, rise: stays })
  const open = leastOpen(hem, up.panels, fate)
  const remains = remainsOf(whole.links, pins)
  const values = {
    count: { count: changed },
    off: long({ value: remains }),
    clearance: magnitude(up.clearance),
    inside: insideOf(up, remains),
    opens: open === undefined ? 'no' : 'yes',
    open: long({ value: open ?? 0 }),
  }
  return { remains, way: { code: `drapery/way-hem-${how}`, values, put: puts(hem, up.panels, 'pins', fate) } }
}
/** The hem half as far as it should go, where going all the way leaves too little under the open panels. */
function halfWay(hem: HemAt, up: TrueUp, whole: Whole, full: readonly Length[]): Offer | undefined {
  const set = new Map(whole.hooks.map((hook, i) => [hook, full[i] as Length]))
  const open = leastOpen(hem, up.panels, (hook) => ({ pin: set.get(hook) ?? hook.pin.value, rise: stays }))
  if (open === undefined || open >= up.clearance.value - up.tolerance.value) return undefined
  const links = whole.links.map((link) => ({ ...link, lift: wholeNanometres(link.lift / 2) }))
  return pinsWay(hem, up, whole, trueUpPins(links, whole.range, up.tolerance.value).pins, 'pins-half')
}

/** The least that a bracket moves: a new screw hole beside the old one in wood, else a new anchor. */
function leastMove({ it, job, window, at }: HemAt, x: Length): Length {
  const { buildUp } = wallUnder(window, windowOf(at), x).wall
  const isWood = it.mount === 'casing' || it.mount === 'crown' || buildUp?.behind === 'wood'
  return isWood
    ? ruleOf(job, 'holeBeside').value
    : ((ruleOf(job, 'anchorHole').value + ruleOf(job, 'anchorBeside').value) as Length)
}
/** Brackets that may move: those on a wall, of this treatment's own. */
function heldOf(hem: HemAt): Held | undefined {
  const { it, holes = [] } = hem
  const movable = ({ x }: Hole): Movable => ({ x: x.value, least: leastMove(hem, x.value) })
  const end = (side: Side) => holes.find((hole) => hole.on === 'bracket' && hole.side === side)
  const [left, right] = [end('left'), end('right')]
  if (it.mount === 'ceiling' || it.bracketsOf !== undefined || !left || !right) return undefined
  const supports = new Map(holes.flatMap((hole) => (hole.support === undefined ? [] : [[hole.support, hole] as const])))
  return { left: movable(left), right: movable(right), supports: [...supports.values()].map(movable) }
}
/** The top hole of a bracket above its floor: as it was read, else as it was marked. */
function markOf({ it, holes = [] }: HemAt, side: Side): Length {
  const own = holes.filter((hole) => hole.on === 'bracket' && hole.side === side)
  const top = own.reduce((a, b) => (b.height.value > a.height.value ? b : a), own[0] as Hole)
  return it.found?.brackets?.[side]?.floorToHole ?? top.fromFloor.value
}
const sides = ['left', 'right'] as const

function bracketWay(
  hem: HemAt,
  up: TrueUp,
  whole: Whole,
  held: Held,
  move: { readonly left: Length; readonly right: Length; readonly remains: Length; readonly pins?: readonly Length[] },
): Offer {
  const { pins } = move
  const set = new Map(whole.hooks.map((hook, i) => [hook, pins?.[i] ?? hook.pin.value]))
  const fate: Fate = (hook) => ({ pin: set.get(hook) ?? hook.pin.value, rise: riseAt(held, move, hook.drawn.value) })
  const changed = pins ? pins.filter((pin, i) => pin !== whole.links[i]?.pin).length : 0
  const how = (side: Side) => (move[side] === 0 ? 'stays' : move[side] > 0 ? 'up' : 'down')
  const moved = sides.filter((side) => move[side] !== 0)
  const values = {
    which: moved.length === 2 ? 'both' : (moved[0] ?? 'both'),
    leftWay: how('left'),
    left: magnitude({ value: move.left }),
    rightWay: how('right'),
    right: magnitude({ value: move.right }),
    supports: { count: held.supports.length },
    count: { count: changed },
    off: long({ value: move.remains }),
    clearance: magnitude(up.clearance),
    inside: insideOf(up, move.remains),
  }
  const marks = moved.map((side) => ({
    at: below(hem.at, 'found', 'decided', `bracket-${side}`),
    value: moveText(move[side], (markOf(hem, side) + move[side]) as Length),
  }))
  const put = [...marks, ...puts(hem, up.panels, changed > 0 ? 'brackets and pins' : 'brackets', fate)]
  return { remains: move.remains, way: { code: `drapery/way-hem-brackets${changed > 0 ? '-pins' : ''}`, values, put } }
}
function bracketWays(hem: HemAt, up: TrueUp, whole: Whole, byPins: Length): readonly Offer[] {
  const held = heldOf(hem)
  const now = remainsOf(whole.links, [])
  if (!held) return []
  const { step } = whole.range
  const reach = Math.max(held.left.least, held.right.least, Math.ceil(now / step) * step) as Length
  const rules = { step, most: reach, inLine: ruleOf(hem.job, 'supportInLine').value, tolerance: up.tolerance.value }
  const places = whole.hooks.map(({ drawn }) => drawn.value)
  const alone = moveBrackets(
    whole.links.map(({ lift }, i) => ({ lift, x: places[i] as Length })),
    held,
    rules,
  )
  const best = Math.min(byPins, alone?.remains ?? now)
  const both = best <= up.tolerance.value ? undefined : moveBoth(whole.links, places, held, whole.range, rules)
  return [
    ...(alone && alone.remains < now ? [bracketWay(hem, up, whole, held, alone)] : []),
    ...(both && both.remains < best && both.changed > 0 ? [bracketWay(hem, up, whole, held, both)] : []),
  ]
}

/** Each panel that is out of tolerance may go back to the workroom, long or short by the middle of what it is off. */
function backWays({ at }: HemAt, up: TrueUp): readonly WayOut[] {
  const off = up.panels.filter(
    ({ state, hooks }) => state === 'read' && hooks.some(({ lift }) => Math.abs(lift) > up.tolerance.value),
  )
  return off.map(({ panel, outer, hooks, readings }) => {
    const found = panelLong(hooks.map(({ lift }) => lift))
    const read = Object.fromEntries(readings.map(({ n, value }) => [n, value.value]))
    const meant = Object.fromEntries(readings.map(({ n }) => [n, up.clearance.value]))
    const values = {
      panel: { code: `drapery/panel-${outer}` },
      length: magnitude({ value: found.long }),
      how: found.long > 0 ? 'long' : 'short',
      off: long({ value: found.remains }),
      inside: insideOf(up, found.remains),
    }
    const put = [{ at: below(at, 'found', 'decided', `hem-${panel}`), value: decidedText({ how: 'goes back', read, meant }) }]
    return { code: 'drapery/way-hem-panel-back', values, put }
  })
}

/** What may be done about a hem that is out of tolerance: what brings it inside first, of that the least work first; a panel that goes back last. */
export function waysOut(hem: HemAt, up: TrueUp): readonly WayOut[] {
  const whole = wholeOf(hem, up)
  const full = whole.hooks.map(({ set }) => set.value)
  const pins = pinsWay(hem, up, whole, full, 'pins')
  const half = pins && pins.remains <= up.tolerance.value ? halfWay(hem, up, whole, full) : undefined
  const outside = ({ remains }: Offer): number => Math.max(0, remains - up.tolerance.value)
  const offers = [...(pins ? [pins] : []), ...bracketWays(hem, up, whole, remainsOf(whole.links, full))]
  const sorted = offers.sort((a, b) => outside(a) - outside(b))
  const ways = sorted.flatMap((offer) => (offer === pins && half ? [offer.way, half.way] : [offer.way]))
  return [...ways, ...backWays(hem, up)]
}
