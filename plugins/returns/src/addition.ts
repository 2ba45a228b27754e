import type { Addition } from '@evenhem/plugin'
import { partSchema, type Returns } from './part.generated.ts'

/** How the outer edges of a treatment are held at the wall, under `with.returns`. */
export const addition: Addition<'treatment', Returns> = { to: 'treatment', schema: partSchema }
