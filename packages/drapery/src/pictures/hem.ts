import type { Figure, Layer, Mark, Point } from '@evenhem/drawing'
import { below, type Place, type Treatment, type Window } from '@evenhem/job'
import type { Known, Length } from '@evenhem/length'
import { layers, rule } from '@evenhem/plugin'
import { floorUnder } from '../arithmetic/index.ts'
import { type Floor, floor, type HangLine, type HookPlace, hangLine, hookMap, type Side } from '../facts/index.ts'
import { type HemPanel, type TrueUp, trueUp } from '../facts/true-up.ts'
import { outerSide, perhaps } from '../given.ts'
import { hooksToRead } from '../rules/true-up-steps.ts'
import { mm, outline, through } from './shapes.ts'

/** How many times as steep as widths heights are drawn; `drapery/hem-steep` says it. */
export const steep = 22

/** One hook on the picture: where it is, the hem below it, and what the hem is measured from. */
interface At {
  readonly n: number
  readonly x: number
  readonly base: number
  readonly hem: number
  readonly after: number
}
interface Panel {
  readonly id: string
  readonly outer: Side
  readonly up: HemPanel | undefined
  readonly hooks: readonly At[]
}
/** Where things are drawn. Heights are steep already. */
interface Sheet {
  readonly left: number
  readonly right: number
  /** Of the band of cloth. */
  readonly top: number
  readonly bottom: number
  readonly base: (x: number) => number
}

/** What the hem is measured from, by places along the wall in mm: the floor as it lies, or a stool or an apron, which are level. */
function baseOf({ hemAt, panels }: HangLine, { points }: Floor): (x: number) => number {
  const [first] = panels
  const level = first ? (hemAt === 'apron' ? first.hem.value + first.clears.value : first.hem.value - first.clears.value) : 0
  if (hemAt !== 'floor') return () => 0
  return (x) => steep * mm(floorUnder(points, x * 1e6) - level)
}

/** The hooks of a panel with the hem below them: as it was read, else as it is planned to hang. */
function hooksOf(
  places: readonly HookPlace[],
  up: HemPanel | undefined,
  { hemAt, panels }: HangLine,
  base: Sheet['base'],
  level: number,
): readonly At[] {
  const sign = hemAt === 'apron' ? -steep : steep
  const planned = panels.find(({ panel }) => panel === places[0]?.panel)?.clears.value ?? 0
  return places.map(({ hook: { n }, drawn }) => {
    const [x, own] = [mm(drawn), up?.hooks.find((one) => one.n === n)]
    const under = base(x)
    const hang = own ? under + sign * mm(own.now.value) : level + sign * mm(planned)
    return { n, x, base: under, hem: hang, after: own?.after ? under + sign * mm(own.after.value) : hang }
  })
}

/** The floor as cut, the line of a stool or an apron. */
function surface({ left, right, base, bottom }: Sheet, { points }: Floor, hemAt: HangLine['hemAt']): readonly Mark[] {
  const between = points.map(({ x }) => mm(x.value)).filter((x) => x > left && x < right)
  const line = [left, ...between, right].map((x): Point => [x, base(x)])
  if (hemAt !== 'floor') return [through('casing', line)]
  const hatch: Mark = { kind: 'hatch', role: 'hatch', of: [...line, [right, bottom], [left, bottom]] }
  return [hatch, through('wall', line)]
}

/** The cloth of a panel down to its hem, with a shade beside each pleat. */
function cloth({ hooks, up }: Panel, top: number): readonly Mark[] {
  const hem = hooks.map(({ x, hem }): Point => [x, hem])
  const [first, last] = [hem[0]?.[0] ?? 0, hem.at(-1)?.[0] ?? 0]
  const shade = (up ? hooks.slice(1, -1) : []).map(({ x, hem }, i) => {
    const from = x + 0.28 * ((hooks[i]?.x ?? x) - x)
    return outline('fabric-shade', [
      [x, top],
      [from, top],
      [from, hem],
      [x, hem],
    ])
  })
  return [outline('fabric', [[first, top], ...hem, [last, top]]), ...shade, through('cloth', hem)]
}

/** An arrow from the hem as it is to the hem as it will be. */
const arrow = (x: number, from: number, to: number, size: number): readonly Mark[] => {
  const back = to + Math.sign(from - to) * size
  const barbs: readonly Point[] = [
    [x - 0.6 * size, back],
    [x, to],
    [x + 0.6 * size, back],
  ]
  return [{ kind: 'line', role: 'mark', from: [x, from], to: [x, to] }, through('mark', barbs)]
}
/** The hem after, where pins change it. */
function changeOf({ hooks, up }: Panel, size: number): readonly Mark[] {
  if (!up?.hooks.some(({ set, pin }) => set.value !== pin.value)) return []
  // Where it was read its number stands.
  const isFree = (n: number): boolean => up.readings.every((one) => one.n !== n)
  const moved = hooks.filter(({ n, hem, after }) => Math.abs(after - hem) > 1.5 * size && isFree(n))
  const some = moved.filter((_, i) => i % 3 === 0 || i === moved.length - 1)
  return [
    through(
      'mark',
      hooks.map(({ x, after }): Point => [x, after]),
    ),
    ...some.flatMap(({ x, hem, after }) => arrow(x, hem, after, size)),
  ]
}

