import { crashAt, strikes, until } from '../../site-log/test/crashes.ts'
import { type Left, SimulatedDisk } from '../../site-log/test/simulated-disk.ts'
import { type Cleaner, type Incoming, incoming, photoFolder } from '../src/index.ts'
import { hashOf } from './drawn.ts'

const bytesOf = (seed: number, length: number): Uint8Array =>
  Uint8Array.from({ length }, (_, at) => [0xff, 0xd8, 0xff][at] ?? (at * seed) % 251)
/** What is sent: the one in pieces, the other one whole. */
const photos = [bytesOf(7, 300), bytesOf(11, 200)] as const
const copies = { large: bytesOf(13, 150), small: bytesOf(17, 90) }
const cleaner: Cleaner = { clean: async () => copies, peak: () => 0, close: () => undefined }
const begin = async (): Promise<SimulatedDisk> => new SimulatedDisk('/job')

/** What was confirmed: photos that are taken in, and how much there is of the one that comes in pieces. */
interface Told {
  readonly photos: Set<string>
  have: number
}
const nothing = (): Told => ({ photos: new Set(), have: 0 })

/** Which photo comes first. */
export type Order = 'pieces' | 'whole'

/** Sends the first photo in pieces and takes in the second one. Keeps what it is told. */
async function send({ disk: on }: SimulatedDisk, order: Order, told: Told = nothing()): Promise<void> {
  const folder = photoFolder('/job', { cleaner, on })
  const takeIn = async () => {
    const taken = await folder.takeIn(photos[1])
    if (taken.is !== 'taken') throw new Error(taken.refused.code)
    told.photos.add(taken.hash)
  }
  if (order === 'whole') await takeIn()
  await sendPieces(incoming('/job', folder, { on }), photos[0], told)
  if (order === 'pieces') await takeIn()
}

/** As a tablet does, going on from what is there. */
async function sendPieces(pieces: Incoming, sent: Uint8Array, told: Told): Promise<void> {
  const hash = hashOf(sent)
  for (let state = await pieces.state(hash), tries = 0; !state.done; tries++) {
    if (tries > 20) throw new Error('it does not end')
    const bytes = sent.subarray(state.have, state.have + 120)
    const arrived = await pieces.add(hash, { from: state.have, size: sent.length, bytes })
    if (arrived.is !== 'here' || arrived.state.refused) throw new Error(JSON.stringify(arrived))
    state = arrived.state
    told.have = state.have
  }
  told.photos.add(hash)
}

const everything: Told = { photos: new Set(photos.map(hashOf)), have: 0 }

/** Whatever has a name is whole, and what was confirmed is there. */
async function mustStand({ disk: on }: SimulatedDisk, told: Told, where: string): Promise<void> {
  const names = await on.list('/job/photos')
  for (const bytes of photos) {
    const file = `${hashOf(bytes)}.jpg`
    if (!names.includes(file) && told.photos.has(hashOf(bytes)))
      throw new Error(`${where}: ${file} was confirmed and is not there`)
    if (names.includes(file) && hashOf(await on.read(`/job/photos/${file}`)) !== hashOf(bytes))
      throw new Error(`${where}: ${file} holds something else`)
  }
  const [inPieces, part] = [hashOf(photos[0]), `/job/photos/.incoming/${hashOf(photos[0])}.part`]
  if (!names.includes(`${inPieces}.jpg`) && ((await on.size(part)) ?? 0) < told.have)
    throw new Error(`${where}: of ${told.have} confirmed bytes there are ${await on.size(part)}`)
  for (const name of names.includes('small') ? await on.list('/job/photos/small') : []) {
    const whole = name.endsWith('-1600.jpg') ? copies.large : copies.small
    if (name.endsWith('.jpg') && hashOf(await on.read(`/job/photos/small/${name}`)) !== hashOf(whole))
      throw new Error(`${where}: the copy ${name} is not whole`)
  }
}

/** Crashes at every call of sending and taking in, each with all that may be left; then it is sent again, and the power goes once more. Answers how many. */
export async function crashesOfTakingIn(lefts: readonly Left[], order: Order): Promise<number> {
  const all = await strikes((on) => send(on, order), begin)
  for (const strike of all)
    for (const left of lefts) {
      const [on, told, where] = [await begin(), nothing(), JSON.stringify([strike, left])]
      on.mishap = crashAt(strike)
      await until(send(on, order, told))
      on.reboot(left)
      on.mishap = () => undefined
      await mustStand(on, told, where)
      await send(on, order, told)
      on.reboot('nothing')
      await mustStand(on, everything, where)
    }
  return all.length * lefts.length
}

/** Every call fails once, as on a disk that is full or going to be broken: it is told, and sending again ends well. Answers how many calls. */
export async function failuresOfTakingIn(code: string): Promise<number> {
  const calls = (await strikes((on) => send(on, 'pieces'), begin)).filter(({ when }) => when === 'before').map(({ at }) => at)
  for (const at of calls)
    for (const forgets of [false, true]) {
      const [on, told, where] = [await begin(), nothing(), JSON.stringify([at, code, forgets])]
      on.forgets = forgets
      on.mishap = ({ number }) => (number === at ? { is: 'fails', code, half: true } : undefined)
      await send(on, 'pieces', told).catch((error) => {
        if (error.code !== code) throw error
      })
      on.reboot('nothing')
      on.mishap = () => undefined
      await mustStand(on, told, where)
      await send(on, 'pieces', told)
      on.reboot('nothing')
      await mustStand(on, everything, where)
    }
  return calls.length
}
