import { type Light, lights, weights } from './light/tokens.ts'

const properties = (light: Light): string =>
  [
    ...Object.entries(lights[light]).map(([name, colour]) => `--${name}:${colour}`),
    `--k:${weights[light]}`,
    `color-scheme:${light === 'night' ? 'dark' : 'light'}`,
  ].join(';')

/** The three lights as custom properties. Without a choice the system's decides between paper and night; `data-light` on the root chooses. */
export const lightsCss = (): string => `:root{${properties('paper')}}
@media (prefers-color-scheme:dark){:root:not([data-light]){${properties('night')}}}
${(['paper', 'night', 'sun'] as const).map((light) => `:root[data-light=${light}]{${properties(light)}}`).join('\n')}
`

/** Line weights by role: px on a screen, mm on paper. */
interface Weights {
  readonly cut: number
  readonly mark: number
  readonly outline: number
  readonly frame: number
  readonly inner: number
  readonly rod: number
  readonly fold: number
  readonly line: number
  readonly extension: number
  readonly tick: number
  readonly hidden: number
  readonly dots: number
  readonly ring: number
  readonly check: number
  readonly halo: number
  readonly chosen: number
}
const onScreen: Weights = {
  cut: 2.6,
  mark: 2.6,
  outline: 3,
  frame: 1.8,
  inner: 0.8,
  rod: 1.3,
  fold: 0.7,
  line: 1,
  extension: 0.8,
  tick: 1.6,
  hidden: 1.1,
  dots: 1.3,
  ring: 2,
  check: 2.4,
  halo: 4,
  chosen: 2,
}
const onPaper: Weights = {
  cut: 0.7,
  mark: 0.7,
  outline: 0.7,
  frame: 0.5,
  inner: 0.2,
  rod: 0.35,
  fold: 0.18,
  line: 0.25,
  extension: 0.2,
  tick: 0.4,
  hidden: 0.25,
  dots: 0.3,
  ring: 0.4,
  check: 0.5,
  halo: 0.9,
  chosen: 0.5,
}

/** A line's weight; where lines grow in the sun it is a product with `--k`. */
type Weigh = (weight: number) => string
const dashes = (unit: number, ...lengths: readonly number[]): string =>
  lengths.map((length) => Math.round(length * unit * 1000) / 1000).join(' ')

