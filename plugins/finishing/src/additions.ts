import type { Addition } from '@evenhem/plugin'
import { type FabricCare, fabricSchema } from './fabric.generated.ts'
import { type Finishing, partSchema } from './part.generated.ts'
import { type FinishingWish, windowSchema } from './window.generated.ts'

/** How the draperies of a treatment are finished, under `with.finishing`. */
export const ofTreatment: Addition<'treatment', Finishing> = { to: 'treatment', schema: partSchema }
/** The same for all treatments of a window. */
export const ofWindow: Addition<'window', FinishingWish> = { to: 'window', schema: windowSchema }
/** What label and supplier say of a fabric. */
export const ofFabric: Addition<'fabric', FabricCare> = { to: 'fabric', schema: fabricSchema }
