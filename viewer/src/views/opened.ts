import type { Figure, Mark } from '@evenhem/drawing'
import { type Place, placeInWords } from '@evenhem/job'
import type { From, Length, Reckoning, Unit } from '@evenhem/length'
import { settle } from '@evenhem/planner'
import { amountOf } from '../data/amount.ts'
import { tellingPart } from '../data/apart.ts'
import { formAt } from '../data/form.ts'
import { holeName, holesOf } from '../data/holes.ts'
import { clockOf, dayAndTime } from '../data/moment.ts'
import type { Sheet } from '../data/sheet.ts'
import { stairsOf } from '../data/stairs.ts'
import type { SiteTools } from '../data/tools.ts'
import { type Line, ledger, linesOf, type Origin, originOf } from '../data/working.ts'
import type { ShownLine, Working } from '../elements/working-panel.ts'
import { capital, fill, language, words } from '../words.ts'

const picture = { width: 340, most: 176 }

const shortly = (kind: Origin['kind']): string => (kind === 'order' || kind === 'hardware' || kind === 'trade' ? words[kind] : '')

const write = (sheet: Sheet) => (length: number) => sheet.write(length as Length)

function lineShown(sheet: Sheet, line: Line, lines: readonly Line[]): ShownLine {
  const { kind, sign, of, origin, comesTo } = line
  return {
    kind,
    sign,
    of,
    what: namedApart(
      sheet,
      line.what,
      of,
      lines.filter((other) => other.what === line.what && other.kind === kind).map((other) => other.of),
    ),
    amount: amountOf(line.value, line.unit, sheet),
    measured: origin.kind === 'reading',
    from: origin.kind === 'reading' ? clockOf(origin.reading.when) || words.reading : shortly(origin.kind),
    opens: kind === 'term' && origin.kind === 'sum',
    ...(comesTo
      ? {
          comesTo: {
            what: sheet.say(comesTo.what),
            amount: amountOf(comesTo.value, comesTo.unit, sheet),
            of: comesTo.name,
          },
        }
      : {}),
  }
}

const howOf = (sheet: Sheet, { how, source }: Reckoning): string | undefined =>
  how === 'formula'
    ? [source, source && sheet.help(source)]
        .filter(Boolean)
        .map((code, n) => (n === 0 ? sheet.say(code as string) : code))
        .join('. ')
    : words.how[how]

/** A hole goes by what it is and where; any other number by its own name. */
function titleOf(sheet: Sheet, { name, what }: Reckoning): string {
  const hole = holesOf(sheet).find(({ fromFloor, fromWall }) => (fromWall ?? fromFloor).name === name)
  if (hole) return holeName(sheet, hole)
  const alike = sheet.plan.reckonings.filter((other) => other.what === what)
  return capital(
    namedApart(
      sheet,
      what,
      name,
      alike.map((other) => other.name),
    ),
  )
}
/** A number's name, with what tells it from others of the same name. */
function namedApart(sheet: Sheet, what: string, name: string, others: readonly string[]): string {
  const part = tellingPart(
    name,
    others.filter((other) => other !== name),
  )
  return part === '' ? sheet.say(what) : `${sheet.say(what)}, ${part}`
}

function reckoned(sheet: Sheet, reckoning: Reckoning, tall: number): Omit<Working, 'trail'> {
  const lines = ledger(reckoning, sheet)
  const how = howOf(sheet, reckoning)
  const stairs = reckoning.how === 'sum' ? stairsOf(lines, picture.width, tall) : undefined
  return {
    title: titleOf(sheet, reckoning),
    amount: amountOf(reckoning.value, reckoning.unit, sheet),
    measured: false,
    write: write(sheet),
    lines: lines.map((line) => lineShown(sheet, line, lines)),
    ...(how ? { how } : {}),
    ...(stairs ? { stairs } : {}),
  }
}

