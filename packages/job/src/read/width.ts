// Unicode Standard Annex 11, East Asian Width: what a terminal draws two columns wide; the ranges of W and F, joined where only unassigned
// characters lie between. basis: memory
const wide =
  /[\u1100-\u115f\u231a\u231b\u23e9-\u23ec\u25fd\u25fe\u2614\u2615\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{1f000}-\u{1faff}\u{20000}-\u{3fffd}]/u
// What moves nothing: marks over and under letters, joiners, selectors of variants.
const none = /\p{Mn}|\p{Me}|[\u200b-\u200d\u2060]/u
// What a terminal may obey instead of showing: control characters, and marks that turn the direction of writing.
const unsafe = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/u

/** How a character is shown in a terminal: a tab as two spaces, what a terminal would obey as its number. */
export function visible(character: string): string {
  if (character === '\t') return '  '
  return unsafe.test(character) || /\p{Surrogate}/u.test(character)
    ? `<${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`
    : character
}

/** How many columns a text takes that `visible` made. */
export const columns = (text: string): number =>
  [...text].reduce((sum, character) => sum + (none.test(character) ? 0 : wide.test(character) ? 2 : 1), 0)

/** Text that a terminal shows and does not obey. */
export const harmless = (text: string): string => [...text].map(visible).join('')
