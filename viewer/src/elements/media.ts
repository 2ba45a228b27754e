import type { ReactiveController, ReactiveControllerHost } from 'lit'

/** Whether the page matches a media query; its host is drawn again when that changes. */
export class Media implements ReactiveController {
  private readonly host: ReactiveControllerHost
  private readonly list: MediaQueryList
  private readonly changed = () => this.host.requestUpdate()

  constructor(host: ReactiveControllerHost, query: string) {
    this.host = host
    this.list = matchMedia(query)
    host.addController(this)
  }

  get matches(): boolean {
    return this.list.matches
  }

  hostConnected(): void {
    this.list.addEventListener('change', this.changed)
  }

  hostDisconnected(): void {
    this.list.removeEventListener('change', this.changed)
  }
}
