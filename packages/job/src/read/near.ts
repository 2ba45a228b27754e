/** How many letters must be put in, taken out, replaced or swapped with their neighbour to make one word of another. */
function distance(a: string, b: string): number {
  let before: number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      const best = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + (same ? 0 : 1))
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? (before[j - 2] ?? 0) + 1 : best
      next.push(Math.min(best, swapped))
    }
    before = row
    row = next
  }
  return row[b.length] ?? 0
}

const plain = (word: string): string => word.toLowerCase().replaceAll(/[-_ ]/g, '')

// Enough for people's lists; a made one of thousands would cost more than a guess is worth.
const mostWords = 500

/** The word that was probably meant: at most a third of its letters differ, capitals and hyphens not counted; undefined when none is so near. */
export function nearest(got: string, words: readonly string[]): string | undefined {
  if (got.length > 60) return undefined
  const near = words
    .slice(0, mostWords)
    .filter((word) => word.length <= 60)
    .map((word) => ({ word, off: distance(plain(got), plain(word)) }))
    .filter(({ word, off }) => off <= Math.max(1, Math.floor(Math.max(word.length, got.length) / 3)) && off < word.length)
  return near.sort((a, b) => a.off - b.off)[0]?.word
}
