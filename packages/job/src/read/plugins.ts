import { type Extensions, formatOf, kindOf, partOf } from './extensions.ts'
import { type Finding, info, warning } from './finding.ts'
import type { Met, Pass } from './keywords.ts'
import { nearest } from './near.ts'
import { below, last, type Pointer } from './pointers.ts'
import { hardwareOf } from './schemas.ts'
import type { Validators } from './validators.ts'
import { isObject, type Members, own } from './values.ts'

/** Which plugins a job uses, and which of them are understood. */
interface Uses {
  readonly says: Members
  readonly newer: ReadonlySet<string>
}

const isNewerThan = (version: unknown, ours: number | undefined): boolean =>
  typeof version === 'number' && ours !== undefined && version > ours

function usesOf(job: unknown, extensions: Extensions): Uses {
  const says = own(job, 'uses')
  const all = isObject(says) ? says : {}
  const isNewer = (plugin: string) => isNewerThan(all[plugin], formatOf(extensions, plugin))
  return { says: all, newer: new Set(Object.keys(all).filter(isNewer)) }
}

/**
 * Checks what plugins add to a job: entries of hardware by their kind, parts under `with` by the plugin's name. What nobody here knows, or
 * only in an older version, is kept and not checked; that is said once for each.
 */
export function checkPlugins(job: unknown, extensions: Extensions, validators: Validators, pass: Pass): void {
  const uses = usesOf(job, extensions)
  const used = new Set<string>()
  const strange = new Map<string, Finding>()
  const checked = (plugin: string): boolean => {
    used.add(plugin)
    return !uses.newer.has(plugin)
  }

  for (const { at, value, holder } of pass.entries) {
    const name = own(value, 'kind')
    const kind = kindOf(extensions, name)
    if (!kind && typeof name === 'string' && !strange.has(name))
      strange.set(name, unknownKind(name, below(at, 'kind'), extensions))
    if (kind && checked(kind.plugin))
      validators.by(kind.schema, { value, at, holder: holder as object, key: last(at) }, job, pass)
  }
  for (const { met, plugin, at } of partsOf(pass.withs)) {
    if (formatOf(extensions, plugin) === undefined)
      strange.set(`with ${plugin}`, strange.get(`with ${plugin}`) ?? unknownPart(plugin, at, extensions))
    else if (checked(plugin)) checkPart(met, plugin, at, job, extensions, validators, pass)
  }
  const known = new Set(strange.keys())
  for (const [plugin, version] of Object.entries(uses.says)) {
    const ours = formatOf(extensions, plugin)
    if (uses.newer.has(plugin))
      strange.set(
        `uses ${plugin}`,
        info('job/newer-plugin', { name: below('/uses', plugin) }, { plugin, version: version as number, ours: ours ?? 0 }),
      )
    if (ours === undefined && !known.has(`with ${plugin}`))
      strange.set(`uses ${plugin}`, info('job/unknown-plugin', { name: below('/uses', plugin) }, { plugin }))
  }
  const lacking = [...used].filter((plugin) => !Object.hasOwn(uses.says, plugin))
  for (const finding of [...strange.values(), ...lacking.map((plugin) => lacks(plugin, job, extensions))])
    pass.findings.push(finding)
}

const partsOf = (withs: readonly Met[]) =>
  withs.flatMap((met) =>
    (isObject(met.value) ? Object.keys(met.value) : []).map((plugin) => ({ met, plugin, at: below(met.at, plugin) })),
  )

function checkPart(
  { value, holder, says }: Met,
  plugin: string,
  at: Pointer,
  job: unknown,
  extensions: Extensions,
  validators: Validators,
  pass: Pass,
): void {
  const kind = kindOf(extensions, own(hardwareOf(job, holder), 'kind'))
  const schema = partOf(extensions, plugin, String(says), kind)
  if (schema) validators.by(schema, { value: own(value, plugin), at, holder: value as object, key: plugin }, job, pass)
  // Of a treatment whose hardware is not known here nobody can say which parts go with it.
  else if (says !== 'treatment' || kind)
    pass.findings.push(warning('job/part-not-here', { name: at }, { plugin, level: String(says) }))
}

function unknownKind(kind: string, at: Pointer, { kinds }: Extensions): Finding {
  const near = nearest(kind, Object.keys(kinds))
  return near ? info('job/unknown-kind-near', { value: at }, { kind, near }) : info('job/unknown-kind', { value: at }, { kind })
}

function unknownPart(plugin: string, at: Pointer, { formats }: Extensions): Finding {
  const near = nearest(plugin, Object.keys(formats))
  return near ? info('job/unknown-part-near', { name: at }, { plugin, near }) : info('job/unknown-part', { name: at }, { plugin })
}

function lacks(plugin: string, job: unknown, extensions: Extensions): Finding {
  const write = `${JSON.stringify(plugin)}: ${formatOf(extensions, plugin)}`
  return isObject(own(job, 'uses'))
    ? warning('job/uses-lacks', { name: '/uses' }, { plugin, write })
    : warning('job/no-uses', { value: '' }, { plugin, write })
}
