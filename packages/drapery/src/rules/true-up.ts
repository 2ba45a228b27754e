import { below, type JobHead, type Place, type Treatment } from '@evenhem/job'
import { formula, given, type Known, known, type Length, type LengthReckoning, minus, plus } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import {
  type ChainHook,
  chainOf,
  clearsAfter,
  hemAt,
  hookDrawn,
  liftOf,
  type PinRange,
  trueUp as trueUpPins,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import {
  above,
  bearingDrop,
  coverage,
  type HookPlace,
  hookMap,
  makeUp,
  type PanelMakeUp,
  type Share,
  topOfRod,
} from '../facts/index.ts'
import { type HemHook, type HemPanel, type TrueUp, trueUp } from '../facts/true-up.ts'
import { member, panelAt, perhaps } from '../given.ts'
import { type ByHook, decisionOn, isToRead } from './hem-decided.ts'

/** The readings of a panel below two hooks or more; an older reading holds all along. */
function readingsOf(
  it: Treatment,
  at: Place,
  panel: string,
  hooks: number,
): readonly { readonly n: number; readonly value: Known<Length> }[] {
  const read: ByHook = it.found?.hemsRead?.[panel] ?? {}
  const each = Object.entries(read).flatMap(([key, value]) => {
    const n = Number(key)
    const isHook = Number.isInteger(n) && n >= 1 && n <= hooks
    return isHook ? [{ n, value: { value, from: below(at, 'found', 'hemsRead', panel, key) } }] : []
  })
  const whole = perhaps(member(at, ['found', 'hems', panel], it.found?.hems?.[panel]))
  if (each.length > 1) return each.sort((a, b) => a.n - b.n)
  return whole ? [1, hooks].map((n) => ({ n, value: whole })) : []
}

interface Panel {
  readonly made: PanelMakeUp
  readonly places: readonly HookPlace[]
  readonly share: Share
}
/** The hooks of a panel with what the hem clears below each, and its pins as they are. */
function hooksOf(
  it: Treatment,
  at: Place,
  { made, places, share }: Panel,
  readings: HemPanel['readings'],
  clearance: Length,
): readonly Unset[] {
  const place = panelAt(at, made.panel)
  const drawn = places.map(({ hook, drawn }) => hookDrawn(`${place}#hook-along-${hook.n}`, drawn, share.leading, share.end))
  const points = readings
    .flatMap(({ n, value }) => {
      const x = drawn[n - 1]
      return x ? [{ x: known(x), y: value }] : []
    })
    .sort((a, b) => a.x.value - b.x.value)
  return places.map(({ hook: { n }, stacked }, i) => {
    const x = drawn[i] as LengthReckoning
    const now = hemAt(`${place}#hem-now-${n}`, points, known(x))
    const again = perhaps(member(at, ['found', 'pins', made.panel, String(n)], it.found?.pins?.[made.panel]?.[n]))
    return { n, drawn: x, stacked, now, pin: again ?? made.pin, lift: liftOf(it.hemAt ?? 'floor', now.value, clearance) }
  })
}
/** A hook of which no new pin is worked out yet. */
export type Unset = Omit<HemHook, 'set' | 'after'>
type Unpinned = Pick<HemPanel, 'panel' | 'outer' | 'state' | 'back'> & { readonly hooks: readonly Unset[] }

function stateOf(it: Treatment, panel: string): HemPanel['state'] {
  const decided = decisionOn(it, panel)
  if (!decided || !isToRead(decided, it.found?.hemsRead?.[panel] ?? {})) return 'read'
  return decided.how === 'goes back' ? 'back' : 'again'
}

interface Bearing {
  readonly drawnAs: 'rings' | 'carriers'
  readonly drop?: Known<Length> | undefined
  readonly rodHeight?: number | undefined
}
/** The pins that hooks may take: on rings between the shallowest and the deepest; on carriers so that the heading still covers the rod, or stays under it. */
export function pinRangeOf(it: Treatment, at: Place, job: JobHead, { drawnAs, drop, rodHeight = 0 }: Bearing): TrueUp['range'] {
  const rules = { least: ruleOf(job, 'pinLeast'), most: ruleOf(job, 'pinMost').value, step: ruleOf(job, 'pinStep').value }
  const headings = it.panels.flatMap(({ heading }) => heading?.height ?? [])
  const deepest = Math.min(Number.POSITIVE_INFINITY, ...headings) - ruleOf(job, 'pinBelow').value
  const shallowest = (least: Known<Length>) => given(`${at}#pin-least`, 'drapery/pin-least', plus('drapery/pin-least', least))
  if (drawnAs === 'rings' || !drop)
    return { ...rules, least: shallowest(rules.least), most: Math.min(rules.most, deepest) as Length }
  const pins = it.panels.flatMap(({ pin }) => pin ?? [])
  const covers = pins.every((pin) => pin >= drop.value)
  const most = covers ? Math.max(...pins, Number.isFinite(deepest) ? deepest : 0) : Math.min(deepest, drop.value - rodHeight)
  return { ...rules, least: shallowest(covers ? drop : rules.least), most: most as Length }
}

/** Hooks that are set together, in the order of their chain. */
export interface Chain {
  readonly hooks: readonly { readonly panel: string; readonly hook: Unset }[]
  readonly links: readonly ChainHook[]
}
/** The panels whose hems are judged, as chains: the two of a pair in one, others by themselves. */
export function chainsOf(it: Treatment, job: JobHead, panels: readonly Unpinned[]): readonly Chain[] {
  const [near, edges] = [ruleOf(job, 'pinsNext').value, ruleOf(job, 'pinsMeet').value]
  const open = panels.filter(({ state }) => state === 'read')
  const asPair = it.draw === 'pair' && open.length === 2
  const together = asPair
    ? [[...open].sort((a, b) => (a.outer === b.outer ? 0 : a.outer === 'left' ? -1 : 1))]
    : open.map((one) => [one])
  return together.map((own) => {
    const outward = own.map(({ panel, hooks }) => hooks.map((hook) => ({ panel, hook })))
    const [left = [], right] = outward
    return {
      hooks: right ? [...[...left].reverse(), ...right] : left,
      links: chainOf(
        own.map(({ hooks, back }) => ({ back, hooks: hooks.map(({ pin, lift }) => ({ pin: pin.value, lift })) })),
        near,
        edges,
      ),
    }
  })
}

/** The hem as it hangs, hook by hook, from what was read below at least two of each panel, and the pins that bring it where it was ordered. */
export const trueUpRule = rule({
  id: 'true-up',
  on: 'treatment',
  needs: {
    coverage: { maybe: coverage },
    makeUp: { maybe: makeUp },
    hookMap: { maybe: hookMap },
    bearingDrop: { maybe: bearingDrop },
    topOfRod: { maybe: topOfRod },
    above: { maybe: above },
  },
  gives: { trueUp, reckonings },
}).run(({ it, at, job }, facts) => {
  const { coverage: covered, makeUp: made, hookMap: map } = facts
  const clearance = perhaps(member(at, ['clearance'], it.clearance))
  if (!it.found || !covered || !made || !map || !clearance) return {}
  const tolerance = ruleOf(job, 'hemEven')
  const panels = made.panels.flatMap((panel): readonly Panel[] => {
    const share = covered.shares.find((one) => one.panel === panel.panel)
    const places = map.places.filter((place) => place.panel === panel.panel)
    return share && places.length > 0 ? [{ made: panel, places, share }] : []
  })
  const all = panels.map((panel) => ({ panel, readings: readingsOf(it, at, panel.made.panel, panel.places.length) }))
  const read = all
    .filter(({ readings }) => readings.length > 0)
    .map(({ panel, readings }) => ({
      panel: panel.made.panel,
      outer: panel.made.outer,
      state: stateOf(it, panel.made.panel),
      back: panel.made.outerFlat === undefined,
      readings,
      hooks: hooksOf(it, at, panel, readings, clearance.value),
    }))
  const half = facts.topOfRod && facts.above ? facts.topOfRod.value - facts.above.middle.value : undefined
  const range = pinRangeOf(it, at, job, {
    drawnAs: map.drawnAs ?? 'rings',
    drop: facts.bearingDrop,
    rodHeight: half === undefined ? undefined : 2 * half,
  })
  const numbers = { ...range, least: range.least.value }
  const set = new Map(chainsOf(it, job, read).flatMap(({ hooks, links }) => newPins(hooks, links, numbers, tolerance.value)))
  const done = read.map(
    (panel): HemPanel => ({
      ...panel,
      hooks: panel.hooks.map((hook) =>
        withPin(it, panelAt(at, panel.panel), panel, hook, set.get(hook) ?? hook.pin.value, clearance),
      ),
    }),
  )
  return {
    trueUp: {
      clearance,
      tolerance,
      range,
      panels: done,
      unread: all.filter(({ readings }) => readings.length === 0).map(({ panel }) => panel.made.panel),
    },
    reckonings: [
      range.least,
      ...done.flatMap(({ hooks }) =>
        hooks.flatMap((hook) => [hook.drawn, hook.now, hook.set, ...(hook.after ? [hook.after] : [])]),
      ),
    ],
  }
})

/** New pins for hooks of which one is out of tolerance; what is even stays as it is. */
function newPins(
  hooks: Chain['hooks'],
  links: readonly ChainHook[],
  range: PinRange,
  tolerance: Length,
): readonly (readonly [Unset, Length])[] {
  if (links.every(({ lift }) => Math.abs(lift) <= tolerance)) return []
  const { pins } = trueUpPins(links, range, tolerance)
  return hooks.map(({ hook }, i) => [hook, pins[i] as Length] as const)
}

function withPin(
  it: Treatment,
  place: Place,
  { state }: { readonly state: HemPanel['state'] },
  hook: Unset,
  pin: Length,
  clearance: Known<Length>,
): HemHook {
  const name = `${place}#pin-set-${hook.n}`
  const set =
    pin === hook.pin.value
      ? given(name, 'drapery/pin-set', plus('drapery/pin-now', hook.pin))
      : formula(
          name,
          'drapery/pin-set',
          pin,
          'drapery/pins-chosen',
          plus('drapery/pin-now', hook.pin),
          plus('drapery/clearance', clearance),
          minus('drapery/hem-now', hook.now),
        )
  if (state !== 'read') return { ...hook, set }
  return { ...hook, set, after: clearsAfter(`${place}#hem-after-${hook.n}`, it.hemAt ?? 'floor', hook.now, hook.pin, set) }
}
