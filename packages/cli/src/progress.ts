import type { Session } from './command.ts'
import { plain } from './table.ts'
import type { Fillings } from './voice.ts'
import type { CliCode } from './words.ts'

// A person notices that nothing happens after about so long, and reads no more than ten lines a second.
const patience = 300
const rhythm = 100
/** Back to the start of the line, and what stands there taken away. */
const wiped = '\r\u001b[K'

/** A line of a terminal that says how far something is. */
export interface LineInView {
  /** Says it in place of what stands there: not before somebody may wonder, and no more often than is read. */
  readonly say: (code: CliCode, values: Fillings) => void
  readonly away: () => void
}

/** Says nothing where `err` is no terminal. `clock` counts milliseconds. */
export function lineInView({ err, voice, progress = false }: Seen, clock: () => number = () => performance.now()): LineInView {
  const start = clock()
  let said = start + patience - rhythm
  return {
    say: (code, values) => {
      if (!progress || clock() - said < rhythm) return
      said = clock()
      err(`${wiped}${plain(voice(code, values))}`)
    },
    away: () => said >= start + patience && err(wiped),
  }
}
type Seen = Pick<Session, 'err' | 'voice' | 'progress'>

/** Does something for each of many, saying how far it is, and takes that line away in the end. */
export function eachInView<T, R>(items: readonly T[], work: (item: T) => R, session: Seen, clock?: () => number): readonly R[] {
  const line = lineInView(session, clock)
  const results = items.map((item, n) => {
    const result = work(item)
    line.say('planned', { done: n + 1, total: items.length })
    return result
  })
  line.away()
  return results
}
