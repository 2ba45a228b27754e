import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { fill, words } from '../words.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, closeButton, closing, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'
import { verdictSign, verdictStyle } from './verdict.ts'

/** A stage of the work with its words made. */
export interface ShownStage {
  readonly name: string
  readonly standing: 'done' | 'open' | 'closed'
  readonly done: number
  readonly steps: readonly { readonly id: string; readonly title: string; readonly done: boolean }[]
  /** The sentences of what closes it. */
  readonly inTheWay: readonly string[]
  /** Somebody is here now. */
  readonly isNow: boolean
}

/** Where one is in the work at a window: every stage, what is done, and what stands in the way. A touch on a step goes there. */
@customElement('stage-list')
export class StageList extends SpokenElement {
  @property({ attribute: false }) stages: readonly ShownStage[] = []

  static override readonly styles = [
    base,
    closing,
    sentenceStyle,
    verdictStyle,
    css`
      :host { background: var(--panel); min-height: 0; display: flex; flex-direction: column }
      section { flex: 1; min-height: 0; overflow: auto; overscroll-behavior: contain; padding: 14px max(20px, 50% - 350px) 20px }
      header { display: flex; align-items: center; justify-content: space-between }
      h2 { font-size: 23px; line-height: 1.15; font-weight: 600; min-height: 34px }
      .stage { display: grid; grid-template-columns: 26px 1fr auto; gap: 2px 14px; align-items: start; padding: 10px 0 2px; border-top: 1px solid var(--faint); font-size: 18px; font-weight: 600 }
      .now .stage { border-top: 3px solid var(--act) }
      .stage span:last-child { font-weight: 400; font-size: 16px; color: var(--ink2) }
      .way { padding: 0 0 8px 40px; font-size: 16px; line-height: 1.3; color: var(--fail) }
      button { display: block; width: 100%; min-height: 48px; padding: 4px 0 4px 40px; font-size: 17px; line-height: 1.2 }
      button.done { color: var(--ink2); text-decoration: line-through; text-decoration-thickness: 1px }
    `,
  ]

  override render() {
    return html`<section aria-labelledby="title" tabindex="0"><header><h2 id="title" tabindex="-1">${words.stagesTitle}</h2>${closeButton(this)}</header>
      <ol>${this.stages.map((stage) => this.stage(stage))}</ol></section>`
  }

  private stage({ name, standing, done, steps, inTheWay, isNow }: ShownStage) {
    const sign = verdictSign(standing === 'done' ? 'pass' : standing === 'closed' ? 'fail' : 'unknown')
    return html`<li class=${isNow ? 'now' : ''}><div class="stage">${sign}<span>${name}</span><span>${fill(words.stageDone, { n: done, m: steps.length })}</span></div>
      ${inTheWay.map((says) => html`<p class="way">${sentence(says)}</p>`)}
      ${
        standing === 'done' && !isNow
          ? nothing
          : steps.map(
              (step) =>
                html`<button class=${step.done ? 'done' : ''} @click=${() => tell(this, 'go-to-step', step.id)}>${sentence(step.title)}${step.done ? html`<span class="unseen">, ${words.captureDone}</span>` : nothing}</button>`,
            )
      }</li>`
  }
}
