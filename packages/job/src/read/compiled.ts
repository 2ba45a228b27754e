import { type Extensions, withIds } from './extensions.ts'
import { type Validators, validatorsOf } from './validators.ts'

interface Compiled {
  readonly from: Extensions
  readonly extensions: Extensions
  readonly validators: Validators
}
const kept = new WeakMap<object, Compiled>()

/** Options may be made anew for each file; the lists in them are the same, so validators are kept by these. */
export function compiled(options: Extensions): Compiled {
  const before = kept.get(options.kinds)
  if (before && before.from.additions === options.additions) return before
  const extensions = withIds(options)
  const made = { from: options, extensions, validators: validatorsOf(extensions) }
  kept.set(options.kinds, made)
  return made
}
