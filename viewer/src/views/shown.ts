import { type Place, placeInWords } from '@evenhem/job'
import type { Length } from '@evenhem/length'
import { overridePlace, stagesOf, type WindowPlan } from '@evenhem/planner'
import { bare as bareAmount } from '../data/amount.ts'
import { factsOf, type Hole } from '../data/facts.ts'
import { formAt } from '../data/form.ts'
import { holesOf, layerAt, layerOf, supportOf } from '../data/holes.ts'
import { stepId } from '../data/house.ts'
import { isOff, meantAt } from '../data/meant.ts'
import { rawLength } from '../data/raw.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SiteTools } from '../data/tools.ts'
import type { ShownAsk, ShownTrouble } from '../elements/findings-list.ts'
import type { ShownFinding, ShownWay } from '../elements/findings-row.ts'
import type { HoleSide } from '../elements/hole-list.ts'
import type { ShownPins } from '../elements/pin-cards.ts'
import type { ShownStage } from '../elements/stage-list.ts'
import type { ShownCapture, ShownStep } from '../elements/step-panel.ts'
import { choiceName } from '../words/choices.ts'
import { capital, fill, language, words } from '../words.ts'

type Check = WindowPlan['checks'][number]
type Step = WindowPlan['steps'][number]
type Capture = NonNullable<Step['captures']>[number]

const codeOf = (check: Check): string => check.says ?? check.code

/** A check in words, with what it closes. */
export const shownFinding =
  (sheet: Sheet) =>
  (check: Check): ShownFinding => ({
    code: check.code,
    verdict: check.verdict,
    says: withLayer(sheet, check.on, sheet.say(codeOf(check), check.values)),
    ...optional('help', sheet.help(codeOf(check), check.values)),
    ...((check.verdict === 'fail' || check.verdict === 'unknown') && check.stops
      ? { stops: fill(words.stops, { stage: words.stages[check.stops] }) }
      : {}),
    ...optional('override', check.override),
    ...(check.verdict !== 'pass' && check.override === undefined
      ? { ways: (check.ways ?? []).map((way) => shownWay(sheet, way)) }
      : {}),
    ...(isStopping(check) && check.override === undefined ? optional('overrideAt', overridePlace(check)) : {}),
  })

const isStopping = ({ verdict, stops }: Check): boolean => stops !== undefined && (verdict === 'fail' || verdict === 'unknown')

/** A way out in words, and what is put when it is taken. */
const shownWay = (sheet: Sheet, { code, values, put }: NonNullable<Check['ways']>[number]): ShownWay => ({
  says: sheet.say(code, values),
  put: put.map(({ at, value }) => {
    if (typeof value !== 'object') return { place: at, value, read: value }
    const number = Object.values(value)[0] as number
    return { place: at, read: number, value: 'length' in value ? rawLength(number as Length) : number }
  }),
})
/** Where several layers hang, a sentence begins with the one that it is about. */
const withLayer = (sheet: Sheet, place: string, says: string): string => {
  const layer = layerAt(sheet, place)
  return layer === undefined ? says : `${capital(layer)}: ${says}`
}
const optional = <K extends string>(name: K, value: string | undefined): Partial<Record<K, string>> =>
  value === undefined ? {} : ({ [name]: value } as Record<K, string>)

/** Why nothing is marked or drilled yet: what closes the first such step that is closed. */
export const marksClosedBy = (sheet: Sheet): string => {
  const step = sheet.plan.steps.find((each) => (each.stage === 'mark' || each.stage === 'drill') && each.closed.length > 0)
  return step ? closedBy(sheet, step) : ''
}

/** Why a step is closed: the sentences of the checks that close it. */
const closedBy = (sheet: Sheet, step: Step): string =>
  sheet.plan.checks
    .filter(
      (check) => step.closed.includes(check.code) && check.stops && (check.verdict === 'fail' || check.verdict === 'unknown'),
    )
    .map((check) => sheet.say(codeOf(check), check.values))
    .join(' ')

/** The nth step of a window in words. */
export function shownStep(sheet: Sheet, n: number): ShownStep | undefined {
  const { steps } = sheet.plan
  const step = steps[n]
  if (!step) return undefined
  const next = steps[n + 1]
  return {
    n: n + 1,
    m: steps.length,
    stage: words.stages[step.stage],
    title: bare(withLayer(sheet, step.on, sheet.say(step.code, step.values))),
    numbers: (step.numbers ?? []).map(({ what, value, of }) => ({
      what: sheet.say(what),
      amount: sheet.write(value as Length),
      of,
    })),
    why: sheet.say(`${step.code}.why`, step.values),
    done: sheet.say(`${step.code}.done`, step.values),
    cautions: (step.cautions ?? []).map((code) => sheet.say(code)),
    ...(step.closed.length > 0 ? { closed: closedBy(sheet, step) } : {}),
    shown: step.done,
    captures: (step.captures ?? []).map((capture) => shownCapture(sheet, capture, step.on)),
    ...(next ? { after: bare(withLayer(sheet, next.on, sheet.say(next.code, next.values))) } : {}),
  }
}
/** Something to read or to tick at a step: what it is, and what stands there. */
function shownCapture(sheet: Sheet, { at, as }: Capture, on: Place): ShownCapture {
  const value = sheet.readings[at]?.value
  const meant = meantAt(sheet, at)
  const amount = (number: number) => (as === 'length' ? sheet.write(number as Length) : bareAmount(number))
  return {
    at,
    as,
    // Of a count it is enough to say of what.
    what: capital(shownPlace(sheet, at, as === 'count' ? at.slice(0, at.lastIndexOf('/')) : on)),
    ...(typeof value === 'number' ? { amount: amount(value) } : {}),
    ...(typeof value === 'string' ? { text: choiceName(value) } : {}),
    ...(meant.value === undefined ? {} : { expected: amount(meant.value) }),
    isDone: as === 'tick' ? value === true : value !== undefined,
    isOff: isOff(meant, value, as),
  }
}
/** A place in words, from this window on, or from what is below it. */
export const shownPlace = (sheet: Sheet, at: Place, within: Place = sheet.place): string =>
  placeInWords(sheet.ordered, at, at.startsWith(`${within}/`) ? within : sheet.place, language, (code) => sheet.say(code))

