import { randomInt } from 'node:crypto'

/** Without those that are taken for one another: i, l and 1, o and 0. */
const letters = 'abcdefghjkmnpqrstuvwxyz23456789'

/** So many characters that nobody can foresee. */
export const randomText = (length: number): string => Array.from({ length }, () => letters[randomInt(letters.length)]).join('')
