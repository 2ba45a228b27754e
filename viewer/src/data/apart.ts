const parts = (name: string): readonly string[] => name.split(/[/#-]/)
const shared = (lists: readonly (readonly string[])[], from: 'start' | 'end', most: number): number => {
  const at = (list: readonly string[], n: number) => list.at(from === 'start' ? n : -1 - n)
  let count = 0
  while (count < most && lists.every((list) => at(list, count) === at(lists[0] ?? [], count))) count++
  return count
}

/** What tells a name from others of the same kind: `left` for `over#hem-left` beside `over#hem-right`. Empty when there are no others. */
export function tellingPart(name: string, others: readonly string[]): string {
  const all = [name, ...others].map(parts)
  const shortest = Math.min(...all.map((list) => list.length))
  const before = shared(all, 'start', shortest)
  const after = shared(all, 'end', shortest - before)
  return others.length === 0
    ? ''
    : parts(name)
        .slice(before, parts(name).length - after)
        .join(' ')
}
