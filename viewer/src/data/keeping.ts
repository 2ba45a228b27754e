import { openKeeper } from './keeper.ts'
import { SiteStore } from './site.ts'

/** Opens what this tablet keeps of a job. */
export const openSite = async (job: string): Promise<SiteStore> => new SiteStore(job, await openKeeper())
