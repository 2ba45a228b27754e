import type { ReadingUnit } from '@evenhem/length'

/** What the sheet itself says. Sentences about the window come from the plugins. `{n}` is filled by `fill`. */
export const words = {
  // Around the sheet.
  back: 'Back',
  close: 'Close',
  units: 'Units: {unit}. Touch for the next.',
  light: 'Light: {light}. Touch for the next.',
  lights: { paper: 'paper', night: 'night', sun: 'sun' },
  sheets: 'Sheets of this window',
  drawing: 'Drawing',
  marks: 'Marks',
  hooks: 'Hooks',
  report: 'Report',
  reportState: 'draft',
  newTab: 'opens in a new tab',
  open: '{n} open',
  noneOpen: 'nothing open',
  holes: '{n} holes',
  hooksAndBearers: '{n} hooks, {m} on the rod',
  drawingTitle: '{window}, drawn to scale. {state}.',
  marksTitle: '{window}: what to pencil on the wall, drawn to scale.',
  draperyState: 'How the drapery is drawn',
  drawn: 'Closed',
  stacked: 'Stacked',

  // The step.
  stepRegion: 'What to do now',
  now: 'Now · step {n} of {m}',
  why: 'Why:',
  caution: 'Caution',
  next: 'Next',
  after: 'Then: {step}',
  last: 'Last step of this window',
  kept: 'Ticked on this tablet only. Not in the record yet.',
  closed: 'Closed until this is settled.',

  // What was checked.
  findings: 'What was checked',
  checks: 'Checks',
  passes: '{n} pass',
  seeAll: 'See all',
  stops: '{stage} and all after it is closed until this is settled.',
  stages: {
    unpack: 'Unpacking',
    'check-in': 'Checking in',
    mark: 'Marking',
    drill: 'Drilling',
    mount: 'Mounting',
    hang: 'Hanging',
    'true-up': 'Truing up',
    dress: 'Dressing',
    finish: 'Finishing',
    'hand-over': 'Handing over',
  },
  toMeasure: 'To measure next',
  holdsUp: '{n} things wait for it',
  holdsUpOne: 'one thing waits for it',
  couldNotWorkOut: 'Could not work this out',
  ruleOf: 'Rule {rule} of the plugin {plugin}',
  notRead: 'Kept in the job, but not read',
  faulty: '{n} could not be worked out',

  // The working of a number.
  howItAddsUp: 'How it adds up',
  trail: 'Numbers that led here',
  less: 'less',
  how: {
    given: '',
    sum: '',
    times: 'Multiplied.',
    divided: 'The first divided by the others.',
    least: 'The smallest of these.',
    most: 'The largest of these.',
  },
  order: 'order',
  hardware: 'hardware',
  trade: 'trade',
  reading: 'measured',
  where: 'Where it stands',
  at: 'Place',
  who: 'By',
  when: 'When',
  onTheOrder: 'Written on the order.',
  inTheHardware: 'From the hardware entry “{name}”.',
  measuredBy: 'Read from a tape. It takes the place of what was ordered.',
  tradeDefault: 'A default of the trade. The workroom can set another.',
  plainNumber: 'A plain number.',
  rounded: 'Shown rounded, {way} by less than {step}.',

  // Marks and hooks.
  hole: 'hole',
  fromFloor: 'floor to hole',
  fromCasing: 'from casing',
  sideNames: { left: 'Left side', right: 'Right side' },
  whereEachHookGoes: 'where each hook goes',
  panels: 'Panel',
  panelNames: { left: 'Left panel', right: 'Right panel' },
  leadingEdge: 'leading edge',
  outerEdge: 'outer edge',
  pleat: 'pleat {n}',
  spaces: '{n} spaces of {space} each',
  returnPart: 'return',
  headingSays: '{panel}, its heading laid flat, {n} hooks from the leading edge to the wall.',
  hooksCount: 'Hooks, both panels',
  bearers: '{what}, both panels',
  pins: 'Pins, from pin top to drapery top',
  need: 'need',
  ordered: 'ordered',
  came: 'came',
  spare: '{n} spare',
  short: '{n} short',
  beforeTheRodGoesUp: 'Before the rod goes up',
  threadFirst: 'Thread it in the order shown: brackets and ends close the rod.',
  stays: '{n} hooks go to the {where}, not to the rod.',

  // Instead of a sheet.
  drawingItself: 'The sheet is being drawn',
  couldNotRead: 'This job could not be read',
  couldNotReach: 'The job did not come through',
  couldNotReachHelp: 'Look whether the program that serves this page still runs, then try again.',
  tryAgain: 'Try again',
  line: 'Line {n}, column {m}.',
  noWindow: 'This job has no window',
  notYet: 'Not enough is known yet to draw this. To measure next:',
} as const

/** The first letter of a sentence or a title, large. */
export const capital = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1)

/** Puts values into the holes of a sentence: `fill('step {n}', { n: 7 })`. */
export const fill = (sentence: string, values: Readonly<Record<string, string | number>>): string =>
  sentence.replaceAll(/\{(\w+)\}/g, (hole, name: string) => String(values[name] ?? hole))

/** What the unit control says. Metric of an order in inches is rounded, and says so. */
export const unitNames = (unit: ReadingUnit, ordered: 'in' | 'mm' | 'cm'): string => {
  if (unit === 'in') return 'in 1/16'
  if (unit === 'ft-in') return 'ft-in'
  return ordered === 'in' ? `${unit}, rounded` : unit
}
