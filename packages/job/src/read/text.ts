import { error, type Finding } from './finding.ts'
import { walk } from './names.ts'
import { oddities } from './odd.ts'
import { parse } from './parse.ts'
import { deepest, scan } from './scan.ts'
import { type Node, toValue } from './tree.ts'

/** The value of a text, whatever its syntax, and what is wrong with that. Its tree is made when it is asked for. */
export interface TextRead {
  readonly value: unknown
  readonly tree: () => Node
  readonly findings: readonly Finding[]
  /** Ids that stand twice in a list. */
  readonly twice: readonly Finding[]
}

/** Reads JSON: good text by the platform, all else by the tolerant parser. */
export function readText(text: string): TextRead {
  const { tooDeep, names, odd } = scan(text)
  let parsed: ReturnType<typeof parse> | undefined
  const once = () => (parsed ??= parse(text))
  const tree = () => once().root
  if (tooDeep !== undefined)
    return {
      value: undefined,
      tree,
      findings: [error('job/too-deep', { from: tooDeep, to: tooDeep + 1 }, { most: deepest })],
      twice: [],
    }
  try {
    const value: unknown = JSON.parse(text)
    // A name that stands twice is lost in the value, so the text has more of them.
    const walked = walk(value)
    const isPlain = !odd && walked.names === names
    return { value, tree, findings: isPlain ? [] : oddities(text, tree()), twice: walked.twice }
  } catch {
    const { root, faults } = once()
    const findings = faults.length > 0 ? faults : [error('job/stray', { from: 0, to: 1 }, { got: text.slice(0, 1) })]
    const value = toValue(root)
    return { value, tree, findings: [...findings, ...oddities(text, root)], twice: walk(value).twice }
  }
}

// What a broken text lost may well have been there.
const lostWithIt: ReadonlySet<string> = new Set(['job/missing', 'job/missing-plain', 'job/too-few'])
/** What is left to say when the syntax is broken. */
export const without = (findings: readonly Finding[]): readonly Finding[] => findings.filter(({ code }) => !lostWithIt.has(code))
