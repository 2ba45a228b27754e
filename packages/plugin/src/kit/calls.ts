import type { Job } from '@evenhem/job'
import type { Need, Plugin, Rule } from '../contract.ts'

/** One run of a rule: what it got and what it answered, for which job. */
export interface Call {
  readonly found: Job
  readonly rule: Rule
  readonly subject: object
  readonly facts: Readonly<Record<string, unknown>>
  readonly answer: unknown
}

/** The same plugin, whose rules get frozen input and note every run. */
export function recorded(plugin: Plugin, note: (call: Omit<Call, 'found'>) => void): Plugin {
  const rules = plugin.rules.map(
    (rule): Rule => ({
      ...rule,
      run: (subject, facts) => {
        const answer = rule.run(frozen(subject), frozen(facts))
        note({ rule, subject, facts, answer })
        return answer
      },
    }),
  )
  return { ...plugin, rules }
}

/** Freezes a value and all that lies in it. */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value
  Object.freeze(value)
  for (const inner of Object.values(value)) frozen(inner)
  return value
}

/** The same plugins, none of which gives this fact. Their rules run as before. */
export const without = (plugins: readonly Plugin[], fact: string): readonly Plugin[] =>
  plugins.map((plugin) => ({ ...plugin, rules: plugin.rules.map((rule) => mute(rule, fact)) }))

function mute(rule: Rule, fact: string): Rule {
  const keys = Object.keys(rule.gives).filter((key) => rule.gives[key]?.id === fact)
  if (keys.length === 0) return rule
  const run: Rule['run'] = (subject, facts) =>
    Object.fromEntries(Object.entries(rule.run(subject, facts)).filter(([key]) => !keys.includes(key)))
  return { ...rule, run }
}

/** What a rule gets for a need that nobody fills; undefined when it would wait instead. */
export function leftOut(need: Need): { readonly value: unknown } | undefined {
  if ('maybe' in need) return { value: undefined }
  return 'each' in need || need.many ? { value: [] } : undefined
}

/** Where a value holds something that JSON would lose or change; undefined when it would come back the same. */
export function notJson(value: unknown, path = ''): string | undefined {
  if (value === null || typeof value === 'string' || typeof value === 'boolean' || (value === undefined && path !== ''))
    return undefined
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${path} is ${value}`
  if (Array.isArray(value))
    return firstOf(
      value.map((inner, at) => (inner === undefined ? `${path}/${at} is undefined` : notJson(inner, `${path}/${at}`))),
    )
  if (!isPlain(value)) return `${path} is no plain data`
  return firstOf(Object.entries(value).map(([name, inner]) => notJson(inner, `${path}/${name}`)))
}
const firstOf = (list: readonly (string | undefined)[]): string | undefined => list.find((each) => each !== undefined)
const isPlain = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && [Object.prototype, null].includes(Object.getPrototypeOf(value))
