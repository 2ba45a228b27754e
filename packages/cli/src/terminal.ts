import { createInterface, type Interface } from 'node:readline'
import type { Ask } from './command.ts'

/**
 * Asks on a terminal, each question on `stderr`, so that results stay alone on `stdout`. Opens it with the first question: until then
 * Ctrl+C is not taken. Lines that were pasted at once answer one question after the other. The answer is undefined after Ctrl+C or Ctrl+D.
 */
export function terminal(): { readonly ask: Ask; readonly close: () => void } {
  let lines: Interface | undefined
  let typed: AsyncIterator<string> | undefined
  const open = (): AsyncIterator<string> => {
    lines = createInterface({ input: process.stdin, output: process.stderr })
    lines.once('SIGINT', () => lines?.close())
    return lines[Symbol.asyncIterator]()
  }
  const ask: Ask = async (question) => {
    typed ??= open()
    lines?.setPrompt(question)
    lines?.prompt()
    const { value, done } = await typed.next()
    return done ? undefined : value
  }
  return { ask, close: () => lines?.close() }
}
