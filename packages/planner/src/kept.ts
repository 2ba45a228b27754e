/** Keeps one value a name while its key holds the same things; the oldest names go when there are more than `most`. */
export function keeping<T>(most = Number.POSITIVE_INFINITY) {
  const kept = new Map<string, { readonly key: readonly unknown[]; readonly value: T }>()
  return (name: string, key: readonly unknown[], make: () => T): T => {
    const known = kept.get(name)
    const entry = known && isSame(known.key, key) ? known : { key, value: make() }
    kept.delete(name)
    kept.set(name, entry)
    if (kept.size > most) kept.delete(kept.keys().next().value as string)
    return entry.value
  }
}
const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, at) => item === b[at])

/** Names and values of an object's members but one: the same things while nobody changed them. */
export const membersBut = (name: string, object: object | undefined): readonly unknown[] =>
  Object.entries(object ?? {})
    .filter(([each]) => each !== name)
    .flat()
