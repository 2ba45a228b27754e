import type { Place } from '../places.ts'
import { idOf, own } from './values.ts'

/** A JSON pointer (RFC 6901): list items by number, counted from 0. Its escapes are those of a place. */
export type Pointer = string

/** The names and numbers of a pointer or a place, their escapes undone. */
export const tokensOf = (pointer: Pointer | Place): readonly string[] => raw(pointer).map(unescaped)
const raw = (pointer: string): readonly string[] => pointer.split('/').slice(1)
const unescaped = (token: string): string => token.replaceAll('~1', '/').replaceAll('~0', '~')

/** What stands at a pointer; undefined when nothing does. */
export const at = (root: unknown, pointer: Pointer): unknown =>
  raw(pointer).reduce<unknown>((value, token) => own(value, unescaped(token)), root)

/** The pointer of a member or item of what stands at a pointer. */
export const below = (pointer: Pointer, name: string | number): Pointer =>
  `${pointer}/${String(name).replaceAll('~', '~0').replaceAll('/', '~1')}`
/** The last name or number of a pointer; empty for the root. */
export const last = (pointer: Pointer): string => unescaped(pointer.slice(pointer.lastIndexOf('/') + 1))

/** The place of a pointer; undefined when an item on the way has no id. */
export function placeOf(root: unknown, pointer: Pointer): Place | undefined {
  let value = root
  let place = ''
  for (const token of raw(pointer)) {
    const next = own(value, unescaped(token))
    const id = Array.isArray(value) ? idOf(next) : undefined
    if (Array.isArray(value) && id === undefined) return undefined
    place = id === undefined ? `${place}/${token}` : below(place, id)
    value = next
  }
  return place
}

/** The pointer of a place; undefined when no item on the way has the id. */
export function pointerOf(root: unknown, place: Place): Pointer | undefined {
  let value = root
  let pointer = ''
  for (const token of raw(place)) {
    const index = Array.isArray(value) ? value.findIndex((item) => idOf(item) === unescaped(token)) : undefined
    if (index === -1) return undefined
    pointer += `/${index ?? token}`
    value = own(value, index === undefined ? unescaped(token) : String(index))
  }
  return pointer
}
