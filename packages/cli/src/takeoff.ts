import type { ClothTakeoff, FabricSum, PanelTakeoff, Takeoff } from '@evenhem/drapery/facts'
import { type Job, nameOf, type Place, type PlacedWindow, placeInWords } from '@evenhem/job'
import { type Length, metre, twelveDigits, yard } from '@evenhem/length'
import type { GivenFact } from '@evenhem/planner'
import { tapeFor } from '@evenhem/server'
import { type Asked, type Session, Trouble, unitIn } from './command.ts'
import { csvOf } from './csv.ts'
import { type Ready, windowNamed } from './job.ts'
import { planned } from './plans.ts'
import { type Speech, speechFor } from './speech.ts'
import { plain, table } from './table.ts'

/** The cloth of one treatment, and where it hangs. */
export interface TreatmentCloth extends Takeoff {
  readonly treatment: Place
}
interface WindowCloth {
  readonly window: PlacedWindow
  readonly treatments: readonly TreatmentCloth[]
}

/** The cloth that a plan counts, treatment by treatment. */
export const clothIn = (facts: readonly GivenFact[]): readonly TreatmentCloth[] =>
  facts.flatMap(({ id, at, value }) => (id === 'drapery/takeoff@1' ? [{ treatment: at, ...(value as Takeoff) }] : []))
const sumsIn = (facts: readonly GivenFact[]): readonly FabricSum[] =>
  facts.flatMap(({ id, value }) => (id === 'drapery/fabric-sums@1' ? (value as readonly FabricSum[]) : []))

type Naming = (at: Place) => string
const namesFor =
  (job: Job, { language }: Speech): Naming =>
  (at) =>
    placeInWords(job, at, '', language)
const fabricName = (naming: Naming, { fabric }: { readonly fabric: string }): string => naming(`/fabrics/${fabric}`)

const clothRow = (cloth: ClothTakeoff, { say, length, cloth: long, voice }: Speech, naming: Naming): readonly string[] => [
  say(`drapery/cloth-${cloth.as}`),
  fabricName(naming, cloth),
  voice('cuts-of', { count: cloth.cuts.value, length: length(cloth.cut.value) }),
  long(cloth.cloth.value),
  cloth.halfDrop && cloth.halfDrop.value > 0 ? `${say('drapery/half-drop-extra')} ${length(cloth.halfDrop.value)}` : '',
]
function panelRow(
  { panel, outer, flat, weight }: PanelTakeoff,
  cloths: readonly ClothTakeoff[],
  speech: Speech,
): readonly string[] {
  const { say, length, weight: heavy, number } = speech
  const each = cloths.map(({ as, panels }) => {
    const cut = panels.find((one) => one.panel === panel)
    return cut ? `${say(`drapery/cloth-${as}`)} ${length(cut.cutWidth.value)} (${number(cut.widths.value)})` : ''
  })
  return [
    say(`drapery/panel-${outer}`),
    `${say('drapery/flat-width')} ${length(flat.value)}`,
    `${say('drapery/cut-width')} (${say('drapery/widths')}): ${each.join(', ')}`,
    weight ? heavy(weight.value) : '',
  ]
}

/** How cloth is cut, for people: each cloth of a treatment, then each panel. */
export const clothLines = (treatments: readonly TreatmentCloth[], speech: Speech, naming: Naming): string =>
  treatments
    .map(
      ({ cloths, panels }) =>
        table(cloths.map((cloth) => clothRow(cloth, speech, naming))) +
        table(
          panels.map((panel) => panelRow(panel, cloths, speech)),
          '    ',
        ),
    )
    .join('')

const sumRow = (sum: FabricSum, { say, cloth }: Speech, naming: Naming): readonly string[] => [
  fabricName(naming, sum),
  `${say('drapery/cloth-needed')} ${cloth(sum.needed.value)}`,
  sum.placing ? `${say('drapery/placing-extra')} ${cloth(sum.placing.value)}` : '',
  `${say('drapery/cloth-ordered')} ${cloth(sum.order.value)}`,
]

function text(job: Job, windows: readonly WindowCloth[], sums: readonly FabricSum[], speech: Speech): string {
  const naming = namesFor(job, speech)
  const counted = windows.filter(({ treatments }) => treatments.some(({ cloths }) => cloths.length > 0))
  const each = counted.map(
    ({ window: { room, window }, treatments }) => `${room.name}, ${window.name}\n${clothLines(treatments, speech, naming)}`,
  )
  const all = sums.length > 0 ? [`${speech.voice('in-all')}\n${table(sums.map((sum) => sumRow(sum, speech, naming)))}`] : []
  return plain(`${job.job.name}\n\n${[...each, ...all].join('\n')}`)
}

