/** A sentence, and what else helps. */
export const one = (says: string, help?: string) => (help === undefined ? { says } : { says, help })
