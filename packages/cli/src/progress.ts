import type { Session } from './command.ts'
import { plain } from './table.ts'

// A person notices that nothing happens after about so long, and reads no more than ten lines a second.
const patience = 300
const rhythm = 100
/** Back to the start of the line, and what stands there taken away. */
const wiped = '\r\u001b[K'

/**
 * Does something for each of many, saying on one line of a terminal how far it is, and takes that line away in the end. Says nothing
 * where `err` is no terminal or where it is soon done. `clock` counts milliseconds.
 */
export function eachInView<T, R>(
  items: readonly T[],
  work: (item: T) => R,
  { err, voice, progress = false }: Pick<Session, 'err' | 'voice' | 'progress'>,
  clock: () => number = () => performance.now(),
): readonly R[] {
  if (!progress) return items.map(work)
  const start = clock()
  let said = start + patience - rhythm
  const show = (done: number): void => {
    if (clock() - said < rhythm) return
    said = clock()
    err(`${wiped}${plain(voice('planned', { done, total: items.length }))}`)
  }
  const results = items.map((item, n) => {
    const result = work(item)
    show(n + 1)
    return result
  })
  if (said >= start + patience) err(wiped)
  return results
}
