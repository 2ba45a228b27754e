/** Colours by what they are for, in three lights. The names are custom properties: `sheet` is `--sheet`. */
export type Light = 'paper' | 'night' | 'sun'
export type Token =
  | 'sheet'
  | 'desk'
  | 'panel'
  | 'ink'
  | 'ink2'
  | 'line'
  | 'faint'
  | 'hatch'
  | 'wallface'
  | 'casing'
  | 'frame'
  | 'glass'
  | 'rod'
  | 'rodline'
  | 'fabric'
  | 'fshade'
  | 'fold'
  | 'fedge'
  | 'mark'
  | 'markbg'
  | 'act'
  | 'onact'
  | 'tape'
  | 'tapeink'
  | 'tapehook'
  | 'tapeedge'
  | 'blade'
  | 'tick'
  | 'warn'
  | 'warnbg'
  | 'fail'
  | 'failbg'
  | 'pass'

type Colours = Readonly<Record<Token, `#${string}`>>

const paper: Colours = {
  sheet: '#fcfcfa',
  desk: '#e7eae6',
  panel: '#f2f4f0',
  ink: '#16212b',
  ink2: '#4b5762',
  line: '#7b8791',
  faint: '#d3d8d5',
  hatch: '#a9b2b5',
  wallface: '#fcfcfa',
  casing: '#ffffff',
  frame: '#2b3946',
  glass: '#e6eeee',
  rod: '#c49a62',
  rodline: '#5e421c',
  fabric: '#ece4d3',
  fshade: '#d9ccb2',
  fold: '#b5a382',
  fedge: '#6d5d40',
  mark: '#1b48a6',
  markbg: '#e4ebf8',
  act: '#1b48a6',
  onact: '#ffffff',
  tape: '#ffd84d',
  tapeink: '#1d1a08',
  tapehook: '#8a6a06',
  tapeedge: '#ffd84d',
  blade: '#fff3c4',
  tick: '#8a6a06',
  warn: '#8a4a00',
  warnbg: '#fdf0d8',
  fail: '#a01c2c',
  failbg: '#fbe9ea',
  pass: '#1c6a40',
}
const night: Colours = {
  sheet: '#10181f',
  desk: '#0a1015',
  panel: '#17222b',
  ink: '#e9edea',
  ink2: '#a9b5bb',
  line: '#6d7c86',
  faint: '#2a3842',
  hatch: '#475661',
  wallface: '#121b23',
  casing: '#1b2731',
  frame: '#b9c5cb',
  glass: '#16303a',
  rod: '#6d5028',
  rodline: '#dcb67c',
  fabric: '#3a372e',
  fshade: '#2c2a23',
  fold: '#6f684f',
  fedge: '#cabf9f',
  mark: '#93b8ff',
  markbg: '#1c2c4a',
  act: '#93b8ff',
  onact: '#0b1524',
  tape: '#e6bd3c',
  tapeink: '#171302',
  tapehook: '#8a5a00',
  tapeedge: '#e6bd3c',
  blade: '#2b2713',
  tick: '#fbe7a2',
  warn: '#ffb65c',
  warnbg: '#34260f',
  fail: '#ff9a9a',
  failbg: '#3a1a1e',
  pass: '#82d8a6',
}
const sun: Colours = {
  sheet: '#ffffff',
  desk: '#ffffff',
  panel: '#ffffff',
  ink: '#000000',
  ink2: '#1c1c1c',
  line: '#3a3a3a',
  faint: '#8a8a8a',
  hatch: '#777777',
  wallface: '#ffffff',
  casing: '#ffffff',
  frame: '#000000',
  glass: '#ffffff',
  rod: '#ffffff',
  rodline: '#000000',
  fabric: '#ffffff',
  fshade: '#e4e4e4',
  fold: '#8a8a8a',
  fedge: '#000000',
  mark: '#0022a8',
  markbg: '#ffffff',
  act: '#000000',
  onact: '#ffffff',
  tape: '#ffe100',
  tapeink: '#000000',
  tapehook: '#000000',
  tapeedge: '#000000',
  blade: '#ffffff',
  tick: '#000000',
  warn: '#6b3600',
  warnbg: '#ffffff',
  fail: '#8c0014',
  failbg: '#ffffff',
  pass: '#004d24',
}

/** Indoors, in the dark, in the sun. */
export const lights: Readonly<Record<Light, Colours>> = { paper, night, sun }
/** Lines are this much heavier in each light. */
export const weights: Readonly<Record<Light, number>> = { paper: 1, night: 1, sun: 1.5 }

/** Pairs that stand on one another, and the least contrast they need: 4.5 for text, 3 for what carries meaning without text. */
export const pairs: readonly { readonly front: Token; readonly back: Token; readonly least: 4.5 | 3 }[] = [
  ...(['sheet', 'panel', 'fabric', 'blade'] as const).map((back) => ({ front: 'ink', back, least: 4.5 }) as const),
  ...(['sheet', 'panel'] as const).map((back) => ({ front: 'ink2', back, least: 4.5 }) as const),
  ...(['sheet', 'panel', 'markbg'] as const).map((back) => ({ front: 'mark', back, least: 4.5 }) as const),
  ...(['sheet', 'panel'] as const).map((back) => ({ front: 'warn', back, least: 4.5 }) as const),
  { front: 'fail', back: 'sheet', least: 4.5 },
  { front: 'pass', back: 'sheet', least: 4.5 },
  { front: 'onact', back: 'act', least: 4.5 },
  { front: 'tapeink', back: 'tape', least: 4.5 },
  { front: 'tapehook', back: 'tape', least: 3 },
  { front: 'line', back: 'sheet', least: 3 },
  { front: 'fedge', back: 'fabric', least: 3 },
  { front: 'rodline', back: 'rod', least: 3 },
  { front: 'frame', back: 'casing', least: 3 },
  { front: 'tick', back: 'blade', least: 3 },
]
/** Below 3 on purpose: a stronger line always stands beside them. */
export const quietOnPurpose: readonly Token[] = ['hatch', 'faint', 'fold']

const channel = (hex: string): number => {
  const value = Number.parseInt(hex, 16) / 255
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
}
/** Relative luminance of `#rrggbb`, WCAG 2.2. */
const luminance = (colour: string): number =>
  0.2126 * channel(colour.slice(1, 3)) + 0.7152 * channel(colour.slice(3, 5)) + 0.0722 * channel(colour.slice(5, 7))
/** Contrast ratio of two colours, 1 to 21, WCAG 2.2. */
export function contrast(a: string, b: string): number {
  const [dark, bright] = [luminance(a), luminance(b)].sort((one, other) => one - other) as [number, number]
  return (bright + 0.05) / (dark + 0.05)
}
