import type { Addition } from '@evenhem/plugin'
import { type PunchList, partSchema } from './part.generated.ts'

/** What is left to mend at a window, under its `with.punch-list`. */
export const atWindow: Addition<'window', PunchList> = { to: 'window', schema: partSchema }
/** What is left to mend at no window, under the job's. */
export const atJob: Addition<'job', PunchList> = { to: 'job', schema: partSchema }
