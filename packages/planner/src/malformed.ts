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
  return {
    what: 'malformed',
    message: `Unexpected ask ${shown(ask)} from ${node.name}, expected a list of absolute places; make them with below(at, …)`,
  }
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

/** What a member must be, and how that is said. */
interface Expected {
  readonly is: (value: unknown) => boolean
  readonly said: string
}
const text: Expected = { is: (value) => typeof value === 'string', said: 'a text' }
const list: Expected = { is: Array.isArray, said: 'a list' }
const object: Expected = { is: isObject, said: 'an object' }
const number: Expected = { is: Number.isFinite, said: 'a number' }
const oneOf = (...options: readonly string[]): Expected => ({
  is: (value) => options.some((option) => option === value),
  said: `one of ${options.join(', ')}`,
})
const orAbsent = ({ is, said }: Expected): Expected => ({ is: (value) => value === undefined || is(value), said })

/** What the host itself relies on in what it collects. */
const relied: Readonly<Record<Collected, Readonly<Record<string, Expected>>>> = {
  checks: {
    code: text,
    at: text,
    verdict: oneOf('pass', 'warn', 'fail', 'unknown'),
    values: object,
    stops: orAbsent(oneOf(...stages)),
  },
  steps: { id: text, code: text, stage: oneOf(...stages), after: orAbsent(list) },
  parts: { what: text, count: number },
  layers: { view: text, depth: number, marks: list },
  reckonings: { name: text, what: text, value: number, terms: list },
  entries: { section: text, code: text, values: object },
}
function wrongItem(node: Node, kept: Collected, item: unknown): Wrong | undefined {
  if (!isObject(item))
    return { what: 'malformed', message: `Unexpected ${shown(item)} among ${kept} from ${node.name}, expected an object` }
  for (const member in relied[kept]) {
    const expected = relied[kept][member]
    if (expected && !expected.is(item[member]))
      return {
        what: 'malformed',
        message: `Unexpected "${member}": ${shown(item[member])} among ${kept} from ${node.name}, expected ${expected.said}`,
      }
  }
  return undefined
}

function isObject(value: unknown): value is Members {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
const shown = (value: unknown): string => {
  try {
    return (JSON.stringify(value) ?? String(value)).slice(0, 80)
  } catch {
    return 'a value that is not JSON'
  }
}
