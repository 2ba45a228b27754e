import { type Extensions, formatOf, kindOf, type Upgrade } from './extensions.ts'
import { error, type Finding, info } from './finding.ts'
import { below } from './pointers.ts'
import { isObject } from './values.ts'

type Value = Record<string, unknown>
const listOf = (value: unknown, name: string): readonly Value[] =>
  isObject(value) && Array.isArray(value[name]) ? value[name].filter(isObject) : []

/** Brings what older versions of plugins wrote up to the version that is understood here. It changes the value read, which is the reader's own. */
export function upgrade(job: unknown, extensions: Extensions): readonly Finding[] {
  if (!isObject(job) || !isObject(job.uses)) return []
  const uses = job.uses as Value
  return Object.keys(uses).flatMap((plugin) => {
    const from = uses[plugin]
    const to = formatOf(extensions, plugin)
    if (typeof from !== 'number' || to === undefined) return []
    const all = Object.hasOwn(extensions.upgrades ?? {}, plugin) ? (extensions.upgrades?.[plugin] ?? []) : []
    const steps = all.filter((step) => step.to > from && step.to <= to).sort((a, b) => a.to - b.to)
    const findings = steps.map((step) => upgradeOnce(job, plugin, step, extensions))
    if (steps.length > 0) uses[plugin] = to
    return findings
  })
}

function upgradeOnce(job: Value, plugin: string, { to, because, up }: Upgrade, extensions: Extensions): Finding {
  const spot = { name: below('/uses', plugin) }
  try {
    for (const [holder, key] of itemsOf(job, plugin, extensions)) {
      const item: unknown = up(holder[key] as object)
      if (!isObject(item)) throw new TypeError('what it gave is no object')
      holder[key] = item
    }
    return info('job/upgraded', spot, { plugin, to, because })
  } catch (thrown) {
    return error('job/upgrade-failed', spot, {
      plugin,
      to,
      because,
      thrown: thrown instanceof Error ? thrown.message : String(thrown),
    })
  }
}

/** Every item of a plugin, as what holds it and under which name: entries of its kinds, and its parts under `with`. */
function itemsOf(job: Value, plugin: string, extensions: Extensions): readonly (readonly [Value, string])[] {
  const hardware = Array.isArray(job.hardware) ? (job.hardware as unknown as Value) : {}
  const entries = Object.keys(hardware).filter(
    (key) => isObject(hardware[key]) && kindOf(extensions, hardware[key].kind)?.plugin === plugin,
  )
  const rooms = listOf(job, 'rooms')
  const windows = rooms.flatMap((room) => listOf(room, 'windows'))
  const treatments = windows.flatMap((window) => listOf(window, 'treatments'))
  const parts = [job, ...listOf(job, 'fabrics'), ...rooms, ...windows, ...treatments].flatMap((owner) =>
    isObject(owner.with) && isObject(owner.with[plugin]) ? [owner.with] : [],
  )
  return [...entries.map((key) => [hardware, key] as const), ...parts.map((part) => [part, plugin] as const)]
}
