import type { Check, Entry, Fact, JsonSchema, Layer, Part, Reckoning, Step } from './contract.ts'
import { checkShape, entryShape, layerShape, partShape, reckoningShape, stepShape } from './shapes.ts'

/** A fact that the host collects. Its level is not looked at. */
export type CollectedFact<T> = Fact<T> & { readonly many: true }
const collected = <T>(id: `host/${string}@1`, schema: JsonSchema): CollectedFact<T> => ({
  id,
  of: 'treatment',
  many: true,
  schema,
})

/** The facts that the host collects. A rule on any level may give them; none may read them. */
export const checks = collected<Check>('host/checks@1', checkShape)
export const steps = collected<Step>('host/steps@1', stepShape)
export const parts = collected<Part>('host/parts@1', partShape)
/** Drawings, in millimetres. Drapery draws walls, cloth and marks and, from above, brackets and rod; a kind draws its rod and plates in the elevation. */
export const layers = collected<Layer>('host/layers@1', layerShape)
/** Every number that a fact, a check or a drawing shows, with its working. */
export const reckonings = collected<Reckoning>('host/reckonings@1', reckoningShape)
export const entries = collected<Entry>('host/entries@1', entryShape)
