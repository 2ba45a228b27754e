import { type PlacedWindow, windowsOf } from '@evenhem/job'
import type { ReadingUnit } from '@evenhem/length'
import { planText, type WindowPlan } from '@evenhem/planner'
import { css, html, LitElement, type PropertyValues } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { startPlanning } from '../data/planning.ts'
import { chosenLight, chosenUnit, following, type Light, lights, shine, units } from '../data/preferences.ts'
import { fetchJob, type Served } from '../data/served.ts'
import { readSheet, type Sheet } from '../data/sheet.ts'
import { base } from '../elements/shared.ts'
import './state-page.ts'
import './window-sheet.ts'

const systemIsDark = matchMedia('(prefers-color-scheme: dark)')

/** The whole page: fetches the job once, has it planned in a worker, and shows the sheet of its window in a light and a unit. */
@customElement('evenhem-app')
export class EvenhemApp extends LitElement {
  @state() private served?: Served
  @state() private plan?: WindowPlan
  @state() private trouble?: string
  @state() private light: Light = 'paper'
  @state() private unit?: ReadingUnit
  private sheet?: Sheet
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
    return this.plan && planText(this.plan)
  }

  protected override willUpdate(changed: PropertyValues): void {
    const changes = changed as Map<string, unknown>
    if (changes.has('plan') || changes.has('unit') || changes.has('served')) this.sheet = this.makeSheet()
  }

  override render() {
    const { served, sheet } = this
    const window = this.window
    if (sheet) {
      return html`<window-sheet .sheet=${sheet} .light=${this.light} @next-unit=${this.nextUnit} @next-light=${this.nextLight}></window-sheet>`
    }
    return html`<state-page .served=${served} .trouble=${this.trouble} .empty=${served?.ordered !== undefined && !window} @try-again=${() => this.load()}></state-page>`
  }

  private get window(): PlacedWindow | undefined {
    return this.served?.ordered && windowsOf(this.served.ordered)[0]
  }

  private makeSheet(): Sheet | undefined {
    const { served, plan, window } = this
    const ordered = served?.ordered
    return ordered && plan && window && readSheet({ ordered, readings: served.readings, found: window, plan, unit: this.reading })
  }

  /** The reader's choice, else the order's own unit. */
  private get reading(): ReadingUnit {
    return this.unit ?? (this.served?.ordered?.units === 'in' ? 'in' : 'mm')
  }

  private async load(): Promise<void> {
    this.trouble = undefined
    try {
      this.served = await fetchJob()
      const { ordered, readings } = this.served
      const window = this.window
      if (!ordered || !window) return
      this.plan = await this.planning.plan({ ordered, readings, window: window.place })
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
