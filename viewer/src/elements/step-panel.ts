import { css, html, nothing, svg } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Amount } from '../data/amount.ts'
import { fill, words } from '../words.ts'
import { figure, figureStyle } from './figure.ts'
import { sentence, sentenceStyle } from './sentence.ts'
import { base, buttons, tell } from './shared.ts'
import { SpokenElement } from './spoken-element.ts'

/** A step as it is shown: every word already made. */
export interface ShownStep {
  readonly n: number
  readonly m: number
  readonly stage: string
  readonly title: string
  readonly numbers: readonly { readonly what: string; readonly amount: Amount; readonly of: string }[]
  readonly why?: string
  readonly cautions: readonly string[]
  /** What will be true after it. */
  readonly done: string
  /** Why it may not be done yet. */
  readonly closed?: string
  /** It is done. */
  readonly shown: boolean
  /** What is read or ticked at it. */
  readonly captures: readonly ShownCapture[]
  /** The step after it. */
  readonly after?: string
}

/** Something to read, count or tick, and what stands there. */
export interface ShownCapture {
  readonly at: string
  readonly as: 'length' | 'count' | 'tick' | 'choice' | 'photo' | 'note'
  readonly what: string
  readonly amount?: Amount
  readonly text?: string
  /** What is ordered or worked out. */
  readonly expected?: Amount
  readonly isDone: boolean
  /** Outside what is allowed, or too few. */
  readonly isOff: boolean
}

/** One thing now: what to do, its numbers large, why, and one button that names what will be true. */
@customElement('step-panel')
export class StepPanel extends SpokenElement {
  @property({ attribute: false }) step?: ShownStep
  /** Only title and button: beside a working that needs the room. */
  @property({ type: Boolean, reflect: true }) brief = false

  /** The numbers of marks may be read from the ladder. */
  @property({ type: Boolean }) ladder = false

  static override readonly styles = [
    base,
    sentenceStyle,
    buttons,
    figureStyle,
    css`
      :host { background: var(--panel); container-type: inline-size }
      section { display: grid; grid-template: minmax(0, 1fr) / 1fr 236px; gap: 20px; padding: 13px 16px 12px 20px; height: 100%; max-height: 420px }
      .what { overflow: auto; overscroll-behavior: contain; min-height: 0 }
      h2 { font-size: 29px; line-height: 1.12; font-weight: 700; letter-spacing: -0.01em; margin: 1px 0 8px; text-wrap: balance }
      .numbers { display: flex; flex-wrap: wrap; margin: 2px 0 8px }
      .numbers button { min-height: 48px; padding: 0 20px 0 0; margin-right: 20px; border-right: 1px solid var(--faint); font-size: 15px; line-height: 1.25; color: var(--ink2) }
      .numbers li:last-child button { border: 0; margin: 0 }
      .numbers b { display: block; font-size: 44px; line-height: 1.12; font-weight: 700; color: var(--mark) }
      p { font-size: 17.5px; line-height: 1.33 }
      p + p { margin-top: 5px }
      .caution { border-left: 5px solid var(--warn); padding-left: 10px }
      .caution b { color: var(--warn); font-weight: 700 }
      .closed { border-left: 5px solid var(--fail); padding-left: 10px }
      .closed b { color: var(--fail) }
      .go { width: 100%; min-height: 108px; font-size: 24px }
      .ways { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; margin-top: 10px }
      .ways .button { font-size: 18px; min-height: 56px; padding: 6px }
      .ladder { width: 100%; margin-top: 8px; min-height: 48px; font-size: 18px }
      .where { min-height: 48px; margin: -12px 0 -10px; color: var(--act); display: inline-flex; align-items: center; gap: 7px }
      .captures { display: flex; flex-wrap: wrap; gap: 8px; margin: 2px 0 10px }
      .captures button { display: flex; align-items: center; gap: 10px; min-height: 52px; padding: 4px 12px; border: 1px solid var(--line); border-radius: 6px; background: var(--sheet); font-size: 16.5px; line-height: 1.15 }
      .captures .open { border-color: var(--act); color: var(--act); font-weight: 500 }
      .captures .off { border: 3px solid var(--warn) }
      .tape { background: var(--tape); color: var(--tapeink); border-left: 4px solid var(--tapehook); border-radius: 2px; padding: 2px 7px; font-size: 19px; font-weight: 600; outline: 1.5px solid var(--tapeedge) }
      .blank { min-width: 34px; padding: 1px 7px; border: 1.5px dashed var(--line); border-radius: 2px; text-align: center; font-size: 18px; color: var(--ink2) }
      .tick { width: 26px; height: 26px; flex: none }
      .note { font-size: 14px; line-height: 1.3; color: var(--ink2); text-align: center; margin-top: 9px }
      @container (max-width: 599px) {
        section { grid-template: minmax(0, 1fr) auto / minmax(0, 1fr); gap: 12px; padding: 12px 16px 14px; max-height: 352px }
        .captures li { flex: 1 1 100% } .captures button { width: 100%; justify-content: space-between; min-height: 48px }
        h2 { font-size: 24px; margin-bottom: 6px }
        .numbers b { font-size: 37px }
        .numbers button { padding-right: 14px; margin-right: 14px }
        p { font-size: 16.5px }
        .doing { display: grid; grid-template-columns: minmax(74px, auto) minmax(74px, auto) 1fr; gap: 8px }
        .go { order: 1; min-height: 76px; font-size: 20px; padding: 6px 10px }
        .ways { display: contents }
        .ways .button { min-height: 76px; font-size: 17px }
        .ladder { grid-column: 1 / -1; order: 2; margin: 0 }
        .note { grid-column: 1 / -1; order: 3; margin: 0 }
      }
      :host([brief]) .doing { display: block }
      :host([brief]) section { grid-template-columns: 1fr auto; align-items: center; padding: 10px 14px 10px 18px; gap: 14px }
      :host([brief]) h2 { font-size: 20px; font-weight: 600; letter-spacing: 0; margin: 2px 0 0 }
      :host([brief]) .go { min-height: 56px; font-size: 18px; padding: 6px 14px; max-width: 160px }
      :host([brief]) :is(.numbers, p, .ways, .note, .ladder) { display: none }
    `,
  ]

