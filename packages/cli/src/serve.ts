import { once } from 'node:events'
import { existsSync } from 'node:fs'
import { buildServer, builtViewer, listen } from '@evenhem/server'
import { type Command, Trouble } from './command.ts'
import { open } from './job.ts'

const usualPort = 4170

export const serve: Command = {
  name: 'serve',
  says: 'Serve the sheet of a job to this machine, and to nobody else.',
  more: `Prints the address and serves until it is stopped (Ctrl+C). Port 0 takes any that is free; left out: ${usualPort}.`,
  subject: 'folder',
  options: { port: { says: 'The port to listen on.', value: 'N' } },
  run: async ({ subject, options }, { out, err }) => {
    const port = portOf(options.port)
    if (!existsSync(`${builtViewer}/index.html`))
      throw new Trouble('Unexpected: the sheet is not built, expected it in viewer/dist; run npm run build')
    const { file, job, diagnostics } = await open(subject)
    if (!job || diagnostics.some(({ severity }) => severity === 'error'))
      err(`${file} has errors; evenhem check ${file} shows them\n`)
    const server = buildServer({ job: subject })
    const address = await listen(server, port).catch((error) => inUse(error, port))
    out(`${address}\n`)
    await Promise.race([once(process, 'SIGINT'), once(process, 'SIGTERM')])
    await server.close()
    return 0
  },
}

function portOf(written = String(usualPort)): number {
  const port = Number(written)
  if (/^\d+$/.test(written) && port <= 65_535) return port
  throw new Trouble(`Unexpected --port ${written}, expected a whole number from 0 to 65535; left out, it is ${usualPort}`)
}

function inUse(error: NodeJS.ErrnoException, port: number): never {
  if (error.code === 'EADDRINUSE')
    throw new Trouble(
      `Unexpected port ${port}, expected a free one; something listens there already, write --port 0 for any that is free`,
    )
  if (error.code === 'EACCES') throw new Trouble(`Unexpected port ${port}, expected one that you may open; write one above 1023`)
  throw error
}
