import type { ReactiveController, ReactiveControllerHost } from 'lit'

/** Keeps the screen on while its host is shown, where the browser lets a page do that. */
export class Awake implements ReactiveController {
  private lock?: Promise<WakeLockSentinel | undefined>

  constructor(host: ReactiveControllerHost) {
    host.addController(this)
  }

  hostConnected(): void {
    this.lock = navigator.wakeLock?.request('screen').catch(() => undefined)
  }

  hostDisconnected(): void {
    void this.lock?.then((lock) => lock?.release())
  }
}
