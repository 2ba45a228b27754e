/** How this page outlives the server: it opens from the tablet, or it needs the server to open again. */
export interface Lasting {
  readonly page: 'kept' | 'needs-server'
  /** Bytes that are left for entries, where they are few. */
  readonly room?: number
}

const littleRoom = 20_000_000
const readKey = 'evenhem/needs-server-read'

/** Keeps the page on the tablet where the browser allows it: on this machine and over https. `warn` is called once on a tablet where it does not. */
export async function lasting(warn: () => void): Promise<Lasting> {
  const isKept = await keepsPage()
  if (!isKept && !wasRead()) warn()
  const room = await roomLeft()
  return { page: isKept ? 'kept' : 'needs-server', ...(room === undefined || room > littleRoom ? {} : { room }) }
}

async function keepsPage(): Promise<boolean> {
  if (!('serviceWorker' in navigator)) return false
  try {
    const registration = await navigator.serviceWorker.register('/sw.js')
    // A newer one need not wait for this page to be closed: all that this page still needs is here.
    const goOn = () => registration.waiting?.postMessage('go')
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', goOn))
    goOn()
    await navigator.serviceWorker.ready
    return true
  } catch {
    return false
  }
}

/** Bytes that the browser still grants; undefined where it does not say. Asks it not to clear them by itself. */
async function roomLeft(): Promise<number | undefined> {
  // Absent without encryption, and in some browsers.
  const storage = navigator.storage as StorageManager | undefined
  try {
    // A browser may ask a person first, so nothing waits for it.
    void storage?.persist?.().catch(() => false)
    const { quota, usage } = (await storage?.estimate?.()) ?? {}
    return quota === undefined || usage === undefined ? undefined : quota - usage
  } catch {
    return undefined
  }
}

function wasRead(): boolean {
  try {
    const was = localStorage.getItem(readKey) !== null
    localStorage.setItem(readKey, 'read')
    return was
  } catch {
    return false
  }
}