/** Where a number that nobody worked out stands, in words. */
function told(sheet: Sheet, origin: Exclude<Origin, { kind: 'sum' }>, tools?: SiteTools): NonNullable<Working['leaf']> {
  const at = 'place' in origin ? [{ name: words.at, text: placeInWords(sheet.ordered, origin.place, '', language) }] : []
  const { measured, workroom } = sheet.ordered.job
  const canBeRead = tools && 'place' in origin && formAt(origin.place) ? { place: origin.place } : {}
  switch (origin.kind) {
    case 'reading': {
      const { by, when } = origin.reading
      return {
        source: words.measuredBy,
        facts: [
          ...at,
          ...(by ? [{ name: words.who, text: by }] : []),
          ...(when ? [{ name: words.when, text: dayAndTime(when) }] : []),
        ],
        ...canBeRead,
        isReading: true,
        history: tools ? historyShown(sheet, origin.place, tools) : [],
      }
    }
    case 'hardware':
      return { source: fill(words.inTheHardware, { name: origin.entry }), facts: at, ...canBeRead }
    case 'trade':
      return { source: words.tradeDefault, facts: [] }
    case 'number':
      return { source: words.plainNumber, facts: [] }
    case 'order':
      return {
        source: words.onTheOrder,
        facts: [
          ...at,
          { name: words.who, text: measured?.by ?? workroom?.name ?? '' },
          { name: words.when, text: measured?.date ?? '' },
        ].filter(({ text }) => text !== ''),
        ...canBeRead,
      }
  }
}

/** Everything that was put at a place, the latest first; of values that stand against each other each can be chosen. */
function historyShown(sheet: Sheet, place: Place, tools: SiteTools): NonNullable<NonNullable<Working['leaf']>['history']> {
  const live = tools.live(place)
  const isConflict = live.some(({ read }) => JSON.stringify(read) !== JSON.stringify(live[0]?.read))
  const all = tools.history(place)
  if (all.length < 2) return []
  return all.toReversed().map((entry) => {
    const { event, read, refused } = entry
    const value = refused ? String(event.value) : read === undefined ? words.gone : readingText(sheet, place, read)
    const said = `${value} · ${event.who ?? event.by} · ${dayAndTime(event.clock)}${refused ? ` · ${fill(words.refused, { why: refused.says[language] ?? refused.code })}` : ''}`
    const counts = isConflict && live.includes(entry) ? () => void tools.put([{ place, value: event.value, read }]) : undefined
    return { text: said, ...(counts ? { counts } : {}) }
  })
}
const readingText = (sheet: Sheet, place: Place, read: unknown): string =>
  typeof read === 'number' && formAt(place)?.is === 'length' ? sheet.write(read as Length).text : String(read)

/** A number that no reckoning holds, as a working or a drawing names it. */
interface Seen {
  readonly what: string
  readonly value: number
  readonly unit: Unit
}

function seenAs(sheet: Sheet, of: From): Seen | undefined {
  for (const reckoning of sheet.plan.reckonings) {
    const line = linesOf(reckoning, sheet).find((line) => line.of === of)
    if (line) return line
  }
  const number = sheet.plan.steps.flatMap((step) => step.numbers ?? []).find((number) => number.of === of)
  const figure = sheet.layers.flatMap((layer) => layer.marks.flatMap(figuresIn)).find((figure) => figure.of === of)
  const { what, value } = number ?? figure ?? {}
  return what === undefined || value === undefined ? undefined : { what, value, unit: 'length' }
}
const figuresIn = (mark: Mark): readonly Figure[] =>
  mark.kind === 'group' || mark.kind === 'detail' ? mark.marks.flatMap(figuresIn) : 'figure' in mark ? [mark.figure] : []

/** What opens when a number is touched: its working, its picture at most so tall, or where it stands. Undefined when nothing is known of it. */
export function opened(sheet: Sheet, of: From, tall = picture.most, tools?: SiteTools): Omit<Working, 'trail'> | undefined {
  const origin = originOf(of, sheet)
  if (origin.kind === 'sum') {
    const reckoning = sheet.reckonings.get(origin.name)
    return reckoning && reckoned(sheet, reckoning, tall)
  }
  const known = seenAs(sheet, settle(of, sheet.reckonings))
  if (!known) return undefined
  return {
    title: capital(sheet.say(known.what)),
    amount: amountOf(known.value, known.unit, sheet),
    measured: origin.kind === 'reading',
    lines: [],
    write: write(sheet),
    leaf: told(sheet, origin, tools),
  }
}
