import { error, type Finding, short } from './finding.ts'
import { codeOf } from './reader.ts'
import { type Member, type Node, nodesOf, type ObjectNode } from './tree.ts'

/** What stands in a text and does not survive JSON.parse as it was written: names that stand twice, unpaired surrogates, numbers. */
export function oddities(text: string, root: Node): readonly Finding[] {
  return [...nodesOf(root)].flatMap((node) => {
    if (node.is === 'object') return [...twice(node), ...node.members.flatMap((member) => surrogates(member.name, member))]
    if (node.is === 'string') return surrogates(String(node.value), node)
    return node.is === 'number' ? oddNumber(text.slice(node.start, node.end), node.start) : []
  })
}

function twice({ members }: ObjectNode): readonly Finding[] {
  const first = new Map<string, Member>()
  const findings: Finding[] = []
  for (const member of members) {
    const before = first.get(member.name)
    if (before) findings.push(error('job/name-twice', spot(member), { name: member.name }, spot(before)))
    else first.set(member.name, member)
  }
  return findings
}

const spot = ({ start, end }: { readonly start: number; readonly end: number }) => ({ from: start, to: end })

function surrogates(value: string, at: { readonly start: number; readonly end: number }): readonly Finding[] {
  const [half] = /\p{Surrogate}/u.exec(value) ?? []
  return half === undefined ? [] : [error('job/surrogate', spot(at), { got: codeOf(half) })]
}

/** A decimal number as its digits and the power of ten of the last: what two ways of writing the same number share. */
function exactly(number: string): string {
  const [, sign = '', whole = '', part = '', power = '0'] = /^(-?)(\d+)(?:\.(\d+))?(?:e([-+]?\d+))?$/i.exec(number) ?? []
  const digits = (whole + part).replace(/^0+/, '')
  const kept = digits.replace(/0+$/, '')
  return kept === '' ? '0' : `${sign}${kept}e${BigInt(power) - BigInt(part.length) + BigInt(digits.length - kept.length)}`
}

function oddNumber(got: string, from: number): readonly Finding[] {
  const value = Number(got)
  const at = { from, to: from + got.length }
  if (!Number.isFinite(value)) return [error('job/number-too-large', at, { got: short(got) })]
  if (Object.is(value, -0) && exactly(got) === '0') return [error('job/minus-zero', at, { got: short(got) })]
  const whole = /^-?\d+$/.test(got) && !Number.isSafeInteger(value)
  return whole || exactly(got) !== exactly(String(value))
    ? [error('job/number-not-kept', at, { got: short(got), kept: String(value) })]
    : []
}
