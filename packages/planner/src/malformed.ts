import type { Fact } from '@evenhem/plugin'
import { stages } from '@evenhem/plugin'
import type { Collected, Node } from './arrangement.ts'
import { collected } from './arrangement.ts'
import type { CheckFact } from './outcome.ts'
import type { Fault } from './plan.ts'

type Wrong = Pick<Fault, 'what' | 'message'>
type Members = Readonly<Record<string, unknown>>

/** What is wrong with a rule's answer; undefined when it is well. */
export function malformed(node: Node, answer: unknown, checkFact?: CheckFact): Wrong | undefined {
  if (!isObject(answer) || typeof answer.then === 'function')
    return {
      what: 'malformed',
      message: `Unexpected answer ${shown(answer)} from ${node.name}, expected an object of facts or { ask: […] }`,
    }
  if ('ask' in answer) return wrongAsk(node, answer)
  for (const key in answer) {
    const wrong = wrongFact(node, key, answer[key], checkFact)
    if (wrong) return wrong
  }
  return undefined
}

function wrongAsk(node: Node, { ask, ...others }: Members): Wrong | undefined {
  const [other] = Object.keys(others)
  if (other !== undefined)
    return {
      what: 'malformed',
      message: `Unexpected "${other}" beside "ask" from ${node.name}, expected one or the other; split the rule`,
    }
  if (Array.isArray(ask) && ask.length > 0 && ask.every((place) => typeof place === 'string' && place.startsWith('/')))
    return undefined
  return { what: 'malformed', message: `Unexpected ask ${shown(ask)} from ${node.name}, expected a list of absolute places` }
}

function wrongFact(node: Node, key: string, value: unknown, checkFact?: CheckFact): Wrong | undefined {
  const fact = node.gives.get(key)
  if (!fact)
    return {
      what: 'undeclared',
      message: `Unexpected "${key}" from ${node.name}, expected ${[...node.gives.keys()].join(', ') || 'nothing'}; declare it under \`gives\``,
    }
  if (value === undefined) return undefined
  if (!fact.many) return refused(node, fact, value, checkFact)
  if (!Array.isArray(value))
    return { what: 'malformed', message: `Unexpected ${shown(value)} for ${fact.id} from ${node.name}, expected a list` }
  const list = collected.get(fact.id)
  for (const item of value) {
    const wrong = (list && wrongItem(node, list, item)) ?? refused(node, fact, item, checkFact)
    if (wrong) return wrong
  }
  return undefined
}
function refused(node: Node, fact: Fact, value: unknown, checkFact?: CheckFact): Wrong | undefined {
  const message = checkFact?.(fact, value)
  return message === undefined
    ? undefined
    : { what: 'refused', message: `Unexpected value of ${fact.id} from ${node.name}: ${message}` }
}

/** What the host itself relies on in what it collects. */
const relied: Readonly<Record<Collected, Readonly<Record<string, (value: unknown) => boolean>>>> = {
  checks: {
    code: isText,
    at: isText,
    verdict: isOneOf('pass', 'warn', 'fail', 'unknown'),
    values: isObject,
    stops: isAbsentOr(isOneOf(...stages)),
  },
  steps: { id: isText, code: isText, stage: isOneOf(...stages), after: isAbsentOr(Array.isArray) },
  parts: { what: isText, count: Number.isFinite },
  layers: { view: isText, depth: Number.isFinite, marks: Array.isArray },
  reckonings: { name: isText, what: isText, value: Number.isFinite, terms: Array.isArray },
  entries: { section: isText, code: isText, values: isObject },
}
function wrongItem(node: Node, list: Collected, item: unknown): Wrong | undefined {
  if (!isObject(item))
    return { what: 'malformed', message: `Unexpected ${shown(item)} among ${list} from ${node.name}, expected an object` }
  for (const member in relied[list]) {
    if (!relied[list][member]?.(item[member]))
      return { what: 'malformed', message: `Unexpected "${member}": ${shown(item[member])} among ${list} from ${node.name}` }
  }
  return undefined
}

function isObject(value: unknown): value is Members {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
function isText(value: unknown): boolean {
  return typeof value === 'string'
}
function isOneOf(...options: readonly unknown[]) {
  return (value: unknown): boolean => options.includes(value)
}
function isAbsentOr(is: (value: unknown) => boolean) {
  return (value: unknown): boolean => value === undefined || is(value)
}
const shown = (value: unknown): string => {
  try {
    return (JSON.stringify(value) ?? String(value)).slice(0, 80)
  } catch {
    return 'a value that is not JSON'
  }
}
