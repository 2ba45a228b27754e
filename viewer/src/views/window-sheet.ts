import type { Place, PlacedWindow } from '@evenhem/job'
import { html, nothing, type PropertyValues } from 'lit'
import { customElement, property, query, state } from 'lit/decorators.js'
import { factsOf } from '../data/facts.ts'
import { formAt } from '../data/form.ts'
import { stepId } from '../data/house.ts'
import type { Lasting } from '../data/lasting.ts'
import { newPointId, pointBy, pointsIn, putShown } from '../data/points.ts'
import type { Light } from '../data/preferences.ts'
import { isSameOrder, readSheet, type Sheet, type SheetOrder } from '../data/sheet.ts'
import type { Contact, Entered } from '../data/site.ts'
import type { SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import { addressOf, deeper, houseAddress, isWhole, readAddress, toPad, type View } from '../data/way.ts'
import { Media } from '../elements/media.ts'
import { base } from '../elements/shared.ts'
import type { Neighbour } from '../elements/sheet-bar.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { unitNames, words } from '../words.ts'
import { isDeciding, leavesOf } from './leaves.ts'
import { opened } from './opened.ts'
import type { Looking, RoomDrawing } from './room-drawing.ts'
import { holeSides, marksClosedBy, shownAsks, shownFinding, shownPlace, shownStages, shownStep } from './shown.ts'
import { changeLines } from './shown-changes.ts'
import { choicesOn, findingsList, workingOf } from './shown-lists.ts'
import { Walk } from './walk.ts'
import { wholePage } from './whole-page.ts'
import { layout } from './window-sheet.css.ts'
import '../elements/changes-panel.ts'
import '../elements/findings-row.ts'
import '../elements/hole-list.ts'
import '../elements/sheet-bar.ts'
import '../elements/stage-list.ts'
import '../elements/step-panel.ts'
import '../elements/switch-pair.ts'
import '../elements/title-block.ts'
import '../elements/working-panel.ts'
import './hooks-view.ts'
import './photos-view.ts'
import './room-drawing.ts'

/** The sheet of one window: drawing first, what was checked, one step, and the way around. */
@customElement('window-sheet')
export class WindowSheet extends SpokenElement {
  /** What it is made from; made again only when that changes. */
  @property({ attribute: false, hasChanged: (now: SheetOrder, before?: SheetOrder) => !isSameOrder(now, before) })
  order!: SheetOrder
  @property() light: Light = 'paper'
  /** All windows of the house, in walking order. */
  @property({ attribute: false }) windows: readonly PlacedWindow[] = []
  /** What may be done about what was found. */
  @property({ attribute: false }) tools!: SiteTools
  @property({ attribute: false }) contact?: Contact
  @property({ attribute: false }) lasting?: Lasting
  /** Told anew whenever a photo came or went on its way. */
  @property({ attribute: false }) photos: readonly SitePhoto[] = []
  @state() private drapery: Looking = 'drawn'
  @state() private panel = 0
  /** The id of the step that is shown: steps may come and go with what is found. */
  @state() private stepShown = ''
  @query('room-drawing') private readonly drawing?: RoomDrawing | null
  private sheet!: Sheet
  private place?: Place
  private readonly wide = new Media(this, '(min-width: 1000px) and (min-aspect-ratio: 1/1)')
  private readonly narrow = new Media(this, '(max-width: 599px)')
  private readonly walk = new Walk(this, {
    address: (view) => this.address(view),
    isAddressed: () => this.isAddressed(),
    focusFigure: (of) => this.drawing?.focusFigure(of),
  })

  static override readonly styles = [base, layout]

  override connectedCallback(): void {
    super.connectedCallback()
    const on = <T>(name: string, hear: (detail: T) => void) =>
      this.addEventListener(name, (event) => hear((event as CustomEvent<T>).detail))
    const { walk } = this
    this.addEventListener('keydown', this.onKey)
    on<string>('open-number', (of) => this.open(of))
    on('close-working', () => walk.close())
    on<Place>('enter-value', (at) => this.enter(at))
    on<readonly Entered[]>('put-values', (entered) => void this.tools.put(entered))
    on<string>('open-photo', (hash) => walk.over({ is: 'photo', hash }))
    on<string>('open-point', (id) => walk.over({ is: 'point', id }))
    on<SitePhoto | null>('new-point', (photo) => void this.newPoint(photo))
    on('open-photos', () => this.show('photos'))
    on('open-stages', () => walk.over({ is: 'stages' }))
    on('open-findings', () => walk.over({ is: 'findings' }))
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('order')) this.sheet = readSheet(this.order)
    if (this.sheet.place !== this.place) this.takeUp()
    this.dataset.view = this.way.view
    document.title = `${this.sheet.room.name}, ${this.sheet.window.name}`
  }

  /** Goes on with the first step that is not done. */
  private takeUp(): void {
    const { place, plan } = this.sheet
    this.place = place
    this.walk.takeUp()
    this.panel = 0
    const next = plan.steps.find((step) => !step.done) ?? plan.steps.at(-1)
    this.stepShown = next ? stepId(next) : ''
  }
  private get step(): number {
    const at = this.sheet.plan.steps.findIndex((step) => stepId(step) === this.stepShown)
    return at >= 0
      ? at
      : Math.max(
          0,
          this.sheet.plan.steps.findIndex((step) => !step.done),
        )
  }

  override render() {
    const { sheet, way } = this
    const covered = way.over.is !== 'nothing' && !this.wide.matches
    const whole = wholePage(way, { sheet, photos: this.photos, tools: this.tools, back: () => this.walk.leave(1) })
    return whole ?? this.bare(covered)
  }
  private bare(covered: boolean) {
    const { sheet, way } = this
    return html`
      <sheet-bar .contact=${this.contact} .lasting=${this.lasting} .windows=${this.windows} .at=${sheet.place} .over=${this.narrow.matches ? sheet.room.name : this.overTitle()} .heading=${this.narrow.matches ? sheet.window.name : `${sheet.room.name}, ${sheet.window.name}`} .unit=${unitNames(sheet.unit, sheet.ordered.units)}
        .light=${this.light} .house=${houseAddress} .previous=${this.neighbour(-1)} .following=${this.neighbour(1)} ?inside=${way.over.is !== 'nothing' || way.view !== 'drawing'} @go-back=${() => this.walk.leave(1)}>
        ${this.wide.matches ? this.viewSwitch() : nothing}
      </sheet-bar>
      ${this.overlay()}
      <div class="now" ?inert=${covered}>${way.view === 'drawing' ? this.now() : nothing}</div>
      <div class="findings" ?inert=${covered}>${this.beside()}</div>
      <main>${this.main()}</main>
      <title-block .leaves=${leavesOf(this.sheet, this.tools, this.photos.length, pointsIn(this.sheet.plan))} .now=${way.view} @go-to=${(event: CustomEvent<View>) => this.show(event.detail)}></title-block>`
  }

  /** The window before or after this one, as it is walked. */
  private neighbour(by: -1 | 1): Neighbour | undefined {
    const { windows, way } = this
    const other = windows[windows.findIndex(({ place }) => place === this.sheet.place) + by]
    return other && { name: `${other.room.name}, ${other.window.name}`, address: addressOf(other, way.view) }
  }

  /** A point that a photo shows is there at once, any other with the first thing that is said of it. */
  private async newPoint(photo: SitePhoto | null): Promise<void> {
    const { plan, place } = this.sheet
    const points = pointsIn(plan)
    const id = newPointId(points)
    if (!photo || (await this.tools.put(putShown(pointBy(id, points, place), photo), 'untold')))
      this.walk.over({ is: 'point', id })
  }
  private enter(at: Place): void {
    void this.walk.go((way) => toPad(way, at))
  }

  private show(view: View): void {
    void this.walk.go(() => ({ view, over: { is: 'nothing' } }))
  }

  private main() {
    const { sheet, way } = this
    const touched = way.over.is === 'working' ? way.over.trail[0] : undefined
    if (way.view === 'photos')
      return html`<photos-view .sheet=${sheet} .tools=${this.tools} .photos=${this.photos} .points=${pointsIn(sheet.plan)}></photos-view>`
    if (way.view === 'hooks')
      return html`<hooks-view .sheet=${sheet} .panel=${this.panel}>${this.wide.matches ? nothing : this.viewSwitch()}</hooks-view>`
    return html`<room-drawing .view=${this.pictured()} .sheet=${sheet} .drapery=${this.drapery} .touched=${touched}></room-drawing>`
  }

  private now() {
    const { put } = this.order
    if (put) return this.changed(put)
    const step = shownStep(this.sheet, this.step)
    return html`<step-panel .step=${step} ?brief=${this.way.over.is !== 'nothing' && this.wide.matches}
      @step-move=${(event: CustomEvent<number>) => this.moveStep(event.detail)} @step-done=${this.stepDone} @open-ladder=${() => this.show('ladder')} ?ladder=${this.hasHoles()}></step-panel>`
  }

  /** What the last values changed stands in the place of the step until it was read. */
  private changed({ places, changes, canUndo }: NonNullable<SheetOrder['put']>) {
    return html`<changes-panel .put=${places.map((place) => shownPlace(this.sheet, place))} .lines=${changeLines(this.sheet, changes)} ?canUndo=${canUndo}
      @changes-read=${() => this.tools.read()} @changes-undo=${() => this.tools.undo()}></changes-panel>`
  }

  /** Below the drawing, or beside a wide one: what was checked, or the holes. */
  private beside() {
    if (this.way.view === 'drawing') return this.findings()
    if (isDeciding(this.way.view)) return choicesOn(this.sheet, this.way.view)
    return this.way.view === 'marks'
      ? html`<hole-list .sides=${holeSides(this.sheet)} .closed=${marksClosedBy(this.sheet)} @open-ladder=${() => this.show('ladder')}></hole-list>`
      : nothing
  }

  private findings() {
    const findings = this.sheet.plan.checks.map(shownFinding(this.sheet))
    if (!this.wide.matches)
      return html`<findings-row .next=${shownAsks(this.sheet)[0]} .findings=${findings} .faults=${this.sheet.plan.faults.length}>${this.viewSwitch()}</findings-row>`
    return this.way.over.is === 'nothing' ? findingsList(this.sheet, this.tools, true) : nothing
  }

  private overlay() {
    const { over } = this.way
    if (over.is === 'findings') return html`<div class="over">${findingsList(this.sheet, this.tools, false)}</div>`
    if (over.is === 'stages')
      return html`<div class="over"><stage-list .stages=${shownStages(this.sheet, this.stepShown)} @go-to-step=${(event: CustomEvent<string>) => this.toStep(event.detail)}></stage-list></div>`
    if (over.is !== 'working') return nothing
    const working = workingOf(this.sheet, over.trail, this.tools, this.wide.matches ? 138 : undefined)
    return html`<div class="over"><working-panel .working=${working} @back-to=${(event: CustomEvent<number>) => this.walk.leave(over.trail.length - 1 - event.detail)}></working-panel></div>`
  }

  /** What is drawn: the marks, the wall, or the window seen from above. */
  private pictured(): RoomDrawing['view'] {
    const { view } = this.way
    if (view === 'marks' || isDeciding(view)) return view
    return this.drapery === 'above' ? 'plan' : 'elevation'
  }

  /** The ways to look at what this view shows. */
  private viewSwitch() {
    if (this.way.view === 'drawing') {
      return html`<switch-pair .name=${words.draperyState} .on=${this.drapery} .choices=${[{ id: 'drawn', name: words.drawn }, { id: 'stacked', name: words.stacked }, { id: 'above', name: words.above }]}
        @switched=${(event: CustomEvent<Looking>) => {
          this.drapery = event.detail
        }}></switch-pair>`
    }
    const panels = factsOf(this.sheet.plan, 'drapery/make-up@1').flatMap(({ value }) => value.panels)
    if (this.way.view !== 'hooks' || panels.length < 2) return nothing
    return html`<switch-pair .name=${words.panels} .on=${String(this.panel)} .choices=${panels.map(({ outer }, n) => ({ id: String(n), name: words.panelNames[outer] }))}
      @switched=${(event: CustomEvent<string>) => {
        this.panel = Number(event.detail)
      }}></switch-pair>`
  }

  private overTitle(): string {
    const { name } = this.sheet.ordered.job
    return this.way.view === 'hooks' ? `${name} · ${words.whereEachHookGoes}` : `${name} · ${this.whatHangs()}`
  }

  private whatHangs(): string {
    const { ordered, window } = this.sheet
    const names = window.treatments.map(({ hardware }) => ordered.hardware?.find(({ id }) => id === hardware)?.name ?? hardware)
    return [...new Set(names)].join(', ')
  }

  private toStep(id: string): void {
    this.stepShown = id
    this.walk.close()
  }
  private moveStep(by: number): void {
    const { steps } = this.sheet.plan
    const next = steps[Math.min(steps.length - 1, Math.max(0, this.step + by))]
    if (next) this.stepShown = stepId(next)
  }

  /** Done steps are put like readings; done again, it is taken back. */
  private async stepDone(): Promise<void> {
    const step = this.sheet.plan.steps[this.step]
    if (!step) return
    await this.tools.put([step.done ? { place: step.doneAt } : { place: step.doneAt, value: true, read: true }], 'quietly')
    if (!step.done) this.moveStep(1)
  }

  private open(of: string): void {
    if (opened(this.sheet, of)) void this.walk.go((way) => deeper(way, of))
    // What nobody knows yet can be read.
    else if (formAt(of)) this.enter(of)
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    // What takes the whole page answers by itself.
    if (event.key !== 'Escape' || this.way.over.is === 'nothing' || isWhole(this.way.over)) return
    event.preventDefault()
    this.walk.close()
  }

  private get way() {
    return this.walk.way
  }
  private address(view: View): string {
    const { room, window, place } = this.sheet
    return addressOf({ room, window, place }, view)
  }
  private isAddressed(): boolean {
    const { room, window } = this.sheet
    const address = readAddress(location.hash)
    return address.is === 'start' || (address.is === 'window' && address.room === room.id && address.window === window.id)
  }
  private hasHoles(): boolean {
    return factsOf(this.sheet.plan, 'drapery/holes@1').some(({ value }) => value.length > 0) && !marksClosedBy(this.sheet)
  }
}
