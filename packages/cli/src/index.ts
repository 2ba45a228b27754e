import { run } from './run.ts'

// Who reads the output may have seen enough: `evenhem plan … | head`.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
    process.exit()
  })
}

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  // An empty NO_COLOR counts as unset.
  colours: process.stdout.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb',
})
