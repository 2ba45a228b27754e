import type { ReactiveController, ReactiveControllerHost } from 'lit'

/** How large an element is, in whole pixels; it is drawn again when that changes. */
export class Sized implements ReactiveController {
  width = 0
  height = 0
  private readonly host: ReactiveControllerHost & Element
  private readonly observer = new ResizeObserver(([entry]) => this.take(entry?.contentRect))

  constructor(host: ReactiveControllerHost & Element) {
    this.host = host
    host.addController(this)
  }

  hostConnected(): void {
    this.observer.observe(this.host)
  }

  hostDisconnected(): void {
    this.observer.disconnect()
  }

  private take(box: DOMRectReadOnly | undefined): void {
    const [width, height] = [Math.floor(box?.width ?? 0), Math.floor(box?.height ?? 0)]
    // On paper it stays as it was on the screen: there its height comes from what is drawn.
    if ((width === this.width && height === this.height) || matchMedia('print').matches) return
    this.width = width
    this.height = height
    this.host.requestUpdate()
  }
}
