import { html, nothing } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { dayAndTime } from '../data/moment.ts'
import { asked } from '../data/served.ts'
import { plainPage } from '../elements/plain-page.ts'
import { base, buttons } from '../elements/shared.ts'
import { SpokenElement } from '../elements/spoken-element.ts'
import { deskWords } from '../words/desk.ts'
import { counted, fill, words } from '../words.ts'

/** One of the jobs that a server has, by what is told of it without planning. */
interface ListedJob {
  readonly at: string
  readonly name: string
  readonly number: string
  readonly customer?: string
  /** The day of the installation. */
  readonly install?: string
  readonly windows: number
  readonly entries: number
  readonly last?: string
  readonly state: 'broken' | 'ordered' | 'begun'
}

/** All jobs of this server, the next installation first. Each has a picture of squares that leads a tablet to it. */
@customElement('jobs-page')
export class JobsPage extends SpokenElement {
  @state() private jobs?: readonly ListedJob[]
  @state() private squares?: string
  @state() private wrong?: string

  static override readonly styles = [base, buttons, plainPage]

  override connectedCallback(): void {
    super.connectedCallback()
    document.title = deskWords().jobsTitle
    asked<{ readonly jobs: readonly ListedJob[] }>('/jobs').then(
      ({ jobs }) => (this.jobs = jobs),
      (error) => (this.wrong = String(error)),
    )
  }

  override render() {
    return html`<main><h1>${deskWords().jobsTitle}</h1>
      ${this.wrong === undefined ? nothing : html`<p class="fail" role="alert">${this.wrong}</p>`}
      <ul>${this.jobs?.map((job) => this.job(job))}</ul></main>`
  }
  private job(job: ListedJob) {
    const isOpen = this.squares === job.at
    return html`<li><div><a class="job" href=${job.at}>${job.name}</a>
        <small>${[job.number, job.customer, job.install && fill(deskWords().installOn, { day: job.install })].filter(Boolean).join(' · ')}</small>
        <small>${this.state(job)}</small></div>
      <button class="chip" aria-expanded=${isOpen} aria-label=${fill(deskWords().squaresFor, { name: job.name })} @click=${() => (this.squares = isOpen ? undefined : job.at)}>${deskWords().squares}</button>
      ${isOpen ? html`<img class="squares" alt=${fill(deskWords().squaresOf, { link: job.at })} src=${`/qr?of=${encodeURIComponent(job.at)}`} />` : nothing}</li>`
  }
  private state({ state, windows, entries, last }: ListedJob): string {
    if (state === 'broken') return words.couldNotRead
    const size = counted(windows, words.windowsOne, words.windowsMany)
    if (state === 'ordered') return `${size} · ${deskWords().nothingEntered}`
    return `${size} · ${fill(deskWords().enteredUntil, { n: entries, when: last === undefined ? '' : dayAndTime(last) })}`
  }
}
