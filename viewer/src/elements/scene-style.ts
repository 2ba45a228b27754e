import { css } from 'lit'

/** How the parts of a drawing look: by what they are, in the tokens of the light. Widths are those of the drawing conventions. */
export const sceneStyle = css`
  .drawing { display: block; overflow: visible; user-select: none; -webkit-user-select: none }
  .drawing text { font-family: inherit; fill: var(--ink) }
  .drawing :is(.line, .tick, .extension, .leader, .dotted, .slash, .strike, .cross, .check) { fill: none }

  .wall { fill: none; stroke: var(--ink); stroke-width: calc(2.6px * var(--k)) }
  .wall-face { fill: var(--wallface); stroke: none }
  .hatch { fill: none; stroke: var(--hatch); stroke-width: 1 }
  .baseboard { fill: var(--wallface); stroke: var(--faint); stroke-width: 1 }
  .casing { fill: var(--casing); stroke: var(--frame); stroke-width: calc(1.8px * var(--k)) }
  .frame { fill: var(--casing); stroke: var(--frame); stroke-width: 0.8 }
  .glass { fill: var(--glass); stroke: var(--frame); stroke-width: 0.8 }
  .obstacle { fill: var(--sheet); stroke: var(--ink2); stroke-width: 1.1 }
  .rod, .finial, .bracket { fill: var(--rod); stroke: var(--rodline); stroke-width: calc(1.3px * var(--k)) }
  .ring { fill: none; stroke: var(--rodline); stroke-width: calc(1.3px * var(--k)) }
  .fabric { fill: var(--fabric); stroke: var(--fedge); stroke-width: calc(1.3px * var(--k)); stroke-linejoin: round }
  .fabric-shade { fill: var(--fshade); stroke: none }
  .fold { fill: none; stroke: var(--fold); stroke-width: 0.7 }
  .pleat { fill: none; stroke: var(--fedge); stroke-width: 1 }
  .mark { fill: none; stroke: var(--mark); stroke-width: calc(2.6px * var(--k)) }
  .centre { fill: none; stroke: var(--mark); stroke-width: 1; stroke-dasharray: 14 3 3 3 }
  .hidden { fill: none; stroke: var(--line); stroke-width: 1.1; stroke-dasharray: 5 3 }
  .level { fill: none; stroke: var(--ink2); stroke-width: 1.3; stroke-dasharray: 1.5 4 }
  text.caption, text.dimension { fill: var(--ink2); stroke: none }

  .tape .blade, rect.blade { fill: var(--blade); stroke: var(--tick); stroke-width: 0.8 }
  .tape .ticks { fill: none; stroke: var(--tick); stroke-width: 0.9 }

  .figure { cursor: pointer; color: var(--ink) }
  .figure.mark { stroke: none }
  .figure text { stroke: none }
  .figure .slash { stroke: var(--ink) }
  .figure .line, .figure .leader { stroke: var(--line); stroke-width: 1 }
  .figure .extension { stroke: var(--line); stroke-width: 0.8; opacity: 0.8 }
  .figure .tick { stroke: var(--ink); stroke-width: 1.6 }
  .figure .sign { fill: var(--ink2) }
  .figure .caption { fill: var(--ink2) }
  .figure .block { fill: none }
  .figure.mark :is(.digits, .caption, .sign, .unit) { fill: var(--mark) }
  .figure.mark .slash { stroke: var(--mark) }
  .figure.mark :is(.leader, .dotted, .cross) { stroke: var(--mark); stroke-width: 1.8 }
  .figure.mark .dotted { stroke-width: 1.4; stroke-dasharray: 1.5 4 }
  .drawing .cross { stroke: var(--mark); stroke-width: calc(2.6px * var(--k)) }
  .tape .number { fill: var(--ink) }
  .frame-box { fill: var(--markbg); stroke: var(--mark); stroke-width: 1.6 }
  .touched .frame-box { stroke-width: 3.5 }
  .figure .cross { stroke-width: calc(2.6px * var(--k)) }
  .chosen { fill: none; stroke: var(--act); stroke-width: 2.4 }
  .touch { fill: transparent }

  :is(.measured, .off) .block { fill: var(--tape); stroke: var(--tapeedge) }
  :is(.measured, .off) .hook { fill: var(--tapehook) }
  :is(.measured, .off) :is(.digits, .unit, .sign) { fill: var(--tapeink) }
  :is(.measured, .off) .slash { stroke: var(--tapeink) }
  .figure.off .block { stroke: var(--fail); stroke-width: 3 }
  g.off > :is(text) { fill: var(--fail) }
  .figure.unknown .block { fill: var(--sheet); stroke: var(--ink); stroke-width: 1.5; stroke-dasharray: 4 3 }
  .figure.unknown .line { stroke-dasharray: 5 4 }
  .figure.decided .block { fill: var(--sheet); stroke: var(--ink); stroke-width: 1.6 }
  .strike { stroke: var(--ink2); stroke-width: 1.4 }

  .detail .leader { fill: none; stroke: var(--line); stroke-width: 1 }
  .detail .source { fill: none; stroke: var(--ink); stroke-width: 1.1 }
  .detail .panel { fill: var(--sheet); stroke: none }
  .detail .sign { fill: var(--ink) }
  .detail .letter { fill: var(--sheet) }
  .detail-edge { fill: none; stroke: var(--ink); stroke-width: 1.4 }

  .finding .ring { fill: var(--sheet); stroke: var(--pass); stroke-width: 2 }
  .finding .check { stroke: var(--pass); stroke-width: 2.4; stroke-linecap: round; stroke-linejoin: round }
  .finding .lozenge { fill: var(--sheet); stroke: var(--warn); stroke-width: 2 }
  .finding .half { fill: var(--warn) }
  .finding .square { fill: var(--fail) }
  .finding .bar { fill: none; stroke: var(--sheet); stroke-width: 3 }
  .finding .broken { fill: var(--sheet); stroke: var(--ink); stroke-width: 1.8; stroke-dasharray: 3.4 2.6 }

  .drawing .figure:focus { outline: none }
  .drawing .figure:focus-visible .touch { stroke: var(--act); stroke-width: 3 }
`
