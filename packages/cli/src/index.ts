import { once } from 'node:events'
import { run } from './run.ts'
import { terminal } from './terminal.ts'

// Who reads the output may have seen enough: `evenhem plan … | head`.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
    process.exit()
  })
}

const asking = terminal()
process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  flush: async () => process.stdout.writableNeedDrain && once(process.stdout, 'drain'),
  // An empty NO_COLOR counts as unset.
  colours: process.stdout.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb',
  isTerminal: process.stdout.isTTY === true,
  progress: process.stderr.isTTY === true && process.env.TERM !== 'dumb',
  ...(process.stdin.isTTY === true && process.stderr.isTTY === true && { ask: asking.ask }),
})
asking.close()