function rules(scope: string, w: Weights, weigh: Weigh, unit: number): string {
  const all: readonly (readonly [string, string])[] = [
    ['.stroke', 'fill:none'],
    ['.wall', `fill:none;stroke:var(--ink);stroke-width:${weigh(w.cut)};stroke-linecap:square`],
    ['.hatch', `stroke:var(--hatch);stroke-width:${w.line}`],
    ['.area.wall-face', 'fill:var(--wallface)'],
    ['.baseboard', `fill:none;stroke:var(--faint);stroke-width:${w.line}`],
    ['.casing', `stroke:var(--frame);stroke-width:${weigh(w.frame)}`],
    ['.area.casing', 'fill:var(--casing)'],
    ['.frame', `stroke:var(--frame);stroke-width:${w.inner}`],
    ['.area.frame', 'fill:var(--casing)'],
    ['.glass', `stroke:var(--frame);stroke-width:${w.inner}`],
    ['.area.glass', 'fill:var(--glass)'],
    ['.obstacle', `stroke:var(--ink2);stroke-width:${w.line}`],
    ['.area.obstacle', 'fill:var(--panel)'],
    ['.rod,.bracket,.finial', `stroke:var(--rodline);stroke-width:${weigh(w.rod)};stroke-linejoin:round`],
    ['.area.rod,.area.bracket,.area.finial', 'fill:var(--rod)'],
    ['.ring', `fill:none;stroke:var(--rodline);stroke-width:${weigh(w.rod)}`],
    ['.fabric', `stroke:var(--fedge);stroke-width:${weigh(w.rod)};stroke-linejoin:round`],
    ['.area.fabric', 'fill:var(--fabric)'],
    ['.area.fabric-shade', 'fill:var(--fshade);stroke:none'],
    ['.cloth', `fill:none;stroke:var(--fedge);stroke-width:${weigh(w.frame)};stroke-linejoin:round`],
    ['.fold', `fill:none;stroke:var(--fold);stroke-width:${w.fold}`],
    ['.pleat', `fill:none;stroke:var(--fedge);stroke-width:${w.line}`],
    ['.stroke.mark,.area.mark', `fill:none;stroke:var(--mark);stroke-width:${weigh(w.mark)}`],
    ['.cross', `fill:none;stroke:var(--mark);stroke-width:${weigh(w.mark)}`],
    ['.centre', `fill:none;stroke:var(--mark);stroke-width:${w.line};stroke-dasharray:${dashes(unit, 14, 3, 3, 3)}`],
    ['.hidden', `fill:none;stroke:var(--line);stroke-width:${w.hidden};stroke-dasharray:${dashes(unit, 5, 3)}`],
    ['.level', `fill:none;stroke:var(--ink2);stroke-width:${w.dots};stroke-dasharray:${dashes(unit, 1.5, 4)}`],
    ['.stroke.dimension', `stroke:var(--line);stroke-width:${w.line}`],
    ['.line,.leader', `fill:none;stroke:var(--line);stroke-width:${w.line}`],
    ['.extension', `fill:none;stroke:var(--line);stroke-width:${w.extension};opacity:.8`],
    ['.figure.computed>.line.load', `stroke:var(--ink);stroke-width:${weigh(w.tick)}`],
    ['.tick', `fill:none;stroke:var(--ink);stroke-width:${w.tick}`],
    ['.dotted', `fill:none;stroke:var(--mark);stroke-width:${w.dots};stroke-dasharray:${dashes(unit, 2, 3)}`],
    ['.figure.mark>.leader', `stroke:var(--mark);stroke-width:${w.frame}`],
    ['.figure.unknown>.line', `stroke-dasharray:${dashes(unit, 5, 4)}`],
    // Figures: shape first, then colour.
    ['.figure', 'color:var(--ink)'],
    ['.figure.mark', 'color:var(--mark)'],
    ['.figure.measured,.figure.off', 'color:var(--tapeink)'],
    ['.digits', 'fill:currentColor'],
    // A number stands clear of what it is drawn over.
    [
      '.figure.ordered .digits,.figure.computed .digits',
      `paint-order:stroke;stroke:var(--wallface);stroke-width:${w.halo};stroke-linejoin:round`,
    ],
    ['.figure.mark .digits', 'stroke:none'],
    ['.slash', 'fill:none;stroke:currentColor'],
    ['.sign,.unit', 'fill:var(--ink2)'],
    ['.figure.mark .sign,.figure.mark .unit', 'fill:var(--mark)'],
    ['.figure.measured .unit,.figure.off .unit', 'fill:var(--tapeink)'],
    ['.block', 'fill:none'],
    ['.measured>.block,.off>.block', `fill:var(--tape);stroke:var(--tapeedge);stroke-width:${w.dots}`],
    ['.hook', 'fill:var(--tapehook)'],
    ['.figure.off>.block', `stroke:var(--fail);stroke-width:${w.outline}`],
    [
      '.figure.unknown>.block',
      `fill:var(--sheet);stroke:var(--ink);stroke-width:${w.dots};stroke-dasharray:${dashes(unit, 4, 3)}`,
    ],
    ['.figure.decided>.block', `fill:var(--sheet);stroke:var(--ink);stroke-width:${w.dots}`],
    ['.figure .off', 'color:var(--fail)'],
    ['.figure .off .sign', 'fill:var(--fail)'],
    ['.aside,.most', 'color:var(--ink2)'],
    ['.strike', `fill:none;stroke:currentColor;stroke-width:${w.dots}`],
    ['.question', 'fill:var(--ink)'],
    ['.frame-box', `fill:var(--markbg);stroke:var(--mark);stroke-width:${w.tick}`],
    ['.touched>.frame-box', `stroke-width:${w.outline}`],
    ['.chosen', `fill:var(--markbg);stroke:var(--mark);stroke-width:${w.chosen}`],
    ['.caption', `fill:var(--ink2);paint-order:stroke;stroke:var(--wallface);stroke-width:${w.halo};stroke-linejoin:round`],
    ['.figure.mark .caption', 'fill:var(--mark);stroke:none'],
    ['.caption.mark', 'fill:var(--mark)'],
    ['.touch', 'fill:none;stroke:none;pointer-events:all'],
    // The tape along the wall.
    ['.tape>.blade', `fill:var(--blade);stroke:var(--tick);stroke-width:${w.inner}`],
    ['.tape>.ticks', `fill:none;stroke:var(--tick);stroke-width:${w.inner}`],
    ['.tape>.number', 'fill:var(--ink)'],
    // Findings.
    ['.finding .ring', `fill:none;stroke:var(--pass);stroke-width:${w.ring}`],
    ['.check', `fill:none;stroke:var(--pass);stroke-width:${w.check};stroke-linecap:round;stroke-linejoin:round`],
    ['.lozenge', `fill:var(--sheet);stroke:var(--warn);stroke-width:${w.ring}`],
    ['.half', 'fill:var(--warn)'],
    ['.square', 'fill:var(--fail)'],
    ['.bar', `fill:none;stroke:var(--sheet);stroke-width:${w.outline}`],
    ['.broken', `fill:var(--sheet);stroke:var(--ink);stroke-width:${w.frame};stroke-dasharray:${dashes(unit, 3.4, 2.6)}`],
    // Details.
    ['.source', `fill:none;stroke:var(--ink);stroke-width:${w.line}`],
    ['.sign-box', 'fill:var(--ink)'],
    ['.letter', 'fill:var(--sheet)'],
    ['.panel', 'fill:var(--wallface)'],
    ['.detail-edge', `fill:none;stroke:var(--ink);stroke-width:${w.dots}`],
  ]
  const scoped = (selector: string): string =>
    selector
      .split(',')
      .map((one) => `${scope} ${one}`)
      .join(',')
  return all.map(([selector, declarations]) => `${scoped(selector)}{${declarations}}`).join('\n')
}

const family = '"Source Sans 3 Variable","Source Sans 3",system-ui,sans-serif'

/** How a drawing on a screen looks: a rule for each role, colours from the lights' properties. Lines are 1.5 times as heavy in the sun. */
export const drawingCss = (): string => `.drawing{display:block;color:var(--ink);font-family:${family}}
${rules('.drawing', onScreen, (weight) => `calc(${weight}px*var(--k))`, 1)}
.drawing .figure:focus{outline:none}
.drawing .figure:focus-visible>.touch{stroke:var(--act);stroke-width:3}
.drawing .figure[role=button]{cursor:pointer}
`

/** How a drawing on paper looks: weights in mm. Tape prints as light grey with its hook when there is no colour. */
export const paperCss = (): string => `.drawing.on-paper{display:block;color:var(--ink);font-family:${family}}
${rules('.drawing.on-paper', onPaper, (weight) => `${weight}`, 0.265)}
@media print and (monochrome){.drawing.on-paper .measured>.block,.drawing.on-paper .off>.block{fill:#dcdcdc}.drawing.on-paper .hook{fill:#000}}
`
