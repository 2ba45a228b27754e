/** The page itself, kept on the tablet: so that it opens where there is no network. What the job holds is kept by the page. */

interface Extendable extends Event {
  waitUntil: (work: Promise<unknown>) => void
}
interface Fetching extends Extendable {
  readonly request: Request
  respondWith: (answer: Promise<Response>) => void
}
interface Scope extends EventTarget {
  readonly location: Location
  readonly clients: { claim: () => Promise<void> }
  skipWaiting: () => Promise<void>
}
declare const self: Scope
/** Written by the build: what the page is made of, and a name that changes with any of it. */
declare const files: readonly string[]
declare const version: string

const name = `evenhem-${version}`
const on = <E extends Event>(type: string, hear: (event: E) => void) => self.addEventListener(type, hear as EventListener)

on<Extendable>('install', (event) =>
  event.waitUntil(caches.open(name).then((cache) => cache.addAll(files.map((file) => new Request(file, { cache: 'reload' }))))),
)
on<Extendable>('activate', (event) => event.waitUntil(forgetOthers().then(() => self.clients.claim())))
async function forgetOthers(): Promise<void> {
  const others = (await caches.keys()).filter((each) => each.startsWith('evenhem-') && each !== name)
  await Promise.all(others.map((each) => caches.delete(each)))
}
// A page that begins has nothing of the older one loaded yet, and lets the newer one go before it.
on<MessageEvent>('message', ({ data }) => data === 'go' && void self.skipWaiting())

/** The address under which a page or a part of it is kept; undefined: only the server has it. */
function keptAs({ method, url, mode }: Request): string | undefined {
  const { origin, pathname } = new URL(url)
  if (method !== 'GET' || origin !== self.location.origin) return undefined
  if (mode === 'navigate') return /^\/(jobs\/[^/]+\/)?$/.test(pathname) ? '/' : undefined
  return files.includes(pathname) ? pathname : undefined
}
on<Fetching>('fetch', (event) => {
  const kept = keptAs(event.request)
  if (kept !== undefined) event.respondWith(keptOrFetched(kept, event.request))
})
async function keptOrFetched(kept: string, request: Request): Promise<Response> {
  const cache = await caches.open(name)
  return (await cache.match(kept)) ?? fetch(request)
}

export {}
