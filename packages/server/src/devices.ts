import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { readPlain } from '@evenhem/job/read'
import { answer } from './answers.ts'
import { randomText } from './chance.ts'
import { readKept } from './looks.ts'
import { replacePrivate } from './private-file.ts'

/** A device that was paired. Of its secret only the SHA-256 is kept, in hexadecimal. */
export interface Device {
  readonly id: string
  readonly name: string
  readonly hash: string
  /** When it was paired, and when it asked for something, to the hour; RFC 3339. */
  readonly since: string
  readonly seen?: string
}
/** The paired devices of a file, or whoever else has a secret. Everything throws the answer for a broken file when it is not as it is written here. */
export interface Devices {
  readonly all: () => Promise<readonly Device[]>
  /** The device that a token `<id>.<secret>` is of; undefined when it is of none. */
  readonly by: (token: string) => Promise<Device | undefined>
  /** Adds one under a name that no other has, and answers its token, which nobody can tell later. */
  readonly add: (name: string) => Promise<{ readonly device: Device; readonly token: string }>
  /** Whether it was there. */
  readonly remove: (id: string) => Promise<boolean>
  /** Notes that it was seen, at most once an hour. */
  readonly saw: (device: Device) => Promise<void>
}

const hourMs = 3_600_000
const longestName = 40
const moment = (now: number): string => new Date(now).toISOString()
const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('hex')

/** What is answered for a file that is broken. */
interface Broken {
  readonly code: string
  readonly message: string
}

/** The devices of a file, which need not be there yet. Other processes may change it meanwhile. `broken`: left out, it is said of devices. */
export function devicesIn(file: string, now: () => number = Date.now, broken: Broken = brokenDevices): Devices {
  const read = readKept((path: string) => readDevices(path, broken))
  const all = (): Promise<readonly Device[]> => read(file).catch(none)
  /** Puts the changed list in the place of the file; nobody else changes it meanwhile. A file that is broken stays. */
  const change = (work: (devices: readonly Device[]) => readonly Device[]): Promise<void> =>
    replacePrivate(file, async () => `${JSON.stringify(work(await readDevices(file, broken).catch(none)), null, 2)}\n`)
  // When a note of it was tried, so that a disk that takes nothing is not asked all the time.
  const noted = new Map<string, number>()

  async function by(token: string): Promise<Device | undefined> {
    const [, id, secret = ''] = /^([a-z0-9]{1,20})\.([\w-]{1,100})$/.exec(token) ?? []
    const device = (await all()).find((each) => each.id === id)
    return device && timingSafeEqual(Buffer.from(device.hash), Buffer.from(hashOf(secret))) ? device : undefined
  }

  async function add(name: string): Promise<{ readonly device: Device; readonly token: string }> {
    const secret = randomBytes(32).toString('base64url')
    const made = { id: randomText(8), hash: hashOf(secret), since: moment(now()) }
    let device: Device = { ...made, name }
    await change((devices) => {
      device = { ...made, name: freeName(name, devices) }
      return [...devices, device]
    })
    return { device, token: `${device.id}.${secret}` }
  }

  async function remove(id: string): Promise<boolean> {
    if (!(await all()).some((device) => device.id === id)) return false
    await change((devices) => devices.filter((device) => device.id !== id))
    return true
  }

  async function saw({ id, seen }: Device): Promise<void> {
    const last = Math.max(noted.get(id) ?? 0, Date.parse(seen ?? '') || 0)
    if (now() - last < hourMs) return
    noted.set(id, now())
    await change((devices) => devices.map((each) => (each.id === id ? { ...each, seen: moment(now()) } : each)))
  }
  return { all, by, add, remove, saw }
}

/** The name, with a number behind it where another device has it: `Ana’s tablet 2`. */
function freeName(name: string, devices: readonly Device[]): string {
  const taken = new Set(devices.map((device) => device.name.toLowerCase()))
  for (let n = 1; ; n++) {
    const ending = n === 1 ? '' : ` ${n}`
    const free = [...name].slice(0, longestName - ending.length).join('') + ending
    if (!taken.has(free.toLowerCase())) return free
  }
}

const unseen = /[\p{Control}\p{Surrogate}\p{Line_Separator}\p{Paragraph_Separator}\u202a-\u202e\u2066-\u2069]/u
/** A name as it is kept, without spaces around it; undefined when a device may not be called so. */
export function nameOf(written: string): string | undefined {
  const name = written.trim().normalize('NFC')
  const isSeen = /[\p{Letter}\p{Number}\p{Punctuation}\p{Symbol}]/u.test(name) && !unseen.test(name)
  return isSeen && [...name].length <= longestName ? name : undefined
}

const none = (error: NodeJS.ErrnoException): readonly Device[] => {
  if (error.code !== 'ENOENT') throw error
  return []
}

async function readDevices(file: string, { code, message }: Broken): Promise<readonly Device[]> {
  const plain = readPlain(await readFile(file, 'utf8'))
  const value = 'value' in plain ? plain.value : undefined
  if (Array.isArray(value) && value.every(isDevice) && new Set(value.map(({ id }) => id)).size === value.length) return value
  throw answer(503, code, message)
}

const brokenDevices: Broken = {
  code: 'devices-broken',
  message:
    'Unexpected content of .evenhem/devices.json in the folder that is served, expected the list of paired devices; nobody but the desk gets in until it is put right, or moved away and every tablet paired again.',
}

const isMoment = (value: unknown): boolean => typeof value === 'string' && !Number.isNaN(Date.parse(value))
function isDevice(value: unknown): value is Device {
  if (value === null || typeof value !== 'object') return false
  const { id, name, hash, since, seen } = value as Readonly<Record<string, unknown>>
  const isNamed = typeof id === 'string' && /^[a-z0-9]{1,20}$/.test(id) && typeof name === 'string' && nameOf(name) === name
  return isNamed && /^[0-9a-f]{64}$/.test(String(hash)) && isMoment(since) && (seen === undefined || isMoment(seen))
}
