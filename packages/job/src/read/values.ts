/** An object of a value read: no list, not null. */
export type Members = Readonly<Record<string, unknown>>
export const isObject = (value: unknown): value is Members => value !== null && typeof value === 'object' && !Array.isArray(value)

/** What an object or a list itself holds under a name or number: nothing that every object inherits. */
export const own = (value: unknown, name: string): unknown =>
  value !== null && typeof value === 'object' && Object.hasOwn(value, name) ? (value as Members)[name] : undefined

/** The id of an item; undefined when it has none. */
export function idOf(item: unknown): string | undefined {
  const id = own(item, 'id')
  return typeof id === 'string' ? id : undefined
}
