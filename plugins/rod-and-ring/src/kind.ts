import type { Kind } from '@evenhem/plugin'
import { hardwareSchema, type RodAndRing } from './hardware.generated.ts'
import { partSchema, type RodAndRingPart } from './part.generated.ts'

/** Decorative rods with rings. */
export const rod: Kind<RodAndRing, RodAndRingPart> = { kind: 'rod-and-ring', schema: hardwareSchema, part: partSchema }
