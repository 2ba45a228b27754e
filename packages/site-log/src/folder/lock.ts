import { setTimeout } from 'node:timers/promises'
import { lock } from 'proper-lockfile'

/** A file that nobody else writes meanwhile. */
export interface Held {
  /** Throws when somebody else may have taken the file over, since this process stood still for too long. */
  readonly sure: () => void
  readonly free: () => Promise<void>
}
/** Lets nobody else write the file of a device meanwhile, in this process or another. */
export type Lock = (file: string) => Promise<Held>

/** Milliseconds. A process that was killed leaves its lock behind; so long without a sign of life it counts no more. */
const stale = 10_000
/** Milliseconds. Whoever holds a lock trusts it for less, so that nobody has taken it over by then. */
const trusted = 8_000
const mostTries = 400

const lost = (file: string): Error => Object.assign(new Error(`the lock of ${file} was held for too long`), { code: 'ELOCKED' })

/** Waits for a lock that is taken; whatever else is wrong is thrown at once. */
async function taken(file: string, onCompromised: () => void): Promise<() => Promise<void>> {
  for (let tries = 1; ; tries++) {
    const release = await lock(file, { realpath: false, stale, onCompromised }).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ELOCKED' || tries === mostTries) throw error
    })
    if (release) return release
    await setTimeout(10 + 60 * Math.random())
  }
}

/** A lock that other processes heed. Throws what the file system throws, and `ELOCKED` when another process does not give it back. */
export const lockFile: Lock = async (file) => {
  let isLost = false
  const release = await taken(file, () => {
    isLost = true
  })
  const since = Date.now()
  return {
    sure: () => {
      if (isLost || Date.now() - since > trusted) throw lost(file)
    },
    free: () => release().catch((error) => (isLost ? undefined : Promise.reject(error))),
  }
}
