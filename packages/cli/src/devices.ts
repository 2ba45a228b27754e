import type { Device } from '@evenhem/server'
import { hint } from './arguments.ts'
import { type Command, json, type Session, subjects, Trouble } from './command.ts'
import { devicesAt, devicesFile } from './network.ts'
import { plain, table } from './table.ts'

/** The device of this name or id, in large letters or small ones. Throws `Trouble` that lists what there is when it is none or several. */
function deviceNamed(devices: readonly Device[], name: string, folder: string): Device {
  const [found, ...more] = devices.filter((each) => each.id === name || each.name.toLowerCase() === name.toLowerCase())
  const names = devices.map((each) => each.name)
  if (devices.length === 0) throw new Trouble('no-device-at-all', { name, folder })
  if (!found) throw new Trouble('no-device', { name, names: names.join(', '), hint: hint(name, names) })
  if (more.length > 0) throw new Trouble('several-devices', { name, names: [found, ...more].map(({ id }) => id).join(', ') })
  return found
}

/** `2026-11-25 09:12 UTC` */
const shown = (moment: string): string => `${new Date(moment).toISOString().slice(0, 16).replace('T', ' ')} UTC`

function text(devices: readonly Device[], { voice }: Session): string {
  const head = (['device-name', 'device-id', 'device-since', 'device-seen'] as const).map((code) => voice(code))
  const rows = devices.map(({ name, id, since, seen }) => [name, id, shown(since), seen ? shown(seen) : voice('device-unseen')])
  return plain(table([head, ...rows], ''))
}

/** The same for programs, without what proves who a device is. */
const asJson = (devices: readonly Device[]): string =>
  `${JSON.stringify(
    devices.map(({ id, name, since, seen }) => ({ id, name, since, seen })),
    null,
    2,
  )}\n`

export const devices: Command = {
  name: 'devices',
  says: 'devices',
  more: 'devices.more',
  subjects: subjects.folder,
  options: { revoke: { says: '--revoke', value: 'NAME' }, json },
  run: async ({ subject, options }, session) => {
    const kept = await devicesAt(await devicesFile(subject))
    if (options.revoke !== undefined) {
      const { id, name } = deviceNamed(await kept.all(), options.revoke, subject)
      await kept.remove(id)
      session.err(`${plain(session.voice('device-revoked', { name }))}\n`)
    }
    const left = await kept.all()
    if ('json' in options) session.out(asJson(left))
    else if (left.length > 0) session.out(text(left, session))
    else session.err(`${plain(session.voice('no-devices', { folder: subject }))}\n`)
    return 0
  },
}