/** The stages of the work in words. `now`: the id of the step that is shown. */
export const shownStages = (sheet: Sheet, now: string): readonly ShownStage[] =>
  stagesOf(sheet.plan).map(({ stage, steps, done, standing, inTheWay }) => ({
    name: words.stages[stage],
    standing,
    done,
    steps: steps.map((step) => ({
      id: stepId(step),
      title: bare(withLayer(sheet, step.on, sheet.say(step.code, step.values))),
      done: step.done,
    })),
    inTheWay: inTheWay.map((check) => withLayer(sheet, check.on, sheet.say(codeOf(check), check.values))),
    isNow: steps.some((step) => stepId(step) === now),
  }))

/** A title is no sentence: its full stop goes. */
const bare = (said: string): string => said.replace(/\.$/, '')

/** What to measure next, in words. */
export const shownAsks = (sheet: Sheet): readonly ShownAsk[] =>
  sheet.plan.asks.map(({ at, holds }) => ({ at, what: shownPlace(sheet, at), holds }))

/** What could not be worked out, with the plugin and the rule. */
export const shownFaults = (sheet: Sheet): readonly ShownTrouble[] =>
  sheet.plan.faults.map(({ plugin, rule, at, message }) => ({
    what: fill(words.ruleOf, { rule, plugin }),
    where: placeInWords(sheet.ordered, at, '', language),
    says: message,
  }))

/** What stands in the job and nobody here reads. */
export const shownUnread = (sheet: Sheet): readonly ShownTrouble[] =>
  sheet.plan.unread.map(({ at, what, name }) => ({
    what: sheet.say(`host/unread.${what}`, { name }),
    where: placeInWords(sheet.ordered, at, '', language),
    says: sheet.help(`host/unread.${what}`, { name }) ?? '',
  }))

/** Places at which two values stand, with both. */
export const shownConflicts = (sheet: Sheet, tools: SiteTools): readonly { readonly at: Place; readonly what: string }[] =>
  tools.conflicts(sheet.place).map((at) => {
    const values = tools
      .live(at)
      .map(({ read }) =>
        typeof read === 'number' && formAt(at)?.is === 'length' ? sheet.write(read as Length).text : String(read),
      )
    return { at, what: fill(words.conflictAt, { place: capital(shownPlace(sheet, at)), values: values.join(' / ') }) }
  })
/** Entries that were left out, with why. */
export const shownRefused = (sheet: Sheet, tools: SiteTools): readonly ShownTrouble[] =>
  tools.refused(sheet.place).map(({ event, refused }) => ({
    what: fill(words.refusedWhat, { place: capital(shownPlace(sheet, event.place)), value: String(event.value) }),
    where: event.who ?? event.by,
    says: refused?.says[language] ?? refused?.code ?? '',
  }))

/** Pins hook by hook as panels hang, where their hems were read. */
export function shownPins(sheet: Sheet): readonly ShownPins[] {
  const panels = factsOf(sheet.plan, 'drapery/true-up@1').flatMap(({ value }) => value.panels)
  return panels.map(({ outer, hooks }) => {
    const deepest = Math.max(...hooks.map(({ set, pin }) => Math.max(set.value, pin.value)), 1)
    const turned = outer === 'left' ? hooks.toReversed() : hooks
    return {
      name: words.panelNames[outer].toLowerCase(),
      pins: turned.map(({ n, pin, set }) => {
        const isChanged = set.value !== pin.value
        return { n, isChanged, pin: sheet.write(set.value), of: isChanged ? set.name : pin.from, deep: set.value / deepest }
      }),
    }
  })
}

/** The holes of a window by side, with the supports between them; the highest first. */
export function holeSides(sheet: Sheet): readonly HoleSide[] {
  const all = holesOf(sheet)
  const hasSeveral = new Set(all.flatMap(({ support }) => support ?? [])).size > 1
  const nameOf = (hole: Hole): string =>
    [sheet.say(hole.what), hole.support !== undefined && hasSeveral ? supportOf(sheet, hole) : undefined, layerOf(sheet, hole)]
      .filter(Boolean)
      .join(', ')
  const highestFirst = (a: Hole, b: Hole) =>
    (a.side === 'middle' ? a.x.value - b.x.value : 0) || b.fromFloor.value - a.fromFloor.value
  const number = (reckoning: Hole['fromFloor']) => ({ amount: sheet.write(reckoning.value), of: reckoning.name })
  const sides = (['left', 'middle', 'right'] as const).filter(
    (side) => side !== 'middle' || all.some((hole) => hole.side === side),
  )
  return sides.map((side) => ({
    name: words.sideNames[side],
    edge: all.some((hole) => hole.side === side && hole.fromCorner)
      ? words.fromCorner
      : side === 'middle'
        ? words.fromFirstEdge
        : words.fromCasing,
    isOverhead: all.some((hole) => hole.side === side && hole.fromWall !== undefined),
    holes: all
      .filter((hole) => hole.side === side)
      .sort(highestFirst)
      .map((hole) => ({
        what: nameOf(hole),
        fromFloor: number(hole.fromWall ?? hole.fromFloor),
        fromCasing: number(hole.fromCorner ?? hole.fromCasing),
      })),
  }))
}
