// These functions run in the page: each has to stand alone.

/** What is visible and has this role and a name that matches, inside an element of this kind: the first. */
export function named(role: 'button' | 'img', name: string, inside = 'evenhem-app'): Element | undefined {
  const within = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  const around = within(document).find((element) => element.localName === inside)
  const parts = around?.shadowRoot ? within(around.shadowRoot) : []
  const nameOf = (element: Element) => (element.getAttribute('aria-label') ?? element.textContent ?? '').trim()
  return parts.find(
    (element) =>
      (element.localName === role || element.getAttribute('role') === role) &&
      element.getClientRects().length > 0 &&
      !element.closest('[inert]') &&
      new RegExp(name).test(nameOf(element)),
  )
}

/** The text of the first part that matches inside an element of this kind; empty while there is none. */
export function textIn(inside: string, part: string): string {
  const within = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  const around = within(document).find((element) => element.localName === inside)
  return around?.shadowRoot?.querySelector(part)?.textContent?.trim() ?? ''
}

/** The plan that the sheet shows, in the one text form of plans. */
export function planText(): string | undefined {
  return (document.querySelector('evenhem-app') as unknown as { planText?: () => string | undefined })?.planText?.()
}

/** The numbers of the drawing as they read, and which of them are drawn: with an extent, between the sides of the drawing. */
export function figures(): { readonly all: readonly string[]; readonly drawn: readonly string[] } {
  const within = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  const drawing = within(document).find((element) => element.matches('svg.drawing'))
  const sides = drawing?.getBoundingClientRect() ?? new DOMRect()
  const parts = [...(drawing?.querySelectorAll('.figure') ?? [])]
  const isDrawn = (box: DOMRect) => box.width > 0 && box.height > 0 && box.left >= sides.left - 1 && box.right <= sides.right + 1
  const read = (part: Element) => part.textContent?.trim() ?? ''
  return { all: parts.map(read), drawn: parts.filter((part) => isDrawn(part.getBoundingClientRect())).map(read) }
}

/** What the page is as wide as, beside what it would need. */
export function widths(): { readonly shown: number; readonly needed: number } {
  return { shown: innerWidth, needed: document.documentElement.scrollWidth }
}

/** Waits until the fonts have come and the page was laid out with them; gives how that went for each file that was asked for. */
export async function settled(): Promise<readonly string[]> {
  await document.fonts.ready
  for (let frames = 0; frames < 3; frames++) await new Promise(requestAnimationFrame)
  return [...document.fonts].map(({ status }) => status).filter((status) => status !== 'unloaded')
}

/** Waits until the worker that keeps the page on the tablet is at work; gives its state. */
export async function keeping(): Promise<string | undefined> {
  const { active } = await navigator.serviceWorker.ready
  while (active?.state === 'activating') await new Promise((done) => active.addEventListener('statechange', done, { once: true }))
  return active?.state
}
