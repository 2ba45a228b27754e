import type { Mark } from '@evenhem/drawing'
import type { Values } from '../contract.ts'
import type { Plan } from './host.ts'

/** A code that a rule gave to be said, with the values that its sentence gets; `anyValues` where the host adds them. */
export interface Said {
  readonly code: string
  readonly values: Values
  readonly by: string
  readonly anyValues?: boolean
  /** Said only where there are words for it. */
  readonly perhaps?: boolean
}

/** Every code that this plugin gave in these plans. */
export function saidIn(plans: readonly Plan[], plugin: string): readonly Said[] {
  const own = <T extends { readonly by: string }>(list: readonly T[]): readonly T[] =>
    list.filter(({ by }) => by.startsWith(`${plugin}/`))
  const said = plans.flatMap((plan): readonly Said[] => [
    ...own(plan.checks)
      .filter((check) => check.because === undefined)
      .map((check) => ({ code: check.says ?? check.code, values: check.values, by: check.by })),
    ...own(plan.checks).flatMap(({ ways = [], by }) => ways.map(({ code, values }) => ({ code, values, by }))),
    ...plan.steps.filter((step) => step.plugin === plugin).flatMap(saidByStep),
    ...own(plan.parts).map((part) => ({ code: part.what, values: {}, by: part.by })),
    ...own(plan.reckonings).flatMap(({ by, what, terms, source }) =>
      [what, ...terms.map((term) => term.what), ...(source === undefined ? [] : [source])].map((code) => ({
        code,
        values: {},
        by,
      })),
    ),
    ...own(plan.entries).map((entry) => ({ code: entry.code, values: entry.values, by: entry.by })),
    ...own(plan.layers).flatMap((layer) =>
      layer.marks.flatMap(codesOfMark).map((code) => ({ code, values: {}, by: layer.by, anyValues: true })),
    ),
  ])
  return [...said, ...said.flatMap(codesInValues)]
}

function saidByStep({
  plugin,
  rule,
  code,
  values = {},
  numbers = [],
  cautions = [],
  tools = [],
}: Plan['steps'][number]): readonly Said[] {
  const by = `${plugin}/${rule}`
  const sentences = [{ code, values, by }, ...['.why', '.done'].map((part) => ({ code: code + part, values, by, perhaps: true }))]
  return [
    ...sentences,
    ...[...numbers.map(({ what }) => what), ...cautions, ...tools].map((each) => ({ code: each, values: {}, by })),
  ]
}

function codesOfMark(mark: Mark): readonly string[] {
  switch (mark.kind) {
    case 'caption':
      return mark.code === undefined ? [] : [mark.code]
    case 'dimension':
    case 'height':
      return [mark.figure.what]
    case 'finding':
      return [mark.code]
    case 'group':
      return [...(mark.words === undefined ? [] : [mark.words]), ...mark.marks.flatMap(codesOfMark)]
    case 'detail':
      return [mark.code, ...mark.marks.flatMap(codesOfMark)]
    default:
      return []
  }
}

const codesInValues = ({ values, by }: Said): readonly Said[] =>
  Object.values(values).flatMap((value) =>
    typeof value === 'object' && 'code' in value ? [{ code: value.code, values: {}, by }] : [],
  )
