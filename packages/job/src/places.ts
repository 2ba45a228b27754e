/** A JSON pointer in which a list item is named by its `id`: `/rooms/den/windows/w1/treatments/over/panels/left/pin`. */
export type Place = string

// Most tokens are ids, which hold neither: to look is cheaper than to replace.
const escaped = (token: string): string =>
  token.includes('~') || token.includes('/') ? token.replaceAll('~', '~0').replaceAll('/', '~1') : token
const unescaped = (token: string): string => token.replaceAll('~1', '/').replaceAll('~0', '~')

/** A place below another. */
export const below = (place: Place, ...tokens: readonly string[]): Place =>
  place + tokens.map((token) => `/${escaped(token)}`).join('')
/** The tokens of a place. */
export const tokens = (place: Place): readonly string[] => (place === '' ? [] : place.slice(1).split('/').map(unescaped))

const step = (value: unknown, token: string): unknown => {
  if (Array.isArray(value)) return value.find((item) => item?.id === token)
  return value !== null && typeof value === 'object' && Object.hasOwn(value, token)
    ? (value as Record<string, unknown>)[token]
    : undefined
}
/** What stands at a place; undefined when nothing does. */
export const valueAt = (root: unknown, place: Place): unknown => tokens(place).reduce(step, root)
