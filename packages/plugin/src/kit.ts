import { type Job, valueAt } from '@evenhem/job'
import type { Ask, Plugin, Verdict } from './contract.ts'
import { type Call, leftOut, notJson, recorded, without } from './kit/calls.ts'
import { farAway } from './kit/drawn.ts'
import { wrongFormat, wrongNames, wrongSchemas } from './kit/format.ts'
import { type CreatePlanner, type Example, type Plan, plansOf } from './kit/host.ts'
import { saidIn } from './kit/said.ts'
import { checkFactsOf } from './kit/schemas.ts'
import { ungiven, unrun } from './kit/unrun.ts'
import { speechless, uneven, valueless, wordless } from './kit/words.ts'
import { unopened, wrongWorkings } from './kit/workings.ts'

export { changed } from './kit/changed.ts'

export interface Conformance {
  /** Registers a test: `test` of vitest, of `node:test`, or of anything else that takes a name and a function. */
  readonly test: (name: string, run: () => void) => unknown
  /** `createPlanner` of `@evenhem/planner`. */
  readonly createPlanner: CreatePlanner
  /** Plugins that it is tried with; the first one is what it is tried alone with. */
  readonly with: readonly Plugin[]
  /** Jobs that make each of its rules run and each of its checks pass and not pass. As read: lengths are whole nanometres. */
  readonly jobs: readonly (Job | { readonly name?: string; readonly ordered: Job; readonly found?: Job })[]
  /** The verdicts that a check can have, where they are not `pass` and one of `warn` and `fail`. */
  readonly verdicts?: Readonly<Record<string, readonly Verdict[]>>
}

/** So many calls of a rule are tried again in other ways. */
const mostCalls = 24

/**
 * Registers the tests that every plugin has to pass: rules are pure and plain, wait and stand alone, facts are what their
 * owners say, every code has its words and every check its examples, and no order of plugins matters. Each failing test
 * lists all that is wrong.
 */
