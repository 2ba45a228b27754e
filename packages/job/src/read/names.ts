import { error, type Finding } from './finding.ts'
import type { Pass } from './keywords.ts'
import { nearest } from './near.ts'
import { below, type Pointer } from './pointers.ts'
import { idOf, type Members, own } from './values.ts'

/** What one walk over a value read tells. */
export interface Walked {
  /** How many members all its objects have. */
  readonly names: number
  /** Items of one list that have the same id. */
  readonly twice: readonly Finding[]
}

/** Walks over a whole value, once. Pointers are made only where there is something to say. */
export function walk(root: unknown): Walked {
  let names = 0
  const twice: Finding[] = []
  const path: (string | number)[] = []
  const visit = (value: unknown, token?: string | number): void => {
    if (value === null || typeof value !== 'object') return
    if (token !== undefined) path.push(token)
    if (Array.isArray(value)) visitList(value)
    else
      for (const name in value) {
        names++
        visit((value as Members)[name], name)
      }
    if (token !== undefined) path.pop()
  }
  const visitList = (list: readonly unknown[]): void => {
    sameIds(list, path, twice)
    for (let index = 0; index < list.length; index++) visit(list[index], index)
  }
  visit(root)
  return { names, twice }
}

function sameIds(list: readonly unknown[], path: readonly (string | number)[], twice: Finding[]): void {
  if (list.length < 2) return
  const first = new Map<string, number>()
  list.forEach((item, index) => {
    const id = idOf(item)
    const before = id === undefined ? undefined : first.get(id)
    if (id === undefined) return
    if (before === undefined) first.set(id, index)
    else twice.push(error('job/id-twice', { value: idAt(path, index) }, { id }, { value: idAt(path, before) }))
  })
}

const idAt = (path: readonly (string | number)[], index: number): Pointer => [...path, index, 'id'].reduce<Pointer>(below, '')

// To look for what was meant costs; nobody reads more than these.
const mostFindings = 1500

/** Names that must be ids of a list of the job, and are not. */
export function checkNames(job: unknown, pass: Pass): readonly Finding[] {
  const lists = new Map<string, readonly string[] | undefined>()
  const idsOf = (list: string): readonly string[] | undefined => {
    const items = own(job, list) ?? []
    if (!lists.has(list)) lists.set(list, Array.isArray(items) ? items.flatMap((item) => idOf(item) ?? []) : undefined)
    return lists.get(list)
  }
  const findings: Finding[] = []
  for (const { at, value, says } of pass.names) {
    const ids = idsOf(String(says))
    if (typeof value === 'string' && ids && findings.length < mostFindings)
      findings.push(...nameless(at, value, String(says), ids))
  }
  return findings
}

function nameless(at: Pointer, id: string, list: string, ids: readonly string[]): readonly Finding[] {
  if (ids.includes(id)) return []
  const near = nearest(id, ids)
  const values = { id, list, ids: ids.slice(0, 16).join(', ') }
  if (near) return [error('job/names-nothing-near', { value: at }, { ...values, near })]
  return [error(ids.length > 0 ? 'job/names-nothing' : 'job/names-nothing-at-all', { value: at }, values)]
}
