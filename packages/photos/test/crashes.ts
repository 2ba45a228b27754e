import { crashAt, strikes, until } from '../../site-log/test/crashes.ts'
import { type Left, SimulatedDisk } from '../../site-log/test/simulated-disk.ts'
import { type Cleaner, incoming, photoFolder } from '../src/index.ts'
import { hashOf } from './drawn.ts'

const bytesOf = (seed: number, length: number): Uint8Array =>
  Uint8Array.from({ length }, (_, at) => [0xff, 0xd8, 0xff][at] ?? (at * seed) % 251)
/** What is sent: the one in pieces, the other one whole. */
const photos = [bytesOf(7, 300), bytesOf(11, 200)] as const
const copies = { large: bytesOf(13, 150), small: bytesOf(17, 90) }
const cleaner: Cleaner = { clean: async () => copies, peak: () => 0, close: () => undefined }
const begin = async (): Promise<SimulatedDisk> => new SimulatedDisk('/job')

/** Sends the first photo in pieces as a tablet does, going on from what is there; takes in the second one. `told` holds what was confirmed. */
async function send({ disk: on }: SimulatedDisk, told: Set<string> = new Set()): Promise<void> {
  const folder = photoFolder('/job', { cleaner, on })
  const pieces = incoming('/job', folder, { on })
  const [sent, whole] = photos
  const hash = hashOf(sent)
  for (let state = await pieces.state(hash), tries = 0; !state.done; tries++) {
    if (tries > 20) throw new Error('it does not end')
    const bytes = sent.subarray(state.have, state.have + 120)
    const arrived = await pieces.add(hash, { from: state.have, size: sent.length, bytes })
    if (arrived.is !== 'here' || arrived.state.refused) throw new Error(JSON.stringify(arrived))
    state = arrived.state
  }
  told.add(hash)
  const taken = await folder.takeIn(whole)
  if (taken.is !== 'taken') throw new Error(taken.refused.code)
  told.add(taken.hash)
}

/** Whatever has a name is whole, and what was confirmed is there. */
async function mustStand({ disk: on }: SimulatedDisk, told: ReadonlySet<string>, where: string): Promise<void> {
  const names = await on.list('/job/photos')
  for (const bytes of photos) {
    const file = `${hashOf(bytes)}.jpg`
    if (!names.includes(file) && told.has(hashOf(bytes))) throw new Error(`${where}: ${file} was confirmed and is not there`)
    if (names.includes(file) && hashOf(await on.read(`/job/photos/${file}`)) !== hashOf(bytes))
      throw new Error(`${where}: ${file} holds something else`)
  }
  for (const name of names.includes('small') ? await on.list('/job/photos/small') : []) {
    const whole = name.endsWith('-1600.jpg') ? copies.large : copies.small
    if (name.endsWith('.jpg') && hashOf(await on.read(`/job/photos/small/${name}`)) !== hashOf(whole))
      throw new Error(`${where}: the copy ${name} is not whole`)
  }
}

/** Crashes at every call of sending and taking in, each with all that may be left; then it is sent again, and the power goes once more. Answers how many. */
export async function crashesOfTakingIn(lefts: readonly Left[]): Promise<number> {
  const all = await strikes((on) => send(on), begin)
  for (const strike of all)
    for (const left of lefts) {
      const [on, told, where] = [await begin(), new Set<string>(), JSON.stringify([strike, left])]
      on.mishap = crashAt(strike)
      await until(send(on, told))
      on.reboot(left)
      on.mishap = () => undefined
      await mustStand(on, told, where)
      await send(on, told)
      on.reboot('nothing')
      await mustStand(on, new Set(photos.map(hashOf)), where)
    }
  return all.length * lefts.length
}

/** Every call fails once, as on a disk that is full or going to be broken: it is told, and sending again ends well. Answers how many calls. */
export async function failuresOfTakingIn(code: string): Promise<number> {
  const calls = (await strikes((on) => send(on), begin)).filter(({ when }) => when === 'before').map(({ at }) => at)
  for (const at of calls)
    for (const forgets of [false, true]) {
      const [on, told, where] = [await begin(), new Set<string>(), JSON.stringify([at, code, forgets])]
      on.forgets = forgets
      on.mishap = ({ number }) => (number === at ? { is: 'fails', code, half: true } : undefined)
      await send(on, told).catch((error) => {
        if (error.code !== code) throw error
      })
      on.reboot('nothing')
      on.mishap = () => undefined
      await mustStand(on, told, where)
      await send(on, told)
      on.reboot('nothing')
      await mustStand(on, new Set(photos.map(hashOf)), where)
    }
  return calls.length
}
