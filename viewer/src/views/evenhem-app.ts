import { type PlacedWindow, windowsOf } from '@evenhem/job'
import type { ReadingUnit } from '@evenhem/length'
import { planText } from '@evenhem/planner'
import { css, html, LitElement } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { startPlanning } from '../data/planning.ts'
import { chosenLight, chosenUnit, following, type Light, lights, shine, units } from '../data/preferences.ts'
import { fetchJob, type Served } from '../data/served.ts'
import type { SheetOrder } from '../data/sheet.ts'
import { base } from '../elements/shared.ts'
import type { Planned } from '../worker.ts'
import './state-page.ts'

const systemIsDark = matchMedia('(prefers-color-scheme: dark)')

/** The whole page: fetches the job once, has it planned in a worker, and shows the sheet of its window in a light and a unit. */
@customElement('evenhem-app')
export class EvenhemApp extends LitElement {
  @state() private served?: Served
  @state() private planned?: Planned
  @state() private trouble?: string
  @state() private light: Light = 'paper'
  @state() private unit?: ReadingUnit
  /** The sheet's own script has come: the first paint does not wait for it. */
  @state() private canShow = false
  private readonly planning = startPlanning()
  private readonly followSystem = () => this.setLight(chosenLight.read())

  static override readonly styles = [base, css`:host { min-height: 100dvh; background: var(--sheet) }`]

  override connectedCallback(): void {
    super.connectedCallback()
    this.setLight(chosenLight.read())
    this.unit = chosenUnit.read()
    systemIsDark.addEventListener('change', this.followSystem)
    void this.load()
  }

  override disconnectedCallback(): void {
    systemIsDark.removeEventListener('change', this.followSystem)
    super.disconnectedCallback()
  }

  /** The plan that this sheet shows, in the one text form of plans; undefined while there is none. */
  planText(): string | undefined {
    return this.planned && planText(this.planned.plan)
  }

  override render() {
    const { served, window } = this
    const order = this.canShow ? this.order() : undefined
    if (order) {
      return html`<window-sheet .order=${order} .light=${this.light} @next-unit=${this.nextUnit} @next-light=${this.nextLight}></window-sheet>`
    }
    return html`<state-page .served=${served} .trouble=${this.trouble} .empty=${served?.ordered !== undefined && !window} @try-again=${() => this.load()}></state-page>`
  }

  private get window(): PlacedWindow | undefined {
    return this.served?.ordered && windowsOf(this.served.ordered)[0]
  }

  private order(): SheetOrder | undefined {
    const { served, planned, window } = this
    const ordered = served?.ordered
    return ordered && planned && window && { ordered, readings: served.readings, found: window, planned, unit: this.reading }
  }

  /** The reader's choice, else the order's own unit. */
  private get reading(): ReadingUnit {
    return this.unit ?? (this.served?.ordered?.units === 'in' ? 'in' : 'mm')
  }

  private async load(): Promise<void> {
    this.trouble = undefined
    try {
      const script = import('./window-sheet.ts')
      this.served = await fetchJob()
      const { ordered, readings } = this.served
      const window = this.window
      if (!ordered || !window) return
      this.planned = await this.planning.plan({ ordered, readings, window: window.place })
      await script
      this.canShow = true
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error)
    }
  }

  private setLight(chosen: Light | undefined): void {
    this.light = chosen ?? (systemIsDark.matches ? 'night' : 'paper')
    shine(this.light)
  }

  private nextLight(): void {
    const light = following(lights, this.light)
    chosenLight.write(light)
    this.setLight(light)
  }

  private nextUnit(): void {
    this.unit = following(units, this.reading)
    chosenUnit.write(this.unit)
  }
}