const columns = [
  ...(['room', 'window', 'treatment', 'what', 'fabric', 'panel', 'widths', 'cut-width', 'cuts'] as const),
  ...(['cut-length', 'yards', 'metres', 'kilograms'] as const),
] as const
type Row = Readonly<Partial<Record<(typeof columns)[number], string>>>
/** Both as numbers: metres are exact, yards to twelve digits. */
const bothLengths = (length: Length): Row => ({
  yards: String(twelveDigits(length / yard)),
  metres: String(twelveDigits(length / metre)),
})

function clothRows(treatment: TreatmentCloth, { say, length }: Speech, naming: Naming): readonly Row[] {
  const ofCloths = treatment.cloths.flatMap((cloth) => {
    const own = { what: say(`drapery/cloth-${cloth.as}`), fabric: fabricName(naming, cloth) }
    const panels = cloth.panels.map(({ panel, cutWidth, widths }): Row => {
      const outer = treatment.panels.find((each) => each.panel === panel)?.outer
      return { ...own, panel: say(`drapery/panel-${outer}`), widths: String(widths.value), 'cut-width': length(cutWidth.value) }
    })
    const cuts = { widths: String(cloth.widths.value), cuts: String(cloth.cuts.value), 'cut-length': length(cloth.cut.value) }
    return [...panels, { ...own, ...cuts, ...bothLengths(cloth.cloth.value) }]
  })
  const weights = treatment.panels.flatMap(({ outer, weight }): readonly Row[] =>
    weight ? [{ what: say('drapery/panel-weight'), panel: say(`drapery/panel-${outer}`), kilograms: String(weight.value) }] : [],
  )
  return [...ofCloths, ...weights]
}
const sumRows = (sum: FabricSum, { say }: Speech, naming: Naming): readonly Row[] =>
  [sum.needed, sum.placing, sum.order].flatMap((each) =>
    each ? [{ what: say(each.what), fabric: fabricName(naming, sum), ...bothLengths(each.value) }] : [],
  )

function spreadsheet(job: Job, windows: readonly WindowCloth[], sums: readonly FabricSum[], speech: Speech): string {
  const naming = namesFor(job, speech)
  const body = windows.flatMap(({ window: { room, window }, treatments }) =>
    treatments.flatMap((treatment) =>
      clothRows(treatment, speech, naming).map((row): Row => {
        const id = treatment.treatment.split('/').at(-1) ?? ''
        return { room: room.name, window: window.name, treatment: id, ...row }
      }),
    ),
  )
  const rows = [...body, ...sums.flatMap((sum) => sumRows(sum, speech, naming))]
  return csvOf([
    columns.map((column) => speech.voice(`csv.${column}`)),
    ...rows.map((row) => columns.map((column) => row[column] ?? '')),
  ])
}

/** What could not be counted, with the places that must be filled first; or that the order counts no cloth at all. */
function lacking(job: Job, windows: readonly WindowCloth[], { voice, language }: Speech): string {
  if (windows.length === 0) return `${voice('nothing-to-cut')}\n`
  const lines = windows.flatMap(({ window, treatments }) => {
    const places = treatments.flatMap(({ lacks }) => lacks).map((at) => placeInWords(job, at, window.place, language))
    return places.length > 0 ? [`${voice('not-counted', { window: nameOf(window), places: places.join('; ') })}\n`] : []
  })
  return plain(lines.join(''))
}

const exact = (windows: readonly WindowCloth[], sums: readonly FabricSum[]): string => {
  const byWindow = windows.map(({ window: { place }, treatments }) => ({ window: place, treatments }))
  return `${JSON.stringify({ windows: byWindow, fabrics: sums }, null, 2)}\n`
}

/** Writes the cloth of every window, or of one, and for the whole job the sums by fabric. */
export function writeTakeoff(ready: Ready, { options }: Asked, session: Session): 0 {
  if ('json' in options && 'csv' in options) throw new Trouble('not-both', { first: '--json', second: '--csv' })
  const { found } = ready
  const chosen = options.window === undefined ? undefined : [windowNamed(found, options.window)]
  const { sheets, whole } = planned(ready, session, ({ window, plan }) => ({ window, treatments: clothIn(plan.facts) }), chosen)
  const windows = sheets.filter(({ treatments }) => treatments.length > 0)
  const sums = chosen ? [] : sumsIn(whole().facts)
  const speech = speechFor(tapeFor(found, unitIn(options)), session.language)
  if ('json' in options) session.out(exact(windows, sums))
  else if ('csv' in options) session.out(spreadsheet(found, windows, sums, speech))
  else if (windows.length > 0) session.out(text(found, windows, sums, speech))
  session.err(lacking(found, windows, speech))
  return 0
}
