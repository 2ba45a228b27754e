import { readFile, stat } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { createSecureContext } from 'node:tls'
import { type Devices, devicesIn, type Https, type Network } from '@evenhem/server'
import { type Asked, Trouble } from './command.ts'
import { why } from './job.ts'

type Options = Asked['options']
const onlyWithNetwork = ['name', 'cert', 'key']

/** The network that was asked for; undefined when it was not. Throws `Trouble` that says what does not go together, or cannot be read. */
export async function networkIn(subject: string, options: Options): Promise<Network | undefined> {
  const alone = onlyWithNetwork.find((option) => option in options)
  if (!('network' in options)) {
    if (alone) throw new Trouble('only-with', { option: `--${alone}`, needs: '--network' })
    return undefined
  }
  if ('practice' in options) throw new Trouble('not-both', { first: '--practice', second: '--network' })
  const https = await httpsIn(options)
  return { names: namesIn(options), devices: await devicesFile(subject), ...(https && { https }) }
}

function namesIn({ name }: Options): readonly string[] {
  if (name === undefined) return []
  if (/^(?=.{1,253}$)[a-z\d]([a-z\d.-]*[a-z\d])?$/i.test(name)) return [name.toLowerCase()]
  throw new Trouble('bad-name', { got: name })
}

async function httpsIn({ cert, key }: Options): Promise<Https | undefined> {
  if (cert === undefined && key === undefined) return undefined
  if (cert === undefined) throw new Trouble('only-with', { option: '--key', needs: '--cert' })
  if (key === undefined) throw new Trouble('only-with', { option: '--cert', needs: '--key' })
  const https = { cert: await read('--cert', cert), key: await read('--key', key) }
  try {
    createSecureContext({ cert: Buffer.from(https.cert), key: Buffer.from(https.key) })
    return https
  } catch (error) {
    throw new Trouble('bad-certificate', { cert, key, error: (error as Error).message })
  }
}

const read = (option: string, file: string): Promise<Uint8Array> =>
  readFile(file).catch((error: NodeJS.ErrnoException) => {
    throw new Trouble('cannot-read', { option, file, why: why(error.code) })
  })

/** Where the paired devices of a folder are kept, or of a job file's folder. Throws `Trouble` when nothing is there. */
export async function devicesFile(path: string): Promise<string> {
  const looks = await stat(path).catch(({ code }: NodeJS.ErrnoException) => {
    throw new Trouble('no-job', { path, why: why(code) })
  })
  return join(looks.isDirectory() ? path : dirname(path), '.evenhem', 'devices.json')
}

/** The paired devices in a file, once it is known that it can be read. Throws `Trouble` otherwise. */
export async function devicesAt(file: string): Promise<Devices> {
  const devices = devicesIn(file)
  await devices.all().catch(({ code }: NodeJS.ErrnoException) => {
    if (code === 'devices-broken') throw new Trouble('devices-broken', { file })
    throw new Trouble('cannot-read', { option: 'devices', file, why: why(code) })
  })
  return devices
}
