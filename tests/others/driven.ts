export interface Size {
  readonly width: number
  readonly height: number
}

/** A page in a browser that is driven from outside. Functions run in the page: each has to stand alone, and gives what JSON can say. */
export interface Driven {
  /** Opens an address, and waits until the page has loaded. */
  readonly go: (address: string) => Promise<void>
  readonly run: <Given extends readonly unknown[], Told>(
    work: (...given: Given) => Told,
    ...given: Given
  ) => Promise<Awaited<Told>>
  /** Touches the element that is found, as a hand would. Returns whether one was found. */
  readonly touch: <Given extends readonly unknown[]>(
    find: (...given: Given) => Element | undefined,
    ...given: Given
  ) => Promise<boolean>
  /** Makes the page as large as said, in CSS pixels. */
  readonly become: (size: Size) => Promise<void>
  /** What the page complained of since it was last asked. */
  readonly faults: () => Promise<readonly string[]>
  readonly close: () => Promise<void>
}

/** A browser that runs; each page is that of a reader who was never here before. */
export interface Running {
  readonly open: () => Promise<Driven>
  readonly close: () => Promise<void>
}
