import { once } from 'node:events'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { buildServer, builtViewer, type Desk, holdsJobs, listen, listJobs, type Network, qrText } from '@evenhem/server'
import { type Command, type Session, subjects, Trouble } from './command.ts'
import { open } from './job.ts'
import { devicesAt, networkIn } from './network.ts'
import { practiceOn } from './practice.ts'
import { plain } from './table.ts'

const usualPort = 4170

export const serve: Command = {
  name: 'serve',
  says: 'serve',
  more: 'serve.more',
  subjects: subjects.folder,
  options: {
    port: { says: '--port', value: 'N' },
    practice: { says: '--practice' },
    network: { says: '--network' },
    name: { says: '--name.network', value: 'NAME' },
    cert: { says: '--cert', value: 'FILE' },
    key: { says: '--key', value: 'FILE' },
  },
  run: async ({ subject, options }, session) => {
    const port = portOf(options.port)
    if (!existsSync(`${builtViewer}/index.html`)) throw new Trouble('not-built')
    const isPractice = 'practice' in options
    if (isPractice && holdsJobs(subject)) throw new Trouble('practice-many', { folder: subject })
    const network = await networkIn(subject, options)
    if (network) await devicesAt(network.devices)
    await sayJobs(subject, session)
    const practice = isPractice ? await practiceOn(subject) : undefined
    try {
      await served(practice?.folder ?? subject, port, network, session)
      return 0
    } finally {
      await practice?.away()
    }
  },
}

/** Serves until somebody ends it. Throws `Trouble` when the port cannot be opened. */
async function served(job: string, port: number, network: Network | undefined, session: Session): Promise<void> {
  const server = buildServer({ job, network })
  try {
    const address = await listen(server, port, { network: network !== undefined }).catch((error) => inUse(error, port))
    session.out(`${address}\n`)
    if (network) session.out(await invitation(server.desk, address, network, session))
    await Promise.race([once(process, 'SIGINT'), once(process, 'SIGTERM')])
  } finally {
    await server.close()
  }
}

/** Says which jobs cannot be read, and how many there are where there may be many. Throws `Trouble` when there is none. */
async function sayJobs(path: string, { err, voice }: Session): Promise<void> {
  const unread = (file: string) => err(`${plain(voice('has-errors', { file }))}\n`)
  if (holdsJobs(path)) {
    const jobs = await listJobs(path)
    err(`${plain(voice('serving-many', { count: jobs.length, folder: path }))}\n`)
    for (const { state, name } of jobs) if (state === 'broken') unread(join(path, name, 'job.json'))
    return
  }
  const { file, job, diagnostics } = await open(path)
  if (!job || diagnostics.some(({ severity }) => severity === 'error')) unread(file)
}

/** Where tablets find the server, how the first one is paired, and what plain http means. */
export async function invitation(desk: Desk, address: string, { https }: Network, session: Session): Promise<string> {
  const { voice, isTerminal = false, colours } = session
  const addresses = desk.addresses()
  const { code, until, link } = desk.invite()
  const minutes = Math.round((until.getTime() - Date.now()) / 60_000)
  const lines = [
    ...(addresses.length > 0 ? addresses : [voice('no-addresses')]),
    '',
    voice('pair-first', { link, code, count: minutes, address }),
    ...(isTerminal ? [(await qrText(link, colours)).replace(/\n$/, '')] : []),
    ...(https ? [] : ['', voice('plain-http')]),
  ]
  return lines.map((line) => `${line}\n`).join('')
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
