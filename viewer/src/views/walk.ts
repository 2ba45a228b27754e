import type { LitElement, ReactiveController } from 'lit'
import { depth, goBack, goTo, isWhole, start, stay, type View, type Way, wayNow } from '../data/way.ts'

/** What a walk asks of the sheet that it is on. */
export interface Walked {
  readonly address: (view: View) => string
  /** Whether the address of the page is one of this sheet: another may mean another window, whose order comes with its way. */
  readonly isAddressed: () => boolean
  /** What was touched is not there any more: the figure of this number has the focus instead. */
  readonly focusFigure: (of: string) => void
}

/** Where on a sheet somebody is: the browser's own history holds the way, and the focus goes along. */
export class Walk implements ReactiveController {
  way: Way = start
  private readonly host: LitElement
  private readonly on: Walked
  private cameFrom: HTMLElement | undefined
  private leaving: Promise<void> = Promise.resolve()
  private readonly popped = (): void => {
    if (this.on.isAddressed()) this.arrive(wayNow())
  }

  constructor(host: LitElement, on: Walked) {
    this.host = host
    this.on = on
    host.addController(this)
  }
  hostConnected(): void {
    addEventListener('popstate', this.popped)
  }
  hostDisconnected(): void {
    removeEventListener('popstate', this.popped)
  }

  /** Takes up the way that the history holds. What lay over the sheet is not opened by itself. */
  takeUp(): void {
    this.way = { ...wayNow(), over: { is: 'nothing' } }
    stay(this.way)
  }
  /** Whoever touches twice quickly gets both, one after the other: a way back that is under way ends first. */
  async go(step: (way: Way) => Way): Promise<void> {
    await this.leaving
    const way = step(this.way)
    if (way === this.way) return
    if (this.way.over.is === 'nothing' && way.over.is !== 'nothing') this.cameFrom = focused()
    goTo(way, this.on.address(way.view))
    this.arrive(way)
  }
  /** Opens something over what is shown. */
  over(over: Way['over']): void {
    void this.go((way) => ({ ...way, over }))
  }
  leave(steps: number): void {
    if (steps > 0) this.leaving = goBack(steps).then((wentBack) => (wentBack ? undefined : this.startAgain()))
  }
  /** Back to the bare sheet. */
  close(): void {
    this.leave(depth(this.way))
  }

  private startAgain(): void {
    stay(start, this.on.address('drawing'))
    this.arrive(start)
  }
  /** Shows where the history stands now, and takes the focus along. */
  private arrive(way: Way): void {
    const before = this.way
    this.way = way
    this.host.requestUpdate()
    void this.host.updateComplete.then(() => this.moveFocus(before))
  }
  private moveFocus(before: Way): void {
    const over = this.host.renderRoot.querySelector<LitElement>('.over > *')
    if (this.way.over.is !== 'nothing' && !isWhole(this.way.over))
      over?.updateComplete.then(() => over.shadowRoot?.querySelector<HTMLElement>('h2')?.focus())
    else if (before.over.is === 'working' && !this.cameFrom?.isConnected) this.on.focusFigure(before.over.trail[0] ?? '')
    else if (before.over.is !== 'nothing') this.cameFrom?.focus()
  }
}

/** What has the focus, however deep in shadow roots. */
function focused(): HTMLElement | undefined {
  let element = document.activeElement
  while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement
  return element instanceof HTMLElement || element instanceof SVGElement ? (element as HTMLElement) : undefined
}
