import { css } from 'lit'

/** Where the parts of a sheet lie: upright with the step below the drawing, wide with a column at the right. */
export const layout = css`
  :host { display: grid; height: max(100dvh, 860px); position: relative; background: var(--sheet); grid-template-columns: minmax(0, 1fr); grid-template-rows: 68px minmax(0, 1fr) auto auto 78px; grid-template-areas: 'bar' 'main' 'findings' 'now' 'block' }
  sheet-bar { grid-area: bar }
  main { grid-area: main; min-width: 0; min-height: 0; display: grid }
  main > * { min-width: 0; min-height: 0 }
  .findings { grid-area: findings; min-width: 0 }
  .hint { margin: 0; padding: 16px 20px; font-size: 17px; color: var(--ink2); background: var(--panel) }
  .now { grid-area: now; min-height: 272px; background: var(--panel); border-top: 1px solid var(--faint); display: grid }
  .now:empty, .findings:empty { display: none }
  title-block { grid-area: block; position: sticky; bottom: 0; z-index: 1 }
  .over { position: absolute; z-index: 1; left: 0; right: 0; bottom: 78px; min-height: 322px; max-height: calc(100% - 78px - 68px - 200px); display: flex; flex-direction: column; border-top: 2px solid var(--ink); background: var(--panel); animation: rise 160ms ease-out }
  .over > * { min-height: 0; flex: 1 1 auto }
  @keyframes rise { from { translate: 0 12px; opacity: 0 } }

  @media (min-width: 600px) and (max-aspect-ratio: 1/1) {
    :host([data-view='marks']) { height: auto; min-height: max(100dvh, 860px); grid-template-rows: 68px minmax(620px, 1fr) auto auto 78px }
  }
  @media (max-aspect-ratio: 1/1) {
    :host(:is([data-view='level'], [data-view='hem'], [data-view='loads'])) .findings { max-height: 52vh; overflow: auto; border-top: 1px solid var(--faint) }
  }
  @media (max-width: 599px) {
    :host { height: max(100dvh, 780px); grid-template-rows: 60px minmax(0, 1fr) auto auto 68px }
    .over { bottom: 68px; min-height: 340px; max-height: calc(100% - 68px - 60px - 130px) }
    .now { min-height: 290px }
    :host([data-view='marks']) { height: auto; grid-template-rows: 60px 460px auto auto 68px }
    :host([data-view='hooks']) { height: auto; min-height: 100dvh; grid-template-rows: 60px 1fr auto auto 68px }
  }
  @media (min-width: 1000px) and (min-aspect-ratio: 1/1) {
    :host { height: max(100dvh, 660px); grid-template-columns: minmax(0, 1fr) 360px; grid-template-rows: 68px minmax(0, 1fr) auto auto; grid-template-areas: 'bar bar' 'main findings' 'main now' 'main block' }
    .findings, .now, title-block, .over { border-left: 1px solid var(--faint) }
    .findings { min-height: 0; display: grid; background: var(--panel) }
    .findings > * { min-height: 0 }
    :host([data-view='loads']) .findings { display: block; overflow: auto }
    .now { min-height: 0 }
    .over { position: static; grid-area: findings; max-height: none; min-height: 0; border-top: 0; animation: none }
    .now:empty { display: none }
    :host([data-view='hooks']) { grid-template-columns: minmax(0, 1fr); grid-template-rows: 68px minmax(0, 1fr) 78px; grid-template-areas: 'bar' 'main' 'block' }
    :host([data-view='hooks']) title-block { border-left: 0 }
    :host([data-view='hooks']) .over { position: absolute; left: auto; right: 0; top: 68px; bottom: 78px; width: 420px; border-top: 0 }
  }
  @media (min-width: 1300px) and (min-aspect-ratio: 1/1) {
    :host { grid-template-columns: minmax(0, 1fr) 420px }
  }
  @media (prefers-reduced-motion: reduce) {
    .over { animation: none }
  }
  @media print {
    :host, :host([data-view]) { display: flex; flex-direction: column; height: auto; min-height: 0 }
    main { order: -1 }
    sheet-bar { order: -2 }
    title-block, .over, .now { display: none }
    main { height: auto }
    .findings, .now { border-left: 0; background: none }
    :host([data-view]) .findings { max-height: none; overflow: visible; display: block }
  }
`