export function conformance(plugin: Plugin, options: Conformance): void {
  const { test, createPlanner, with: others } = options
  const all = [plugin, ...others]
  const examples = options.jobs.map(exampleOf)
  const checkFact = checkFactsOf(all)
  const plansWith = (plugins: readonly Plugin[], jobs: readonly Example[] = examples): readonly Plan[] => {
    const planner = createPlanner(plugins, { checkFact })
    return jobs.flatMap((example) => plansOf(planner, example))
  }
  const tried = once(() => {
    const calls: Call[] = []
    const byExample = examples.map((example) => ({
      found: example.found,
      plans: plansWith([recorded(plugin, (call) => calls.push({ ...call, found: example.found })), ...others], [example]),
    }))
    const plans = byExample.flatMap((each) => each.plans)
    return { calls, plans, byExample, said: saidIn(plans, plugin.id) }
  })
  /** Of each rule that needs a fact an example in which it ran. */
  const needing = (fact: string): readonly Example[] => {
    const rules = plugin.rules.filter((rule) => Object.values(rule.needs).some((need) => 'id' in need && need.id === fact))
    const found = rules.flatMap((rule) =>
      [...new Set(tried().calls.flatMap((call) => (call.rule === rule ? [call.found] : [])))].slice(0, 1),
    )
    return examples.filter((example) => found.includes(example.found))
  }
  /** Of each rule some calls, spread over all that ran: what a rule does to its input does not hang on which of a thousand windows it is. */
  const some = once(() =>
    plugin.rules.flatMap((rule) => {
      const calls = tried().calls.filter((call) => call.rule === rule)
      return calls.filter((_, i) => i % Math.ceil(calls.length / mostCalls) === 0)
    }),
  )
  /** Examples in which together every rule ran. */
  const few = once((): readonly Example[] => {
    const left = new Set(plugin.rules)
    return examples.filter(({ found }) => {
      const ran = tried().calls.filter((call) => call.found === found && left.has(call.rule))
      for (const { rule } of ran) left.delete(rule)
      return ran.length > 0
    })
  })
  const refusal = once(() => refusalOf(() => createPlanner(all)))
  const law = (name: string, wrongs: () => readonly string[]) =>
    test(`${plugin.id}: ${name}`, () => {
      if (refusal()) throw new Error('Not tried, since the plugins do not fit together; see “its rules fit together”')
      nothingWrong(wrongs())
    })

  test(`${plugin.id}: its rules fit together`, () => nothingWrong(refusal() ? [refusal() ?? ''] : []))

  law('its names are names', () => wrongNames(plugin))
  law('its format is a number with an upgrade to each', () => wrongFormat(plugin))
  law('its schemas are closed, and every member says what it is for', () => wrongSchemas(plugin))
  law('every fact that it needs has a giver', () =>
    createPlanner(all)
      .unmet.filter((each) => each.plugin === plugin.id)
      .map(
        ({ rule, fact }) =>
          `${rule} needs ${fact}, which nobody gives; give it, need { maybe: … }, or try it with the plugin that does`,
      ),
  )
  law('every rule runs in some example', () => unrun(plugin, tried().calls, tried().byExample))
  law('no rule has a fault: it changes nothing it reads and gives what it declares, as the owners of the facts say', () =>
    faultsOf(tried().plans, plugin.id),
  )
  law('every fact that it declares is given in some example', () => ungiven(plugin, tried().calls))
  law('every number has its working, which a person can open', () => [
    ...wrongWorkings(plugin, tried().byExample),
    ...unopened(tried().calls, tried().byExample),
  ])
  law('what it draws is in millimetres', () => farAway(plugin, tried().plans))
  law('a rule answers the same twice', () =>
    some()
      .filter(({ rule, subject, facts, answer }) => JSON.stringify(rule.run(subject, facts)) !== JSON.stringify(answer))
      .map(({ rule }) => `${rule.id} answers differently the second time; answer from what it is given alone`),
  )
  law('a rule answers the same after its input went through JSON', () => some().flatMap(afterJson))
  law('a rule bears that nobody gives what it may do without', () => some().flatMap(throwsWithout))
  law('a rule waits for what it needs', () =>
    neededBy(plugin).flatMap((fact) => notWaiting(plugin, plansWith(without(all, fact), needing(fact)), fact)),
  )
  law('a rule asks only for places that are empty', () => some().flatMap(askedInVain))
  law('it speaks English and Spanish', () => speechless(plugin))
  law('every code that it gives has words in all its languages', () =>
    wordless(
      plugin,
      all,
      tried().said,
      plugin.rules.flatMap((rule) => rule.codes ?? []),
    ),
  )
  law('every sentence gets the values that it needs', () => valueless(plugin, tried().said))
  law('its languages have the same codes with the same arguments', () => uneven(plugin))
  law('every check has an example that passes and one that does not', () =>
    unexampled(plugin, tried().plans, options.verdicts ?? {}),
  )
  law('the order of plugins and rules changes nothing', () =>
    differing(reordered(all), JSON.stringify(plansWith(all, few())), (plugins) => JSON.stringify(plansWith(plugins, few()))),
  )
  law('it stands alone', () =>
    [[plugin], [plugin, ...others.slice(0, 1)]].flatMap((plugins) => faultsOf(plansWith(plugins, few()), plugin.id)),
  )
}

function exampleOf(job: Conformance['jobs'][number], at: number): Example {
  const { ordered, found, name } =
    'ordered' in job ? { found: job.ordered, name: undefined, ...job } : { ordered: job, found: job, name: undefined }
  // A copy of our own, since rules get it frozen.
  return JSON.parse(JSON.stringify({ name: name ?? `job ${at + 1}`, ordered, found: found ?? ordered }))
}

const faultsOf = (plans: readonly Plan[], plugin: string): readonly string[] =>
  plans.flatMap((plan) =>
    plan.faults.filter((fault) => fault.plugin === plugin).map(({ message, at }) => `${message} (at ${at || 'the job'})`),
  )

function afterJson({ rule, subject, facts, answer }: Call): readonly string[] {
  const lost = notJson(answer, 'its answer')
  if (lost) return [`${rule.id}: ${lost}`]
  const again = rule.run(JSON.parse(JSON.stringify(subject)), JSON.parse(JSON.stringify(facts)))
  return JSON.stringify(again) === JSON.stringify(answer)
    ? []
    : [`${rule.id} answers differently after its input went through JSON`]
}