/** How far the reading of an edge stands from it, as a share of the panel: two leading edges meet at one place. */
const inward = 0.09
/** What the hem clears at the hooks below which it is read, each a place to write it. */
function readings(
  panel: Panel,
  it: Treatment,
  at: Place,
  places: readonly HookPlace[],
  clears: TrueUp | undefined,
): readonly Mark[] {
  const { hooks, up, id } = panel
  const alone = Object.keys(it.found?.hemsRead?.[id] ?? {}).map(Number)
  const wanted = up ? up.readings.map(({ n }) => n) : [...new Set([...hooksToRead(it, id, places), ...alone])]
  const [first, last] = [hooks[0]?.x ?? 0, hooks.at(-1)?.x ?? 0]
  return wanted.flatMap((n): readonly Mark[] => {
    const own = hooks.find((hook) => hook.n === n)
    if (!own) return []
    const x = own.x + inward * (1 - (2 * (own.x - first)) / (last - first || 1)) * (last - first)
    const from = below(at, 'found', 'hemsRead', id, String(n))
    const value = up?.readings.find((one) => one.n === n)?.value ?? perhaps({ value: it.found?.hemsRead?.[id]?.[n], from })
    const figure: Figure = { of: value?.from ?? from, what: 'drapery/hem-now', ...dressed(value, clears) }
    const hem = value && !up ? own.base + (it.hemAt === 'apron' ? -steep : steep) * mm(value.value) : own.hem
    return [upTo(x, own.base, hem, figure)]
  })
}
function dressed(value: Known<Length> | undefined, up: TrueUp | undefined): Pick<Figure, 'value' | 'state' | 'off'> {
  if (!value) return { state: 'unknown' }
  const off = (value.value - (up?.clearance.value ?? value.value)) as Length
  return up && Math.abs(off) > up.tolerance.value
    ? { value: value.value, state: 'off', off }
    : { value: value.value, state: 'ordered' }
}

/** A hook in the heading: its bow at the top of the pin, the shank below it. */
const hookMark = (role: 'mark' | 'cloth', x: number, top: number, size: number): Mark => ({
  kind: 'path',
  role,
  d: [
    ['M', x - size, top - size],
    ['C', x - size, top + size * 0.4, x, top + size * 0.4, x, top - size],
    ['L', x, top - 4.5 * size],
  ],
})

/** Shares of the width that is covered: margins, the band of cloth over the hems, hatch, and what lies between strips. */
const shares = { margin: 0.1, cloth: 0.09, hatch: 0.035, gap: 0.075, strip: 0.17, note: 0.045 } as const
/** How much of the heading is drawn: a little more than its deepest pin. */
const depthOf = ({ hooks }: HemPanel): number =>
  steep * mm(Math.max(...hooks.map(({ set, pin }) => Math.max(set.value, pin.value)))) + 190

/** The pins of one panel as it hangs, spread over the width: how deep each sits under the top of the drapery, and the shallowest that is allowed. */
function pinsOf(panel: HemPanel, { left, right }: Sheet, top: number, least: TrueUp['range']['least']): readonly Mark[] {
  const turned = panel.outer === 'left' ? panel.hooks.toReversed() : panel.hooks
  const from = left + shares.strip * (right - left)
  const [wide, under] = [(right - from) / (turned.length + 0.3), top - depthOf(panel)]
  const line = (role: 'cloth' | 'hidden', y: number): Mark => ({ kind: 'line', role, from: [from, y], to: [right, y] })
  const shortest = top - steep * mm(least.value)
  const each = turned.flatMap((hook, i): readonly Mark[] => {
    const [x, y] = [from + (i + 0.5) * wide, top - steep * mm(hook.set.value)]
    const isChanged = hook.set.value !== hook.pin.value
    return [
      hookMark(isChanged ? 'mark' : 'cloth', x - 0.25 * wide, y, 0.09 * wide),
      upTo(x + 0.08 * wide, y, top, {
        value: hook.set.value,
        of: isChanged ? hook.set.name : hook.pin.from,
        what: `drapery/hook-${hook.n}`,
        state: isChanged ? 'computed' : 'ordered',
      }),
    ]
  })
  const whole: readonly Point[] = [
    [from, top],
    [right, top],
    [right, under],
    [from, under],
  ]
  return [
    outline('fabric', whole),
    line('cloth', top),
    line('hidden', shortest),
    ...each,
    upTo(from - 0.45 * shares.strip * (right - left), shortest, top, {
      value: least.value,
      of: least.name,
      what: 'drapery/pin-least',
      state: 'computed',
    }),
    caption(`drapery/pins-${panel.outer}`, [from, top + 0.7 * shares.note * (right - left)], 'start'),
  ]
}
const upTo = (x: number, from: number, to: number, figure: Figure): Mark => ({
  kind: 'dimension',
  role: 'dimension',
  side: 'inside',
  from: [x, from],
  to: [x, to],
  figure,
})
const caption = (code: string, at: Point, anchor: 'start' | 'middle' | 'end'): Mark => ({
  kind: 'caption',
  role: 'dimension',
  at,
  code,
  anchor,
})

