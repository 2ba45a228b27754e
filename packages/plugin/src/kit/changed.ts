/** A job with a value at a place, for examples: only the path to it is copied. Items of lists are named by their ids; without a value the member is left out. */
export function changed<T>(root: T, place: string, value?: unknown): T {
  return put(
    root,
    place
      .split('/')
      .slice(1)
      .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~')),
    value,
  ) as T
}
function put(root: unknown, [token, ...rest]: readonly string[], value: unknown): unknown {
  if (token === undefined) return value
  if (Array.isArray(root)) return root.map((item) => (item.id === token ? put(item, rest, value) : item))
  const { [token]: old, ...others } = (root ?? {}) as Record<string, unknown>
  const next = put(old, rest, value)
  return next === undefined ? others : { ...(root as object), [token]: next }
}
