import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

/** A heap that is worth the half second it takes to look through it. */
const large = 100_000_000

/** Gives back what nobody holds any more, where that is much: what follows takes its memory outside of the heap, and does not make it shrink. */
export function giveBack(): void {
  if (process.memoryUsage().heapUsed < large) return
  setFlagsFromString('--expose-gc')
  const collect: unknown = runInNewContext('gc')
  // The first finds what is free, the others hand it back.
  if (typeof collect === 'function') for (let n = 0; n < 3; n++) collect()
}