/** All that is measured and drawn of one treatment, its hems at the height where the sheet has them. */
function sheetOf(base: Sheet['base'], panels: readonly Panel[]): Sheet {
  const hooks = panels.flatMap((panel) => panel.hooks)
  const xs = hooks.map(({ x }) => x)
  const [first, last] = [Math.min(...xs), Math.max(...xs)]
  const [wide, ys] = [last - first, hooks.flatMap(({ hem, after, base }) => [hem, after, base])]
  return {
    left: first - shares.margin * wide,
    right: last + shares.margin * wide,
    top: Math.max(...ys) + shares.cloth * wide,
    bottom: Math.min(...ys, base(first), base(last)) - shares.hatch * wide,
    base,
  }
}
/** Where the strip of pins of each panel begins, and where the last one ends. */
function stripsOf({ bottom, left, right }: Sheet, panels: readonly HemPanel[]): readonly number[] {
  const gap = shares.gap * (right - left)
  const deep = panels.map((panel) => depthOf(panel) + gap)
  return [0, ...deep.map((_, i) => i + 1)].map((n) => bottom - gap - deep.slice(0, n).reduce((a, b) => a + b, 0))
}
const heightOf = (sheet: Sheet, panels: readonly HemPanel[]): number => sheet.top - (stripsOf(sheet, panels).at(-1) as number)

/**
 * The hem against what it is measured from, as it was read and as pins bring it there, and below it the pins of each panel. Before it is read it is
 * drawn as it is planned to hang, with the places to read.
 */
export const hemPicture = rule({
  id: 'hem-picture',
  on: 'treatment',
  needs: { hangLine, hookMap, floor, trueUp: { maybe: trueUp } },
  gives: { layers },
}).run(({ it, at, window }, facts) => {
  const { hangLine: hung, hookMap: map, floor: ground, trueUp: up } = facts
  const panelsOn = (base: Sheet['base'], by: number): readonly Panel[] =>
    it.panels.map(({ id }) => {
      const own = up?.panels.find(({ panel }) => panel === id)
      const all = map.places.filter(({ panel }) => panel === id)
      // Of what is not read yet a straight hem is drawn, and only the places to read.
      const toRead = own ? [] : hooksToRead(it, id, all)
      const places = own ? all : all.filter(({ hook: { n } }, i) => toRead.includes(n) || i === 0 || i === all.length - 1)
      return { id, outer: outerSide(it, id), up: own, hooks: hooksOf(places, own, hung, base, -by) }
    })
  const raw = baseOf(hung, ground)
  // A layer of drapery is drawn below those before it.
  const nth = nthOf(window, at)
  const by = nth === 0 ? 0 : nth * 1.2 * heightOf(sheetOf(raw, panelsOn(raw, 0)), up?.panels ?? [])
  const base = (x: number): number => raw(x) - by
  const panels = panelsOn(base, by)
  const sheet = sheetOf(base, panels)
  const wide = sheet.right - sheet.left
  const size = 0.008 * wide
  const hems = panels.flatMap((panel): readonly Mark[] => [
    { kind: 'group', id: panel.id, words: `drapery/panel-${panel.outer}`, marks: cloth(panel, sheet.top) },
    ...changeOf(panel, size),
    ...(panel.hooks.length > 0
      ? [caption(`drapery/panel-${panel.outer}`, [middleOf(panel), sheet.top - shares.note * wide], 'middle')]
      : []),
  ])
  const numbers = panels.flatMap((panel) => readings(panel, it, at, map.places, up))
  const tops = stripsOf(sheet, up?.panels ?? [])
  const headings = (up?.panels ?? []).flatMap((panel, i) => pinsOf(panel, sheet, tops[i] as number, (up as TrueUp).range.least))
  const layer = (depth: number, marks: readonly Mark[]): Layer => ({ view: 'hem', depth, stretch: steep, marks })
  const note = caption('drapery/hem-steep', [sheet.left, sheet.top + shares.note * wide], 'start')
  return {
    layers: [
      layer(0, surface(sheet, ground, hung.hemAt)),
      layer(30, hems),
      layer(60, [...numbers, note]),
      ...(headings.length > 0 ? [{ view: 'pins' as const, depth: 30, stretch: steep, marks: headings }] : []),
    ],
  }
})
const middleOf = ({ hooks }: Panel): number => ((hooks[0]?.x ?? 0) + (hooks.at(-1)?.x ?? 0)) / 2
const nthOf = ({ treatments }: Window, at: Place): number =>
  Math.max(
    0,
    treatments.findIndex(({ id }) => at.endsWith(`/treatments/${id}`)),
  )
