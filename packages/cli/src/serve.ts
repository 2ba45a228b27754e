import { once } from 'node:events'
import { existsSync } from 'node:fs'
import { buildServer, builtViewer, listen } from '@evenhem/server'
import { type Command, subjects, Trouble } from './command.ts'
import { open } from './job.ts'
import { practiceOn } from './practice.ts'
import { plain } from './table.ts'

const usualPort = 4170

export const serve: Command = {
  name: 'serve',
  says: 'serve',
  more: 'serve.more',
  subjects: subjects.folder,
  options: { port: { says: '--port', value: 'N' }, practice: { says: '--practice' } },
  run: async ({ subject, options }, { out, err, voice }) => {
    const port = portOf(options.port)
    if (!existsSync(`${builtViewer}/index.html`)) throw new Trouble('not-built')
    const { file, job, diagnostics } = await open(subject)
    if (!job || diagnostics.some(({ severity }) => severity === 'error')) err(`${plain(voice('has-errors', { file }))}\n`)
    const practice = 'practice' in options ? await practiceOn(subject) : undefined
    const server = buildServer({ job: practice?.folder ?? subject })
    const address = await listen(server, port).catch((error) => inUse(error, port))
    out(`${address}\n`)
    await Promise.race([once(process, 'SIGINT'), once(process, 'SIGTERM')])
    await server.close()
    await practice?.away()
    return 0
  },
}

function portOf(written = String(usualPort)): number {
  const port = Number(written)
  if (/^\d+$/.test(written) && port <= 65_535) return port
  throw new Trouble('bad-port', { got: written, usual: String(usualPort) })
}

function inUse(error: NodeJS.ErrnoException, port: number): never {
  if (error.code === 'EADDRINUSE') throw new Trouble('port-taken', { port: String(port) })
  if (error.code === 'EACCES') throw new Trouble('port-closed', { port: String(port) })
  throw error
}
