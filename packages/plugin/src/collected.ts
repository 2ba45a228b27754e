import type { Check, Entry, Fact, Layer, Part, Reckoning, Step } from './contract.ts'

const collected = <T, L extends 'treatment' | 'window'>(id: `host/${string}@1`, of: L) => ({ id, of, many: true, schema: {} }) as const satisfies Fact as Fact<T, L> & { readonly many: true }

/** The facts that the host collects. A rule on any level may give them; none may read them. */
export const checks = collected<Check, any>('host/checks@1', 'treatment')
export const steps = collected<Step, any>('host/steps@1', 'treatment')
export const parts = collected<Part, any>('host/parts@1', 'treatment')
export const layers = collected<Layer, any>('host/layers@1', 'treatment')
export const reckonings = collected<Reckoning, any>('host/reckonings@1', 'treatment')
export const entries = collected<Entry, any>('host/entries@1', 'treatment')
