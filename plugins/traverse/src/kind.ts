import type { Kind } from '@evenhem/plugin'
import { hardwareSchema, type TraverseRod } from './hardware.generated.ts'
import { partSchema, type TraversePart } from './part.generated.ts'

/** Traverse rods and tracks. */
export const traverseRod: Kind<TraverseRod, TraversePart> = { kind: 'traverse', schema: hardwareSchema, part: partSchema }
