// These functions run in the page: each has to stand alone.

/** Visible parts of the sheet that lie over one another, but for what is meant to lie over the sheet. */
export function crossing(): readonly string[] {
  const sheet = document.querySelector('evenhem-app')?.shadowRoot?.querySelector('window-sheet')?.shadowRoot
  const open = sheet?.querySelector('.over') !== null
  const parts = [...(sheet?.children ?? [])].filter(
    (part) =>
      // What is sticky stands over a page that is longer than the screen, and is meant to.
      !part.matches('.over, style') &&
      !(part.matches('title-block') && document.documentElement.scrollHeight > innerHeight) &&
      !(open && part.hasAttribute('inert')) &&
      !(open && part.matches('main, .findings')),
  )
  const boxes = parts
    .map((part) => ({ name: part.localName + part.className, box: part.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 0 && box.height > 0)
  return boxes.flatMap((a, n) =>
    boxes
      .slice(n + 1)
      .filter(
        (b) =>
          a.box.left < b.box.right - 1 &&
          b.box.left < a.box.right - 1 &&
          a.box.top < b.box.bottom - 1 &&
          b.box.top < a.box.bottom - 1,
      )
      .map((b) => `${a.name} and ${b.name}`),
  )
}

/** Buttons and links smaller than 48 pixels either way. */
export function tooSmall(): readonly string[] {
  const within = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  return within(document)
    .filter((element) => element.matches('button, a[href]') && !element.closest('[inert]'))
    .map((element) => ({ element, box: element.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 0 && (box.width < 48 || box.height < 48))
    .map(
      ({ element, box }) =>
        `${element.getAttribute('aria-label') ?? element.textContent?.trim()} ${Math.round(box.width)} × ${Math.round(box.height)}`,
    )
}

/** Words whose letters are smaller than 13.5 pixels. A fraction's digits are part of a larger figure. */
export function tooFine(): readonly string[] {
  const within = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  const isText = (element: Element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim())
  return within(document)
    .filter(
      (element) =>
        isText(element) &&
        element.getClientRects().length > 0 &&
        !element.closest('svg.figure, .letter, g.tape, .digits, .unit, .sign, style, title, desc'),
    )
    .filter((element) => Number.parseFloat(getComputedStyle(element).fontSize) < 13.5)
    .map((element) => `${element.textContent?.trim()} ${getComputedStyle(element).fontSize}`)
}

/** Words that are cut off: longer than the box that hides what hangs over. Where that is meant, an ellipsis says so. */
export function cutOff(): readonly string[] {
  const within = (root: ParentNode): Element[] =>
    [...root.querySelectorAll('*')].flatMap((element) => [element, ...(element.shadowRoot ? within(element.shadowRoot) : [])])
  return within(document)
    .filter((element) => {
      const { overflowX, overflowY, textOverflow, position } = getComputedStyle(element)
      const isUnseen = position === 'absolute' && element.clientWidth <= 1
      const wide = overflowX === 'hidden' && element.scrollWidth > element.clientWidth + 1
      const tall = overflowY === 'hidden' && element.scrollHeight > element.clientHeight + 1
      return (wide || tall) && textOverflow !== 'ellipsis' && !isUnseen && element.clientWidth > 0
    })
    .map(
      (element) =>
        `${element.localName}.${element.className} ${element.scrollWidth} × ${element.scrollHeight} in ${element.clientWidth} × ${element.clientHeight}`,
    )
}