  override render() {
    const { step } = this
    return step
      ? html`<section aria-label=${words.stepRegion}><div class="what">${this.what(step)}</div><div class="doing">${this.doing(step)}</div></section>`
      : nothing
  }

  private what(step: ShownStep) {
    return html`
      <button class="eyebrow where" aria-live="polite" @click=${() => tell(this, 'open-stages')}>${fill(words.whereNow, { n: step.n, m: step.m, stage: step.stage })} <svg width="14" height="10" aria-hidden="true"><path d="M2 2l5 6 5-6" fill="none" stroke="currentColor" stroke-width="2" /></svg></button>
      <h2>${sentence(step.title)}</h2>
      ${
        step.numbers.length === 0
          ? nothing
          : html`<ul class="numbers">${step.numbers.map(
              ({ what, amount, of }) =>
                html`<li><button @click=${() => tell(this, 'open-number', of)}>${what}<b>${figure(amount)}</b></button></li>`,
            )}</ul>`
      }
      ${this.captures(step)}
      ${step.why ? html`<p>${words.why} ${sentence(step.why)}</p>` : nothing}
      ${step.closed ? html`<p class="closed"><b>${words.closed}</b> ${sentence(step.closed)}</p>` : nothing}
      ${step.cautions.length > 0 ? html`<p class="caution"><b>${words.caution}</b> ${sentence(step.cautions.join(' '))}</p>` : nothing}`
  }

  private captures({ captures }: ShownStep) {
    if (captures.length === 0) return nothing
    return html`<ul class="captures" aria-label=${words.toRead}>${captures.map((capture) => html`<li>${this.capture(capture)}</li>`)}</ul>`
  }
  private capture({ at, as, what, amount, text, expected, isDone, isOff }: ShownCapture) {
    const look = isDone ? (isOff ? 'off' : '') : 'open'
    if (as === 'photo')
      return html`<button class=${look} @click=${() => tell(this, 'open-photos')}>${tick(isDone)}${what}</button>`
    if (as === 'tick')
      return html`<button class=${look} aria-pressed=${isDone} @click=${() => tell(this, 'put-values', [isDone ? { place: at } : { place: at, value: true, read: true }])}>${tick(isDone)}${what}</button>`
    const value = amount
      ? html`<span class="tape">${figure(amount, 600)}</span>`
      : text
        ? html`<span class="tape">${text}</span>`
        : html`<span class="blank">${expected ? figure(expected, 500) : '?'}</span>`
    return html`<button class=${look} @click=${() => tell(this, 'enter-value', at)}>${what} ${value}</button>`
  }

  private doing(step: ShownStep) {
    return html`
      <button class="button go" aria-disabled=${step.closed ? 'true' : nothing} aria-pressed=${step.shown} @click=${() => step.closed || tell(this, 'step-done')}>${step.done}</button>
      <div class="ways">
        <button class="button" aria-disabled=${step.n === 1 ? 'true' : nothing} @click=${() => step.n > 1 && tell(this, 'step-move', -1)}>${words.back}</button>
        <button class="button" aria-disabled=${step.n === step.m ? 'true' : nothing} @click=${() => step.n < step.m && tell(this, 'step-move', 1)}>${words.next}</button>
      </div>
      ${this.ladder && step.numbers.length > 0 ? html`<button class="button ladder" @click=${() => tell(this, 'open-ladder')}>${words.ladder}</button>` : nothing}
      <p class="note">${step.shown ? words.kept : step.after ? fill(words.after, { step: step.after }) : words.last}</p>`
  }
}

const tick = (isDone: boolean) =>
  html`<svg class="tick" viewBox="0 0 26 26" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2.2"><circle cx="13" cy="13" r="10.5" />${isDone ? svg`<path d="M7.500 13.500l4 4 7-8" />` : nothing}</svg>`