function throwsWithout({ rule, subject, facts }: Call): readonly string[] {
  return Object.entries(rule.needs).flatMap(([key, need]) => {
    const left = leftOut(need)
    if (!left) return []
    try {
      rule.run(subject, { ...facts, [key]: left.value })
      return []
    } catch (error) {
      return [`${rule.id} throws without ${key}: ${(error as Error).message}`]
    }
  })
}

const askedInVain = ({ rule, answer, found }: Call): readonly string[] =>
  ((answer as Partial<Ask> | undefined)?.ask ?? [])
    .filter((place) => valueAt(found, place) !== undefined)
    .map((place) => `${rule.id} asks for ${place}, which holds a value; ask for what is empty`)

/** The facts without which a rule of this plugin waits. */
const neededBy = (plugin: Plugin): readonly string[] => [
  ...new Set(
    plugin.rules
      .flatMap((rule) => Object.values(rule.needs))
      .flatMap((need) => (leftOut(need) || 'maybe' in need || 'each' in need ? [] : [need.id])),
  ),
]
function notWaiting(plugin: Plugin, plans: readonly Plan[], fact: string): readonly string[] {
  const waiting = plugin.rules.filter((rule) => Object.values(rule.needs).some((need) => 'id' in need && need.id === fact))
  const codes = new Set(waiting.flatMap((rule) => (rule.codes ?? []).map((code) => `${plugin.id}/${rule.id} ${code}`)))
  const known = plans
    .flatMap((plan) => plan.checks)
    .filter((check) => codes.has(`${check.by} ${check.code}`) && check.verdict !== 'unknown')
  return [...faultsOf(plans, plugin.id), ...known.map((check) => `${check.by} gives ${check.code} without ${fact}`)]
}

function unexampled(plugin: Plugin, plans: readonly Plan[], verdicts: NonNullable<Conformance['verdicts']>): readonly string[] {
  const checks = plans.flatMap((plan) => plan.checks).filter((check) => check.by.startsWith(`${plugin.id}/`))
  const undeclared = checks.filter(
    (check) => !plugin.rules.some((rule) => check.by === `${plugin.id}/${rule.id}` && rule.codes?.includes(check.code)),
  )
  const lacking = plugin.rules
    .flatMap((rule) => rule.codes ?? [])
    .flatMap((code) => {
      const seen = new Set(
        checks.filter((check) => check.code === code && check.because === undefined).map((check) => check.verdict),
      )
      const wanted = verdicts[code]?.map((verdict) => [verdict]) ?? [['pass'], ['warn', 'fail']]
      return wanted
        .filter((any) => !any.some((verdict) => seen.has(verdict as Verdict)))
        .map((any) => `"${code}" has no example of ${any.join(' or ')}; add a job in which it is so`)
    })
  return [
    ...new Set([
      ...undeclared.map((check) => `${check.by} gives "${check.code}", which is not among its codes; add it`),
      ...lacking,
    ]),
  ]
}

const differing = (
  orders: readonly (readonly Plugin[])[],
  straight: string,
  planned: (plugins: readonly Plugin[]) => string,
): readonly string[] =>
  orders.flatMap((plugins, at) => (planned(plugins) === straight ? [] : [`the plan differs in order ${at + 1}`]))

/** Other orders of the same plugins: backwards, and turned by one; rules backwards in both. */
function reordered(plugins: readonly Plugin[]): readonly (readonly Plugin[])[] {
  const turned = plugins.map((plugin) => ({ ...plugin, rules: [...plugin.rules].reverse() }))
  return [[...turned].reverse(), [...turned.slice(1), ...turned.slice(0, 1)]]
}

function refusalOf(make: () => unknown): string | undefined {
  try {
    make()
    return undefined
  } catch (error) {
    return (error as Error).message
  }
}

function nothingWrong(wrongs: readonly string[]): void {
  const all = [...new Set(wrongs)]
  if (all.length > 0) throw new Error(`Unexpected, ${all.length}:\n- ${all.join('\n- ')}`)
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
