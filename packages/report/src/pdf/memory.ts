import { Session } from 'node:inspector/promises'

/** A heap that is worth the time it takes to look through it. */
const large = 100_000_000

/** Gives back what nobody holds any more, where that is much: another process takes its memory beside it, and does not make it shrink. */
export async function giveBack(): Promise<void> {
  if (process.memoryUsage().heapUsed < large) return
  const session = new Session()
  session.connect()
  // Unlike a collector of garbage that is called by its name it also gives back the room for what is new.
  await session.post('HeapProfiler.collectGarbage')
  session.disconnect()
}
